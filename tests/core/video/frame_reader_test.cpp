// SPDX-License-Identifier: GPL-3.0-or-later
// The frame shown is exactly the one that a player shows at that time, for coded groups, reordered frames, variable
// rates, edit lists, turned pictures and files in a row.
#include "core/video/frame_reader.h"

#include "core/math/random.h"
#include "core/video/made_video.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <filesystem>
#include <gtest/gtest.h>
#include <ostream>
#include <thread>

namespace lapwright::video::tests {
namespace {

FrameReader reader_of(const std::vector<std::string>& paths, FrameReader::Options options = {}) {
    auto video = open_video(paths);
    EXPECT_TRUE(video.ok()) << (video.ok() ? "" : base::one_line(video.error()));
    return FrameReader(std::move(video).value(), options);
}

int number_at(FrameReader& reader, double time_s) {
    const auto frame = reader.at(time_s);
    EXPECT_TRUE(frame.ok()) << time_s << ": " << (frame.ok() ? "" : base::one_line(frame.error()));
    return frame.ok() ? number_in(*frame->picture).value_or(-2) : -1;
}

// The last frame that begins at or before the time, else the first.
int shown_at(const std::vector<double>& times_s, double time_s) {
    const auto later = std::ranges::upper_bound(times_s, time_s);
    return later == times_s.begin() ? 0 : static_cast<int>(later - times_s.begin()) - 1;
}

class Exact : public testing::TestWithParam<Recipe> {};

TEST_P(Exact, ThousandPlacesAtRandom) {
    const Workshop workshop;
    const MadeVideo made = workshop.make(GetParam());
    // A small cache: most places are decoded anew.
    FrameReader reader = reader_of({made.path}, {{}, 400'000});
    EXPECT_EQ(reader.facts().width, 128);
    EXPECT_EQ(reader.facts().height, 72);
    math::Random random(15);
    int wrong = 0;
    // As a cursor goes: a jump anywhere, then a few places near it.
    double around_s = 0.0;
    for (int i = 0; i < 1000; ++i) {
        if (i % 5 == 0) around_s = -0.5 + random.uniform() * (made.frame_times_s.back() + 1.0);
        double time_s = around_s + (i % 5 == 0 ? 0.0 : 1.2 * (random.uniform() - 0.4));
        // Every fourth place is the very beginning of a frame.
        if (i % 7 == 0) time_s = made.frame_times_s[random.below(made.frame_times_s.size())] + 1e-7;
        const int shown = number_at(reader, time_s);
        if (shown != shown_at(made.frame_times_s, time_s) && ++wrong < 10)
            ADD_FAILURE() << "at " << time_s << " s: " << shown;
    }
    EXPECT_EQ(wrong, 0);
}

std::vector<Recipe> recipes() {
    const std::string x265 = "-preset ultrafast -bf 3 -x265-params log-level=error:open-gop=1:scenecut=0:keyint=";
    return {
        {"h264_1s.mp4", "libx264", "-preset veryfast -bf 3", 25},
        {"h264_10s_variable.mp4", "libx264", "-preset veryfast -bf 3 -sc_threshold 0", 250, 500, true},
        {"h264_open_group.mkv", "libx264", "-preset veryfast -bf 3 -x264-params open-gop=1", 50},
        {"h264_2s.ts", "libx264", "-preset veryfast -bf 3", 50},
        {"h265_1s_variable.mp4", "libx265", x265 + "25", 25, 500, true},
        {"h265_10s.mp4", "libx265", x265 + "250", 250},
        {"mjpeg.avi", "mjpeg", "-q:v 3", 1, 250},
    };
}

INSTANTIATE_TEST_SUITE_P(Codecs, Exact, testing::ValuesIn(recipes()), [](const auto& tested) {
    std::string name = tested.param.name;
    std::ranges::replace(name, '.', '_');
    return name;
});

TEST(FrameReader, StepsForwardAndBackOverEveryFrame) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 30, 100, true});
    FrameReader reader = reader_of({made.path});
    auto frame = reader.at(0.0);
    ASSERT_TRUE(frame.ok());
    EXPECT_FALSE(*reader.before(*frame));
    std::vector<int> seen{number_in(*frame->picture).value_or(-1)};
    std::optional<Frame> last;
    for (std::optional<Frame> at = *frame; at; at = *reader.after(*at)) {
        if (last) seen.push_back(number_in(*at->picture).value_or(-1));
        last = at;
    }
    for (std::optional<Frame> at = *reader.before(*last); at; at = *reader.before(*at))
        seen.push_back(number_in(*at->picture).value_or(-1));
    std::vector<int> expected;
    for (int i = 0; i < 100; ++i)
        expected.push_back(i);
    for (int i = 98; i >= 0; --i)
        expected.push_back(i);
    EXPECT_EQ(seen, expected);
}

// What was decoded while nobody waited is the same, and lies ready: both ways, onwards alone, and within the room.
TEST(FrameReader, WhatLiesAroundIsDecodedAhead) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 120, 300, true});
    math::Random random(21);
    for (const std::size_t room : {std::size_t{96} << 20U, std::size_t{128 * 72 * 3 * 20}}) {
        FrameReader reader = reader_of({made.path}, {{}, room});
        for (int round = 0; round < 12; ++round) {
            const double around_s = random.uniform() * made.frame_times_s.back();
            ASSERT_EQ(number_at(reader, around_s), shown_at(made.frame_times_s, around_s));
            const bool both_ways = round % 2 == 0;
            reader.fill(around_s, both_ways ? 1.0 : 0.0, 1.0, {});
            int ready = 0;
            for (double time_s = around_s - 1.0; time_s < around_s + 1.0; time_s += 0.011) {
                ready += reader.known(time_s).has_value() ? 1 : 0;
                if (!reader.known(time_s).has_value()) continue;
                ASSERT_EQ(number_at(reader, time_s), shown_at(made.frame_times_s, time_s)) << time_s;
            }
            const bool roomy = room > 1'000'000;
            if (roomy && around_s > 1.0 && around_s < 10.5) {
                EXPECT_TRUE(reader.known(around_s + 0.95).has_value());
                EXPECT_TRUE(reader.known(around_s - 0.95).has_value() || !both_ways);
            }
            EXPECT_GT(ready, 20);
        }
    }
}

