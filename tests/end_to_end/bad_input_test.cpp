// SPDX-License-Identifier: GPL-3.0-or-later
// What cannot be used ends with the right status and one
// sentence, never with a signal, half an output or a changed file.
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <random>

namespace lapwright::end_to_end {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::MatchesRegex;
using ::testing::StartsWith;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

// "FILE: what — what to do" or with ":LINE"; one line, nothing on standard output.
void expect_refused(const Outcome& result, const std::string& file) {
    EXPECT_EQ(result.status, 1) << result.err;
    EXPECT_EQ(result.out, "");
    EXPECT_EQ(std::ranges::count(result.err, '\n'), 1) << result.err;
    EXPECT_THAT(result.err, StartsWith(file + ":"));
    EXPECT_THAT(result.err, HasSubstr(" — "));
}

TEST(BadInput, AFileThatIsNotThere) {
    expect_refused(run({"laps", "/nowhere/at all.csv"}), "/nowhere/at all.csv");
    const Outcome one_of_two = run({"laps", "--json", hatch, "/nowhere/b.csv"});
    EXPECT_EQ(one_of_two.status, 1);
    EXPECT_THAT(one_of_two.err, HasSubstr("/nowhere/b.csv"));
    EXPECT_THAT(one_of_two.out, HasSubstr("\"laps\"")) << "the good file's laps are told all the same";
    expect_refused(run({"compare", "--json", hatch, "/nowhere/b.csv"}), "/nowhere/b.csv");
}

TEST(BadInput, AFileThatIsNoTable) {
    const Scratch scratch;
    for (const std::string& content :
         {std::string(), std::string("\n\n\n"), std::string("hello\n"), std::string(1000, '\0'),
          std::string("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16), std::string(100000, ','), std::string(100000, '"')}) {
        const std::string file = scratch.file("bad.csv", content);
        expect_refused(run({"laps", "--json", file}), file);
    }
}

TEST(BadInput, AFolderIsNoFile) {
    const Scratch scratch;
    const Outcome result = run({"laps", scratch.folder().string()});
    expect_refused(result, scratch.folder().string());
    EXPECT_THAT(result.err, HasSubstr("no file of data"));
}

TEST(BadInput, SaysTheLine) {
    const Scratch scratch;
    const std::string file = scratch.file("short.csv", "Time [s],Latitude [deg],Longitude [deg]\n0,54.9,2.35\n");
    const Outcome result = run({"laps", file});
    expect_refused(result, file);
    EXPECT_THAT(result.err.substr(file.size()), MatchesRegex(":[0-9]+: .* — .*\n"));
}

TEST(BadInput, ALapOrTrackThatDoesNotFit) {
    expect_refused(run({"compare", "--lap-a", "77", hatch, coupe}), hatch);
    expect_refused(run({"compare", "--track", hatch, hatch, coupe}), hatch);
    expect_refused(run({"compare", "--track", "/nowhere.json", hatch, coupe}), "/nowhere.json");
}

TEST(BadCommandLine, EndsWithTwo) {
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{"laps"},
                                               {"laps", "--no-such-option", hatch},
                                               {"compare", hatch},
                                               {"compare", hatch, coupe, hatch},
                                               {"compare", "--step", "0", hatch, coupe},
                                               {"compare", "--step", "much", hatch, coupe},
                                               {"compare", "--lap-a", "two", hatch, coupe},
                                               {"compare", "--units", "furlongs", hatch, coupe}}) {
        const Outcome result = run(words);
        EXPECT_EQ(result.status, 2) << words.back() << " " << result.err;
        EXPECT_EQ(result.out, "");
        EXPECT_NE(result.err, "");
    }
}

TEST(Help, IsGivenOnStandardOutput) {
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{"--help"}, {"--version"}, {"laps", "--help"}, {"compare", "--help"}}) {
        const Outcome result = run(words);
        EXPECT_EQ(result.status, 0) << result.err;
        EXPECT_NE(result.out, "");
    }
}

TEST(Output, AFullDiskIsSaidAndIsNoSuccess) {
    const Outcome result = run({"laps", "--json", coupe}, {}, "/dev/full");
    EXPECT_EQ(result.status, 1);
    EXPECT_THAT(result.err, HasSubstr(" — "));
}

TEST(Sources, AreNeverChanged) {
    const Scratch scratch;
    const std::string a = scratch.file("a.csv", read(hatch));
    const std::string b = scratch.file("b.txt", read(coupe));
    for (const std::string& file : {a, b}) {
        fs::permissions(file, fs::perms::owner_read);
    }
    const auto written = fs::last_write_time(a);
    EXPECT_EQ(run({"compare", "--json", a, b}).status, 0);
    EXPECT_EQ(read(a), read(hatch));
    EXPECT_EQ(read(b), read(coupe));
    EXPECT_EQ(fs::last_write_time(a), written);
    EXPECT_EQ(std::distance(fs::directory_iterator(scratch.folder()), fs::directory_iterator()), 2)
        << "nothing is left beside them";
}

// Cut off, overwritten and repeated at random places: a result or a refusal, whatever comes.
TEST(DamagedFile, NeverEndsInASignal) {
    const Scratch scratch;
    std::mt19937 engine(20261125);
    for (const std::string& whole : {read(coupe).substr(0, 60000), read(hatch).substr(0, 60000)}) {
        for (int round = 0; round < 12; ++round) {
            std::string damaged = whole.substr(0, whole.size() - engine() % 2000);
            for (int hits = 0; hits < 1 << (round % 6); ++hits) {
                damaged[engine() % damaged.size()] = static_cast<char>(engine() % 256);
            }
            damaged.insert(engine() % damaged.size(), damaged.substr(engine() % damaged.size(), engine() % 500));
            const std::string file = scratch.file("damaged.txt", damaged);
            const Outcome result = run({"laps", "--json", file});
            if (result.status == 0) {
                EXPECT_TRUE(nlohmann::json::accept(result.out)) << "round " << round;
            } else {
                expect_refused(result, file);
            }
        }
    }
}

} // namespace
} // namespace lapwright::end_to_end
