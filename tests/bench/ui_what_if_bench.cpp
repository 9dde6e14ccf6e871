// SPDX-License-Identifier: GPL-3.0-or-later
// What-if as a person has it: from the moved control to the painted lap and segments, in the window, on the sample
// sessions (bar: 50 ms).  Argument: how many controls are moved; with more than one, each one's own effect is reckoned
// as well.  The counters are the median and the slowest of the answers.
#include "tests/bench/offscreen.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/worker.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QLabel>
#include <QSettings>
#include <QSlider>
#include <QTemporaryDir>
#include <algorithm>
#include <benchmark/benchmark.h>
#include <vector>

namespace {

using namespace lapwright;

// Notes that a widget was painted.
class PaintWatch : public QObject {
  public:
    explicit PaintWatch(QWidget* widget) { widget->installEventFilter(this); }
    bool painted = false;

  private:
    bool eventFilter(QObject* /*watched*/, QEvent* event) override {
        painted = painted || event->type() == QEvent::Paint;
        return false;
    }
};

void WhatIfInTheWindow(benchmark::State& state) {
    bench::application(); // before the first widget
    QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    window::MainWindow window(bridge::analysis_stages(), settings);
    window.resize(1600, 900);
    window.show();
    const QString samples = QStringLiteral(SAMPLE_SESSIONS) + QLatin1Char('/');
    window.start(
        {samples + QStringLiteral("plover-saturday-2.csv"), samples + QStringLiteral("dunlin-saturday-2.txt")});
    if (!fixture::wait_for([&] { return window.on_compare_page(); }, 60000)) {
        state.SkipWithError("the samples cannot be compared");
        return;
    }
    window.actions().show_causes->trigger();
    if (!fixture::wait_for([&] { return window.causes_page().explanation() != nullptr; }, 60000)) {
        state.SkipWithError("the samples cannot be explained");
        return;
    }
    fixture::settle();
    pages::WhatIfCard& card = window.causes_page().what_if();
    const auto labels = card.findChildren<QLabel*>();
    const auto lap =
        std::ranges::find_if(labels, [&](QLabel* label) { return label->text() == card.prediction_text(); });
    auto* table = window.causes_page().findChild<pages::CausesView*>();
    if (lap == labels.end() || table == nullptr) {
        state.SkipWithError("the answer has no place");
        return;
    }
    PaintWatch lap_watch(*lap);
    PaintWatch segments_watch(table->viewport());
    bool answered = false;
    QObject::connect(&card, &pages::WhatIfCard::predicted, &card, [&] {
        answered = true;
        lap_watch.painted = segments_watch.painted = false; // what was painted before shows the last answer
    });
    int step = 0;
    std::vector<double> answers_ms;
    for (auto _ : state) {
        step = step % 10 + 1;
        answered = false;
        QElapsedTimer clock;
        clock.start();
        for (int lever = 0; lever < state.range(0); ++lever)
            card.slider(findings::all_levers[static_cast<std::size_t>(lever)]).setValue(step);
        while (!answered || !lap_watch.painted || !segments_watch.painted)
            QApplication::processEvents();
        answers_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    std::ranges::sort(answers_ms);
    state.counters["median_ms"] = answers_ms[answers_ms.size() / 2];
    state.counters["worst_ms"] = answers_ms.back();
}
BENCHMARK(WhatIfInTheWindow)->Arg(1)->Arg(5)->Iterations(60)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
