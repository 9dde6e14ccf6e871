// SPDX-License-Identifier: GPL-3.0-or-later
// Typing a few letters of a corner, a session, a lap or a command, and going there.
#pragma once

#include <QDialog>
#include <functional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace lapwright::dialogs {

struct Destination {
    QString name;
    QString hint; // its key, or what it is
    std::function<void()> go;
};

class Finder : public QDialog {
    Q_OBJECT

  public:
    explicit Finder(std::vector<Destination> destinations, QWidget* parent = nullptr);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void filter(const QString& words);
    void go();

    std::vector<Destination> destinations_;
    QLineEdit* line_;
    QListWidget* list_;
};

} // namespace lapwright::dialogs
