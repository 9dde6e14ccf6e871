// SPDX-License-Identifier: GPL-3.0-or-later
// How long work tells how far it is, and learns that nobody wants it any more.
#pragma once

#include "core/base/error.h"

#include <functional>
#include <string_view>

namespace lapwright::base {

// Called with the stage's name in plain words and the part done, 0..1; may be called from any thread, one at a time.
// It answers whether to go on: false means stop soon and return an Error with ErrorCode::cancelled.
using Progress = std::function<bool(std::string_view stage, double part_done)>;

[[nodiscard]] inline bool go_on(const Progress& progress, std::string_view stage, double part_done) {
    return !progress || progress(stage, part_done);
}

[[nodiscard]] inline Error cancelled() {
    return Error{ErrorCode::cancelled, {}, "the work was cancelled", ""};
}

} // namespace lapwright::base
