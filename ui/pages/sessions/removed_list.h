// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions that were taken out of the book, the last one first: Return or a double click brings one back.
#pragma once

#include "core/book/sessions.h"

#include <QDialog>
#include <vector>

class QLabel;
class QListWidget;
class QPushButton;

namespace lapwright::pages {

class RemovedList : public QDialog {
    Q_OBJECT

  public:
    explicit RemovedList(QWidget* parent = nullptr);

    void show_sessions(std::vector<book::RemovedSession> sessions);
    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] QString said() const;

  Q_SIGNALS:
    void restore_wanted(const lapwright::book::RemovedSession& session);

  private:
    void bring_back();

    std::vector<book::RemovedSession> sessions_;
    QLabel* said_;
    QListWidget* list_;
    QPushButton* back_;
};

} // namespace lapwright::pages
