// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/conflict_text.h"

#include "app/commands/json_parts.h"
#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/wording.h"
#include "core/car/setup_change.h"

namespace lapwright::commands {
namespace {

using nlohmann::ordered_json;

ordered_json value_json(const book::SaidValue& one) {
    return {{"key", one.key},
            {"value", text_or_null(one.value)},
            {"said_utc", moment_json(one.said_unix_s > 0.0 ? std::optional(one.said_unix_s) : std::nullopt)},
            {"in_use", one.in_use}};
}

std::string setup_words(const std::string& text) {
    const auto sheet = car::parse_setup_sheet(text, "");
    if (!sheet) return text;
    std::string words = sheet->tyre;
    if (sheet->mass) words += (words.empty() ? "" : ", ") + base::fixed_text(sheet->mass->value_kg, 0) + " kg";
    for (const car::SetupItem& item : sheet->items)
        words += (words.empty() ? "" : ", ") + item.name + " " + item.value;
    return words;
}

// On one line; a track record is told by the day on which it was written.
std::string words_of(const book::Conflict& conflict, const book::SaidValue& one) {
    if (one.value.empty()) return "(nothing)";
    if (conflict.field == "setup") return setup_words(one.value);
    if (conflict.field == "record") return "timing line and segments";
    const auto moment = conflict.field == "start" ? base::parse_number(one.value) : std::nullopt;
    return moment ? base::date_text(*moment) : one.value;
}

std::string when(const book::SaidValue& one) {
    return one.said_unix_s > 0.0 ? "said on " + base::date_text(one.said_unix_s) : "said by the file";
}

std::string name_of(const std::string& field) {
    return field == "record" ? "timing line and segments" : field;
}

} // namespace

std::string conflicts_json(const std::vector<book::Conflict>& conflicts) {
    ordered_json rows = ordered_json::array();
    for (const book::Conflict& one : conflicts) {
        ordered_json values = ordered_json::array();
        for (const book::SaidValue& value : one.values)
            values.push_back(value_json(value));
        rows.push_back({{"about", one.about}, {"field", one.field}, {"values", values}});
    }
    return document_text({{"conflicts", rows}});
}

std::string conflicts_table(const std::vector<book::Conflict>& conflicts) {
    if (conflicts.empty()) return "no conflict\n";
    std::string text;
    for (const book::Conflict& one : conflicts) {
        text += base::without_controls(one.about) + ", " + name_of(one.field) + ":\n";
        for (const book::SaidValue& value : one.values)
            text += "  " + value.key + "  " + base::without_controls(words_of(one, value)) + " (" + when(value) +
                    (value.in_use ? ", in use" : "") + ")\n";
    }
    return text + "\"lapwright book settle KEY\" takes one for good\n";
}

} // namespace lapwright::commands
