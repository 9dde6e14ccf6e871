// SPDX-License-Identifier: GPL-3.0-or-later
// The command line reads a session by the rules of the window (core/workspace).
#include "app/commands/call.h"
#include "app/commands/commands.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <optional>
#include <sstream>

using namespace lapwright::commands;
using lapwright::test::call;
using Outcome = lapwright::test::Called;
using testing::HasSubstr;
using testing::Not;

namespace {

// In the environment as long as it lives.
class Variable {
  public:
    Variable(const char* name, const std::string& value) : name_(name) {
        if (const char* before = std::getenv(name)) before_ = before;
        ::setenv(name, value.c_str(), 1);
    }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;
    ~Variable() { before_ ? ::setenv(name_, before_->c_str(), 1) : ::unsetenv(name_); }

  private:
    const char* name_;
    std::optional<std::string> before_;
};

const std::string samples = std::string(TEST_SOURCE_DIR) + "/../sample-sessions/";
const std::string hatch = samples + "plover-saturday-2.csv";
const std::string coupe = samples + "dunlin-saturday-2.txt";

} // namespace

// As the window would read it, and said.
TEST(Reading, ARecipeThatThePersonKeepsIsUsed) {
    const std::filesystem::path data = testing::TempDir() + "lapwright-kept-recipe-test";
    const Variable home("XDG_DATA_HOME", data.string());
    auto recipe = nlohmann::json::parse(call({"recipe", hatch}).out);
    for (auto& column : recipe["columns"])
        if (column["header"].get<std::string>().starts_with("Throttle"))
            column = {{"header", column["header"]}, {"use", "skip"}};
    std::filesystem::create_directories(data / "lapwright/recipes");
    const std::string file = (data / "lapwright/recipes/mine.json").string();
    std::ofstream(file) << recipe.dump();
    const Outcome o = call({"laps", hatch, coupe, "--json"});
    std::filesystem::remove_all(data);
    ASSERT_EQ(o.status, 0) << o.err;
    EXPECT_THAT(o.err, HasSubstr(hatch + ": its columns are read as the recipe " + file + " says"));
    EXPECT_THAT(o.err, Not(HasSubstr(coupe + ": its columns")));
    for (const auto& channel : nlohmann::json::parse(o.out)["sessions"][0]["channels"])
        EXPECT_NE(channel["meaning"], "throttle");
}

// Names and units of the person's own, as the window reads them: lapwright/recipes/vocabulary.txt.
TEST(Reading, WordsOfThePersonsOwnAreKnown) {
    const std::filesystem::path data = testing::TempDir() + "lapwright-own-words-test";
    const Variable home("XDG_DATA_HOME", data.string());
    std::filesystem::create_directories(data / "lapwright/recipes");
    const std::string words = (data / "lapwright/recipes/vocabulary.txt").string();
    std::ofstream(words) << "throttle 0.9: rechter voet\nunit %: honderdsten\n";
    const std::string file = (data / "own.csv").string();
    std::ofstream written(file);
    written << "time (s),speed (km/h),rechter voet (honderdsten)\n";
    for (int i = 0; i < 50; ++i)
        written << i << ',' << 50 + i << ',' << i << '\n';
    written.close();
    const Outcome laps = call({"laps", file, "--json"});
    const Outcome recipe = call({"recipe", file});
    std::ofstream(words) << "nonsense\n";
    const Outcome wrong = call({"laps", file, "--json"});
    std::filesystem::remove_all(data);
    EXPECT_THAT(laps.out, HasSubstr("\"throttle\"")) << laps.err;
    EXPECT_THAT(recipe.out, HasSubstr("\"throttle\"")) << recipe.err;
    EXPECT_EQ(wrong.status, 1);
    EXPECT_THAT(wrong.err, HasSubstr(words + ":1: the line has no colon"));
}

// A session is the bytes of its file: a copy is not another car.
TEST(Reading, ACopyOfAFileIsTheSameSession) {
    const std::string copy = testing::TempDir() + "lapwright-copy-test.csv";
    std::filesystem::copy_file(hatch, copy, std::filesystem::copy_options::overwrite_existing);
    const Outcome same = call({"compare", hatch, hatch, "--lap-a", "2", "--lap-b", "3", "--json"});
    const Outcome other = call({"compare", hatch, copy, "--lap-a", "2", "--lap-b", "3", "--json"});
    std::filesystem::remove(copy);
    ASSERT_EQ(same.status, 0) << same.err;
    EXPECT_EQ(other.out, same.out);
}
