// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/worker.h"

#include "core/analysis/explain.h"
#include "core/analysis/run.h"
#include "core/book/book.h"
#include "core/causes/what_if.h"
#include "core/import/formats/recipe_folder.h"
#include "core/workspace/reading.h"

#include <QElapsedTimer>
#include <QFile>
#include <QMetaObject>
#include <future>
#include <utility>

namespace lapwright::bridge {
namespace {

constexpr int files_at_once = 2;
constexpr qint64 progress_pause_ms = 40; // a person sees no more

// One for each change, on two threads; nothing once a newer question was asked.
std::vector<causes::Prediction> predictions_of(const causes::CarModel& car, const std::vector<causes::Change>& changes,
                                               const std::atomic<int>& newest, int number) {
    std::vector<causes::Prediction> predictions(changes.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < changes.size() && newest == number; i = next++)
            predictions[i] = causes::what_if(car, changes[i]);
    };
    std::future<void> other;
    if (changes.size() > 1) other = std::async(std::launch::async, work);
    work();
    if (other.valid()) other.get();
    return newest == number ? predictions : std::vector<causes::Prediction>{};
}

} // namespace

Stages analysis_stages(const std::string& recipe_folder, const std::string& book_file) {
    return {
        [recipe_folder, book_file](const workspace::Origin& origin, const std::optional<track::TrackRecord>& track,
                                   const base::Progress& progress) -> base::Result<SessionPointer> {
            const import::RecipeFolder kept(recipe_folder);
            return workspace::read_session(origin, {book_file, track, kept.list().recipes, {}, recipe_folder},
                                           progress);
        },
        [](const Wanted& wanted, const base::Progress& progress) -> base::Result<ComparedPointer> {
            analysis::PairingOptions options;
            options.lap_a = wanted.lap_a;
            options.lap_b = wanted.lap_b;
            options.track = wanted.track;
            const auto pairing = analysis::compare(wanted.a, wanted.b, options, progress);
            if (!pairing.ok()) return pairing.error();
            return workspace::compared(pairing.value());
        },
        [](const Question& question, const base::Progress& progress) {
            analysis::CausesOptions options;
            options.setup_a = question.setup_a;
            options.setup_b = question.setup_b;
            return analysis::explain(*question.compared->pairing, options, progress);
        },
        [recipe_folder, book_file](const std::string& path, import::Options options) -> base::Result<PreviewPointer> {
            auto preview = workspace::preview_session(path, std::move(options),
                                                      {.book_file = book_file, .words_folder = recipe_folder});
            if (!preview.ok()) return preview.error();
            return PreviewPointer(std::make_shared<const import::Preview>(std::move(preview).value()));
        },
        [](const TrialWanted& wanted, const base::Progress& progress) -> base::Result<TrialPointer> {
            auto report = analysis::run_trial(wanted.sessions, wanted.track, progress);
            if (!report.ok()) return report.error();
            return TrialPointer(std::make_shared<const analysis::TrialReport>(std::move(report).value()));
        },
        recipe_folder,
        book_file,
    };
}

Worker::Worker(Stages stages, QObject* parent)
    : QObject(parent), stages_(std::move(stages)), stop_loads_(std::make_shared<std::atomic<bool>>(false)),
      stop_comparison_(std::make_shared<std::atomic<bool>>(false)),
      stop_explanation_(std::make_shared<std::atomic<bool>>(false)),
      stop_trial_(std::make_shared<std::atomic<bool>>(false)),
      newest_prediction_(std::make_shared<std::atomic<int>>(0)),
      newest_preview_(std::make_shared<std::atomic<int>>(0)) {
    pool_.setMaxThreadCount(files_at_once);
    predictions_.setMaxThreadCount(1);
    previews_.setMaxThreadCount(1);
    connect(this, &Worker::trial_progressed, this, &Worker::progressed);
}

Worker::~Worker() {
    *stop_loads_ = true;
    *stop_comparison_ = true;
    *stop_explanation_ = true;
    *stop_trial_ = true;
    ++*newest_prediction_;
    pool_.clear();
    predictions_.clear();
    ++*newest_preview_;
    previews_.clear();
    previews_.waitForDone();
    pool_.waitForDone();
    predictions_.waitForDone();
}

void Worker::load(const std::vector<workspace::Origin>& origins, const std::optional<track::TrackRecord>& track) {
    for (const workspace::Origin& origin : origins) {
        run(stop_loads_, [this, origin, track](const base::Progress& progress) -> std::function<void()> {
            auto result = stages_.load(origin, track, progress);
            return [this, origin, result = std::move(result)] {
                if (result)
                    Q_EMIT session_ready(origin, *result);
                else
                    Q_EMIT file_refused(origin, result.error());
            };
        });
    }
}

