// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/nmea.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/import/channels/fix_track.h"
#include "core/import/formats/nmea_sentence.h"
#include "core/import/text/cells.h"
#include "core/import/text/limits.h"
#include "core/import/text/line_scan.h"
#include "core/import/text/moment.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;
using recording::LineTally;
using recording::Recording;
using recording::WarningKind;

constexpr double day_s = 86400.0;
constexpr double knot_mps = 1852.0 / 3600.0;
// Sentences that say where and when, of the hundred that the standard knows.
constexpr std::array<std::string_view, 6> told_kinds{"GGA", "GNS", "RMC", "GLL", "VTG", "ZDA"};

double number_or_absent(std::string_view field) {
    return base::parse_number(field).value_or(Fix::absent);
}

void set(double& place, double value) {
    if (std::isfinite(value)) place = value;
}

// One epoch: the sentences with the same time make one fix.
class SentenceReader {
  public:
    void take(const Sentence& sentence, std::uint32_t line) {
        // Any talker of the standard; P begins a maker's own sentence.
        if (sentence.talker.front() == 'P') return;
        if (sentence.kind == "GGA")
            gga(sentence, line, sentence.field(5) == "0" || sentence.field(5).empty());
        else if (sentence.kind == "GNS")
            gga(sentence, line, sentence.field(5).find_first_not_of('N') == std::string_view::npos);
        else if (sentence.kind == "RMC")
            rmc(sentence, line);
        else if (sentence.kind == "GLL")
            gll(sentence, line);
        else if (sentence.kind == "VTG")
            vtg(sentence);
        else if (sentence.kind == "ZDA")
            zda(sentence, line);
    }

    [[nodiscard]] const std::vector<Fix>& fixes() const { return fixes_; }
    [[nodiscard]] std::optional<double> date_s() const { return date_s_; }
    [[nodiscard]] std::size_t without_fix() const { return without_fix_; }

  private:
    // The epoch of that time: the last one, or a new one.
    Fix* epoch(std::string_view time_field, std::uint32_t line) {
        const auto time = nmea_time(time_field);
        if (!time) return nullptr;
        if (fixes_.empty() || fixes_.back().time_s != *time) {
            Fix fix;
            fix.time_s = *time;
            fix.line = line;
            fixes_.push_back(fix);
        }
        return &fixes_.back();
    }

    static void place(Fix& fix, const Sentence& s, std::size_t first) {
        const auto latitude = nmea_angle(s.field(first), s.field(first + 1), 2);
        const auto longitude = nmea_angle(s.field(first + 2), s.field(first + 3), 3);
        if (!latitude || !longitude) return;
        fix.latitude = *latitude;
        fix.longitude = *longitude;
    }

    // GNS has a letter a system where GGA has the quality; what is used here stands in the same fields.
    void gga(const Sentence& s, std::uint32_t line, bool no_fix) {
        Fix* const fix = epoch(s.field(0), line);
        if (!fix) return;
        if (no_fix) {
            ++without_fix_;
            return;
        }
        place(*fix, s, 1);
        set(fix->satellites, number_or_absent(s.field(6)));
        set(fix->dilution, number_or_absent(s.field(7)));
        set(fix->altitude_m, number_or_absent(s.field(8)));
    }

    void rmc(const Sentence& s, std::uint32_t line) {
        Fix* const fix = epoch(s.field(0), line);
        if (!fix) return;
        if (const auto date = read_ddmmyy(s.field(8)); date && !date_s_) {
            date_s_ = static_cast<double>(date->days) * day_s;
            if (fixes_.size() > 1 && fixes_.front().time_s > fix->time_s + 0.5 * day_s) date_s_ = *date_s_ - day_s;
        }
        if (s.field(1) != "A") {
            ++without_fix_;
            return;
        }
        place(*fix, s, 2);
        set(fix->speed_mps, number_or_absent(s.field(6)) * knot_mps);
        set(fix->course, number_or_absent(s.field(7)) * base::pi / 180.0);
    }

    void gll(const Sentence& s, std::uint32_t line) {
        Fix* const fix = epoch(s.field(4), line);
        if (fix && s.field(5) != "V") place(*fix, s, 0);
    }

    // VTG has no time: it belongs to the epoch before it.
    void vtg(const Sentence& s) {
        if (fixes_.empty()) return;
        set(fixes_.back().course, number_or_absent(s.field(0)) * base::pi / 180.0);
        const bool knots = s.field(5) == "N";
        if (knots) set(fixes_.back().speed_mps, number_or_absent(s.field(4)) * knot_mps);
    }

