// SPDX-License-Identifier: GPL-3.0-or-later
// A member's definition stands at the head of a line: "double Lap::time_s() const {", "Lap::Lap()".
#include "tests/architecture/rules.h"

#include <map>
#include <regex>

namespace lapwright::architecture {
namespace {

std::string folder_of(const std::string& path) {
    return path.substr(0, path.rfind('/'));
}

// A build takes one of files_posix.cpp and files_windows.cpp.
std::string whatever_the_system(const std::string& path) {
    static const std::regex system(R"(_(posix|windows)\.cpp$)");
    return std::regex_replace(path, system, ".cpp");
}

} // namespace

Findings check_classes(std::span<const SourceFile> files) {
    static const std::regex definition(R"(^(?:[A-Za-z_].*[ *&])?([A-Z]\w*)::(?:\w+::)*(?:~?\w+|operator[^(]+)\()");
    std::map<std::pair<std::string, std::string>, std::string> homes; // folder and class: the file seen first
    Findings findings;
    for (const SourceFile& file : files) {
        std::size_t number = 0;
        const std::string text = without_comments_and_literals(file.text);
        for (const std::string_view line : lines_of(text)) {
            ++number;
            std::cmatch found;
            if (!std::regex_search(line.data(), line.data() + line.size(), found, definition)) {
                continue;
            }
            const auto [home, first] = homes.try_emplace({folder_of(file.path), found[1].str()}, file.path);
            if (!first && whatever_the_system(home->second) != whatever_the_system(file.path)) {
                findings.push_back(finding(file.path, number, found[1].str() + " is implemented in " + home->second));
            }
        }
    }
    return findings;
}

} // namespace lapwright::architecture
