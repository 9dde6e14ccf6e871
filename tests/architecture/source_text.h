// SPDX-License-Identifier: GPL-3.0-or-later
// Source files as the rules read them: lines, with comments and literals blanked where a rule must not see them.
// Blanking keeps every line and column in place, so that a finding's line is the editor's line, counted from 1.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::architecture {

struct SourceFile {
    std::string path; // from the project's root, with '/': "core/lap/lap.h"
    std::string text;
};

// "FILE:LINE: what is wrong"; the line is left out for what concerns the file as a whole.
using Findings = std::vector<std::string>;

[[nodiscard]] std::string finding(const std::string& path, std::size_t line, const std::string& what);

// Every file below root/folder whose name ends in one of the endings, sorted by path; none if the folder is absent.
[[nodiscard]] std::vector<SourceFile> read_sources(const std::filesystem::path& root, const std::string& folder,
                                                   const std::vector<std::string>& endings);

[[nodiscard]] std::vector<std::string_view> lines_of(std::string_view text);

[[nodiscard]] std::string without_comments(std::string_view text);
[[nodiscard]] std::string without_comments_and_literals(std::string_view text);

} // namespace lapwright::architecture