template <typename Value, typename Work>
void Worker::run_newest(Stop& stop, Work work, void (Worker::*ready)(const Value&),
                        void (Worker::*refused)(const base::Error&), Tell tell) {
    *stop = true;
    stop = std::make_shared<std::atomic<bool>>(false);
    const auto told = [this, work, ready, refused](const base::Progress& progress) -> std::function<void()> {
        return [this, ready, refused, result = work(progress)] {
            if (result)
                Q_EMIT(this->*ready)(*result);
            else
                Q_EMIT(this->*refused)(result.error());
        };
    };
    run(stop, told, tell);
}

void Worker::compare(const Wanted& wanted) {
    const auto work = [this, wanted](const base::Progress& progress) { return stages_.compare(wanted, progress); };
    run_newest(stop_comparison_, work, &Worker::pairing_ready, &Worker::comparison_refused);
}

void Worker::explain(const Question& question) {
    const auto work = [this, question](const base::Progress& progress) { return stages_.explain(question, progress); };
    run_newest(stop_explanation_, work, &Worker::explanation_ready, &Worker::explanation_refused);
}

void Worker::try_setup(const TrialWanted& wanted) {
    const auto work = [this, wanted](const base::Progress& progress) { return stages_.trial(wanted, progress); };
    run_newest(stop_trial_, work, &Worker::trial_ready, &Worker::trial_refused, &Worker::trial_progressed);
}

void Worker::cancel_trial() {
    *stop_trial_ = true;
    stop_trial_ = std::make_shared<std::atomic<bool>>(false);
}

void Worker::predict(CarPointer car, std::vector<causes::Change> changes) {
    const int number = ++*newest_prediction_;
    predictions_.start([this, number, newest = newest_prediction_, car = std::move(car), changes = std::move(changes)] {
        std::vector<causes::Prediction> predictions = predictions_of(*car, changes, *newest, number);
        if (predictions.empty()) return;
        QMetaObject::invokeMethod(
            this,
            [this, number, newest, predictions = std::move(predictions)] {
                if (*newest == number) Q_EMIT predictions_ready(predictions);
            },
            Qt::QueuedConnection);
    });
}

void Worker::preview(const QString& path, const import::Options& options) {
    const int number = ++*newest_preview_;
    previews_.start([this, number, newest = newest_preview_, path, options] {
        if (*newest != number) return;
        auto result = stages_.preview(QFile::encodeName(path).toStdString(), options);
        QMetaObject::invokeMethod(
            this,
            [this, number, newest, path, result = std::move(result)] {
                if (*newest != number) return;
                if (result)
                    Q_EMIT preview_ready(path, *result);
                else
                    Q_EMIT preview_refused(path, result.error());
            },
            Qt::QueuedConnection);
    });
}

void Worker::cancel() {
    for (Stop* stop : {&stop_loads_, &stop_comparison_, &stop_explanation_, &stop_trial_}) {
        **stop = true;
        *stop = std::make_shared<std::atomic<bool>>(false);
    }
}

// `work` runs in the pool and gives back what is to be told on the owner's thread, unless it was called off by then.
void Worker::run(Stop stop, std::function<std::function<void()>(const base::Progress&)> work, Tell tell) {
    if (++running_ == 1) Q_EMIT busy_changed(true);
    pool_.start([this, stop, work = std::move(work), progress = progress_for(stop, tell)] {
        std::function<void()> answer = *stop ? std::function<void()>{} : work(progress);
        QMetaObject::invokeMethod(
            this,
            [this, stop, answer = std::move(answer)] {
                if (--running_ == 0) Q_EMIT busy_changed(false);
                if (!*stop && answer) answer();
            },
            Qt::QueuedConnection);
    });
}

base::Progress Worker::progress_for(const Stop& stop, Tell tell) {
    auto since = std::make_shared<QElapsedTimer>();
    return [this, stop, since, tell](std::string_view stage, double part_done) {
        if (*stop) return false;
        if (since->isValid() && since->elapsed() < progress_pause_ms) return true;
        since->start();
        const QString text = QString::fromUtf8(stage.data(), static_cast<qsizetype>(stage.size()));
        QMetaObject::invokeMethod(
            this,
            [this, stop, tell, text, part_done] {
                if (!*stop) Q_EMIT(this->*tell)(text, part_done);
            },
            Qt::QueuedConnection);
        return true;
    };
}

} // namespace lapwright::bridge
