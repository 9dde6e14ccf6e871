// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/rules.h"

#include <algorithm>
#include <array>

namespace lapwright::architecture {
namespace {

constexpr std::string_view licence = "SPDX-License-Identifier: GPL-3.0-or-later";
constexpr std::array<std::string_view, 3> notes_to_self{"TODO", "FIXME", "XXX"};

bool is_script(std::string_view first_line) {
    return first_line.starts_with("#!");
}

} // namespace

Findings check_form(std::span<const SourceFile> files) {
    Findings findings;
    for (const SourceFile& file : files) {
        const auto lines = lines_of(file.text);
        const std::size_t first = !lines.empty() && is_script(lines[0]) ? 1 : 0;
        if (lines.size() <= first || lines[first].find(licence) == std::string_view::npos) {
            findings.push_back(finding(file.path, first + 1, "the file must open with " + std::string(licence)));
        }
        if (file.path.ends_with(".h") && (lines.size() < 2 || !lines[1].starts_with("// "))) {
            findings.push_back(finding(file.path, 2, "a header says here what it is for"));
        }
        if (lines.size() > longest_file_lines) {
            findings.push_back(
                finding(file.path, lines.size(), "longer than " + std::to_string(longest_file_lines) + " lines"));
        }
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (const std::string_view note : notes_to_self) {
                if (lines[i].find(note) != std::string_view::npos) {
                    findings.push_back(finding(file.path, i + 1, "a note to self is left: " + std::string(note)));
                }
            }
        }
    }
    return findings;
}

} // namespace lapwright::architecture
