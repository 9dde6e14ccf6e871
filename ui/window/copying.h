// SPDX-License-Identifier: GPL-3.0-or-later
// What a page shows on the clipboard: as a table that a spreadsheet takes, as a picture that a message takes.
#pragma once

#include <QObject>

class QMainWindow;

namespace lapwright::window {

struct Actions;
class Exporting;
class PageStack;

class Copying : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        PageStack& pages;
        const Exporting& exporting;
        const QMainWindow& window; // whose title heads a picture
    };

    // All outlive it.
    explicit Copying(const Parts& parts, QObject* parent = nullptr);

  private:
    void copy_table() const;
    void copy_picture() const;

    Parts parts_;
};

} // namespace lapwright::window
