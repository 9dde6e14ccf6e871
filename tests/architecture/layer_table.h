// SPDX-License-Identifier: GPL-3.0-or-later
// The table of layers that the build wrote (layers.txt, one row a layer() call): who may include whom.
#pragma once

#include "tests/architecture/source_text.h"

#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace lapwright::architecture {

// Folder -> the folders that its files may include besides their own.
using LayerTable = std::map<std::string, std::set<std::string>>;

// Rows read "core/lap: core/base core/math".
[[nodiscard]] LayerTable parse_layers(std::string_view text);

// The layer that a path lies in: the longest folder of the table that the path starts with.
[[nodiscard]] std::optional<std::string> layer_of(const LayerTable& table, std::string_view path);

// Rows that go round in a circle, name a folder that has no row or does not exist, or reach up: core may name core
// alone, app/commands core alone, ui never app.
[[nodiscard]] Findings check_table(const LayerTable& table, const std::filesystem::path& root);

} // namespace lapwright::architecture
