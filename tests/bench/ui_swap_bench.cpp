// SPDX-License-Identifier: GPL-3.0-or-later
// A and B change places on the Compare page, with the sample sessions (without their videos, so that nothing else
// works).  FromKeyToPaint: from the command to the end of the last round of the event loop in which anything of the
// page was painted: traces, map, table and card are those of the swapped pairing (bar: 100 ms).  FromKeyToRest: until
// the window has nothing left to do.
#include "tests/bench/offscreen.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/worker.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"

#include <QElapsedTimer>
#include <QEvent>
#include <QFile>
#include <QSettings>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

namespace {

using namespace lapwright;

constexpr int at_most_ms = 60'000;

class Paints : public QObject {
  public:
    explicit Paints(QWidget& page) {
        for (QWidget* widget : page.findChildren<QWidget*>())
            widget->installEventFilter(this);
    }
    [[nodiscard]] int count() const { return count_; }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) ++count_;
        return QObject::eventFilter(watched, event);
    }

  private:
    int count_ = 0;
};

constexpr int quiet_rounds = 5; // of the event loop, after which nothing more comes

void swap(benchmark::State& state, bool to_rest) {
    bench::application(); // before the first widget
    QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    window::MainWindow window(bridge::analysis_stages({}, folder.filePath(QStringLiteral("book")).toStdString()),
                              settings);
    window.resize(1366, 768);
    window.show();
    QStringList files;
    for (const char* name : {"plover-saturday-2.csv", "dunlin-saturday-2.txt"}) {
        files << folder.filePath(QLatin1String(name));
        QFile::copy(QStringLiteral(SAMPLE_SESSIONS "/") + QLatin1String(name), files.back());
    }
    window.start(files);
    if (!fixture::wait_for([&] { return window.on_compare_page(); }, at_most_ms)) {
        state.SkipWithError("the two are not compared");
        return;
    }
    fixture::settle();
    const Paints paints(window.compare_page());
    for (auto _ : state) {
        const auto before = window.compare_page().compared();
        QElapsedTimer clock;
        clock.start();
        window.actions().swap->trigger();
        if (window.compare_page().compared() == before) {
            state.SkipWithError("nothing was swapped");
            return;
        }
        double painted_s = 0.0;
        for (int quiet = 0; quiet < quiet_rounds; ++quiet) {
            const int paints_before = paints.count();
            QCoreApplication::sendPostedEvents();
            QCoreApplication::processEvents();
            if (paints.count() == paints_before) continue;
            painted_s = static_cast<double>(clock.nsecsElapsed()) / 1e9;
            quiet = 0;
        }
        if (painted_s == 0.0) {
            state.SkipWithError("nothing was painted");
            return;
        }
        state.SetIterationTime(to_rest ? static_cast<double>(clock.nsecsElapsed()) / 1e9 : painted_s);
    }
}

void FromKeyToPaint(benchmark::State& state) {
    swap(state, false);
}

void FromKeyToRest(benchmark::State& state) {
    swap(state, true);
}

BENCHMARK(FromKeyToPaint)->Iterations(20)->Unit(benchmark::kMillisecond)->UseManualTime();
BENCHMARK(FromKeyToRest)->Iterations(20)->Unit(benchmark::kMillisecond)->UseManualTime();

} // namespace
