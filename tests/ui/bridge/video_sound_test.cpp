// SPDX-License-Identifier: GPL-3.0-or-later
// What is sent to the device while a video plays is that passage's own samples, at the time of its pictures.
#include "ui/bridge/video_sound.h"

#include "core/video/made_video.h"
#include "tests/ui/fixture/heard_sound.h"
#include "tests/ui/fixture/waiting.h"

#include <QSignalSpy>
#include <gtest/gtest.h>

using namespace lapwright;

namespace {

constexpr int rate = bridge::VideoSound::rate_hz;

class VideoSoundTest : public testing::Test {
  protected:
    [[nodiscard]] std::string coded_video(double length_s) {
        fixture::write_coded_sound(workshop.path("sound.raw"), length_s);
        video::tests::Recipe recipe{"coded.mov", "libx264", "-preset ultrafast"};
        recipe.frames = static_cast<int>(25 * length_s);
        recipe.before_input = "-f s16le -ar 48000 -ac 1 -i sound.raw ";
        recipe.at_end = "-c:a pcm_s16le ";
        return workshop.make(recipe).path;
    }
    video::tests::Workshop workshop;
    fixture::HeardSound heard;
    bridge::VideoSound sound{heard.opener()};
};

// Each sample follows the one before; where the machine was too busy some may be left out, between two writes.
void expect_one_passage(const fixture::Passage& passage, double from_s, double asked_before_s) {
    ASSERT_FALSE(passage.samples.empty());
    const int first = fixture::code_of(passage.samples.front());
    const int wanted = static_cast<int>(from_s * rate) % fixture::sound_codes;
    const int late = (first - wanted + fixture::sound_codes) % fixture::sound_codes;
    EXPECT_NEAR(late, asked_before_s * rate, 0.03 * rate); // what passed until it began is not heard
    std::size_t write = 0;
    int left_out = 0;
    for (std::size_t n = 1; n < passage.samples.size(); ++n) {
        while (write < passage.writes.size() && passage.writes[write] < n)
            ++write;
        const int step =
            (fixture::code_of(passage.samples[n]) - fixture::code_of(passage.samples[n - 1]) + fixture::sound_codes) %
            fixture::sound_codes;
        const bool between_writes = write < passage.writes.size() && passage.writes[write] == n;
        ASSERT_TRUE(step == 1 || between_writes) << "sample " << n << " follows by " << step;
        left_out += step == 1 ? 0 : 1;
    }
    EXPECT_LE(left_out, 2);
}

// Long enough to come to the second and third piece that is read.
TEST_F(VideoSoundTest, SendsThePassagesOwnSamples) {
    const std::string path = coded_video(12.0);
    const auto asked = std::chrono::steady_clock::now();
    sound.play({path}, 3.2);
    ASSERT_TRUE(fixture::wait_for([&] { return heard.samples() > 5U * rate; }, 30'000));
    sound.stop();
    const auto passages = heard.passages();
    ASSERT_EQ(passages.size(), 1U);
    expect_one_passage(passages[0], 3.2, std::chrono::duration<double>(passages[0].began - asked).count());
}

TEST_F(VideoSoundTest, StopsAndBeginsElsewhere) {
    const std::string path = coded_video(12.0);
    sound.play({path}, 1.0);
    ASSERT_TRUE(fixture::wait_for([&] { return heard.samples() > rate / 2U; }, 10'000));
    const auto asked = std::chrono::steady_clock::now();
    sound.play({path}, 8.5);
    ASSERT_TRUE(fixture::wait_for([&] { return heard.passages().size() == 2U; }, 10'000));
    ASSERT_TRUE(fixture::wait_for([&] { return heard.passages()[1].samples.size() > rate / 2U; }, 10'000));
    sound.stop();
    QTest::qWait(200);
    const std::size_t sent = heard.samples();
    QTest::qWait(300);
    EXPECT_EQ(heard.samples(), sent);
    const auto passages = heard.passages();
    expect_one_passage(passages[1], 8.5, std::chrono::duration<double>(passages[1].began - asked).count());
}

TEST_F(VideoSoundTest, EndsWithTheVideo) {
    const std::string path = coded_video(3.0);
    sound.play({path}, 2.0);
    ASSERT_TRUE(fixture::wait_for([&] { return heard.samples() > rate / 2U; }, 10'000));
    QTest::qWait(1500);
    EXPECT_LE(heard.samples(), 1U * rate);
    EXPECT_EQ(fixture::code_of(heard.passages()[0].samples.back()), (3 * rate - 1) % fixture::sound_codes);
}

TEST_F(VideoSoundTest, SaysWhyNothingIsHeard) {
    const std::string silent = workshop.make({"silent.mp4", "libx264", "-preset ultrafast", 25, 50}).path;
    QSignalSpy refused(&sound, &bridge::VideoSound::refused);
    sound.play({silent}, 0.0);
    ASSERT_TRUE(fixture::wait_for([&] { return refused.size() == 1; }, 10'000));
    EXPECT_EQ(refused[0][0].toString(), QStringLiteral("the video holds none"));
    bridge::VideoSound nowhere([](int) { return nullptr; });
    QSignalSpy without(&nowhere, &bridge::VideoSound::refused);
    nowhere.play({coded_video(2.0)}, 0.0);
    ASSERT_TRUE(fixture::wait_for([&] { return without.size() == 1; }, 10'000));
    EXPECT_EQ(without[0][0].toString(), QStringLiteral("this machine has no device for it"));
}

} // namespace
