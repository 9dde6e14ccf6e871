// SPDX-License-Identifier: GPL-3.0-or-later
// Whose names count, and the setup sheet beside a file.
#include "core/car/names.h"

#include "core/car/setup_beside.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <unistd.h>

using namespace lapwright;
using testing::HasSubstr;

TEST(Names, TheSheetsGoBeforeTheRecordingsEachForItself) {
    for (const std::string in_sheet : {"", "  ", "Wren Alder\t"})
        for (const std::string in_file : {"", "Logger 7", "a\x1b[2Jb"})
            for (const bool driver : {true, false}) {
                recording::Recording recording;
                car::SetupSheet sheet;
                (driver ? recording.driver : recording.car) = in_file;
                (driver ? sheet.driver : sheet.car) = in_sheet;
                const car::Names names = car::names_of(recording, sheet);
                const std::string& name = driver ? names.driver : names.car;
                EXPECT_EQ(driver ? names.car : names.driver, "") << "the other one is not known";
                if (in_sheet.find('W') != std::string::npos)
                    EXPECT_EQ(name, "Wren Alder");
                else
                    EXPECT_EQ(name.empty(), in_file.empty());
                EXPECT_EQ(name.find('\x1b'), std::string::npos);
                car::take_names(recording, sheet);
                EXPECT_EQ(car::names_of(recording, {}), names) << "the recording bears them";
            }
}

TEST(Names, ATitleSaysWhatIsKnown) {
    EXPECT_EQ(car::title_of({"Wren Alder", "Plover"}), "Wren Alder — Plover");
    EXPECT_EQ(car::title_of({"", "Plover"}), "Plover");
    EXPECT_EQ(car::title_of({"Wren Alder", ""}), "Wren Alder");
    EXPECT_EQ(car::title_of({}), "");
}

TEST(SetupBeside, IsFoundByTheFilesNameAndMayBeMissing) {
    namespace fs = std::filesystem;
    const fs::path folder = fs::temp_directory_path() / ("lapwright-beside-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    for (const char* name : {"run.csv", "run", "run.of.day.csv"}) {
        const std::string file = (folder / name).string();
        const auto none = car::setup_beside(file);
        ASSERT_TRUE(none.ok()) << name;
        EXPECT_FALSE(none->has_value()) << name;
        std::ofstream(car::setup_path_beside(file)) << R"({"car": "Plover", "mass_kg": 900})";
        const auto there = car::setup_beside(file);
        ASSERT_TRUE(there.ok() && there->has_value()) << name;
        EXPECT_EQ((*there)->car, "Plover");
        std::ofstream(car::setup_path_beside(file)) << "{\n\"mass_kg\": 1e999}";
        const auto damaged = car::setup_beside(file);
        ASSERT_FALSE(damaged.ok()) << name;
        EXPECT_THAT(base::one_line(damaged.error()), HasSubstr(".setup.json"));
        fs::remove(car::setup_path_beside(file));
    }
    EXPECT_EQ(car::setup_path_beside("/a/run.of.day.csv"), "/a/run.of.day.setup.json");
    fs::remove_all(folder);
}