TEST(FrameReader, DecodingAheadStopsWhenItIsCalledOff) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 200, 200});
    FrameReader reader = reader_of({made.path});
    math::Random random(8);
    for (int round = 0; round < 40; ++round) {
        const double time_s = random.uniform() * 8.0;
        ASSERT_EQ(number_at(reader, time_s), shown_at(made.frame_times_s, time_s)) << time_s;
        std::size_t patience = random.below(40);
        reader.fill(time_s, 2.0, 2.0, [&patience] { return patience-- > 0; });
    }
}

TEST(FrameReader, FilesInARowAreOneVideo) {
    const Workshop workshop;
    MadeVideo made;
    for (int part = 0; part < 3; ++part) {
        Recipe recipe{"part" + std::to_string(part) + ".mp4", "libx264", "-preset veryfast -bf 2", 25, 50};
        recipe.first_number = 50 * part;
        for (const double time_s : workshop.make(recipe).frame_times_s)
            made.frame_times_s.push_back(2.0 * part + time_s);
    }
    FrameReader reader =
        reader_of({workshop.path("part0.mp4"), workshop.path("part1.mp4"), workshop.path("part2.mp4")});
    EXPECT_NEAR(reader.facts().length_s, 6.0, 1e-6);
    math::Random random(3);
    for (int i = 0; i < 300; ++i) {
        const double time_s = random.uniform() * 6.2;
        ASSERT_EQ(number_at(reader, time_s), shown_at(made.frame_times_s, time_s)) << time_s;
    }
    auto frame = reader.at(1.97);
    for (int number = 50; number < 55; ++number) {
        const auto next = reader.after(*frame);
        ASSERT_TRUE(next.ok() && next->has_value());
        EXPECT_EQ(number_in(*(*next)->picture), number);
        frame = **next;
    }
}

