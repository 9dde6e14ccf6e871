// SPDX-License-Identifier: GPL-3.0-or-later
// Smoothing with an ensemble of 32: a session of so many minutes at 25 Hz with accelerations at 100 Hz.
// What of comparison_bench.cpp's bars goes into the smoother.
#include "core/motion/estimate_motion.h"
#include "tests/support/recording_of.h"
#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"

#include <benchmark/benchmark.h>

namespace {

using namespace lapwright;

recording::Recording session_of(double minutes) {
    truth::SessionPlan plan;
    plan.flying_laps = static_cast<int>(minutes * 60.0 / 96.0) - 1;
    const truth::Session session =
        truth::drive_session(truth::ternbank(), truth::light_aero_hatch(), truth::DriverTruth{}, plan, 1);
    truth::LoggerSpec spec = truth::typical_logger(25.0);
    spec.inertial.rate_hz = 100.0;
    return test::recording_of(truth::log_session(session, spec, 1), "bench");
}

void Smooth(benchmark::State& state) {
    const recording::Recording recording = session_of(static_cast<double>(state.range(0)));
    motion::Options options;
    options.draws = static_cast<unsigned>(state.range(1));
    for (auto _ : state)
        benchmark::DoNotOptimize(motion::estimate_motion(recording, options).ok());
    state.counters["minutes"] = recording.duration_s / 60.0;
}
BENCHMARK(Smooth)->Args({20, 0})->Args({20, 32})->Args({60, 32})->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
