// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright sheet`: a whole PDF, or none and nothing left behind.
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <fstream>
#include <iterator>
#include <sys/stat.h>

namespace lapwright::end_to_end {
namespace {

namespace fs = std::filesystem;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::StartsWith;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

std::ptrdiff_t entries(const fs::path& folder) {
    return std::distance(fs::directory_iterator(folder), fs::directory_iterator());
}

TEST(Sheet, IsAWholePdf) {
    const Scratch scratch;
    const std::string pdf = (scratch.folder() / "sheet.pdf").string();
    const Outcome result = run({"sheet", hatch, coupe, "--out", pdf});
    ASSERT_EQ(result.status, 0) << result.err;
    EXPECT_THAT(read(pdf), StartsWith("%PDF-"));
    EXPECT_THAT(read(pdf), EndsWith("%%EOF\n"));
    EXPECT_EQ(entries(scratch.folder()), 1) << "nothing is left beside it";
}

TEST(Sheet, TakesThePlaceOfAnOlderOneAtOnce) {
    const Scratch scratch;
    const std::string pdf = (scratch.folder() / "sheet.pdf").string();
    ASSERT_EQ(run({"sheet", hatch, coupe, "--out", pdf}).status, 0);
    std::ofstream(pdf, std::ios::app) << "older";
    EXPECT_EQ(run({"sheet", hatch, coupe, "--out", pdf}).status, 0);
    EXPECT_THAT(read(pdf), EndsWith("%%EOF\n"));
}

TEST(Sheet, LeavesAForeignPdfAlone) {
    const Scratch scratch;
    const std::string pdf = scratch.file("invoice.pdf", "%PDF-1.4 somebody's invoice %%EOF\n");
    EXPECT_EQ(run({"sheet", hatch, coupe, "--out", pdf}).status, 1);
    EXPECT_EQ(read(pdf), "%PDF-1.4 somebody's invoice %%EOF\n");
}

TEST(Sheet, AnInputThatCannotBeUsedLeavesTheOlderOneAlone) {
    const Scratch scratch;
    const std::string pdf = scratch.file("sheet.pdf", "%PDF-1.4 older");
    EXPECT_EQ(run({"sheet", hatch, "/nowhere.csv", "--out", pdf}).status, 1);
    EXPECT_EQ(read(pdf), "%PDF-1.4 older");
    EXPECT_EQ(entries(scratch.folder()), 1);
}

// A pipe stands for what is no ordinary file: a new file in its place would be a loss.
TEST(Sheet, APlaceThatCannotBeWrittenIsSaid) {
    const Scratch scratch;
    const std::string pipe = (scratch.folder() / "pipe").string();
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    for (const std::string& place : {std::string("/nowhere/sheet.pdf"), scratch.folder().string(), pipe}) {
        const Outcome result = run({"sheet", hatch, coupe, "--out", place});
        EXPECT_EQ(result.status, 1) << place;
        EXPECT_THAT(result.err, StartsWith(place + ":"));
        EXPECT_THAT(result.err, HasSubstr(" — "));
    }
    EXPECT_TRUE(fs::is_fifo(pipe));
}

} // namespace
} // namespace lapwright::end_to_end
