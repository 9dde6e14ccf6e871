// SPDX-License-Identifier: GPL-3.0-or-later
// main() of the benchmarks: what they measure works in the memory that the program works in.
#include "core/platform/program.h"

#include <benchmark/benchmark.h>

int main(int count, char** words) {
    lapwright::platform::prepare_large_heap();
    benchmark::Initialize(&count, words);
    if (benchmark::ReportUnrecognizedArguments(count, words)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
