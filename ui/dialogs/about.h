// SPDX-License-Identifier: GPL-3.0-or-later
// What the program is, under which licence, and what to be careful about.
#pragma once

#include <QDialog>

namespace lapwright::dialogs {

class About : public QDialog {
    Q_OBJECT

  public:
    explicit About(const QString& version, QWidget* parent = nullptr);
};

} // namespace lapwright::dialogs
