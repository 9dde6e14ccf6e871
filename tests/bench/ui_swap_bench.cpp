// SPDX-License-Identifier: GPL-3.0-or-later
// A and B change places on the Compare page, with the sample sessions, from the key to the painted page (bar: 100 ms).
#include "tests/bench/offscreen.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/worker.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"

#include <QElapsedTimer>
#include <QSettings>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

namespace {

using namespace lapwright;

constexpr int at_most_ms = 60'000;

void SwapOnScreen(benchmark::State& state) {
    bench::application(); // before the first widget
    QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    window::MainWindow window(bridge::analysis_stages(), settings);
    window.resize(1366, 768);
    window.show();
    window.start({QStringLiteral(SAMPLE_SESSIONS "/plover-saturday-2.csv"),
                  QStringLiteral(SAMPLE_SESSIONS "/dunlin-saturday-2.txt")});
    if (!fixture::wait_for([&] { return window.on_compare_page(); }, at_most_ms)) {
        state.SkipWithError("the two are not compared");
        return;
    }
    fixture::settle();
    for (auto _ : state) {
        const auto before = window.compare_page().compared();
        QElapsedTimer clock;
        clock.start();
        window.actions().swap->trigger();
        const bool swapped = fixture::wait_for([&] { return window.compare_page().compared() != before; }, at_most_ms);
        window.repaint();
        fixture::settle();
        if (!swapped) {
            state.SkipWithError("nothing was swapped");
            return;
        }
        state.SetIterationTime(static_cast<double>(clock.nsecsElapsed()) / 1e9);
    }
}
BENCHMARK(SwapOnScreen)->Iterations(20)->Unit(benchmark::kMillisecond)->UseManualTime();

} // namespace
