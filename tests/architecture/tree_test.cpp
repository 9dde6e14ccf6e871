// SPDX-License-Identifier: GPL-3.0-or-later
// The rules on the tree as it is.
#include "tests/architecture/rules.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

namespace lapwright::architecture {
namespace {

const std::filesystem::path root = PROJECT_ROOT;

LayerTable built_table() {
    std::ifstream in(LAYERS_FILE);
    return parse_layers(std::string(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()));
}

std::vector<SourceFile> sources(const std::vector<std::string>& folders, const std::vector<std::string>& endings) {
    std::vector<SourceFile> all;
    for (const std::string& folder : folders) {
        const auto files = read_sources(root, folder, endings);
        all.insert(all.end(), files.begin(), files.end());
    }
    return all;
}

std::vector<SourceFile> product_code() {
    return sources({"core", "app", "ui"}, {".h", ".cpp"});
}

// The layers that this build knows: without the window there are none of ui.
std::vector<SourceFile> layered_code() {
    return sources(WITH_WINDOW ? std::vector<std::string>{"core", "app", "ui"} : std::vector<std::string>{"core"},
                   {".h", ".cpp"});
}

void expect_none(const Findings& findings) {
    for (const std::string& each : findings) {
        ADD_FAILURE() << each;
    }
}

TEST(Tree, IsRead) {
    EXPECT_GT(built_table().size(), 10U);
    EXPECT_GT(product_code().size(), 30U);
}

TEST(Tree, LayersStandInOrder) {
    expect_none(check_table(built_table(), root));
}

TEST(Tree, IncludesFollowTheLayers) {
    expect_none(check_includes(built_table(), layered_code()));
}

TEST(Tree, QtAndPlotsStayWhereTheyBelong) {
    expect_none(check_foreign_includes(product_code()));
}

TEST(Tree, TheSimulatorSharesNoCode) {
    const auto simulator = sources({"tests/truth"}, {".h", ".cpp"});
    EXPECT_GT(simulator.size(), 10U);
    expect_none(check_simulator(simulator));
}

TEST(Tree, NoCallAnswersByLocaleOrChance) {
    expect_none(check_calls(product_code()));
}

TEST(Tree, FilesOpenAsTheyShouldAndStayShort) {
    expect_none(check_form(product_code()));
}

TEST(Tree, EveryClassHasOneFile) {
    expect_none(check_classes(sources({"core", "app", "ui"}, {".cpp"})));
}

TEST(Tree, TestsBuildFilesAndScriptsBearTheLicence) {
    Findings findings;
    for (const Findings& some :
         {check_form(sources({"tests"}, {".h", ".cpp"})),
          check_form(sources({"core", "app", "ui", "tests", ".cmake"}, {"CMakeLists.txt", ".cmake"}))}) {
        for (const std::string& each : some) {
            // The rules' own samples hold such notes.
            if (!each.starts_with("tests/architecture/") || each.find("note to self") == std::string::npos) {
                findings.push_back(each);
            }
        }
    }
    expect_none(findings);
}

} // namespace
} // namespace lapwright::architecture
