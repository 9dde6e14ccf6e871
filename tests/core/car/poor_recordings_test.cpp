// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever the recording is like: a figure lies inside its own interval, within what a car can be, and a poor recording
// makes the interval wide instead of the figure wrong.
#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

using namespace lapwright;
using namespace lapwright::car;
using test::Coverage;

namespace {

void expect_sound(const CarFigure& f, double least, double most, const std::string& what) {
    EXPECT_LE(f.low, f.value) << what;
    EXPECT_LE(f.value, f.high) << what;
    EXPECT_GE(f.low, least) << what;
    EXPECT_LE(f.high, most) << what;
}

struct Drawn {
    std::array<Coverage, 4> found{Coverage{"grip"}, Coverage{"downforce area"}, Coverage{"drag area"},
                                  Coverage{"power"}};
    int refused = 0;
};

Drawn look_at(double poor, std::uint64_t first, int count) {
    Drawn drawn;
    for (std::uint64_t seed = first; seed < first + static_cast<std::uint64_t>(count); ++seed) {
        const test::DrawnRecording r = test::drawn_recording(seed, poor);
        const auto figures = car_figures(r.data, {100, seed});
        if (!figures) {
            ++drawn.refused;
            continue;
        }
        const std::string what = "seed " + std::to_string(seed);
        expect_sound(figures->grip, 0.3, 3.0, what + " grip");
        expect_sound(*figures->downforce_area_m2, -3.0, 15.0, what + " downforce");
        expect_sound(*figures->drag_area_m2, 0.0, 5.0, what + " drag");
        expect_sound(*figures->power_w, 1e3, 2e6, what + " power");
        for (const CarDraw& d : figures->draws) {
            EXPECT_GT(d.car.power_w, 0.0) << what;
            EXPECT_GT(d.car.drag_n_per_mps2, 0.0) << what;
            EXPECT_GT(d.car.grip, 0.0) << what;
        }
        drawn.found[0].add(figures->grip, r.car.mu);
        drawn.found[1].add(*figures->downforce_area_m2, r.car.downforce_area_m2);
        drawn.found[2].add(*figures->drag_area_m2, r.car.drag_area_m2);
        drawn.found[3].add(*figures->power_w, r.car.power_w);
    }
    return drawn;
}

} // namespace

TEST(PoorRecordings, FiguresStayInsideTheirIntervalsAndWhatCarsCanBe) {
    for (const double poor : {0.0, 0.3, 1.0}) {
        const Drawn drawn = look_at(poor, 4000, 40);
        std::printf("poor %.1f, refused %d of 40\n", poor, drawn.refused);
        for (const Coverage& c : drawn.found) {
            c.print("  ");
            EXPECT_GE(c.share(), 0.85) << c.name << ", poor " << poor;
        }
    }
}
