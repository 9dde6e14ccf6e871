// SPDX-License-Identifier: GPL-3.0-or-later
// Bars of the window: cursor movement and zooming at 60 frames a second in software rendering, which leaves 16.7 ms a
// frame, with two 20,000-point laps in four panels on a window of 1600×900.  Offscreen; a frame is painted as the
// screen would have it: the plot's replot and the copy of its buffers onto the widget.
#include "core/workspace/compared.h"
#include "tests/bench/offscreen.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/plots/plot_stack.h"

#include <QApplication>
#include <QStyleFactory>
#include <benchmark/benchmark.h>

using namespace lapwright;

namespace {

constexpr std::size_t points = 20'000;

// The stack alone, as large as the whole window: ribbon, speed, longitudinal acceleration, gap, gains.
struct Stack {
    explicit Stack(bool noisy) {
        fixture::PairingOptions options;
        options.points = points;
        options.noisy = noisy;
        options.draws = true;
        pairing = fixture::pairing(options);
        std::vector<models::ChannelChoice> channels = models::channels_of(*pairing);
        channels.resize(1);
        stack.resize(1600, 900);
        stack.set_content({pairing, pairing->comparison.segments, channels, base::UnitSystem::metric, true});
        stack.show();
        QApplication::processEvents();
    }

    QApplication& app = bench::application(); // before the first widget
    std::shared_ptr<const analysis::Pairing> pairing;
    plots::PlotStack stack;
};

void whole_stack(benchmark::State& state) {
    Stack shown(state.range(0) != 0);
    for (auto _ : state) {
        shown.stack.replot_now();
    }
}

void zoom(benchmark::State& state) {
    Stack shown(state.range(0) != 0);
    int turn = 0;
    for (auto _ : state) {
        shown.stack.zoom(turn++ % 20 < 10 ? 0.9 : 1.0 / 0.9);
        shown.stack.replot_now();
    }
}

void pan_close_up(benchmark::State& state) {
    Stack shown(state.range(0) != 0);
    shown.stack.set_view({800.0, 1400.0});
    int turn = 0;
    for (auto _ : state) {
        shown.stack.pan(turn++ % 20 < 10 ? 0.02 : -0.02);
        shown.stack.replot_now();
    }
}

void move_cursor(benchmark::State& state) {
    Stack shown(state.range(0) != 0);
    int turn = 0;
    for (auto _ : state) {
        shown.stack.set_cursor(100.0 + 2.0 * (turn++ % 1000));
        QApplication::processEvents();
    }
}

// The whole page: plots, table, map and card follow the cursor.
void move_cursor_on_page(benchmark::State& state) {
    bench::application();
    fixture::PairingOptions options;
    options.points = points;
    pages::ComparePage page;
    page.resize(1600, 860);
    page.show_pairing(workspace::compared(fixture::pairing(options)));
    page.show();
    QApplication::processEvents();
    int turn = 0;
    for (auto _ : state) {
        page.stack().set_cursor(100.0 + 2.0 * (turn++ % 1000));
        QApplication::processEvents();
    }
}

} // namespace

BENCHMARK(whole_stack)->ArgName("noisy")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(zoom)->ArgName("noisy")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(pan_close_up)->ArgName("noisy")->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(move_cursor)->ArgName("noisy")->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(move_cursor_on_page)->Unit(benchmark::kMillisecond);
