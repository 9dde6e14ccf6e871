// SPDX-License-Identifier: GPL-3.0-or-later
// What every key and the mouse do; the keys are read from the actions themselves.
#pragma once

#include <QDialog>
#include <utility>
#include <vector>

namespace lapwright::dialogs {

// What is done, and by which key or hand.
using KeyLine = std::pair<QString, QString>;
struct KeyGroup {
    QString title;
    std::vector<KeyLine> lines;
};

class KeysHelp : public QDialog {
    Q_OBJECT

  public:
    explicit KeysHelp(const std::vector<KeyGroup>& groups, QWidget* parent = nullptr);
};

} // namespace lapwright::dialogs
