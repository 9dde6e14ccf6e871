// SPDX-License-Identifier: GPL-3.0-or-later
// How the clock of a video stands to that of a recording, how surely, and what says so.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::video {

// recording time = video time + offset_s + drift·(video time − around_s)
struct InStep {
    double offset_s = 0.0;
    double drift = 0.0;    // seconds a second; a camera's quartz is good to some 50e-6 (data sheets of quartzes)
    double around_s = 0.0; // of the video: where the offset is known best

    [[nodiscard]] double recording_s(double video_s) const { return video_s + offset_s + drift * (video_s - around_s); }
    [[nodiscard]] double video_s(double at_recording_s) const {
        return (at_recording_s - offset_s + drift * around_s) / (1.0 + drift);
    }
    bool operator==(const InStep&) const = default;
};

enum class StepMethod { sound_and_engine_speed, sound_and_speed, picture_and_turning, clocks, by_hand };
// "sound_and_engine_speed", for tools and the book.
[[nodiscard]] std::string_view name(StepMethod method);
[[nodiscard]] std::optional<StepMethod> parse_step_method(std::string_view name);
// "the engine in the sound follows the recorded engine speed", no full stop.
[[nodiscard]] std::string words(StepMethod method);

struct StepEstimate {
    InStep step;
    double offset_low_s = 0.0; // the 95 % interval of the offset at around_s
    double offset_high_s = 0.0;
    StepMethod method = StepMethod::clocks;
    double score =
        0.0; // how much better than the best other offset: 1 is as good as another one; 0 where there is none

    bool operator==(const StepEstimate&) const = default;
};

// An estimate, or why there is none.
struct StepAnswer {
    std::optional<StepEstimate> estimate;
    std::string why_not; // no full stop
};

// "0.42 s ±0.01", "the video began 0.42 s before the recording": what the offset says in words.
[[nodiscard]] std::string offset_words(const StepEstimate& estimate);

// From the time that the camera wrote, which is often local: a start for the eye, good to some seconds at best.  Whole
// quarters of an hour are taken off where that lets video and recording overlap.  Nothing where they cannot.
[[nodiscard]] StepAnswer step_by_clocks(std::optional<double> created_unix_s, double video_length_s,
                                        std::optional<double> recording_start_unix_s, double recording_length_s);

// A frame that a person has found in both.
struct Mark {
    double video_s = 0.0;
    double recording_s = 0.0;
};
// One mark gives the offset, a second one half a minute or more away the drift too.
[[nodiscard]] StepEstimate step_by_hand(const Mark& first, const std::optional<Mark>& second);

} // namespace lapwright::video
