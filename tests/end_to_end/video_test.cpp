// SPDX-License-Identifier: GPL-3.0-or-later
// A video whose sound was made of a sample session's engine speed, put in step by the built program.
#include "tests/end_to_end/program.h"

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <gmock/gmock.h>
#include <numbers>
#include <sstream>

namespace lapwright::end_to_end {
namespace {

using testing::HasSubstr;

// Revolutions a second every 0.04 s, from the sample's own column.
std::vector<double> engine_of_sample() {
    std::istringstream lines(read(sample("plover-saturday-2.csv")));
    std::string line;
    std::getline(lines, line);
    std::vector<double> revolutions;
    constexpr int column = 12;
    while (std::getline(lines, line)) {
        std::istringstream cells(line);
        std::string cell;
        for (int i = 0; i <= column; ++i)
            std::getline(cells, cell, ',');
        revolutions.push_back(std::atof(cell.c_str()) / 60.0);
    }
    return revolutions;
}

// The second and fourth order from begins_s on, under as much noise.
void write_sound(const std::string& path, double begins_s, double length_s) {
    constexpr double rate_hz = 8000.0;
    const std::vector<double> engine = engine_of_sample();
    std::ofstream file(path, std::ios::binary);
    double turns = 0.0;
    std::uint32_t noise = 1;
    for (double time_s = 0.0; time_s < length_s; time_s += 1.0 / rate_hz) {
        turns += engine.at(static_cast<std::size_t>((begins_s + time_s) / 0.04)) / rate_hz;
        noise = noise * 1664525U + 1013904223U;
        const double phase = 2.0 * std::numbers::pi * turns;
        const auto value = static_cast<float>(0.15 * std::sin(2.0 * phase) + 0.1 * std::sin(4.0 * phase) +
                                              0.4 * (noise / 4294967296.0 - 0.5));
        file.write(reinterpret_cast<const char*>(&value), sizeof value);
    }
}

class VideoCommand : public testing::Test {
  protected:
    // In one file, or in two as a camera cuts them.
    [[nodiscard]] std::string made(const std::string& name, double begins_s, double length_s) const {
        const std::string sound = (scratch_.folder() / "sound.raw").string();
        const std::string path = (scratch_.folder() / name).string();
        write_sound(sound, begins_s, length_s);
        const std::string line =
            "ffmpeg -nostdin -v error -y -f f32le -ar 8000 -i " + sound +
            " -f lavfi -i testsrc2=s=64x36:r=25 -shortest -c:v libx264 -preset ultrafast -c:a aac " + path;
        EXPECT_EQ(std::system(line.c_str()), 0);
        return path;
    }
    Scratch scratch_;
};

TEST_F(VideoCommand, FindsTheOffsetBySound) {
    const std::string video = made("a.mp4", 60.0, 100.0);
    const auto found = document({"video", sample("plover-saturday-2.csv"), video, "--json"});
    EXPECT_EQ(found["video"]["files"], nlohmann::json({video}));
    EXPECT_EQ(found["video"]["width"], 64);
    EXPECT_EQ(found["video"]["sound"], true);
    EXPECT_TRUE(found["video"]["created_utc"].is_null());
    ASSERT_FALSE(found["in_step"].is_null()) << found["reasons"];
    EXPECT_EQ(found["in_step"]["method"], "sound_and_engine_speed");
    EXPECT_NEAR(found["in_step"]["offset_s"].get<double>(), 60.0, 0.03); // a column is held for 0.04 s
    EXPECT_LT(found["in_step"]["offset_low_s"], found["in_step"]["offset_s"]);
    EXPECT_GT(found["in_step"]["offset_high_s"], found["in_step"]["offset_s"]);
    EXPECT_GT(found["in_step"]["score"], 1.3);
    const auto words = run({"video", sample("plover-saturday-2.csv"), video});
    EXPECT_EQ(words.status, 0);
    EXPECT_THAT(words.out, HasSubstr("behind the recording's start"));
    EXPECT_THAT(words.out, HasSubstr("the engine in the sound follows the recorded engine speed"));
}

TEST_F(VideoCommand, PartsOfOneCameraAreOneVideo) {
    const std::string first = made("a.mp4", 30.0, 50.0);
    const std::string second = made("b.mp4", 80.0, 50.0);
    const auto found = document({"video", sample("plover-saturday-2.csv"), first, second, "--json"});
    EXPECT_NEAR(found["video"]["length_s"].get<double>(), 100.0, 0.2);
    ASSERT_FALSE(found["in_step"].is_null()) << found["reasons"];
    EXPECT_NEAR(found["in_step"]["offset_s"].get<double>(), 30.0, 0.06);
}

TEST_F(VideoCommand, AnotherSessionIsNotClaimed) {
    const std::string video = made("a.mp4", 60.0, 100.0);
    const auto found = document({"video", sample("dunlin-saturday-2.txt"), video, "--json"});
    EXPECT_TRUE(found["in_step"].is_null());
    EXPECT_FALSE(found["reasons"].empty());
}

TEST_F(VideoCommand, BadInputIsOneLine) {
    const std::string text = scratch_.file("text.mp4", "this is no video\n");
    for (const auto& words : std::vector<std::vector<std::string>>{
             {"video", sample("plover-saturday-2.csv"), text},
             {"video", sample("plover-saturday-2.csv"), (scratch_.folder() / "nowhere.mp4").string()},
             {"video", text, text}}) {
        const auto refused = run(words);
        EXPECT_EQ(refused.status, 1);
        EXPECT_EQ(refused.out, "");
        EXPECT_EQ(std::count(refused.err.begin(), refused.err.end(), '\n'), 1) << refused.err;
    }
    EXPECT_EQ(run({"video", sample("plover-saturday-2.csv")}).status, 2);
}

} // namespace
} // namespace lapwright::end_to_end
