// SPDX-License-Identifier: GPL-3.0-or-later
// A car as it is known from one session that it drove, and the same car with more wing.  Cars and drivers are drawn
// from a seed, and invented.
#pragma once

#include "core/causes/aero_balance.h"
#include "core/causes/explain.h"

#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <memory>

namespace lapwright::test {

inline truth::Session driven(const truth::CarTruth& car, std::uint64_t seed,
                             const truth::TrackShape& track = truth::ternbank()) {
    truth::SessionPlan plan;
    plan.flying_laps = 6;
    plan.pit_lane = false;
    return truth::drive_session(track, car, uneven_driver(seed, 1.0), plan, seed);
}

inline double mean_lap_s(const truth::Session& session) {
    double sum = 0.0;
    double count = 0.0;
    for (const truth::LapTruth& lap : session.laps()) {
        if (lap.kind != truth::LapKind::flying) continue;
        sum += lap.time_s();
        count += 1.0;
    }
    return sum / count;
}

// What is known of a car from one session of its own.
struct Known {
    car::CarFigures figures;
    std::shared_ptr<const causes::CarModel> model;
    std::vector<track::Segment> segments;
};

inline Known known(const truth::Session& session, std::uint64_t seed, bool with_mass = true) {
    car::CarData data = known_data(session, {}, seed);
    if (!with_mass) data.mass.reset();
    const lap::LapTrace& lap = data.laps.front();
    causes::KnownSide side{car::car_figures(data).value(), data.laps, {}};
    comparison::Comparison level;
    for (const track::Segment& segment : data.segments) {
        const auto time_at = [&](double s) {
            const auto i =
                static_cast<std::size_t>(std::ranges::lower_bound(lap.distance_m, s - 1e-6) - lap.distance_m.begin());
            return lap.time_s[std::min(i, lap.size() - 1)];
        };
        side.segment_s.push_back(time_at(segment.end_m) - time_at(segment.start_m));
        comparison::SegmentComparison one;
        one.segment = segment;
        level.segments.push_back(one);
    }
    auto explained = causes::explain(side, side, level, {.same_car = true});
    EXPECT_TRUE(explained.ok());
    return {side.figures, explained->model_a, data.segments};
}

inline truth::CarTruth with_wing(truth::CarTruth car, double downforce_m2, double cost) {
    car.downforce_area_m2 += downforce_m2;
    car.drag_area_m2 += cost * downforce_m2;
    return car;
}

inline const causes::AeroStep& step_at(const causes::AeroBalance& balance, double downforce_m2) {
    return *std::ranges::min_element(balance.steps, {}, [downforce_m2](const causes::AeroStep& step) {
        return std::abs(step.downforce_m2 - downforce_m2);
    });
}

// How predictions stand to what happened.
struct Tally {
    int count = 0;
    int inside = 0;
    double squares = 0.0;
    double halves = 0.0;

    void add(const causes::Seconds& predicted, double truly) {
        ++count;
        inside += predicted.low <= truly && truly <= predicted.high ? 1 : 0;
        squares += (predicted.value - truly) * (predicted.value - truly);
        halves += predicted.half_width();
    }
    [[nodiscard]] double rms() const { return std::sqrt(squares / count); }
    [[nodiscard]] double half_width() const { return halves / count; }
    void print(const char* what) const {
        std::printf("%s: %d of %d inside, RMS %.3f s, half-width %.3f s\n", what, inside, count, rms(), half_width());
    }
};

} // namespace lapwright::test
