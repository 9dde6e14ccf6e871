// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/in_step.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace lapwright::video {
namespace {

using base::said;
using base::word;

struct Named {
    StepMethod method;
    std::string_view name;
    const char* words;
};
constexpr std::array named{
    Named{StepMethod::sound_and_engine_speed, "sound_and_engine_speed",
          word("the engine in the sound follows the recorded engine speed")},
    Named{StepMethod::sound_and_speed, "sound_and_speed",
          word("the engine in the sound follows the speed within each gear")},
    Named{StepMethod::picture_and_turning, "picture_and_turning", word("the distant picture turns as the car does")},
    Named{StepMethod::clocks, "clocks", word("the camera's clock alone: a rough start")},
    Named{StepMethod::by_hand, "by_hand", word("set by hand")},
};

const Named& of(StepMethod method) {
    return *std::ranges::find(named, method, &Named::method);
}

constexpr double per_minute = 60.0;
constexpr double quarter_hour_s = 15.0 * per_minute;
constexpr double clocks_off_s = 30.0; // cameras' clocks, set by hand or by a phone (no source)

} // namespace

std::string_view name(StepMethod method) {
    return of(method).name;
}
std::optional<StepMethod> parse_step_method(std::string_view name) {
    const auto* const found = std::ranges::find(named, name, &Named::name);
    return found == named.end() ? std::nullopt : std::optional(found->method);
}
std::string words(StepMethod method) {
    return said(of(method).words);
}

std::string offset_words(const StepEstimate& estimate) {
    const double half_s = (estimate.offset_high_s - estimate.offset_low_s) / 2.0;
    const int decimals = half_s < 0.1 ? 3 : (half_s < 1.0 ? 2 : 0);
    const std::string size = base::shown_text(std::abs(estimate.step.offset_s), decimals) + " s";
    const std::string margin = half_s > 0.0 ? " ±" + base::shown_text(half_s, decimals) : "";
    return said(estimate.step.offset_s >= 0.0 ? word("the video begins %1 behind the recording's start")
                                              : word("the video begins %1 before the recording's start"),
                {size + margin});
}

StepAnswer step_by_clocks(std::optional<double> created_unix_s, double video_length_s,
                          std::optional<double> recording_start_unix_s, double recording_length_s) {
    if (!created_unix_s) return {{}, said("the video does not say when it was taken")};
    if (!recording_start_unix_s) return {{}, said("the recording does not say when it was made")};
    double offset_s = *created_unix_s - *recording_start_unix_s;
    const auto overlaps = [&](double offset) {
        return offset < recording_length_s + clocks_off_s && offset + video_length_s > -clocks_off_s;
    };
    if (!overlaps(offset_s)) {
        // A camera that keeps local time is off by whole quarters of an hour, fourteen hours at most.
        constexpr double most_s = 14.0 * 4.0 * quarter_hour_s;
        const double zone_s = std::round(offset_s / quarter_hour_s) * quarter_hour_s;
        if (std::abs(zone_s) > most_s) return {{}, said("the video was taken on another day")};
        offset_s -= zone_s;
        if (!overlaps(offset_s)) return {{}, said("the video was taken at another time of the day")};
    }
    StepEstimate estimate;
    estimate.step.offset_s = offset_s;
    estimate.offset_low_s = offset_s - clocks_off_s;
    estimate.offset_high_s = offset_s + clocks_off_s;
    estimate.method = StepMethod::clocks;
    return {estimate, ""};
}

StepEstimate step_by_hand(const Mark& first, const std::optional<Mark>& second) {
    constexpr double far_apart_s = 30.0;
    constexpr double half_frame_s = 0.02; // of 25 a second
    StepEstimate estimate;
    estimate.method = StepMethod::by_hand;
    estimate.step = {first.recording_s - first.video_s, 0.0, first.video_s};
    if (second) {
        const double apart_s = second->video_s - first.video_s;
        const double drifted_s = second->recording_s - second->video_s - estimate.step.offset_s;
        if (std::abs(apart_s) >= far_apart_s)
            estimate.step.drift = drifted_s / apart_s;
        else
            estimate.step.offset_s += drifted_s / 2.0;
    }
    estimate.offset_low_s = estimate.step.offset_s - half_frame_s;
    estimate.offset_high_s = estimate.step.offset_s + half_frame_s;
    return estimate;
}

} // namespace lapwright::video
