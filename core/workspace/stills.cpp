// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/stills.h"

#include "core/base/translation.h"
#include "core/comparison/corner_moments.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

namespace lapwright::workspace {
namespace {

using base::said;
using base::word;
using comparison::SegmentComparison;

constexpr video::PictureLimits still_size{960, 540}; // some 270 dots an inch on the sheet

// Of StillMoment: as tools name it, and as the sheet does.
constexpr std::array<std::pair<std::string_view, const char*>, every_still_moment.size()> moment_names{
    {{"turn-in", word("turn-in")}, {"slowest", word("slowest point")}, {"full-throttle", word("full throttle")}}};

std::optional<double> place_of(StillMoment moment, const comparison::CornerMoments& moments) {
    switch (moment) {
    case StillMoment::turn_in:
        return moments.turn_in_m;
    case StillMoment::slowest:
        return moments.slowest_m;
    case StillMoment::full_throttle:
        return moments.full_throttle_m;
    }
    return {};
}

struct OneSide {
    const char* letter;
    const analysis::Side& side;
    comparison::CornerMoments moments;
    std::optional<video::InStep> step;
    std::optional<video::FrameReader> reader;
};

base::Result<OneSide> open_side(const char* letter, const analysis::Side& side, comparison::CornerMoments moments,
                                const std::optional<VideoInStep>& video) {
    OneSide one{letter, side, moments, {}, {}};
    if (!video) return one;
    auto opened = video::open_video(video->paths);
    if (!opened) return opened.error();
    one.step = video->step;
    constexpr std::size_t few_pictures = 8U << 20U;
    one.reader.emplace(std::move(opened).value(), video::FrameReader::Options{still_size, few_pictures});
    return one;
}

// Whether the frame is shown at that time, and is not merely the nearest one of a video that begins later or has ended.
bool shows(const video::Frame& frame, double time_s) {
    constexpr double last_frame_s = 0.5; // the longest that the last one is taken to stand
    if (time_s < frame.time_s) return false;
    return std::isfinite(frame.until_s) || time_s < frame.time_s + last_frame_s;
}

std::string where(const OneSide& one, double place_m, base::UnitSystem units) {
    const double speed_mps = one.side.trace.best.speed_at(place_m);
    return said("%1 at %2, %3", {one.letter, base::figure_with_unit(place_m, base::Quantity::length, units, 0),
                                 base::figure_with_unit(speed_mps, base::Quantity::speed, units, 0)});
}

base::Result<sheet::Still> still(OneSide& one, std::optional<double> place_m, base::UnitSystem units,
                                 const video::GoOn& go_on) {
    const std::string letter = one.letter;
    if (!place_m) return sheet::Still{"", 0, 0, said("%1's lap has no such moment", {letter})};
    sheet::Still made{"", 0, 0, where(one, *place_m, units)};
    if (!one.reader) {
        made.words += said("; no video of %1", {letter});
        return made;
    }
    const double time_s = one.step->video_s(one.side.lap.start_s + one.side.trace.best.time_at(*place_m));
    const auto frame = one.reader->at(time_s, go_on);
    if (!frame) return frame.error();
    if (!shows(*frame, time_s)) {
        made.words += said("; the video does not show this moment");
        return made;
    }
    auto bytes = one.reader->jpeg(*frame);
    if (!bytes) return bytes.error();
    made.jpeg = std::move(bytes).value();
    made.width = frame->picture->width;
    made.height = frame->picture->height;
    return made;
}

} // namespace

std::string_view name(StillMoment moment) {
    return moment_names[static_cast<std::size_t>(moment)].first;
}

std::optional<StillMoment> parse_still_moment(std::string_view name) {
    const auto found = std::ranges::find(every_still_moment, name,
                                         [](StillMoment moment) { return lapwright::workspace::name(moment); });
    return found == every_still_moment.end() ? std::nullopt : std::optional(*found);
}

const SegmentComparison* corner_of_stills(const analysis::Pairing& pairing, const std::string& name) {
    const std::string& wanted = name.empty() ? pairing.headline.deciding_segment : name;
    const SegmentComparison* most = nullptr;
    for (const SegmentComparison& segment : pairing.comparison.segments) {
        if (segment.segment.kind != track::SegmentKind::corner) continue;
        if (segment.segment.name == wanted) return &segment;
        const auto won_s = [](const SegmentComparison& one) { return std::abs(one.gain_s.value); };
        if (name.empty() && (most == nullptr || won_s(segment) > won_s(*most))) most = &segment;
    }
    return most;
}

base::Result<std::vector<sheet::StillPair>> stills(const analysis::Pairing& pairing, const StillsWanted& wanted,
                                                   const std::optional<VideoInStep>& video_a,
                                                   const std::optional<VideoInStep>& video_b, base::UnitSystem units,
                                                   const video::GoOn& go_on) {
    const SegmentComparison* const corner = corner_of_stills(pairing, wanted.corner);
    if (corner == nullptr)
        return base::Error{base::ErrorCode::cannot_be_computed,
                           {},
                           wanted.corner.empty() ? said("the track has no corner to show stills of")
                                                 : said("the track has no corner of the name %1", {wanted.corner}),
                           said("name one of its corners as the comparison does")};
    const track::Segment& segment = corner->segment;
    auto a = open_side("A", pairing.a, comparison::corner_moments(segment, corner->a, pairing.a.trace.best), video_a);
    if (!a) return a.error();
    auto b = open_side("B", pairing.b, comparison::corner_moments(segment, corner->b, pairing.b.trace.best), video_b);
    if (!b) return b.error();
    OneSide side_a = std::move(a).value();
    OneSide side_b = std::move(b).value();
    std::vector<sheet::StillPair> pairs;
    for (const StillMoment moment : every_still_moment) {
        if (std::ranges::find(wanted.moments, moment) == wanted.moments.end()) continue;
        auto still_a = still(side_a, place_of(moment, side_a.moments), units, go_on);
        if (!still_a) return still_a.error();
        auto still_b = still(side_b, place_of(moment, side_b.moments), units, go_on);
        if (!still_b) return still_b.error();
        if (still_a->jpeg.empty() && still_b->jpeg.empty()) continue;
        pairs.push_back({segment.name + ", " + std::string(moment_names[static_cast<std::size_t>(moment)].second),
                         std::move(still_a).value(), std::move(still_b).value()});
    }
    return pairs;
}

} // namespace lapwright::workspace
