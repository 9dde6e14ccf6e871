// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/table_text.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/wording.h"
#include "core/findings/trial_words.h"
#include "core/presentation/figures.h"
#include "core/recording/warning_words.h"

#include <algorithm>

namespace lapwright::commands {
namespace {

using base::Quantity;
using base::UnitSystem;

std::string title(const analysis::Side& side) {
    return side.session->title() + ", lap " + base::integer_text(side.lap.number) + ", " +
           presentation::lap_time_text(side.trace.best, side.lap);
}

std::string ideal_line(const comparison::IdealLap& ideal, const char* name) {
    const std::string text = findings::ideal_lap_text(ideal, name);
    return text.empty() ? text : text + "\n";
}

std::string warnings_text(const std::vector<recording::Warning>& warnings) {
    std::string text;
    for (const recording::Warning& w : warnings)
        text += "  " + recording::sentence(w) + "\n";
    return text;
}

} // namespace

std::string aligned(const std::vector<std::vector<std::string>>& rows, std::size_t left) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (widths.size() <= i) widths.push_back(0);
            widths[i] = std::max(widths[i], base::count_characters(row[i]));
        }
    std::string text;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string cell = base::without_controls(row[i]); // a row is a line
            const std::string blanks(widths[i] - base::count_characters(row[i]), ' ');
            if (i > 0) line += "  ";
            line += i < left ? cell + blanks : blanks + cell;
        }
        text += line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
    }
    return text;
}

namespace {

std::string laps_of(const analysis::Session& session) {
    std::vector<std::vector<std::string>> rows{{"lap", "kind", "", "time"}};
    const lap::Lap* fastest = session.fastest();
    for (const lap::Lap& lap : session.laps) {
        std::string remark = lap.clean ? "clean" : lap.why_not_clean;
        if (fastest && lap.number == fastest->number) remark += ", fastest";
        rows.push_back({base::integer_text(lap.number), std::string(lap::name(lap.kind)), remark,
                        base::lap_time_with_margin(lap.time_s(), lap.time_sd_s)});
    }
    return "  timing line: " + session.gate_origin + "\n\n" + aligned(rows, 3);
}

// What was read instead: whether the columns were understood is the first question then.
std::string channels_of(const analysis::Session& session) {
    std::vector<std::vector<std::string>> rows{{"channel", "meaning", "unit in the file", "per second"}};
    for (std::size_t i = 0; i < session.recording->channels.size(); ++i) {
        const recording::Channel& channel = session.recording->channels[i];
        rows.push_back({channel.name, std::string(recording::name(channel.meaning)),
                        std::string(base::symbol(channel.source_unit)),
                        base::fixed_text(session.trust.channels[i].rate_hz, 1)});
    }
    return "  no laps: " + session.why_no_laps->what + "\n\n" + aligned(rows, 3);
}

} // namespace

std::string laps_table(const std::vector<std::shared_ptr<const analysis::Session>>& sessions) {
    std::string text;
    for (const auto& session : sessions) {
        if (!text.empty()) text += "\n";
        text += session->title() + " (" + session->recording->source_file + ")\n";
        if (session->recording->start_unix_s)
            text += "  started " + recording::utc_text(*session->recording->start_unix_s) + "\n";
        text += session->why_no_laps ? channels_of(*session) : laps_of(*session);
        const std::string warnings = warnings_text(session->recording->warnings) + warnings_text(session->warnings);
        if (!warnings.empty()) text += "\nwhat the import found\n" + warnings;
    }
    return text;
}

namespace {

std::string further_rows(const std::vector<analysis::FurtherLap>& further) {
    std::vector<std::vector<std::string>> rows{{"beside them", "lap", "time", "s to A"}};
    for (const analysis::FurtherLap& one : further)
        rows.push_back({one.wanted.session->title(), base::integer_text(one.lap.number),
                        base::lap_time_with_margin(one.trace.lap_time_s(), one.lap.time_sd_s),
                        presentation::signed_with_margin(one.gap_at_end_s.value, one.gap_at_end_s.sd, 3)});
    return aligned(rows, 1);
}

} // namespace

std::string both_sides(const analysis::Pairing& pairing) {
    return "A  " + title(pairing.a) + "\nB  " + title(pairing.b) + "\n";
}

std::string compare_table(const analysis::Pairing& pairing, UnitSystem units,
                          const std::vector<analysis::FurtherLap>& further) {
    std::string text = both_sides(pairing);
    if (!pairing.track.name.empty()) text += pairing.track.name + ", ";
    text += base::figure_with_unit(pairing.track.line.length_m, Quantity::length, units, 0) + " from line to line\n\n";
    const findings::Headline& headline = pairing.headline;
    text += headline.verdict + (headline.uncertainty.empty() ? "" : " " + headline.uncertainty) + "\n";
    text += headline.sentence + "\n\n";
    const std::string unit(base::symbol(base::shown_unit(Quantity::speed, units)));
    std::vector<std::vector<std::string>> rows{
        {"segment", "from " + std::string(base::symbol(base::shown_unit(Quantity::length, units))), "won by s",
         "on any lap", "entry A · B " + unit, "least A · B", "exit A · B", "top A · B"}};
    for (std::size_t i = 0; i < pairing.comparison.segments.size(); ++i) {
        const comparison::SegmentComparison& s = pairing.comparison.segments[i];
        rows.push_back({s.segment.name, base::figure_text(s.segment.start_m, Quantity::length, units, 0),
                        base::gain_with_margin(s.gain_s.value, s.gain_s.sd),
                        presentation::chance_text(pairing.repeatability[i]),
                        presentation::both_speeds(s.a.entry_speed_mps, s.b.entry_speed_mps, units),
                        presentation::both_speeds(s.a.min_speed_mps, s.b.min_speed_mps, units),
                        presentation::both_speeds(s.a.exit_speed_mps, s.b.exit_speed_mps, units),
                        presentation::both_speeds(s.a.top_speed_mps, s.b.top_speed_mps, units)});
    }
    const comparison::Figure& gap = pairing.comparison.gap_at_end_s;
    rows.push_back({"whole lap", "", base::gain_with_margin(gap.value, gap.sd), "", "", "", "", ""});
    text += aligned(rows, 1);
    if (!further.empty()) text += "\n" + further_rows(further);
    const std::string ideal = ideal_line(pairing.ideal_a, "A") + ideal_line(pairing.ideal_b, "B");
    if (!ideal.empty()) text += "\n" + ideal;
    const std::string warnings = warnings_text(pairing.warnings);
    if (!warnings.empty()) text += "\nto keep in mind\n" + warnings;
    return text;
}

} // namespace lapwright::commands
