// SPDX-License-Identifier: GPL-3.0-or-later
// The offset of a video as it was moved by hand, to be undone.
#pragma once

#include "core/video/in_step.h"

#include <QUndoCommand>
#include <functional>
#include <utility>

namespace lapwright::window {

class MovedByHand : public QUndoCommand {
  public:
    using Set = std::function<void(const video::StepEstimate&)>;
    MovedByHand(const QString& name, video::StepEstimate before, video::StepEstimate now, Set set)
        : QUndoCommand(name), before_(std::move(before)), now_(std::move(now)), set_(std::move(set)) {}
    void undo() override { set_(before_); }
    void redo() override { set_(now_); }

  private:
    video::StepEstimate before_;
    video::StepEstimate now_;
    Set set_;
};

} // namespace lapwright::window
