// SPDX-License-Identifier: GPL-3.0-or-later
// Feeds every file of the folders on the command line to a fuzz target, in a program that any compiler builds: what a
// fuzzer once found stays found.  Each file is also given cut short in several places.
#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

void feed(const std::string& bytes) {
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

std::string bytes_of(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

} // namespace

int main(int count, char** words) {
    constexpr std::size_t cuts = 16;
    std::size_t files = 0;
    for (int i = 1; i < count; ++i) {
        for (const auto& entry : std::filesystem::directory_iterator(words[i])) {
            if (!entry.is_regular_file()) continue;
            const std::string bytes = bytes_of(entry.path());
            feed(bytes);
            for (std::size_t cut = 1; cut < cuts; ++cut)
                feed(bytes.substr(0, bytes.size() * cut / cuts));
            ++files;
        }
    }
    std::cout << files << " files replayed\n";
    return files > 0 ? 0 : 1;
}
