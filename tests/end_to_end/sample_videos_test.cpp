// SPDX-License-Identifier: GPL-3.0-or-later
// The demo's videos against the simulator's truth: put in step by their sound and, with the sound taken away, by their
// picture; and not with the recording of the other car.
#include "tests/end_to_end/program.h"
#include "tests/truth/sample_videos.h"

#include <cmath>
#include <cstdlib>
#include <gmock/gmock.h>

namespace lapwright::end_to_end {
namespace {

TEST(SampleVideos, AreThoseOfTheSimulatorAndSmall) {
    for (const truth::SampleVideo& video : truth::sample_videos()) {
        EXPECT_LT(std::filesystem::file_size(sample(video.file)), 3'000'000U) << video.file;
        const auto found = document({"video", sample(video.recording), sample(video.file), "--json"});
        EXPECT_EQ(found["video"]["width"], video.film.camera.width);
        EXPECT_NEAR(found["video"]["rate_hz"].get<double>(), video.film.camera.rate_hz, 0.01);
        EXPECT_NEAR(found["video"]["length_s"].get<double>(), video.film.length_s, 0.2);
        ASSERT_FALSE(found["in_step"].is_null()) << found["reasons"];
        EXPECT_EQ(found["in_step"]["method"], "sound_and_engine_speed");
        EXPECT_NEAR(found["in_step"]["offset_s"].get<double>(), video.film.camera.from_s, 0.05) << video.file;
        EXPECT_THAT(found["reasons"].dump(), testing::HasSubstr("at the same offset"));
    }
}

TEST(SampleVideos, WithoutSoundThePictureTells) {
    const Scratch scratch;
    const std::string silent = (scratch.folder() / "silent.mp4").string();
    for (const truth::SampleVideo& video : truth::sample_videos()) {
        const std::string line = "ffmpeg -nostdin -v error -y -i " + sample(video.file) + " -an -c copy " + silent;
        ASSERT_EQ(std::system(line.c_str()), 0);
        const auto found = document({"video", sample(video.recording), silent, "--json"});
        ASSERT_FALSE(found["in_step"].is_null()) << found["reasons"];
        EXPECT_EQ(found["in_step"]["method"], "picture_and_turning");
        const double offset_s = found["in_step"]["offset_s"].get<double>();
        EXPECT_NEAR(offset_s, video.film.camera.from_s, 0.12) << video.file;
        EXPECT_LT(found["in_step"]["offset_low_s"], offset_s);
    }
}

// The picture of one lap under the sound of a moment two seconds later: who is right cannot be told.
TEST(SampleVideos, SoundAndPictureThatDisagreeAreNotBelieved) {
    const Scratch scratch;
    const truth::SampleVideo video = truth::sample_videos().front();
    const std::string moved = (scratch.folder() / "moved.mp4").string();
    const std::string line = "ffmpeg -nostdin -v error -y -i " + sample(video.file) + " -itsoffset 2 -i " +
                             sample(video.file) + " -map 0:v -map 1:a -c copy " + moved;
    ASSERT_EQ(std::system(line.c_str()), 0);
    const auto found = document({"video", sample(video.recording), moved, "--json"});
    EXPECT_TRUE(found["in_step"].is_null());
    EXPECT_THAT(found["reasons"].dump(), testing::HasSubstr("sound and picture disagree by 2."));
}

TEST(SampleVideos, OfTheOtherCarDoNotFit) {
    const auto videos = truth::sample_videos();
    const auto found = document({"video", sample(videos[1].recording), sample(videos[0].file), "--json"});
    EXPECT_TRUE(found["in_step"].is_null()) << found["in_step"];
}

} // namespace
} // namespace lapwright::end_to_end
