// SPDX-License-Identifier: GPL-3.0-or-later
// How long a person waits at most who stops a file that is being read: the longest time between two of the questions
// whether to go on, from the call to its return.  Files as they come from loggers (20 minutes, all the way to the
// timed laps, as the window loads them) and the generated hour, as it is and in other dialects.
#include "core/analysis/run.h"
#include "core/import/formats/import.h"
#include "tests/bench/import_hour.h"
#include "tests/truth/write_text.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <map>
#include <string>
#include <string_view>

namespace {

using namespace lapwright;
using Clock = std::chrono::steady_clock;

std::string in_utf16(const std::string& text) {
    std::string wide("\xFF\xFE");
    wide.reserve(2 * text.size() + 2);
    for (const char c : text) {
        wide += c;
        wide += '\0';
    }
    return wide;
}

std::string in_quotes(const std::string& text) {
    std::string quoted;
    quoted.reserve(2 * text.size());
    for (const char c : text) {
        if (c == ',')
            quoted += "\",\"";
        else if (c == '\n')
            quoted += quoted.empty() ? "\n" : "\"\n\"";
        else
            quoted += c;
    }
    return "\"" + quoted + "\"\n";
}

template <typename... Values>
std::string line(const char* format, Values... values) {
    std::array<char, 200> buffer{};
    const int size = std::snprintf(buffer.data(), buffer.size(), format, values...);
    return {buffer.data(), static_cast<std::size_t>(size)};
}

// An hour at 25 Hz round a circle.
constexpr int fixes = 90'000;

double angle(int i) {
    return 6.283185307179586 * i / 2400.0;
}

std::string gpx_hour() {
    std::string text = "<?xml version=\"1.0\"?><gpx version=\"1.1\"><trk><trkseg>\n";
    for (int i = 0; i < fixes; ++i)
        text += line("<trkpt lat=\"%.7f\" lon=\"%.7f\"><time>2026-05-16T%02d:%02d:%06.3fZ</time></trkpt>\n",
                     54.9 + 0.004 * std::sin(angle(i)), 2.3 + 0.006 * std::cos(angle(i)), 10 + i / 90'000,
                     i / 1500 % 60, i % 1500 / 25.0);
    return text + "</trkseg></trk></gpx>\n";
}

std::string nmea_hour() {
    std::string text;
    for (int i = 0; i < fixes; ++i) {
        const std::string body =
            line("GPRMC,10%02d%05.2f,A,54%08.5f,N,002%08.5f,E,050.0,084.4,160526,,", i / 1500 % 60, i % 1500 / 25.0,
                 54.0 + 0.24 * std::sin(angle(i)), 18.0 + 0.36 * std::cos(angle(i)));
        unsigned sum = 0;
        for (const char c : body)
            sum ^= static_cast<unsigned char>(c);
        text += "$" + body + line("*%02X\r\n", sum);
    }
    return text;
}

class Waits {
  public:
    [[nodiscard]] base::Progress progress() {
        last_ = Clock::now();
        stage_ = "start";
        return [this](std::string_view stage, double) {
            take(stage);
            return true;
        };
    }
    void end() { take("end"); }
    [[nodiscard]] double longest_ms() const { return longest_ms_; }
    [[nodiscard]] const std::string& where() const { return where_; }

  private:
    void take(std::string_view stage) {
        const auto now = Clock::now();
        const double waited_ms = std::chrono::duration<double, std::milli>(now - last_).count();
        if (waited_ms > longest_ms_) {
            longest_ms_ = waited_ms;
            where_ = stage_ + " > " + std::string(stage);
        }
        last_ = now;
        stage_ = stage;
    }

    Clock::time_point last_;
    std::string stage_;
    double longest_ms_ = 0.0;
    std::string where_;
};

template <typename Work>
void measure(benchmark::State& state, const Work& work) {
    double longest_ms = 0.0;
    std::string where;
    for (auto _ : state) {
        Waits waits;
        const auto result = work(waits.progress());
        waits.end();
        if (!result) state.SkipWithError(base::one_line(result.error()).c_str());
        if (waits.longest_ms() > longest_ms) where = waits.where();
        longest_ms = std::max(longest_ms, waits.longest_ms());
    }
    state.counters["longest_wait_ms"] = longest_ms;
    state.SetLabel(where);
}

void import_of(benchmark::State& state, const std::string& text) {
    measure(state, [&](const base::Progress& progress) { return import::import_bytes(text, "file", {}, progress); });
}

void hour(benchmark::State& state) {
    import_of(state, bench::make_hour());
}
void hour_in_utf16(benchmark::State& state) {
    import_of(state, in_utf16(bench::make_hour()));
}
void hour_in_quotes(benchmark::State& state) {
    import_of(state, in_quotes(bench::make_hour()));
}
void gpx(benchmark::State& state) {
    import_of(state, gpx_hour());
}
void nmea(benchmark::State& state) {
    import_of(state, nmea_hour());
}

void load(benchmark::State& state, const std::string& text) {
    measure(state, [&](const base::Progress& progress) {
        auto recording = import::import_bytes(text, "file", {}, progress);
        return recording ? analysis::understand(std::move(recording).value(), {}, progress) : recording.error();
    });
}

void session_of_20_minutes(benchmark::State& state) {
    load(state, truth::benchmark_text(1.0 / 3.0, 25.0, 1));
}
void session_of_an_hour_at_100_hz(benchmark::State& state) {
    load(state, truth::benchmark_text(1.0, 100.0, 1));
}

} // namespace

BENCHMARK(session_of_20_minutes)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(5);
BENCHMARK(session_of_an_hour_at_100_hz)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(2);
BENCHMARK(hour)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(5);
BENCHMARK(hour_in_utf16)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);
BENCHMARK(hour_in_quotes)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);
BENCHMARK(gpx)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);
BENCHMARK(nmea)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);
