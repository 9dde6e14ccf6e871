// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing of two sessions of twenty minutes at 25 Hz that the book keeps, chosen in its list, until it is painted on
// the Compare page of a new window (bar: 500 ms): both sessions are read, and everything is worked out anew.
#include "core/book/pairings.h"
#include "tests/bench/driven_book.h"
#include "tests/bench/offscreen.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/worker.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/book_looking.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QSettings>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

namespace {

using namespace lapwright;

constexpr qint64 at_most_ms = 20'000;

// Notes that the comparison was painted.
class PaintWatch : public QObject {
  public:
    explicit PaintWatch(const window::MainWindow& window, QWidget& plots) : window_(window) {
        for (QWidget* plot : plots.findChildren<QWidget*>())
            plot->installEventFilter(this);
    }
    bool painted = false;

  private:
    bool eventFilter(QObject* /*watched*/, QEvent* event) override {
        painted = painted || (event->type() == QEvent::Paint && window_.on_compare_page());
        return false;
    }
    const window::MainWindow& window_;
};

// A book with two sessions and one pairing of them.
struct KeptBook {
    QTemporaryDir folder;
    std::string file = folder.filePath(QStringLiteral("book.sqlite")).toStdString();
    book::PairingSummary chosen;

    KeptBook() {
        book::Book book = bench::must(book::Book::open(file));
        const bench::Driven a = bench::keep_driven(book, 1);
        const bench::Driven b = bench::keep_driven(book, 2);
        bench::must(put_pairing(book, {a.id, a.laps.at(3).number, b.id, b.laps.at(4).number, "", "A ahead", 1.0}));
        chosen = bench::must(book::pairing_list(book)).front();
    }
};

void KeptPairingOnScreen(benchmark::State& state) {
    bench::application(); // before the first widget
    static const KeptBook kept;
    QSettings settings(kept.folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    for (auto _ : state) {
        window::MainWindow window(bridge::analysis_stages({}, kept.file), settings);
        window.resize(1600, 900);
        window.show();
        PaintWatch watch(window, window.compare_page().stack());
        fixture::settle();
        auto* looking = window.findChild<window::BookLooking*>();
        QElapsedTimer clock;
        clock.start();
        Q_EMIT looking->pairing_asked(kept.chosen);
        while (!watch.painted && clock.elapsed() < at_most_ms)
            QApplication::processEvents(QEventLoop::WaitForMoreEvents); // leaves both cores to the work
        if (!watch.painted) {
            state.SkipWithError(window.notices().sentences().join(QLatin1Char(' ')).toUtf8());
            std::cerr << window.notices().sentences().join(QLatin1Char(' ')).toStdString() << "\n";
            return;
        }
        fixture::settle(); // what the plots have put off until after their first painting
        state.SetIterationTime(static_cast<double>(clock.nsecsElapsed()) / 1e9);
    }
}
BENCHMARK(KeptPairingOnScreen)
    ->Iterations(1)
    ->Repetitions(15)
    ->ReportAggregatesOnly()
    ->Unit(benchmark::kMillisecond)
    ->UseManualTime();

} // namespace
