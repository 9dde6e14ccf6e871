// SPDX-License-Identifier: GPL-3.0-or-later
// make_sample_sessions OUTDIR [--benchmark FILE]: writes the demo's files, and on request the large file for timing.
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>
#include <vector>

#include "tests/truth/sample_sessions.h"

namespace {

bool write_file(const std::filesystem::path& path, const std::string& text) {
    std::ofstream out(path, std::ios::binary);
    out << text;
    return static_cast<bool>(out.flush());
}

} // namespace

int main(const int argc, const char* const* const argv) {
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    const bool benchmark = arguments.size() == 3 && arguments[1] == "--benchmark";
    if (arguments.size() != 1 && !benchmark) {
        std::cerr << "usage: make_sample_sessions OUTDIR [--benchmark FILE]\n";
        return 2;
    }
    std::filesystem::create_directories(arguments[0]);
    for (const truth::NamedText& file : truth::sample_files()) {
        if (!write_file(std::filesystem::path(arguments[0]) / file.name, file.text)) return 1;
    }
    return !benchmark || write_file(arguments[2], truth::benchmark_text(1.0, 100.0, 1)) ? 0 : 1;
}
