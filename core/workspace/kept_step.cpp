// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/kept_step.h"

#include <string>

namespace lapwright::workspace {

std::optional<video::StepEstimate> estimate_of(const std::optional<book::KeptStep>& kept) {
    if (!kept) return {};
    video::StepEstimate estimate;
    estimate.step = {kept->offset_s, kept->drift, kept->around_s};
    estimate.offset_low_s = kept->offset_low_s;
    estimate.offset_high_s = kept->offset_high_s;
    estimate.method = video::parse_step_method(kept->method).value_or(video::StepMethod::by_hand);
    return estimate;
}

std::optional<book::KeptStep> kept_step(const std::optional<video::StepEstimate>& estimate) {
    if (!estimate) return {};
    return book::KeptStep{estimate->step.offset_s, estimate->offset_low_s,  estimate->offset_high_s,
                          estimate->step.drift,    estimate->step.around_s, std::string(video::name(estimate->method))};
}

} // namespace lapwright::workspace
