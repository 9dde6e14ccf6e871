// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/facts.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/import/text/encoding.h"
#include "core/import/text/limits.h"
#include "core/import/text/moment.h"
#include "core/import/text/words.h"

#include <algorithm>

namespace lapwright::import {
namespace {

std::string clipped(std::string_view text) {
    return std::string(whole_characters_of(trimmed(text), longest_fact_bytes));
}

void set_once(std::string& place, const std::string& value) {
    if (place.empty()) place = base::without_controls(value);
}

void understand_moment(SessionFacts& session, const std::string& value) {
    if (const auto moment = read_moment(value)) {
        session.start_unix_s = moment->unix_s;
        session.zone_known = moment->zone_known;
        session.day_and_month_unsure = moment->day_and_month_unsure;
    } else if (const auto date = read_date(value)) {
        session.date_unix_s = static_cast<double>(date->days) * 86400.0;
        session.day_and_month_unsure = date->day_and_month_unsure;
    } else if (const auto clock = read_clock(value)) {
        const bool only_hours_and_minutes = std::ranges::count(value, ':') == 1;
        session.clock_s = only_hours_and_minutes ? *clock * 60.0 : *clock;
    }
}

std::optional<double> read_rate(std::string_view value) {
    const std::size_t end = std::min(value.find_first_not_of("0123456789."), value.size());
    const std::string unit = folded(trimmed(value.substr(end)));
    const auto rate = base::parse_number(value.substr(0, end));
    const bool fits = rate && *rate >= 0.1 && *rate <= 10'000.0 && (unit.empty() || unit == "hz");
    return fits ? rate : std::nullopt;
}

} // namespace

std::pair<std::string, std::string> read_fact(std::string_view line, Delimiter delimiter) {
    line = trimmed(line);
    while (!line.empty() && std::string_view("#%;/!*").find(line.front()) != std::string_view::npos)
        line = trimmed(line.substr(1));
    const auto cells = delimiter.blanks ? std::vector<std::string>{std::string(line)} : split_cells(line, delimiter);
    if (cells.size() >= 2 && !cells[0].empty()) {
        std::string value = cells[1];
        for (std::size_t i = 2; i < cells.size(); ++i)
            if (!cells[i].empty()) value += " " + cells[i];
        std::string_view key = cells[0];
        while (!key.empty() && (key.back() == ':' || key.back() == '='))
            key = trimmed(key.substr(0, key.size() - 1));
        if (!trimmed(value).empty()) return {clipped(key), clipped(value)};
    }
    const std::string_view single = cells.empty() ? line : std::string_view(cells[0]);
    const std::size_t mark = single.find_first_of(":=");
    if (mark == std::string_view::npos || mark == 0) return {"", clipped(single)};
    return {clipped(single.substr(0, mark)), clipped(single.substr(mark + 1))};
}

SessionFacts understand(const Facts& facts, const Vocabulary& known) {
    SessionFacts session;
    for (const auto& [key, value] : facts) {
        const auto found = known.facts.find(key_of(split_words(plain_words(key))));
        if (value.empty() || found == known.facts.end()) continue;
        switch (found->second) {
        case FactKey::driver:
            set_once(session.driver, value);
            break;
        case FactKey::car:
            set_once(session.car, value);
            break;
        case FactKey::track:
            set_once(session.track, value);
            break;
        case FactKey::date:
        case FactKey::clock:
        case FactKey::start:
            understand_moment(session, value);
            break;
        case FactKey::rate:
            session.row_rate_hz = read_rate(value);
        }
    }
    if (!session.start_unix_s && session.date_unix_s && session.clock_s)
        session.start_unix_s = *session.date_unix_s + *session.clock_s;
    return session;
}

} // namespace lapwright::import
