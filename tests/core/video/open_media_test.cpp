// SPDX-License-Identifier: GPL-3.0-or-later
// Facts and sound of good files; one sentence for each kind of bad one.
#include "core/video/open_media.h"

#include "core/math/random.h"
#include "core/video/frame_reader.h"
#include "core/video/made_video.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <iterator>
#include <sys/resource.h>
#include <utility>

namespace lapwright::video::tests {
namespace {

namespace fs = std::filesystem;

std::string what_is_wrong(const std::string& path) {
    const auto opened = open_media(path);
    if (opened) return "";
    EXPECT_EQ(opened.error().code, base::ErrorCode::file_not_readable);
    EXPECT_EQ(opened.error().place.file, path);
    EXPECT_FALSE(opened.error().remedy.empty());
    return opened.error().what;
}

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

// All that a panel does with it; true where a frame came.
bool look_through(const std::string& path) {
    auto video = open_video({path});
    if (!video) {
        EXPECT_FALSE(video.error().what.empty());
        return false;
    }
    FrameReader reader(std::move(video).value(), {});
    bool seen = false;
    for (const double time_s : {0.0, 3.0, 1.0, 1e9, -1.0, reader.facts().length_s}) {
        const auto frame = reader.at(time_s);
        EXPECT_TRUE(frame.ok() || frame.error().place.file == path);
        seen = seen || frame.ok();
    }
    return seen;
}

TEST(OpenMedia, FactsOfAFile) {
    const Workshop workshop;
    Recipe recipe{"a.mp4"};
    recipe.frames = 100;
    recipe.before_input = "-f lavfi -t 4 -i sine=440";
    recipe.at_end = "-c:a aac -metadata creation_time=2026-05-16T10:20:03Z";
    const auto file = open_media(workshop.make(recipe).path);
    ASSERT_TRUE(file.ok());
    const Facts& facts = (*file)->facts();
    EXPECT_EQ(facts.codec, "h264");
    EXPECT_NEAR(facts.rate_hz, 25.0, 1e-9);
    EXPECT_NEAR(facts.length_s, 4.0, 1e-3);
    EXPECT_TRUE(facts.sound);
    ASSERT_TRUE(facts.created_unix_s);
    EXPECT_EQ(*facts.created_unix_s, 1778926803.0);
}

TEST(OpenMedia, WithoutSoundAndCreationTimeTheyAreAbsent) {
    const Workshop workshop;
    const auto file = open_media(workshop.make({"a.mp4"}).path);
    ASSERT_TRUE(file.ok());
    EXPECT_FALSE((*file)->facts().sound);
    EXPECT_FALSE((*file)->facts().created_unix_s);
    const auto sound = (*file)->sound(0.0, 10.0, 2000.0, {});
    ASSERT_TRUE(sound.ok());
    EXPECT_TRUE(sound->samples.empty());
}

// A tone begins at 1.5 s; where it begins must not depend on where reading begins.
TEST(OpenMedia, SoundLiesAtItsTime) {
    const Workshop workshop;
    Recipe recipe{"a.mp4"};
    recipe.frames = 100;
    recipe.before_input = "-f lavfi -t 4 -i 'aevalsrc=0.8*sin(2*PI*300*t)*gt(t\\,1.5):s=48000'";
    for (const std::string codec : {"aac", "libmp3lame"}) {
        recipe.at_end = "-c:a " + codec;
        const auto file = open_media(workshop.make(recipe).path);
        ASSERT_TRUE(file.ok());
        for (const double from_s : {0.0, 0.73, 1.2}) {
            const auto sound = (*file)->sound(from_s, 3.0, 2000.0, {});
            ASSERT_TRUE(sound.ok());
            ASSERT_NEAR(static_cast<double>(sound->samples.size()), (3.0 - from_s) * 2000.0, 2.0);
            std::size_t first = 0;
            while (first < sound->samples.size() && std::abs(sound->samples[first]) < 0.4F)
                ++first;
            EXPECT_NEAR(from_s + static_cast<double>(first) / 2000.0, 1.5, 0.004) << codec << " from " << from_s;
        }
    }
}

TEST(OpenMedia, EachBadFileIsOneSentence) {
    const Workshop workshop;
    EXPECT_EQ(what_is_wrong(workshop.path("nowhere.mp4")), "the video is not there");
    EXPECT_EQ(what_is_wrong(workshop.path("")), "this is no file");
    write(workshop.path("empty.mp4"), "");
    EXPECT_EQ(what_is_wrong(workshop.path("empty.mp4")), "the video is empty");
    write(workshop.path("text.mp4"), "time,speed\n0,1\n1,2\nffconcat version 1.0\nfile /etc/passwd\n");
    EXPECT_EQ(what_is_wrong(workshop.path("text.mp4")), "this is no video of a kind that can be read");
    write(workshop.path("list.mp4"), "ffconcat version 1.0\nfile 'good.mp4'\n");
    EXPECT_EQ(what_is_wrong(workshop.path("list.mp4")), "this is no video of a kind that can be read");
    const std::string good = bytes_of(workshop.make({"good.mp4"}).path);
    write(workshop.path("cut.mp4"), good.substr(0, good.size() / 2));
    EXPECT_EQ(what_is_wrong(workshop.path("cut.mp4")), "the video was cut off before its index was written");
    workshop.run("-f lavfi -i sine -t 2 -c:a aac sound.mp4");
    EXPECT_EQ(what_is_wrong(workshop.path("sound.mp4")), "there is no picture in this file");
    workshop.run("-f lavfi -i color=s=16000x3000 -frames:v 1 -c:v mjpeg wide.mkv");
    EXPECT_EQ(what_is_wrong(workshop.path("wide.mkv")), "its picture of 16000 × 3000 is larger than can be decoded");
}

double peak_memory_mb() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    return static_cast<double>(used.ru_maxrss) / 1024.0;
}

TEST(OpenMedia, NoFrameAtAllIsSaid) {
    const Workshop workshop;
    for (const std::string name : {"zero.mp4", "zero.mkv"}) {
        workshop.run("-f lavfi -i color=s=128x72 -frames:v 0 -c:v libx264 " + name + " 2> said");
        const std::string path = workshop.path(name);
        auto video = open_video({path});
        if (!video) {
            EXPECT_EQ(video.error().place.file, path);
            continue;
        }
        FrameReader reader(std::move(video).value(), {});
        const auto frame = reader.at(0.5);
        ASSERT_FALSE(frame.ok());
        EXPECT_EQ(frame.error().what, "the video holds no frame that can be decoded");
    }
}

// The head says that it lasts for days.
TEST(OpenMedia, FalseLengthDoesNotMatter) {
    const Workshop workshop;
    std::string bytes = bytes_of(workshop.make({"good.mp4", "libx264", "-preset veryfast -bf 2", 25, 100}).path);
    constexpr std::size_t to_length = 4 + 4 + 4 + 4 + 4; // name, version, two moments, time scale (ISO 14496-12, 8.4.2)
    const std::size_t head = bytes.find("mdhd");
    ASSERT_NE(head, std::string::npos);
    bytes.replace(head + to_length, 4, "\x7f\xff\xff\xff");
    const std::string path = workshop.path("long.mp4");
    write(path, bytes);
    auto video = open_video({path});
    ASSERT_TRUE(video.ok());
    FrameReader reader(std::move(video).value(), {});
    for (const auto& [time_s, number] :
         std::vector<std::pair<double, int>>{{1e6, 99}, {2.02, 50}, {-5.0, 0}, {3.98, 99}}) {
        const auto frame = reader.at(time_s);
        ASSERT_TRUE(frame.ok()) << time_s;
        EXPECT_EQ(number_in(*frame->picture), number) << time_s;
    }
}

// Back to their beginning halfway, and days onwards: shown is what has a time that goes on.
TEST(OpenMedia, JumpingStampsAreGotOver) {
    const Workshop workshop;
    const std::string once = bytes_of(workshop.make({"once.ts", "libx264", "-preset veryfast -bf 2", 25, 50}).path);
    write(workshop.path("back.ts"), once + once);
    Recipe onwards{"onwards.mkv", "libx264", "-preset veryfast -bf 0 -fps_mode passthrough -enc_time_base 1:1000", 25,
                   60};
    onwards.at_end = "-vf 'settb=1/1000,setpts=40*N+if(gte(N\\,30)\\,200000000\\,0)'";
    static_cast<void>(workshop.make(onwards));
    for (const std::string name : {"back.ts", "onwards.mkv"}) {
        auto video = open_video({workshop.path(name)});
        ASSERT_TRUE(video.ok()) << name;
        FrameReader reader(std::move(video).value(), {});
        const auto early = reader.at(0.5);
        ASSERT_TRUE(early.ok()) << name;
        EXPECT_EQ(number_in(*early->picture), 12) << name;
        double last_s = -1.0;
        for (auto frame = std::optional(*reader.at(0.0)); frame; frame = *reader.after(*frame)) {
            ASSERT_GT(frame->time_s, last_s) << name;
            last_s = frame->time_s;
        }
        EXPECT_TRUE(reader.at(1e4).ok()) << name;
    }
    EXPECT_LT(peak_memory_mb(), 512.0);
}

TEST(OpenMedia, OneFrameIsAVideo) {
    const Workshop workshop;
    Recipe recipe{"one.mp4"};
    recipe.frames = 1;
    auto video = open_video({workshop.make(recipe).path});
    ASSERT_TRUE(video.ok());
    FrameReader reader(std::move(video).value(), {});
    for (const double time_s : {-1.0, 0.0, 0.02, 5.0}) {
        const auto frame = reader.at(time_s);
        ASSERT_TRUE(frame.ok());
        EXPECT_EQ(number_in(*frame->picture), 0);
        EXPECT_FALSE(*reader.before(*frame));
        EXPECT_FALSE(*reader.after(*frame));
    }
}

// The tail is gone, but the index lies in front: what is there is shown.
TEST(OpenMedia, CutTailShowsWhatIsThere) {
    const Workshop workshop;
    Recipe recipe{"front.mp4"};
    recipe.at_end = "-movflags +faststart";
    const std::string good = bytes_of(workshop.make(recipe).path);
    write(workshop.path("cut.mp4"), good.substr(0, good.size() * 6 / 10));
    auto video = open_video({workshop.path("cut.mp4")});
    ASSERT_TRUE(video.ok());
    FrameReader reader(std::move(video).value(), {});
    const auto frame = reader.at(2.02);
    ASSERT_TRUE(frame.ok());
    EXPECT_EQ(number_in(*frame->picture), 50);
    const auto last = reader.at(19.0);
    ASSERT_TRUE(last.ok());
    EXPECT_GT(last->time_s, 5.0);
}

TEST(OpenMedia, VanishingFileEndsInASentence) {
    const Workshop workshop;
    Recipe recipe{"a.mp4"};
    recipe.at_end = "-movflags +faststart";
    const std::string path = workshop.make(recipe).path;
    auto video = open_video({path});
    ASSERT_TRUE(video.ok());
    FrameReader reader(std::move(video).value(), {});
    ASSERT_TRUE(reader.at(1.0).ok());
    fs::resize_file(path, 0);
    const auto frame = reader.at(18.0);
    EXPECT_TRUE(frame.ok() || frame.error().place.file == path);
}

// Bytes turned over at random in a small file of each container: never a crash, a hang or a silent error.
TEST(OpenMedia, DamagedBytes) {
    const Workshop workshop;
    math::Random random(77);
    for (const std::string name : {"a.mp4", "a.mkv", "a.ts", "a.avi"}) {
        Recipe recipe{name};
        recipe.frames = 40;
        if (name == "a.avi") recipe.codec_options = "-bf 0";
        const std::string good = bytes_of(workshop.make(recipe).path);
        const std::string bad_path = workshop.path("bad_" + name);
        for (int round = 0; round < 40; ++round) {
            std::string bad = good;
            // Heads and indices stand at the ends.
            const std::size_t reach = round % 2 == 0 ? std::min<std::size_t>(bad.size(), 2000) : bad.size();
            for (int i = 0; i < 12; ++i) {
                const std::size_t place = random.below(reach);
                bad[i % 2 == 0 ? place : bad.size() - 1 - place] = static_cast<char>(random.below(256));
            }
            if (round % 5 == 0) bad.resize(random.below(bad.size()) + 1);
            write(bad_path, bad);
            look_through(bad_path);
        }
    }
}

} // namespace
} // namespace lapwright::video::tests
