// SPDX-License-Identifier: GPL-3.0-or-later
// The import of the generated hour (import_hour.h) with two threads and all its checking.  With LAPWRIGHT_HOUR=PATH the
// hour is written there and kept, for against_fread.
#include "core/import/formats/import.h"
#include "tests/bench/import_hour.h"

#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace {

using namespace lapwright;

class HourFile {
  public:
    HourFile() {
        const char* const wanted = std::getenv("LAPWRIGHT_HOUR");
        keep_ = wanted != nullptr;
        path_ = keep_ ? std::filesystem::path(wanted) : std::filesystem::temp_directory_path() / "lapwright_hour.csv";
        const std::string text = bench::make_hour();
        std::ofstream(path_, std::ios::binary) << text;
        size_ = text.size();
    }
    HourFile(const HourFile&) = delete;
    HourFile& operator=(const HourFile&) = delete;
    ~HourFile() {
        if (!keep_) std::filesystem::remove(path_);
    }

    [[nodiscard]] std::string path() const { return path_.string(); }
    [[nodiscard]] std::size_t size() const { return size_; }

  private:
    std::filesystem::path path_;
    std::size_t size_ = 0;
    bool keep_ = false;
};

void import_hour(benchmark::State& state) {
    const HourFile file;
    import::Options options;
    options.threads = static_cast<unsigned>(state.range(0));
    std::size_t values = 0;
    for (auto _ : state) {
        auto recording = import::import_file(file.path(), options);
        if (!recording) {
            state.SkipWithError("the hour is not read");
            return;
        }
        values = recording->channels.size() * recording->channels.front().size();
        benchmark::DoNotOptimize(recording);
    }
    state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * file.size()));
    state.counters["values"] = static_cast<double>(values);
}

} // namespace

BENCHMARK(import_hour)->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime()->MeasureProcessCPUTime();
