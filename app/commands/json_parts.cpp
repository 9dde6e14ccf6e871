// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/json_parts.h"
#include "core/recording/warning_words.h"

#include <cmath>

namespace lapwright::commands {

using nlohmann::ordered_json;

ordered_json number_json(double value) {
    return std::isfinite(value) ? ordered_json(value) : ordered_json(nullptr);
}

ordered_json maybe_json(std::optional<double> value) {
    return value ? number_json(*value) : ordered_json(nullptr);
}

ordered_json estimate_json(const base::Estimate& estimate) {
    return {{"value", number_json(estimate.value)},
            {"low", number_json(estimate.low)},
            {"high", number_json(estimate.high)},
            {"cannot_tell", text_or_null(estimate.untold)}};
}

ordered_json text_or_null(const std::string& text) {
    return text.empty() ? ordered_json(nullptr) : ordered_json(text);
}

ordered_json moment_json(std::optional<double> unix_s) {
    return unix_s ? text_or_null(recording::utc_text(*unix_s)) : ordered_json(nullptr);
}

ordered_json warnings_json(const std::vector<recording::Warning>& warnings) {
    ordered_json list = ordered_json::array();
    for (const recording::Warning& warning : warnings)
        list.push_back({{"code", recording::name(warning.kind)},
                        {"message", recording::words(warning)},
                        {"line", warning.line() ? ordered_json(*warning.line()) : ordered_json(nullptr)}});
    return list;
}

std::string document_text(const ordered_json& document) {
    return document.dump(-1, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

} // namespace lapwright::commands
