// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/find_segments.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <cmath>

namespace lapwright::track {
namespace {

using base::said;

// A turn between two stations on the unrolled line; nothing crosses the gate, which lies on a straight.
struct Turn {
    double start_m;
    double end_m;
    double turned_rad;
};

double turned(const ReferenceLine& line, double start_m, double end_m) {
    const auto steps = std::max(1L, std::lround((end_m - start_m) / line.step_m));
    const double h = (end_m - start_m) / static_cast<double>(steps);
    double sum = 0.0;
    for (long i = 0; i < steps; ++i)
        sum += h * line.curvature(start_m + (static_cast<double>(i) + 0.5) * h);
    return sum;
}

double sharpest(const ReferenceLine& line, double start_m, double end_m) {
    double most = 0.0;
    for (double s = start_m; s <= end_m; s += line.step_m)
        most = std::max(most, std::abs(line.curvature(s)));
    return most;
}

std::vector<Turn> turns_by_hysteresis(const ReferenceLine& line, const SegmentOptions& options) {
    std::vector<Turn> turns;
    const auto& k = line.curvature_per_m;
    const std::size_t n = k.size();
    std::size_t i = 0;
    while (i < n) {
        if (std::abs(k[i]) < options.enter_per_m) {
            ++i;
            continue;
        }
        const double side = k[i] > 0.0 ? 1.0 : -1.0;
        std::size_t first = i;
        while (first > 0 && side * k[first - 1] > options.leave_per_m)
            --first;
        std::size_t last = i;
        while (last + 1 < n && side * k[last + 1] > options.leave_per_m)
            ++last;
        const double start = static_cast<double>(first) * line.step_m;
        const double end = static_cast<double>(last) * line.step_m;
        turns.push_back({start, end, turned(line, start, end)});
        i = last + 1;
    }
    return turns;
}

bool same_way(const Turn& a, const Turn& b) {
    return (a.turned_rad > 0.0) == (b.turned_rad > 0.0);
}

std::vector<Turn> joined(const std::vector<Turn>& turns, const ReferenceLine& line, const SegmentOptions& options) {
    std::vector<Turn> result;
    for (const Turn& turn : turns) {
        if (!result.empty() && same_way(result.back(), turn) && turn.start_m - result.back().end_m < options.join_m) {
            result.back().end_m = turn.end_m;
            result.back().turned_rad = turned(line, result.back().start_m, turn.end_m);
        } else {
            result.push_back(turn);
        }
    }
    std::erase_if(result, [&](const Turn& t) { return std::abs(t.turned_rad) < options.min_turned_rad; });
    return result;
}

void share_short_straights(std::vector<Turn>& turns, const SegmentOptions& options) {
    for (std::size_t i = 1; i < turns.size(); ++i) {
        if (turns[i].start_m - turns[i - 1].end_m >= options.min_straight_m) continue;
        const double middle = 0.5 * (turns[i].start_m + turns[i - 1].end_m);
        turns[i - 1].end_m = middle;
        turns[i].start_m = middle;
    }
}

Segment corner(const ReferenceLine& line, const std::string& name, double start_m, double end_m) {
    const double sharp = sharpest(line, start_m, end_m);
    return {name,  SegmentKind::corner,          start_m,
            end_m, turned(line, start_m, end_m), sharp > 0.0 ? std::optional(1.0 / sharp) : std::nullopt};
}

std::string number(std::size_t i) {
    return base::integer_text(static_cast<std::int64_t>(i));
}

std::string straight_name(std::size_t corners_before, std::size_t corners) {
    if (corners_before == 0) return said("Start straight");
    if (corners_before == corners) return said("Run home");
    return said("%1 to %2", {number(corners_before), number(corners_before + 1)});
}

// A place on the line on which the record was measured, and the same place on this line.
struct Anchor {
    double recorded_m;
    double here_m;
};

double middle(const Segment& segment) {
    return 0.5 * (segment.start_m + segment.end_m);
}

// Where a recorded corner lies, and between which places its turn must be found on this line.
struct Expected {
    double recorded_m;
    double from_m;
    double to_m;
};

constexpr double turn_reach_m = 60.0; // two lines round one track, evenly stretched, differ by less at a corner

std::vector<Expected> expected_turns(const std::vector<Segment>& recorded, const std::vector<double>& turns_m,
                                     double scale) {
    std::vector<Expected> expected;
    for (const double turn : turns_m)
        expected.push_back({turn, turn * scale - turn_reach_m, turn * scale + turn_reach_m});
    for (const Segment& r : recorded)
        if (turns_m.empty() && r.kind == SegmentKind::corner)
            expected.push_back({middle(r), r.start_m * scale, r.end_m * scale});
    return expected;
}

// Gate, corners that both sides agree on, gate.  Two lines round the same track differ in length in its corners, so
// that stretching a record evenly would misplace the corners in the middle of the lap by tens of metres.
std::vector<Anchor> anchors_of(const ReferenceLine& line, const std::vector<Segment>& recorded,
                               double recorded_length_m, const std::vector<double>& turns_m) {
    const double length = recorded_length_m > 0.0 ? recorded_length_m : recorded.empty() ? 0.0 : recorded.back().end_m;
    std::vector<Anchor> anchors{{0.0, 0.0}};
    const double scale = length > 0.0 ? line.length_m / length : 1.0;
    const std::vector<double> found = turns_of(line);
    for (const Expected& turn : expected_turns(recorded, turns_m, scale)) {
        std::vector<double> inside;
        for (const double place : found)
            if (place > turn.from_m && place < turn.to_m) inside.push_back(place);
        if (inside.empty() || (inside.size() > 1 && turns_m.empty())) continue;
        const double nearest = *std::ranges::min_element(
            inside, {}, [&](double place) { return std::abs(place - turn.recorded_m * scale); });
        if (nearest > anchors.back().here_m && turn.recorded_m > anchors.back().recorded_m)
            anchors.push_back({turn.recorded_m, nearest});
    }
    anchors.push_back({length > 0.0 ? length : line.length_m, line.length_m});
    return anchors;
}

// Linear between anchors.
double moved(const std::vector<Anchor>& anchors, double recorded_m) {
    std::size_t i = 0;
    while (i + 2 < anchors.size() && anchors[i + 1].recorded_m < recorded_m)
        ++i;
    const Anchor& a = anchors[i];
    const Anchor& b = anchors[i + 1];
    return a.here_m + (recorded_m - a.recorded_m) * (b.here_m - a.here_m) / (b.recorded_m - a.recorded_m);
}

} // namespace

std::vector<Segment> find_segments(const ReferenceLine& line, const SegmentOptions& options) {
    std::vector<Turn> turns = joined(turns_by_hysteresis(line, options), line, options);
    share_short_straights(turns, options);
    std::vector<Segment> segments;
    double at = 0.0;
    for (std::size_t i = 0; i < turns.size(); ++i) {
        if (turns[i].start_m > at)
            segments.push_back({straight_name(i, turns.size()), SegmentKind::straight, at, turns[i].start_m, 0.0, {}});
        segments.push_back(
            corner(line, said("Corner %1", {number(i + 1)}), std::max(at, turns[i].start_m), turns[i].end_m));
        at = turns[i].end_m;
    }
    if (at < line.length_m) {
        const std::string name = turns.empty() ? said("Lap") : straight_name(turns.size(), turns.size());
        segments.push_back({name, SegmentKind::straight, at, line.length_m, 0.0, {}});
    }
    return segments;
}

std::vector<double> turns_of(const ReferenceLine& line) {
    std::vector<double> turns;
    for (const Segment& one : find_segments(line))
        if (one.kind == SegmentKind::corner) turns.push_back(middle(one));
    return turns;
}

std::vector<Segment> recorded_segments(const ReferenceLine& line, const std::vector<Segment>& recorded,
                                       double recorded_length_m, const std::vector<double>& turns_m) {
    const std::vector<Anchor> anchors = anchors_of(line, recorded, recorded_length_m, turns_m);
    std::vector<Segment> segments;
    double at = 0.0;
    for (const Segment& r : recorded) {
        const double end = &r == &recorded.back() ? line.length_m : std::min(line.length_m, moved(anchors, r.end_m));
        if (end <= at) continue;
        segments.push_back(r.kind == SegmentKind::corner ? corner(line, r.name, at, end)
                                                         : Segment{r.name, r.kind, at, end, 0.0, {}});
        at = end;
    }
    return segments;
}

} // namespace lapwright::track
