// SPDX-License-Identifier: GPL-3.0-or-later
// An edit that can be undone: what it does, at once and again, and what takes it back.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <utility>

namespace lapwright::window {

class Edit : public QUndoCommand {
  public:
    using Work = std::function<void()>;

    Edit(const QString& name, Work redo, Work undo)
        : QUndoCommand(name), redo_(std::move(redo)), undo_(std::move(undo)) {}
    void redo() override { redo_(); }
    void undo() override { undo_(); }

  private:
    Work redo_;
    Work undo_;
};

} // namespace lapwright::window
