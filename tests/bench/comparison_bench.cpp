// SPDX-License-Identifier: GPL-3.0-or-later
// From files to timed laps, and to a finished comparison.  The bars on two cores are of whole commands, each in a new
// process, as a person waits for them: an hour at 100 Hz with 24 columns to its laps under 1 s, twenty minutes at 25 Hz
// under 0.1 s, the sample sessions compared under 0.2 s.
#include "core/analysis/run.h"
#include "tests/truth/write_text.h"

#include <benchmark/benchmark.h>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace {

using namespace lapwright;

std::string sample(const char* name) {
    return std::string(SAMPLE_SESSIONS) + "/" + name;
}

void compare_files(benchmark::State& state, const std::string& a, const std::string& b) {
    for (auto _ : state) {
        const auto session_a = analysis::load_session(a);
        const auto session_b = analysis::load_session(b);
        if (!session_a || !session_b) {
            state.SkipWithError(base::one_line(session_a ? session_b.error() : session_a.error()).c_str());
            return;
        }
        const auto pairing = analysis::compare(*session_a, *session_b);
        if (!pairing) {
            state.SkipWithError(base::one_line(pairing.error()).c_str());
            return;
        }
        benchmark::DoNotOptimize((*pairing)->comparison.gap_at_end_s.value);
    }
}

void run_program(benchmark::State& state, const std::string& arguments) {
    const std::string command = "'" LAPWRIGHT_PROGRAM "' " + arguments + " > /dev/null 2>&1";
    for (auto _ : state)
        if (std::system(command.c_str()) != 0) {
            state.SkipWithError("the command fails");
            return;
        }
}

void CompareCommandOnSamples(benchmark::State& state) {
    run_program(state, "compare '" + sample("plover-saturday-2.csv") + "' '" + sample("dunlin-saturday-2.txt") + "'");
}
BENCHMARK(CompareCommandOnSamples)->Unit(benchmark::kMillisecond)->UseRealTime();

// The file is written once, beside the benchmark's own temporary files.
std::string generated(const char* name, double hours, double rate_hz) {
    const auto path = std::filesystem::temp_directory_path() / name;
    if (!std::filesystem::exists(path))
        std::ofstream(path, std::ios::binary) << truth::benchmark_text(hours, rate_hz, 1);
    return path.string();
}

void time_laps(benchmark::State& state, const std::string& path) {
    state.counters["MB"] = static_cast<double>(std::filesystem::file_size(path)) / 1e6;
    run_program(state, "laps '" + path + "'");
}

void LapsCommandOnAnHourAt100Hz(benchmark::State& state) {
    time_laps(state, generated("lapwright-bench-hour.csv", 1.0, 100.0));
}
BENCHMARK(LapsCommandOnAnHourAt100Hz)->Unit(benchmark::kMillisecond)->UseRealTime();

void LapsCommandOnTwentyMinutesAt25Hz(benchmark::State& state) {
    time_laps(state, generated("lapwright-bench-twenty-minutes.csv", 1.0 / 3.0, 25.0));
}
BENCHMARK(LapsCommandOnTwentyMinutesAt25Hz)->Unit(benchmark::kMillisecond)->UseRealTime();

void TwoHoursAt100Hz(benchmark::State& state) {
    const std::string path = generated("lapwright-bench-hour.csv", 1.0, 100.0);
    compare_files(state, path, path);
}
BENCHMARK(TwoHoursAt100Hz)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(2);

// Stages of one sample session.
void UnderstandSample(benchmark::State& state) {
    const auto recording = import::import_file(sample("plover-saturday-2.csv"));
    if (!recording) {
        state.SkipWithError("the sample cannot be read");
        return;
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(analysis::understand(*recording).ok());
}
BENCHMARK(UnderstandSample)->Unit(benchmark::kMillisecond)->UseRealTime();

void CompareUnderstoodSamples(benchmark::State& state) {
    const auto a = analysis::load_session(sample("plover-saturday-2.csv"));
    const auto b = analysis::load_session(sample("dunlin-saturday-2.txt"));
    if (!a || !b) {
        state.SkipWithError("the samples cannot be read");
        return;
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(analysis::compare(*a, *b).ok());
}
BENCHMARK(CompareUnderstoodSamples)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
