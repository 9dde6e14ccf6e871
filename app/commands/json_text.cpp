// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/json_text.h"

#include "app/commands/json_parts.h"
#include "core/base/wording.h"

namespace lapwright::commands {
namespace {

using nlohmann::ordered_json;

ordered_json channel_json(const recording::Channel& channel, const import::ChannelTrust& trust) {
    return {{"name", channel.name},
            {"meaning", recording::name(channel.meaning)},
            {"unit", base::symbol(base::si_unit(recording::quantity(channel.meaning)))},
            {"rate_hz", number_json(trust.rate_hz)},
            {"least", number_json(trust.least)},
            {"most", number_json(trust.most)},
            {"gaps", trust.gaps},
            {"longest_gap_s", number_json(trust.longest_gap_s)}};
}

ordered_json lap_json(const lap::Lap& lap) {
    return {{"number", lap.number},
            {"kind", lap::name(lap.kind)},
            {"clean", lap.clean},
            {"why_not_clean", lap.why_not_clean},
            {"start_s", lap.start_s},
            {"time_s", lap.time_s()},
            {"time_sd_s", maybe_json(lap.time_sd_s)}};
}

ordered_json session_json(const analysis::Session& session) {
    const recording::Recording& recording = *session.recording;
    ordered_json warnings = warnings_json(recording.warnings);
    for (ordered_json& warning : warnings_json(session.warnings))
        warnings.push_back(std::move(warning));
    ordered_json channels = ordered_json::array();
    for (std::size_t i = 0; i < recording.channels.size(); ++i)
        channels.push_back(channel_json(recording.channels[i], session.trust.channels[i]));
    ordered_json laps = ordered_json::array();
    for (const lap::Lap& lap : session.laps)
        laps.push_back(lap_json(lap));
    return {{"file", recording.source_file},
            {"driver", text_or_null(recording.driver)},
            {"car", text_or_null(recording.car)},
            {"track", text_or_null(recording.track)},
            {"start_utc", moment_json(recording.start_unix_s)},
            {"gate_from", text_or_null(session.gate_origin)},
            {"warnings", warnings},
            {"channels", channels},
            {"wheel_speed_scale", maybe_json(session.trust.wheel_speed_scale)},
            {"laps", laps}};
}

void add_repeatability(ordered_json& out, const comparison::Repeatability& r) {
    out["mean_difference_s"] = maybe_json(r.mean_difference_s);
    out["mean_difference_low_s"] = maybe_json(r.low_s);
    out["mean_difference_high_s"] = maybe_json(r.high_s);
    out["chance_a_wins"] = maybe_json(r.chance_a_wins);
    out["clean_lap_times_a_s"] = r.times_a_s;
    out["clean_lap_times_b_s"] = r.times_b_s;
}

ordered_json ideal_json(const comparison::IdealLap& ideal) {
    return {{"time_s", maybe_json(ideal.time_s)},
            {"best_lap_s", maybe_json(ideal.best_lap_s)},
            {"mean_lap_s", maybe_json(ideal.mean_lap_s)},
            {"noise_only_gain_s", maybe_json(ideal.noise_only_gain_s)}};
}

// Sideways, with the 95 % interval.
ordered_json line_json(const std::optional<comparison::LineAt>& line) {
    if (!line) return nullptr;
    const auto end = [&](double sign) {
        return line->sd_m ? number_json(line->difference_m + sign * base::half_width_95(*line->sd_m))
                          : ordered_json(nullptr);
    };
    return {{"at_m", number_json(line->at_m)},
            {"a_left_of_b_m", number_json(line->difference_m)},
            {"low_m", end(-1.0)},
            {"high_m", end(1.0)}};
}

ordered_json numbers_json(const std::vector<double>& values) {
    ordered_json list = ordered_json::array();
    for (const double value : values)
        list.push_back(number_json(value));
    return list;
}

// As many as the trace has points, or null.
ordered_json numbers_or_null(const std::vector<double>& values) {
    return values.empty() ? ordered_json(nullptr) : numbers_json(values);
}

ordered_json spread_json(const comparison::LapSpread& spread) {
    return {{"laps", spread.laps},
            {"speed_low_mps", numbers_or_null(spread.low_mps)},
            {"speed_high_mps", numbers_or_null(spread.high_mps)}};
}

ordered_json further_json(const analysis::FurtherLap& one) {
    ordered_json gains = ordered_json::array();
    for (const comparison::Figure& gain : one.gains_s)
        gains.push_back({{"gain_s", number_json(gain.value)}, {"gain_sd_s", maybe_json(gain.sd)}});
    const recording::Recording& recording = *one.wanted.session->recording;
    return {{"file", recording.source_file},
            {"driver", text_or_null(recording.driver)},
            {"car", text_or_null(recording.car)},
            {"lap", one.lap.number},
            {"time_s", number_json(one.trace.lap_time_s())},
            {"time_sd_s", maybe_json(one.lap.time_sd_s)},
            {"gap_s", number_json(one.gap_at_end_s.value)},
            {"gap_sd_s", maybe_json(one.gap_at_end_s.sd)},
            {"segments", gains},
            {"trace",
             {{"distance_m", numbers_json(one.trace.distance_m)},
              {"speed_mps", numbers_json(one.trace.speed_mps)},
              {"gap_s", numbers_json(one.gap.gap_s)},
              {"gap_sd_s", numbers_or_null(one.gap.sd_s)}}}};
}

ordered_json segment_json(const comparison::SegmentComparison& s) {
    const auto pair = [](ordered_json& out, const std::string& stem, const std::string& unit,
                         const comparison::MaybeFigure& a, const comparison::MaybeFigure& b) {
        out[stem + "_a_" + unit] = a ? number_json(a->value) : nullptr;
        out[stem + "_b_" + unit] = b ? number_json(b->value) : nullptr;
    };
    ordered_json out{{"name", s.segment.name},
                     {"kind", s.segment.kind == track::SegmentKind::corner ? "corner" : "straight"},
                     {"start_m", s.segment.start_m},
                     {"end_m", s.segment.end_m},
                     {"gain_s", number_json(s.gain_s.value)},
                     {"gain_sd_s", maybe_json(s.gain_s.sd)}};
    pair(out, "entry_speed", "mps", s.a.entry_speed_mps, s.b.entry_speed_mps);
    pair(out, "min_speed", "mps", s.a.min_speed_mps, s.b.min_speed_mps);
    pair(out, "exit_speed", "mps", s.a.exit_speed_mps, s.b.exit_speed_mps);
    pair(out, "top_speed", "mps", s.a.top_speed_mps, s.b.top_speed_mps);
    pair(out, "braking_point", "m", s.a.braking_point_m, s.b.braking_point_m);
    pair(out, "full_throttle", "m", s.a.full_throttle_m, s.b.full_throttle_m);
    pair(out, "min_speed_at", "m", s.a.min_speed_at_m, s.b.min_speed_at_m);
    out["line"] = {{"turn_in", line_json(s.line.turn_in)},
                   {"slowest", line_json(s.line.slowest)},
                   {"exit", line_json(s.line.exit)}};
    return out;
}

ordered_json trace_json(const analysis::Pairing& pairing) {
    const comparison::GapTrace& gap = pairing.comparison.gap;
    ordered_json sd = ordered_json::array();
    for (std::size_t i = 0; i < gap.gap_s.size(); ++i)
        sd.push_back(gap.sd_s.empty() ? ordered_json(nullptr) : number_json(gap.sd_s[i]));
    std::vector<double> curvature;
    for (const double s : gap.distance_m)
        curvature.push_back(pairing.track.line.curvature(s));
    return {{"distance_m", gap.distance_m},
            {"speed_a_mps", pairing.a.trace.best.speed_mps},
            {"speed_b_mps", pairing.b.trace.best.speed_mps},
            {"gap_s", gap.gap_s},
            {"gap_sd_s", sd},
            {"curvature_per_m", curvature},
            {"a_left_of_b_m", numbers_or_null(pairing.comparison.line.difference_m)},
            {"a_left_of_b_sd_m", numbers_or_null(pairing.comparison.line.sd_m)}};
}

} // namespace

ordered_json side_json(const analysis::Side& side) {
    return {{"file", side.session->recording->source_file},
            {"driver", text_or_null(side.session->recording->driver)},
            {"car", text_or_null(side.session->recording->car)},
            {"lap", side.lap.number},
            {"time_s", side.trace.best.lap_time_s()},
            {"time_sd_s", maybe_json(side.lap.time_sd_s)}};
}

std::string laps_json(const std::vector<std::shared_ptr<const analysis::Session>>& sessions) {
    ordered_json list = ordered_json::array();
    for (const auto& session : sessions)
        list.push_back(session_json(*session));
    return document_text({{"sessions", list}});
}

std::string compare_json(const analysis::Pairing& pairing, const std::vector<analysis::FurtherLap>& further) {
    ordered_json segments = ordered_json::array();
    for (std::size_t i = 0; i < pairing.comparison.segments.size(); ++i) {
        segments.push_back(segment_json(pairing.comparison.segments[i]));
        add_repeatability(segments.back(), pairing.repeatability[i]);
    }
    ordered_json beside = ordered_json::array();
    for (const analysis::FurtherLap& one : further)
        beside.push_back(further_json(one));
    return document_text(
        {{"a", side_json(pairing.a)},
         {"b", side_json(pairing.b)},
         {"track", {{"name", text_or_null(pairing.track.name)}, {"length_m", pairing.track.line.length_m}}},
         {"gap_s", number_json(pairing.comparison.gap_at_end_s.value)},
         {"gap_sd_s", maybe_json(pairing.comparison.gap_at_end_s.sd)},
         {"headline", pairing.headline.verdict + ". " + pairing.headline.sentence},
         {"trace", trace_json(pairing)},
         {"segments", segments},
         {"further_laps", beside},
         {"clean_laps", {{"a", spread_json(pairing.spread_a)}, {"b", spread_json(pairing.spread_b)}}},
         {"ideal_lap", {{"a", ideal_json(pairing.ideal_a)}, {"b", ideal_json(pairing.ideal_b)}}},
         {"warnings", warnings_json(pairing.warnings)}});
}

std::string traces_json(const analysis::Side& side) {
    const lap::LapTrace& trace = side.trace.best;
    ordered_json channels = ordered_json::array();
    for (const lap::TraceChannel& channel : trace.channels)
        channels.push_back({{"name", channel.name},
                            {"meaning", recording::name(channel.meaning)},
                            {"unit", base::symbol(base::si_unit(recording::quantity(channel.meaning)))},
                            {"values", numbers_json(channel.values)}});
    ordered_json document = side_json(side);
    document["distance_m"] = numbers_json(trace.distance_m);
    document["elapsed_s"] = numbers_json(trace.time_s);
    document["speed_mps"] = numbers_json(trace.speed_mps);
    document["longitudinal_mps2"] = numbers_json(trace.longitudinal_mps2);
    document["lateral_mps2"] = numbers_json(trace.lateral_mps2);
    document["offset_m"] = numbers_json(trace.offset_m);
    document["channels"] = channels;
    return document_text(document);
}

} // namespace lapwright::commands
