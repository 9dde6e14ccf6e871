// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/truth/camera.h"

#include <cmath>
#include <gtest/gtest.h>

#include "tests/truth/car.h"
#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

const Session& driven() {
    static const Session session = [] {
        SessionPlan plan;
        plan.flying_laps = 1;
        return drive_session(ternbank(), light_aero_hatch(), DriverTruth{}, plan, 1);
    }();
    return session;
}

TEST(Camera, EachFrameBearsItsNumber) {
    CameraRecipe recipe;
    recipe.width = 160;
    recipe.height = 90;
    const Camera camera(driven(), recipe);
    for (const int number : {0, 1, 777, 2500})
        EXPECT_EQ(frame_number(camera.frame(number)), number);
}

// The column of the upper part of the picture moves by the turned angle times the focal length.
TEST(Camera, HillsMoveWithTheHeading) {
    CameraRecipe recipe;
    recipe.shake_rad = 0.0;
    recipe.rate_hz = 10.0;
    recipe.from_s = driven().lap(1).start_s;
    const Camera camera(driven(), recipe);
    const double focal = 0.5 * recipe.width / std::tan(0.5 * recipe.field_rad);
    int turning = 0;
    for (int number = 0; number < 300; number += 7) {
        const double turned = driven().at_time(camera.session_s(number + 1)).heading_rad -
                              driven().at_time(camera.session_s(number)).heading_rad;
        if (std::abs(turned) < 0.02) continue;
        ++turning;
        const Pixels one = camera.frame(number);
        const Pixels next = camera.frame(number + 1);
        double least = 1e18;
        int best = 0;
        for (int shift = -90; shift <= 90; ++shift) {
            double sum = 0.0;
            int count = 0;
            for (int y = 60; y < 115; ++y)
                for (int x = 190; x < 290; ++x) { // the middle, where an angle is a width
                    const int from = x - shift;
                    if (from < 0 || from >= one.width) continue;
                    const auto at = [&](const Pixels& p, int px) {
                        return static_cast<double>(p.rgb[3U * static_cast<std::size_t>(y * p.width + px) + 1U]);
                    };
                    sum += std::abs(at(next, x) - at(one, from));
                    ++count;
                }
            if (count > 0 && sum / count < least) {
                least = sum / count;
                best = shift;
            }
        }
        // A turn to the left moves what is far to the right.
        EXPECT_NEAR(best, turned * focal, 4.0 + 0.15 * std::abs(turned * focal)) << number;
    }
    EXPECT_GT(turning, 5);
}

TEST(Camera, EngineIsHeardAtItsFiringOrder) {
    EngineRecipe recipe;
    recipe.from_s = driven().lap(1).start_s + 20.0;
    recipe.length_s = 0.1;
    recipe.rate_hz = 8000.0;
    recipe.engine_over_noise_db = 30.0;
    const double hz = recipe.firing_order * driven().at_time(recipe.from_s + 0.05).engine_rpm / 60.0;
    const std::vector<float> sound = engine_sound(driven(), recipe);
    const auto power_at = [&](double frequency_hz) {
        double c = 0.0;
        double s = 0.0;
        for (std::size_t i = 0; i < sound.size(); ++i) {
            const double phase = 2.0 * 3.14159265358979 * frequency_hz * static_cast<double>(i) / recipe.rate_hz;
            c += sound[i] * std::cos(phase);
            s += sound[i] * std::sin(phase);
        }
        return c * c + s * s;
    };
    EXPECT_GT(power_at(hz), 4.0 * power_at(1.3 * hz));
    EXPECT_GT(power_at(hz), 4.0 * power_at(0.77 * hz));
}

} // namespace
} // namespace truth
