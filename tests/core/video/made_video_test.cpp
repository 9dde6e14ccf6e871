// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/made_video.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <gtest/gtest.h>

namespace lapwright::video::tests {
namespace {

constexpr int squares = 4; // in a row and in a column
constexpr int width = 128;
constexpr int height = 72;

std::vector<std::uint8_t> numbered(int number) {
    std::vector<std::uint8_t> gray(static_cast<std::size_t>(width) * height);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const int bit = (y * squares / height) * squares + x * squares / width;
            gray[static_cast<std::size_t>(y * width + x)] = ((number >> bit) & 1) != 0 ? 255 : 0;
        }
    return gray;
}

// Milliseconds; steps of 28, 52 and 40 in turn where the rate varies.
int stamp_ms(int frame, bool variable_rate) {
    return 40 * frame + (variable_rate ? 12 * ((frame * frame) % 3) : 0);
}

} // namespace

Workshop::Workshop() {
    std::string pattern = std::filesystem::temp_directory_path() / ("lapwright-video-" + std::string(6, 'X'));
    folder_ = ::mkdtemp(pattern.data());
}
Workshop::~Workshop() {
    std::filesystem::remove_all(folder_);
}

void Workshop::run(const std::string& words) const {
    const std::string line = "cd " + folder_ + " && ffmpeg -nostdin -v error -y " + words;
    ASSERT_EQ(std::system(line.c_str()), 0) << line;
}

MadeVideo Workshop::make(const Recipe& recipe) const {
    MadeVideo made{path(recipe.name), {}};
    std::string line = "cd " + folder_ + " && ffmpeg -v error -y " + recipe.before_input +
                       " -f rawvideo -pix_fmt gray -s 128x72 -r 25 -i - ";
    if (recipe.variable_rate)
        line += "-vf 'settb=1/1000,setpts=40*N+12*mod(N*N\\,3)' -fps_mode passthrough -enc_time_base 1:1000 ";
    line += "-pix_fmt yuv420p -c:v " + recipe.codec + " " + recipe.codec_options + " -g " +
            std::to_string(recipe.group) + " " + recipe.at_end + " " + recipe.name;
    FILE* const encoder = ::popen(line.c_str(), "w");
    for (int i = 0; i < recipe.frames; ++i) {
        const auto picture = numbered(recipe.first_number + i);
        std::fwrite(picture.data(), 1, picture.size(), encoder);
        made.frame_times_s.push_back(stamp_ms(i, recipe.variable_rate) / 1000.0);
    }
    EXPECT_EQ(::pclose(encoder), 0) << line;
    return made;
}

std::optional<int> number_in(const Picture& picture) {
    int number = 0;
    for (int bit = 0; bit < squares * squares; ++bit) {
        const int x = (2 * (bit % squares) + 1) * picture.width / (2 * squares);
        const int y = (2 * (bit / squares) + 1) * picture.height / (2 * squares);
        const int green = picture.rgb[static_cast<std::size_t>(y * picture.width + x) * 3 + 1];
        if (green > 80 && green < 170) return {};
        number |= (green > 127 ? 1 : 0) << bit;
    }
    return number;
}

TEST(MadeVideo, NumberIsReadBack) {
    for (const int number : {0, 1, 1234, 65535}) {
        Picture picture{width, height, {}};
        for (const std::uint8_t gray : numbered(number))
            picture.rgb.insert(picture.rgb.end(), 3, gray);
        EXPECT_EQ(number_in(picture), number);
    }
}

} // namespace lapwright::video::tests
