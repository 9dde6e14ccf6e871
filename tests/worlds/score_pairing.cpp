// SPDX-License-Identifier: GPL-3.0-or-later
// The comparison: were the right laps chosen, and are gap, gains and least speeds what they truly were.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

#include "core/base/wording.h"
#include "tests/worlds/passings.h"
#include "tests/worlds/score_world.h"

namespace worlds {

using namespace lapwright;

namespace {

std::string text(const char* form, double one, double two) {
    std::array<char, 160> out{};
    const int length = std::snprintf(out.data(), out.size(), form, one, two);
    return {out.data(), static_cast<std::size_t>(length)};
}

// True times, by the logger's clock and since the lap's start, at the stations of the comparison's grid.
class TrueLap {
  public:
    TrueLap(const Entry& entry, const Map& map, const track::ReferenceLine& line, const analysis::Side& side)
        : entry_(entry), map_(map), line_(line), side_(side) {}

    // By the truth's clock.
    [[nodiscard]] std::optional<double> passed_s(double station_m) const {
        const double guess = entry_.true_time_s(side_.lap.start_s + side_.trace.best.time_at(station_m));
        if (map_known_) return passing(entry_, map_, line_.position(station_m), line_.tangent_at(station_m), guess);
        return std::nullopt;
    }

    // Where no map is true: the station as a share of the true lap.
    [[nodiscard]] std::optional<double> passed_by_share_s(double station_m) const {
        const truth::Session& session = *entry_.session;
        const double length = session.track().length_m();
        const double middle = entry_.true_time_s(0.5 * (side_.lap.start_s + side_.lap.end_s));
        const double from = length * std::floor(session.at_time(middle).unwrapped_m / length);
        return session.time_at_unwrapped(from + length * station_m / line_.length_m);
    }

    void forget_map() { map_known_ = false; }

    [[nodiscard]] std::optional<double> at(double station_m) const {
        return map_known_ ? passed_s(station_m) : passed_by_share_s(station_m);
    }

    [[nodiscard]] std::optional<double> since_start_s(double station_m) const {
        const auto start = at(0.0);
        const auto here = at(station_m);
        if (!start || !here) return std::nullopt;
        return entry_.shown_duration_s(*here - *start);
    }

