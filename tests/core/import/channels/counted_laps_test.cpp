// SPDX-License-Identifier: GPL-3.0-or-later
// Laps drawn by their lengths, told by a lap time or a way alone that starts again, are counted; a lap time that stands
// still, a trip without laps and a way that goes back are not.
#include "core/import/channels/counted_laps.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <random>

namespace lapwright::import {
namespace {

using recording::Channel;
using recording::Meaning;
using recording::Recording;

struct Drawn {
    Recording recording;
    std::vector<double> laps;
};

enum class Tells { running_time, way, last_time, whole_way };

Drawn draw(std::mt19937_64& engine, Tells tells) {
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(engine() >> 11U) * 0x1.0p-53;
    };
    const double step_s = 1.0 / between(5.0, 100.0);
    const double speed_mps = between(15.0, 60.0);
    Drawn drawn;
    auto time_s = std::make_shared<std::vector<double>>();
    auto lines = std::make_shared<std::vector<std::uint32_t>>();
    std::vector<double> values;
    double start_s = -between(0.0, 40.0);
    double end_s = start_s + between(60.0, 130.0);
    double last_s = 0.0;
    double lap = 0.0;
    for (double t = 0.0; lap < 4.5; t += step_s) {
        if (t >= end_s) {
            last_s = end_s - start_s;
            start_s = end_s;
            end_s += between(40.0, 130.0);
            lap += 1.0;
        }
        time_s->push_back(t);
        lines->push_back(static_cast<std::uint32_t>(lines->size() + 2));
        const double told = tells == Tells::running_time ? t - start_s
                            : tells == Tells::way        ? speed_mps * (t - start_s)
                            : tells == Tells::last_time  ? last_s
                                                         : speed_mps * t;
        values.push_back(told);
        drawn.laps.push_back(lap);
    }
    Channel channel;
    channel.name = "told";
    channel.meaning = tells == Tells::running_time || tells == Tells::last_time ? Meaning::lap_time : Meaning::distance;
    channel.time_s = std::move(time_s);
    channel.source_lines = std::move(lines);
    channel.values = std::move(values);
    drawn.recording.channels.push_back(std::move(channel));
    return drawn;
}

TEST(CountedLaps, AreTheDrawnOnes) {
    std::mt19937_64 engine(20261201);
    for (int i = 0; i < 60; ++i) {
        for (const Tells tells : {Tells::running_time, Tells::way}) {
            const Drawn drawn = draw(engine, tells);
            const auto counted = counted_laps(drawn.recording);
            ASSERT_TRUE(counted) << i;
            EXPECT_EQ(counted->values, drawn.laps) << i;
            EXPECT_EQ(counted->time_s, drawn.recording.channels.front().time_s);
            EXPECT_EQ(counted->meaning, Meaning::lap_number);
        }
    }
}

TEST(CountedLaps, AreNoneWhereNothingStartsAgain) {
    std::mt19937_64 engine(20261202);
    for (int i = 0; i < 30; ++i) {
        EXPECT_FALSE(counted_laps(draw(engine, Tells::last_time).recording)) << i;
        EXPECT_FALSE(counted_laps(draw(engine, Tells::whole_way).recording)) << i;
        // A way that goes back by a part is someone turning round.
        Drawn back = draw(engine, Tells::way);
        auto& values = back.recording.channels.front().values;
        values[values.size() / 2] *= 0.5;
        EXPECT_FALSE(counted_laps(back.recording)) << i;
    }
}

TEST(CountedLaps, DoNotStandBesideNumbersOfTheFile) {
    std::mt19937_64 engine(20261203);
    for (const Meaning meaning : {Meaning::lap_number, Meaning::beacon}) {
        Drawn drawn = draw(engine, Tells::running_time);
        Channel own = drawn.recording.channels.front();
        own.meaning = meaning;
        own.values = drawn.laps;
        drawn.recording.channels.push_back(std::move(own));
        EXPECT_FALSE(counted_laps(drawn.recording));
    }
}

} // namespace
} // namespace lapwright::import