    void zda(const Sentence& s, std::uint32_t line) {
        if (date_s_ || !epoch(s.field(0), line)) return;
        if (s.field(1).size() != 2 || s.field(2).size() != 2 || s.field(3).size() != 4) return;
        const std::string text = std::string(s.field(3)) + std::string(s.field(2)) + std::string(s.field(1));
        if (const auto date = read_date(text)) date_s_ = static_cast<double>(date->days) * day_s;
    }

    std::vector<Fix> fixes_;
    std::optional<double> date_s_;
    std::size_t without_fix_ = 0;
};

} // namespace

bool looks_like_nmea(std::string_view head) {
    constexpr std::size_t lines_a_sentence = 10;
    std::size_t lines = 0;
    std::size_t sentences = 0;
    std::size_t placed = 0;
    for (std::size_t at = head.find('$') == std::string_view::npos ? head.size() : 0; at < head.size();) {
        const std::size_t next = behind_line_end(head, at);
        const std::string_view line = trimmed(head.substr(at, next - at));
        at = next;
        if (line.empty()) continue;
        ++lines;
        const ReadSentence read = read_sentence(line);
        const bool framed = read.fault == SentenceFault::wrong_sum && line.front() == '$';
        const bool cut = read.fault == SentenceFault::without_sum && line.front() != '$';
        if (read.fault == SentenceFault::not_a_sentence || (read.fault == SentenceFault::wrong_sum && !framed) || cut)
            continue;
        ++sentences;
        if (framed || std::ranges::find(told_kinds, read.sentence.kind) != told_kinds.end()) ++placed;
    }
    return placed > 0 && (2 * sentences >= lines || (placed > 1 && lines_a_sentence * placed >= lines));
}

namespace {

bool bears_sums(std::string_view text) {
    for (std::size_t at = 0; at < text.size(); at = behind_line_end(text, at)) {
        const SentenceFault fault = read_sentence(text.substr(at, behind_line_end(text, at) - at)).fault;
        if (fault == SentenceFault::none || fault == SentenceFault::wrong_sum) return true;
    }
    return false;
}

} // namespace

base::Result<Recording> read_nmea(std::string_view text, const std::string& name, const base::Progress& progress) {
    SentenceReader reader;
    LineTally wrong_sums;
    LineTally others;
    LineTally without_sums;
    std::size_t right_sums = 0;
    const bool with_sums = bears_sums(text);
    std::uint32_t line = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t next = behind_line_end(text, at);
        const std::string_view content = trimmed(text.substr(at, next - at));
        at = next;
        ++line;
        if (line % 8192 == 0 && !base::go_on(progress, said("reading sentences"),
                                             static_cast<double>(at) / static_cast<double>(text.size())))
            return base::cancelled();
        if (content.empty()) continue;
        const ReadSentence read = read_sentence(content);
        if (read.fault == SentenceFault::wrong_sum)
            wrong_sums.add(line);
        else if (read.fault == SentenceFault::not_a_sentence || (read.fault == SentenceFault::without_sum && with_sums))
            others.add(line);
        else {
            if (read.fault == SentenceFault::without_sum) without_sums.add(line);
            ++right_sums;
            reader.take(read.sentence, line);
        }
        if (reader.fixes().size() > largest_rows)
            return Error{ErrorCode::file_too_large,
                         {name, line, ""},
                         said("the file holds more fixes than can be held"),
                         said("export one session alone")};
    }
    Recording recording;
    recording.source_file = name;
    const auto tell = [&](WarningKind kind, const LineTally& seen) {
        if (seen.count > 0) recording.warnings.push_back({.kind = kind, .seen = seen});
    };
    tell(WarningKind::checksum_wrong, wrong_sums);
    tell(WarningKind::not_a_sentence, others);
    tell(WarningKind::checksum_absent, without_sums);
    double first_reading_s = 0.0;
    if (!add_fixes(recording, reader.fixes(), ClockKind::time_of_day, first_reading_s)) {
        if (wrong_sums.count > right_sums)
            return Error{ErrorCode::no_motion,
                         {name, wrong_sums.first_lines.front(), ""},
                         base::integer_text(static_cast<std::int64_t>(wrong_sums.count)) +
                             (wrong_sums.count == 1 ? " of its sentences has" : " of its sentences have") +
                             " a wrong checksum, so that no two give a time and a position",
                         said("copy the file from the logger again")};
        return Error{ErrorCode::no_motion,
                     {name, {}, ""},
                     said("no two sentences give a time and a position"),
                     said("record GGA or RMC sentences with a fix")};
    }
    if (reader.date_s())
        recording.start_unix_s = *reader.date_s() + first_reading_s;
    else
        recording.warnings.push_back({.kind = WarningKind::date_unknown});
    if (reader.without_fix() > 0)
        recording.warnings.push_back({.kind = WarningKind::without_fix, .seen = {reader.without_fix(), {}}});
    return recording;
}

} // namespace lapwright::import
