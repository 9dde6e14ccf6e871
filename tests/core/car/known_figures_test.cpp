// SPDX-License-Identifier: GPL-3.0-or-later
// What the person knows of a car, over drawn cars: a true figure makes the interval narrower and keeps the truth in it;
// one that the laps contradict is said.
#include "core/car/known_figures.h"

#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::car;

namespace {

bool says(const CarFigures& figures, const std::string& words) {
    return std::ranges::any_of(figures.notes, [&](const std::string& note) {
        return note.find(words) != std::string::npos && note.find("disagree by") != std::string::npos;
    });
}

} // namespace

TEST(KnownFigures, NarrowWhatTheyTell) {
    test::Coverage drag{"drag area"};
    test::Coverage downforce{"downforce area"};
    int disagreed = 0;
    for (std::uint64_t seed = 700; seed < 712; ++seed) {
        test::DrawnRecording one = test::drawn_recording(seed, 0.0);
        truth::Random random(seed, 3);
        const auto about = [&](double truly, double sd) { return KnownFigure{truly + sd * random.normal(), sd}; };
        const auto before = car_figures(one.data);
        one.data.known.drag_area_m2 = about(one.car.drag_area_m2, 0.05 * one.car.drag_area_m2);
        one.data.known.downforce_area_m2 = about(one.car.downforce_area_m2, 0.15);
        one.data.known.power_w = about(one.car.power_w, 0.05 * one.car.power_w);
        const auto after = car_figures(one.data);
        if (!before || !after) continue;
        drag.add(*after->drag_area_m2, one.car.drag_area_m2);
        downforce.add(*after->downforce_area_m2, one.car.downforce_area_m2);
        EXPECT_LT(after->drag_area_m2->half_width(), 1.1 * before->drag_area_m2->half_width());
        disagreed += says(*after, "given") ? 1 : 0;
    }
    drag.print("known:");
    downforce.print("known:");
    EXPECT_GE(drag.count, 10);
    EXPECT_GE(drag.inside, drag.count - 2);
    EXPECT_GE(downforce.inside, downforce.count - 2);
    EXPECT_LE(disagreed, 4); // of 36 figures, each at two standard errors
}

TEST(KnownFigures, ThatTheLapsContradictAreSaid) {
    test::DrawnRecording one = test::drawn_recording(704, 0.0);
    one.data.known.drag_area_m2 = KnownFigure{2.0 * one.car.drag_area_m2, 0.02};
    const auto figures = car_figures(one.data);
    ASSERT_TRUE(figures.ok());
    EXPECT_TRUE(says(*figures, "the drag area given"));
    EXPECT_EQ(figures->drag_area_m2->decided_by, DecidedBy::setup);
}

TEST(KnownFigures, DoNotCountWithoutTheMassAndThatIsSaid) {
    test::DrawnRecording one = test::drawn_recording(704, 0.0);
    one.data.mass.reset();
    const auto before = car_figures(one.data);
    one.data.known.drag_area_m2 = KnownFigure{2.0 * one.car.drag_area_m2, 0.02};
    const auto after = car_figures(one.data);
    ASSERT_TRUE(before.ok() && after.ok());
    EXPECT_DOUBLE_EQ(after->drag_area_m2_per_kg.value, before->drag_area_m2_per_kg.value);
    EXPECT_TRUE(std::ranges::any_of(
        after->notes, [](const std::string& note) { return note.find("does not count") != std::string::npos; }));
}

TEST(KnownFigures, JoinByTheirVariances) {
    const KnownFigure both = joined({1.0, 0.1}, {2.0, 0.2});
    EXPECT_NEAR(both.value, 1.2, 1e-12);
    EXPECT_NEAR(1.0 / (both.sd * both.sd), 125.0, 1e-9);
}
