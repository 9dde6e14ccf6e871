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

// A video that turns from black to white ten seconds after its beginning.
class StillsCommand : public VideoCommand {
  protected:
    [[nodiscard]] std::string black_then_white() const {
        const std::string path = (scratch_.folder() / "turns.mp4").string();
        const std::string line = "ffmpeg -nostdin -v error -y -f lavfi -i color=black:s=64x36:r=25:d=10 -f lavfi -i "
                                 "color=white:s=64x36:r=25:d=10 "
                                 "-filter_complex concat -c:v libx264 -preset ultrafast " +
                                 path;
        EXPECT_EQ(std::system(line.c_str()), 0);
        return path;
    }
    // The brightness of the picture's middle, 0 to 255, as ffmpeg reads the bytes in the page.
    [[nodiscard]] int brightness(const std::string& html) const {
        const std::string mark = "data:image/jpeg;base64,";
        const auto begin = html.find(mark);
        if (begin == std::string::npos) return -1;
        const auto from = begin + mark.size();
        const std::string text = scratch_.file("still.base64", html.substr(from, html.find('"', from) - from));
        const std::string folder = scratch_.folder().string();
        const std::string line = "base64 -d " + text + " > " + folder +
                                 "/still.jpg && ffmpeg -nostdin -v error -y -i " + folder +
                                 "/still.jpg -vf scale=1:1 -pix_fmt gray -f rawvideo " + folder + "/still.gray";
        EXPECT_EQ(std::system(line.c_str()), 0);
        const std::string gray = read(folder + "/still.gray");
        return gray.empty() ? -1 : static_cast<unsigned char>(gray.front());
    }
};

TEST_F(StillsCommand, AreOfTheMomentsThatTheirWordsName) {
    const std::string hatch = sample("plover-saturday-2.csv");
    const std::string coupe = sample("dunlin-saturday-2.txt");
    const auto compared = document({"compare", hatch, coupe, "--json"});
    nlohmann::json corner;
    for (const auto& segment : compared["segments"])
        if (segment["kind"] == "corner" && !segment["min_speed_at_a_m"].is_null()) corner = segment;
    ASSERT_FALSE(corner.is_null());
    double since_start_s = 0.0;
    const auto& places = compared["trace"]["distance_m"];
    const auto& speeds = compared["trace"]["speed_a_mps"];
    for (std::size_t i = 1; i < places.size() && places[i] <= corner["min_speed_at_a_m"]; ++i)
        since_start_s += 2.0 * (places[i].get<double>() - places[i - 1].get<double>()) /
                         (speeds[i].get<double>() + speeds[i - 1].get<double>());
    const auto laps = document({"laps", hatch, "--json"});
    double moment_s = since_start_s;
    for (const auto& lap : laps["sessions"][0]["laps"])
        if (lap["number"] == compared["a"]["lap"]) moment_s += lap["start_s"].get<double>();
    const std::string video = black_then_white();
    const std::string page = (scratch_.folder() / "sheet.html").string();
    for (const bool later : {false, true}) {
        const std::string offset = std::to_string(moment_s - (later ? 10.3 : 9.7));
        const auto written = run({"sheet", hatch, coupe, "--out", page, "--video-a", video, "--video-offset-a", offset,
                                  "--stills", "slowest", "--still-corner", corner["name"]});
        ASSERT_EQ(written.status, 0) << written.err;
        const std::string html = read(page);
        EXPECT_THAT(html, HasSubstr(corner["name"].get<std::string>() + ", slowest point"));
        EXPECT_THAT(html, HasSubstr("no video of B"));
        EXPECT_EQ(brightness(html), later ? 255 : 0) << offset;
    }
    // A and B change places, and the page is none the worse without the one.
    const auto swapped =
        run({"sheet", coupe, hatch, "--out", page, "--video-b", video, "--video-offset-b",
             std::to_string(moment_s - 10.3), "--stills", "slowest", "--still-corner", corner["name"]});
    ASSERT_EQ(swapped.status, 0) << swapped.err;
    EXPECT_EQ(brightness(read(page)), 255);
    EXPECT_THAT(read(page), HasSubstr("no video of A"));
    // A video of other moments leaves the sheet without stills, and says so.
    const auto none = run({"sheet", hatch, coupe, "--out", page, "--video-a", video, "--video-offset-a", "80000"});
    EXPECT_EQ(none.status, 0);
    EXPECT_THAT(none.err, HasSubstr("the sheet is without stills"));
    EXPECT_EQ(brightness(read(page)), -1);
}

TEST_F(StillsCommand, WrongWordsAreRefusedInOneLine) {
    const std::string hatch = sample("plover-saturday-2.csv");
    const std::string video = black_then_white();
    const std::string page = (scratch_.folder() / "sheet.html").string();
    const std::string bytes = read(video);
    EXPECT_EQ(run({"sheet", hatch, hatch, "--out", page, "--video-offset-a", "3"}).status, 2);
    EXPECT_EQ(run({"sheet", hatch, hatch, "--out", page, "--video-a", video, "--stills", "braking"}).status, 2);
    for (const auto& more : std::vector<std::vector<std::string>>{
             {"--out", page, "--video-a", scratch_.file("text.mp4", "no video\n")},
             {"--out", page, "--video-a", video, "--video-offset-a", "1", "--still-corner", "Nowhere"},
             {"--out", video, "--video-a", video}}) {
        std::vector<std::string> words{"sheet", hatch, sample("dunlin-saturday-2.txt")};
        words.insert(words.end(), more.begin(), more.end());
        const auto refused = run(words);
        EXPECT_EQ(refused.status, 1);
        EXPECT_EQ(std::count(refused.err.begin(), refused.err.end(), '\n'), 1) << refused.err;
    }
    EXPECT_EQ(read(video), bytes);
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