TEST(FrameReader, EditListBeginsInsideAGroup) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"whole.mp4", "libx264", "-preset veryfast -bf 3", 100, 300});
    // Cut without coding anew: the file holds the group's beginning, and its edit list leaves it out.
    workshop.run("-ss 1.5 -i whole.mp4 -c copy -avoid_negative_ts disabled cut.mp4");
    FrameReader reader = reader_of({workshop.path("cut.mp4")});
    math::Random random(5);
    const int first = number_at(reader, 0.0);
    EXPECT_GE(first, 37);
    EXPECT_LE(first, 38);
    for (int i = 0; i < 200; ++i) {
        const double time_s = random.uniform() * 9.0;
        const int shown = number_at(reader, time_s);
        ASSERT_NEAR(shown, 37.5 + time_s * 25.0, 1.01) << time_s;
    }
}

TEST(FrameReader, TurnedPictureIsShownUpright) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"flat.mp4", "libx264", "-preset veryfast", 25, 30});
    for (const int turn : {90, 180, 270}) {
        // The picture is stored turned by the clock; the word of ffmpeg 5.1 says by how much it is turned back.
        const std::string filter = turn == 90 ? "transpose=1" : (turn == 180 ? "hflip,vflip" : "transpose=2");
        workshop.run("-i flat.mp4 -vf " + filter + " -preset veryfast stored.mp4");
        workshop.run("-i stored.mp4 -c copy -metadata:s:v:0 rotate=" + std::to_string(turn) + " turned.mp4");
        FrameReader reader = reader_of({workshop.path("turned.mp4")});
        EXPECT_EQ(reader.facts().turned_deg, 360 - turn);
        EXPECT_EQ(reader.facts().width, 128);
        EXPECT_EQ(reader.facts().height, 72);
        for (const int number : {1, 7, 20})
            EXPECT_EQ(number_at(reader, number * 0.04 + 0.01), number) << turn;
    }
}

TEST(FrameReader, PictureFitsThePanelAndKeepsItsShape) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast", 25, 10});
    FrameReader reader = reader_of({made.path}, {{64, 64}});
    const auto frame = reader.at(0.2);
    ASSERT_TRUE(frame.ok());
    EXPECT_EQ(frame->picture->width, 64);
    EXPECT_EQ(frame->picture->height, 36);
    EXPECT_EQ(number_in(*frame->picture), 5);
}

TEST(FrameReader, CalledOffItGoesOnLater) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 200, 200});
    FrameReader reader = reader_of({made.path});
    math::Random random(9);
    for (int i = 0; i < 60; ++i) {
        const double time_s = random.uniform() * 8.0;
        std::size_t patience = random.below(60);
        const auto impatient = reader.at(time_s, [&patience] { return patience-- > 0; });
        if (!impatient) {
            EXPECT_EQ(impatient.error().code, base::ErrorCode::cancelled);
        }
        ASSERT_EQ(number_at(reader, time_s), shown_at(made.frame_times_s, time_s)) << time_s;
    }
}

