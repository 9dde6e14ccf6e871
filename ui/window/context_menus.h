// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done where the pointer is, as a menu of the same actions that menus and keys have.
#pragma once

#include <QObject>
#include <QPoint>
#include <vector>

class QAction;
class QMenu;

namespace lapwright::window {

struct Actions;
class PageStack;

class ContextMenus : public QObject {
    Q_OBJECT

  public:
    // Both outlive it.
    ContextMenus(const Actions& actions, PageStack& pages, QObject* parent = nullptr);

  private:
    using Group = std::vector<QAction*>;

    void show(const std::vector<Group>& groups, const QPoint& at);
    void follow(QWidget& page, const std::vector<Group>& groups);

    PageStack& pages_;
};

} // namespace lapwright::window
