// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/layer_table.h"

#include <sstream>
#include <vector>

namespace lapwright::architecture {
namespace {

enum class Mark { open, done };

// Depth-first; reports the circle as it is walked.
void walk(const LayerTable& table, const std::string& layer, std::map<std::string, Mark>& marks,
          std::vector<std::string>& way, Findings& findings) {
    if (const auto seen = marks.find(layer); seen != marks.end()) {
        if (seen->second == Mark::open) {
            std::string circle = layer;
            for (auto back = way.rbegin(); back != way.rend(); ++back) {
                circle = *back + " -> " + circle;
                if (*back == layer) {
                    break;
                }
            }
            findings.push_back("layers.txt: the layers go round in a circle: " + circle);
        }
        return;
    }
    marks[layer] = Mark::open;
    way.push_back(layer);
    if (const auto row = table.find(layer); row != table.end()) {
        for (const std::string& below : row->second) {
            walk(table, below, marks, way, findings);
        }
    }
    way.pop_back();
    marks[layer] = Mark::done;
}

bool reaches_up(const std::string& layer, const std::string& below) {
    const bool in_ui = layer.starts_with("ui/");
    return in_ui ? below.starts_with("app") : !below.starts_with("core/");
}

} // namespace

LayerTable parse_layers(std::string_view text) {
    LayerTable table;
    for (const std::string_view line : lines_of(text)) {
        const auto colon = line.find(':');
        if (colon == std::string_view::npos) {
            continue;
        }
        std::istringstream words{std::string(line.substr(colon + 1))};
        std::set<std::string>& row = table[std::string(line.substr(0, colon))];
        for (std::string word; words >> word;) {
            row.insert(word);
        }
    }
    return table;
}

std::optional<std::string> layer_of(const LayerTable& table, std::string_view path) {
    for (auto folder = path.rfind('/'); folder != std::string_view::npos && folder > 0;
         folder = path.rfind('/', folder - 1)) {
        if (const std::string name(path.substr(0, folder)); table.contains(name)) {
            return name;
        }
    }
    return std::nullopt;
}

Findings check_table(const LayerTable& table, const std::filesystem::path& root) {
    Findings findings;
    std::map<std::string, Mark> marks;
    std::vector<std::string> way;
    for (const auto& [layer, row] : table) {
        if (!std::filesystem::is_directory(root / layer)) {
            findings.push_back("layers.txt: " + layer + " has a row but there is no such folder");
        }
        for (const std::string& below : row) {
            if (!table.contains(below)) {
                findings.push_back("layers.txt: " + layer + " names " + below + ", which has no row");
            } else if (reaches_up(layer, below)) {
                findings.push_back("layers.txt: " + layer + " may not be given " + below);
            }
        }
        walk(table, layer, marks, way, findings);
    }
    return findings;
}

} // namespace lapwright::architecture