// Those that are passed are themselves exact, come in order, and end before the one that is wanted.
TEST(FrameReader, PassedFramesLieOnTheWay) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 250, 250, true});
    FrameReader::Options options;
    options.moment = std::chrono::milliseconds(0);
    FrameReader reader = reader_of({made.path}, options);
    math::Random random(12);
    int passed = 0;
    for (int i = 0; i < 20; ++i) {
        const double time_s = 2.0 + random.uniform() * 7.0;
        double last_s = -1.0;
        const auto frame = reader.at(time_s, {}, [&](const Frame& earlier) {
            ++passed;
            EXPECT_GT(earlier.time_s, last_s);
            EXPECT_LT(earlier.time_s, time_s);
            EXPECT_EQ(number_in(*earlier.picture), shown_at(made.frame_times_s, earlier.time_s + 1e-6));
            last_s = earlier.time_s;
        });
        ASSERT_TRUE(frame.ok());
        ASSERT_EQ(number_in(*frame->picture), shown_at(made.frame_times_s, time_s)) << time_s;
    }
    EXPECT_GT(passed, 100);
}

// Those just before are decoded once, on the way.
TEST(FrameReader, WhatLiesJustBeforeIsKeptInLongGroups) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 250, 250, true});
    FrameReader reader = reader_of({made.path});
    ASSERT_EQ(number_at(reader, 8.0), shown_at(made.frame_times_s, 8.0));
    for (double time_s = 7.55; time_s < 8.0; time_s += 0.011) {
        ASSERT_TRUE(reader.known(time_s).has_value()) << time_s;
        EXPECT_EQ(number_at(reader, time_s), shown_at(made.frame_times_s, time_s)) << time_s;
    }
    EXPECT_FALSE(reader.known(7.0).has_value());
}

const GoOn nobody_waits = [] { return false; };

// What was read ahead is there without decoding, and is the frame itself: wherever reading ahead was called off or
// another frame was wanted meanwhile, in files in a row, within the room.
TEST(FrameReader, WhatWasReadAheadNeedsNoDecoding) {
    const Workshop workshop;
    math::Random random(44);
    for (const auto& [options, group] : {std::pair{"-preset veryfast -bf 3", 250}, {"-preset veryfast -bf 3", 20}}) {
        const MadeVideo made = workshop.make({"a.mp4", "libx264", options, group, 250, true});
        FrameReader reader = reader_of({made.path}, {{}, 400'000});
        for (int i = 0; i < 12; ++i) {
            int patience = static_cast<int>(random.below(150));
            const double around_s = 2.0 + 5.0 * random.uniform();
            reader.read_ahead(1.5, 8.0, around_s, [&patience] { return patience-- > 0; });
            ASSERT_EQ(number_at(reader, around_s), shown_at(made.frame_times_s, around_s));
            if (i % 3 == 0) reader.fill(around_s, 0.3, 0.3, {});
            patience = static_cast<int>(random.below(50));
            static_cast<void>(reader.at(8.0 * random.uniform(), [&patience] { return patience-- > 0; }));
        }
        reader.read_ahead(1.5, 8.0, 4.0, {});
        for (int i = 0; i < 200; ++i) {
            const double time_s = 1.5 + 6.5 * random.uniform();
            const auto frame = reader.at(time_s, nobody_waits);
            ASSERT_TRUE(frame.ok()) << time_s;
            ASSERT_EQ(number_in(*frame->picture), shown_at(made.frame_times_s, time_s)) << time_s;
        }
    }
}

// Larger pictures than are kept: the frame itself at once, small; then as large as it is wanted.
TEST(FrameReader, KeptPicturesStandInForLargerOnes) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 250, 250});
    FrameReader::Options options;
    options.cache_bytes = 100'000;
    options.kept_limits = {96, 54};
    FrameReader reader = reader_of({made.path}, options);
    reader.read_ahead(0.0, 10.0, 5.0, {});
    math::Random random(5);
    for (int i = 0; i < 20; ++i) {
        const double time_s = 9.5 * random.uniform();
        if (reader.known(time_s)) continue;
        std::vector<Frame> passed;
        const auto frame = reader.at(time_s, {}, [&passed](const Frame& meanwhile) { passed.push_back(meanwhile); });
        ASSERT_TRUE(frame.ok());
        ASSERT_EQ(passed.size(), 1U);
        EXPECT_EQ(passed[0].time_s, frame->time_s);
        EXPECT_EQ(passed[0].until_s, frame->until_s);
        EXPECT_EQ(passed[0].picture->width, 96);
        EXPECT_EQ(frame->picture->width, 128);
        EXPECT_EQ(number_in(*frame->picture), shown_at(made.frame_times_s, time_s));
    }
}

