// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces that every JSON document of the command line is made of.
#pragma once

#include "core/base/estimate.h"
#include "core/recording/recording.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::commands {

// A number that is not finite is null, never 0.
[[nodiscard]] nlohmann::ordered_json number_json(double value);
[[nodiscard]] nlohmann::ordered_json maybe_json(std::optional<double> value);
[[nodiscard]] nlohmann::ordered_json estimate_json(const base::Estimate& estimate); // and why it cannot be told
[[nodiscard]] nlohmann::ordered_json text_or_null(const std::string& text);
[[nodiscard]] nlohmann::ordered_json moment_json(std::optional<double> unix_s); // UTC, or null
[[nodiscard]] nlohmann::ordered_json warnings_json(const std::vector<recording::Warning>& warnings);
// The whole document; text that is not UTF-8 is replaced, not refused.
[[nodiscard]] std::string document_text(const nlohmann::ordered_json& document);

} // namespace lapwright::commands
