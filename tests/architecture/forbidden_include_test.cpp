// SPDX-License-Identifier: GPL-3.0-or-later
// What the layers promise: with a layer's own include folders, the compiler finds that layer's headers and none of a
// layer that its row does not name.
#include "tests/architecture/layer_table.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>

namespace lapwright::architecture {
namespace {

namespace fs = std::filesystem;

std::string read(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

std::string target_name(std::string folder) {
    std::ranges::replace(folder, '/', '_');
    return folder;
}

// What the build hands to the compiler for this layer, as "-I…" words.
std::string include_words(const std::string& layer) {
    const std::string text = read(fs::path(INCLUDE_FOLDERS) / (target_name(layer) + ".txt"));
    std::string words;
    for (const std::string_view line : lines_of(text)) {
        if (!line.empty()) {
            words += " -I'" + std::string(line) + "'";
        }
    }
    return words;
}

std::optional<std::string> some_header(const std::string& layer) {
    const auto headers = read_sources(PROJECT_ROOT, layer, {".h"});
    return headers.empty() ? std::nullopt : std::optional(headers.front().path);
}

class Probe {
  public:
    Probe() {
        std::string pattern = (fs::temp_directory_path() / "lapwright-probe-").string() + std::string(6, 'X');
        folder_ = ::mkdtemp(pattern.data());
    }
    ~Probe() { fs::remove_all(folder_); }
    Probe(const Probe&) = delete;
    Probe& operator=(const Probe&) = delete;

    // Whether a file of that layer may include the header; what the compiler said is in said().
    bool compiles(const std::string& layer, const std::string& header) {
        std::ofstream(folder_ / "probe.cpp") << "#include \"" << header << "\"\n";
        const std::string command = std::string(COMPILER) + " -std=c++20 -E" + include_words(layer) + " '" +
                                    (folder_ / "probe.cpp").string() + "' -o /dev/null 2> '" +
                                    (folder_ / "said").string() + "'";
        return std::system(command.c_str()) == 0;
    }
    [[nodiscard]] std::string said() const { return read(folder_ / "said"); }

  private:
    fs::path folder_;
};

TEST(ForbiddenInclude, DoesNotCompile) {
    const LayerTable table = parse_layers(read(LAYERS_FILE));
    Probe probe;
    int refused = 0;
    for (const auto& [layer, row] : table) {
        if (!layer.starts_with("core/") && layer != "app/commands") {
            continue;
        }
        if (const auto own = some_header(layer)) {
            EXPECT_TRUE(probe.compiles(layer, *own)) << layer << " does not find its own " << *own << "\n"
                                                     << probe.said();
        }
        for (const auto& [other, unused] : table) {
            const auto header = some_header(other);
            if (other == layer || row.contains(other) || !header) {
                continue;
            }
            EXPECT_FALSE(probe.compiles(layer, *header)) << layer << " finds " << *header;
            EXPECT_NE(probe.said().find(*header), std::string::npos) << probe.said();
            ++refused;
        }
    }
    EXPECT_GT(refused, 20);
}

} // namespace
} // namespace lapwright::architecture