TEST(KeptFrames, KeepTheirBoundAndWhatIsNear) {
    KeptFrames kept(1000);
    const auto frame = [](int i) { return KeptFrame{0.1 * i, 0.1 * (i + 1), std::string(300, 'x')}; };
    for (const int i : {5, 6, 7})
        EXPECT_TRUE(kept.put(frame(i), 0.5));
    EXPECT_FALSE(kept.put(frame(9), 0.5)); // further than all
    EXPECT_TRUE(kept.put(frame(4), 0.5));  // nearer than the last
    EXPECT_EQ(kept.find(0.75), nullptr);
    for (const double time_s : {0.45, 0.55, 0.65})
        EXPECT_NE(kept.find(time_s), nullptr) << time_s;
    EXPECT_TRUE(kept.put(frame(1), 0.15));
    EXPECT_EQ(kept.find(0.65), nullptr);
    EXPECT_EQ(kept.find(0.05), nullptr);
    EXPECT_FALSE(kept.put({2.0, 2.1, std::string(2000, 'x')}, 2.0));
}

// As the window does: one thread decodes, another takes what is there.
TEST(FrameReader, AnotherThreadSeesWhatIsKnown) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast -bf 3", 50, 250});
    FrameReader reader = reader_of({made.path}, {{}, 2'000'000});
    std::atomic<bool> ended = false;
    std::thread decoding([&] {
        math::Random random(3);
        for (int i = 0; i < 60; ++i)
            if (const auto frame = reader.at(random.uniform() * 9.0); frame) reader.fill(frame->time_s, 0.5, 0.5, {});
        ended = true;
    });
    math::Random random(4);
    int seen = 0;
    while (!ended) {
        const double time_s = random.uniform() * 9.0;
        const auto known = reader.known(time_s);
        if (!known) continue;
        ++seen;
        EXPECT_EQ(number_in(*known->picture), shown_at(made.frame_times_s, time_s)) << time_s;
    }
    decoding.join();
    EXPECT_GT(seen, 0);
}

TEST(FrameReader, FitsAnotherSizeFromThereOn) {
    const Workshop workshop;
    const MadeVideo made = workshop.make({"a.mp4", "libx264", "-preset veryfast", 25, 50});
    FrameReader reader = reader_of({made.path});
    ASSERT_EQ(reader.at(0.5)->picture->width, 128);
    reader.fit({64, 64});
    EXPECT_FALSE(reader.known(0.5));
    EXPECT_EQ(reader.at(0.5)->picture->width, 64);
    EXPECT_EQ(number_at(reader, 0.5), 12);
}

TEST(FrameCache, KeepsWhatIsNearAndItsBound) {
    FrameCache cache(1000);
    const auto picture = std::make_shared<const Picture>(Picture{10, 10, std::vector<std::uint8_t>(300)});
    for (int i = 0; i < 10; ++i) {
        cache.put({0.1 * i, 0.1 * (i + 1), picture}, 0.1 * i);
        EXPECT_LE(cache.bytes(), 1000U);
    }
    EXPECT_TRUE(cache.find(0.95));
    EXPECT_TRUE(cache.find(0.75));
    EXPECT_FALSE(cache.find(0.65));
    cache.put({0.3, 0.4, picture}, 0.3);
    EXPECT_TRUE(cache.find(0.35));
    EXPECT_FALSE(cache.find(0.95));
    EXPECT_FALSE(cache.find(0.2));
}

} // namespace

void PrintTo(const Recipe& recipe, std::ostream* out) {
    *out << recipe.name;
}

} // namespace lapwright::video::tests
