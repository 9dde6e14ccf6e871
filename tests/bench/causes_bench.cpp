// SPDX-License-Identifier: GPL-3.0-or-later
// Why the gap is what it is, measured on the sample sessions: everything for a pairing (the fits of both cars, 200
// draws, 32 mixtures each; bar: under 3 s on two threads), its parts, and one answer to what-if (bar: under 50 ms).
#include "core/analysis/explain.h"
#include "core/analysis/run.h"
#include "core/base/error.h"
#include "core/car/setup_sheet.h"
#include "core/causes/explain.h"
#include "core/causes/what_if.h"

#include <benchmark/benchmark.h>
#include <memory>
#include <string>

namespace {

using namespace lapwright;

std::string sample(const char* name) {
    return std::string(SAMPLE_SESSIONS) + "/" + name;
}

std::shared_ptr<const analysis::Pairing> sample_pairing() {
    const auto a = analysis::load_session(sample("plover-saturday-2.csv"));
    const auto b = analysis::load_session(sample("dunlin-saturday-2.txt"));
    if (!a || !b) return nullptr;
    const auto pairing = analysis::compare(*a, *b);
    return pairing ? *pairing : nullptr;
}

analysis::CausesOptions sample_options(unsigned threads) {
    analysis::CausesOptions options;
    options.setup_a = car::read_setup_sheet(sample("plover-saturday-2.setup.json")).value();
    options.setup_b = car::read_setup_sheet(sample("dunlin-saturday-2.setup.json")).value();
    options.threads = threads;
    return options;
}

// Argument: threads.
void ExplainPairing(benchmark::State& state) {
    const auto pairing = sample_pairing();
    if (!pairing) {
        state.SkipWithError("the samples cannot be compared");
        return;
    }
    const analysis::CausesOptions options = sample_options(static_cast<unsigned>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(analysis::explain(*pairing, options).ok());
}
BENCHMARK(ExplainPairing)->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime()->MeasureProcessCPUTime();

std::shared_ptr<const causes::Explanation> sample_explanation() {
    const auto pairing = sample_pairing();
    if (!pairing) return nullptr;
    const auto explanation = analysis::explain(*pairing, sample_options(2));
    return explanation ? *explanation : nullptr;
}

void SimulateLap(benchmark::State& state) {
    const auto explanation = sample_explanation();
    if (!explanation) {
        state.SkipWithError("the samples cannot be explained");
        return;
    }
    const causes::CarModel& car = *explanation->model_a;
    state.counters["nodes"] = static_cast<double>(car.course.size());
    for (auto _ : state)
        benchmark::DoNotOptimize(car::simulate_lap(car.draws[0], car.course, car.uses[0]).lap_time_s);
}
BENCHMARK(SimulateLap)->Unit(benchmark::kMicrosecond);

// All 32 mixtures of one draw.
void CausesOfOneDraw(benchmark::State& state) {
    const auto explanation = sample_explanation();
    if (!explanation) {
        state.SkipWithError("the samples cannot be explained");
        return;
    }
    const causes::CarModel& a = *explanation->model_a;
    const causes::CarModel& b = *explanation->model_b;
    for (auto _ : state)
        benchmark::DoNotOptimize(causes::causes_by_segment(a.draws[0], b.draws[0], a.course, a.uses[0]).size());
}
BENCHMARK(CausesOfOneDraw)->Unit(benchmark::kMillisecond);

// What a slider asks for while one control is moved.
void WhatIf(benchmark::State& state) {
    const auto explanation = sample_explanation();
    if (!explanation) {
        state.SkipWithError("the samples cannot be explained");
        return;
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(causes::what_if(*explanation->model_a, {.downforce_share = 0.1}).lap.value);
}
BENCHMARK(WhatIf)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