  private:
    const Entry& entry_;
    const Map& map_;
    const track::ReferenceLine& line_;
    const analysis::Side& side_;
    bool map_known_ = true;
};

// Whether the program says that it cannot tell which lap was the fastest.
bool told_unsure(const analysis::Pairing& pairing, const analysis::Side& side) {
    return std::ranges::any_of(pairing.warnings, [&](const recording::Warning& warning) {
        return warning.kind == recording::WarningKind::fastest_not_sure &&
               warning.of.starts_with(side.session->title());
    });
}

void check_choice(const Entry& entry, const analysis::Pairing& pairing, const analysis::Side& side, const TrueLap& lap,
                  Score& score) {
    const double length = entry.session->track().length_m();
    const auto start = lap.at(0.0);
    const auto end = lap.at(pairing.track.line.length_m);
    if (!start || !end) {
        score.breaches.push_back({"the compared lap is not on the road", entry.file_name});
        return;
    }
    const double from = entry.session->at_time(*start).unwrapped_m;
    const double driven = entry.session->at_time(*end).unwrapped_m - from;
    if (std::abs(driven - length) > 40.0) {
        score.breaches.push_back(
            {"the compared lap is no lap", entry.file_name + text(" covers %.0f of %.0f m", driven, length)});
        return;
    }
    const double station = from - length * std::floor(from / length);
    const auto best = fastest_clean_s(entry, station);
    if (!best) return;
    const double own = *end - *start;
    const double sd = side.lap.time_sd_s.value_or(0.02);
    const double tolerance = std::max(0.025, (told_unsure(pairing, side) ? 3.0 : 1.0) * std::numbers::sqrt2 * sd);
    if (own > *best + tolerance)
        score.breaches.push_back(
            {"default lap", entry.file_name + text(" is %.3f s, the fastest clean one %.3f s", own, *best)});
    if (!side.lap.clean)
        score.breaches.push_back({"clean lap not known as clean", entry.file_name + ": " + side.lap.why_not_clean});
}

std::string pair_kind(const World& world) {
    const std::string a = kind_of(world.a.logger);
    const std::string b = kind_of(world.b.logger);
    if (a == "no positions" || b == "no positions") return "no positions";
    if (a == "positions alone" || b == "positions alone") return "positions alone";
    return a;
}

void add(Score& score, const std::string& kind, const std::string& of, double stated, double low, double high,
         double truly) {
    if (low > stated + 1e-12 || stated > high + 1e-12)
        score.breaches.push_back({"value outside its own interval", kind + text(" %.5f, from %.5f", stated, low)});
    score.intervals.push_back({kind, of, stated - truly, 0.5 * (high - low), low <= truly && truly <= high});
}

void score_gap(const analysis::Pairing& pairing, const TrueLap& a, const TrueLap& b, const std::string& of,
               Score& score) {
    const comparison::GapTrace& gap = pairing.comparison.gap;
    for (std::size_t i = 25; i < gap.distance_m.size(); i += 25) {
        const auto ta = a.since_start_s(gap.distance_m[i]);
        const auto tb = b.since_start_s(gap.distance_m[i]);
        if (!ta || !tb || gap.low_s.empty()) continue;
        add(score, "gap", of, gap.gap_s[i], gap.low_s[i], gap.high_s[i], *tb - *ta);
    }
}

// The bottom of the true speed between two stations; nothing where it lies at an end.
std::optional<double> true_least_speed(const Entry& entry, const TrueLap& lap, const track::Segment& segment) {
    const auto from = lap.at(segment.start_m);
    const auto to = lap.at(segment.end_m);
    if (!from || !to) return std::nullopt;
    double least = 1e9;
    double when = *from;
    for (double t = *from; t <= *to; t += 0.01) {
        const double v = entry.session->at_time(t).speed_mps;
        if (v < least) {
            least = v;
            when = t;
        }
    }
    const bool inside = when - *from > 0.3 && *to - when > 0.3;
    return inside ? std::optional(least) : std::nullopt;
}

void score_least_speed(const Entry& entry, const comparison::SegmentFigures& figures, const track::Segment& segment,
                       const TrueLap& lap, Score& score) {
    if (segment.kind != track::SegmentKind::corner || !figures.min_speed_mps || !figures.min_speed_mps->sd) return;
    const auto truly = true_least_speed(entry, lap, segment);
    if (!truly) return;
    const double half = base::half_width_95(*figures.min_speed_mps->sd);
    const double value = figures.min_speed_mps->value;
    add(score, "least speed", kind_of(entry.logger), value, value - half, value + half, *truly);
}

void score_segments(const World& world, const analysis::Pairing& pairing, const TrueLap& a, const TrueLap& b,
                    const std::string& of, Score& score) {
    double sum = 0.0;
    for (const comparison::SegmentComparison& s : pairing.comparison.segments) {
        sum += s.gain_s.value;
        score_least_speed(world.a, s.a, s.segment, a, score);
        score_least_speed(world.b, s.b, s.segment, b, score);
        const auto gap_at = [&](double station) -> std::optional<double> {
            const auto ta = a.since_start_s(station);
            const auto tb = b.since_start_s(station);
            return ta && tb ? std::optional(*tb - *ta) : std::nullopt;
        };
        const auto before = gap_at(s.segment.start_m);
        const auto after = gap_at(s.segment.end_m);
        if (!before || !after || !s.gain_s.sd) continue;
        const double half = base::half_width_95(*s.gain_s.sd);
        add(score, "segment gain", of, s.gain_s.value, s.gain_s.value - half, s.gain_s.value + half, *after - *before);
    }
    const double times = pairing.b.trace.best.lap_time_s() - pairing.a.trace.best.lap_time_s();
    if (std::abs(sum - pairing.comparison.gap_at_end_s.value) > 1e-9 ||
        std::abs(times - pairing.comparison.gap_at_end_s.value) > 1e-9)
        score.breaches.push_back({"gains do not sum", text("%.9f and %.9f", sum, times)});
}

void check_headline(const analysis::Pairing& pairing, double true_gap_s, Score& score) {
    const findings::Favours ahead = pairing.headline.ahead;
    const bool wrong =
        (ahead == findings::Favours::a && true_gap_s < 0.0) || (ahead == findings::Favours::b && true_gap_s > 0.0);
    // Two and a half in a hundred may be on the wrong side by chance; by more than that it is a wrong answer.
    if (wrong && std::abs(true_gap_s) > 0.01)
        score.breaches.push_back(
            {"headline names the wrong car", pairing.headline.verdict + text(", truly %.3f s of %.3f", true_gap_s,
                                                                             pairing.comparison.gap_at_end_s.value)});
}

} // namespace

void score_pairing(const World& world, const analysis::Pairing& pairing, Score& score) {
    const Map map = map_of(world, pairing);
    TrueLap a(world.a, map, pairing.track.line, pairing.a);
    TrueLap b(world.b, map, pairing.track.line, pairing.b);
    if (!world.a.logger.has_positions && !world.b.logger.has_positions) {
        a.forget_map();
        b.forget_map();
    }
    check_choice(world.a, pairing, pairing.a, a, score);
    check_choice(world.b, pairing, pairing.b, b, score);
    const std::string of = pair_kind(world);
    score_gap(pairing, a, b, of, score);
    score_segments(world, pairing, a, b, of, score);
    const double length = pairing.track.line.length_m;
    const auto ta = a.since_start_s(length);
    const auto tb = b.since_start_s(length);
    if (!ta || !tb) return;
    check_headline(pairing, *tb - *ta, score);
    const comparison::Figure& gap = pairing.comparison.gap_at_end_s;
    if (!gap.sd) return;
    const double half = base::half_width_95(*gap.sd);
    add(score, "gap at the end", of, gap.value, gap.value - half, gap.value + half, *tb - *ta);
}

} // namespace worlds
