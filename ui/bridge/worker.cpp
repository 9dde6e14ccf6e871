// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/worker.h"

#include "core/analysis/explain.h"
#include "core/analysis/run.h"
#include "core/base/parallel.h"
#include "core/causes/what_if.h"
#include "core/import/formats/recipe_folder.h"
#include "core/workspace/reading.h"
#include "ui/models/file_name.h"

#include <functional>
#include <utility>

namespace lapwright::bridge {
namespace {

constexpr int files_at_once = 2;
constexpr unsigned changes_at_once = 2;

// One for each change, of which not all are made once a newer question was asked.
std::vector<causes::Prediction> predictions_of(const causes::CarModel& car, const std::vector<causes::Change>& changes,
                                               const base::Progress& progress) {
    std::vector<causes::Prediction> predictions(changes.size());
    base::TaskProgress told(progress, "predicting", changes.size());
    static_cast<void>(base::parallel_for(changes.size(), changes_at_once, [&](std::size_t i, std::size_t) {
        predictions[i] = causes::what_if(car, changes[i]);
        return told.done();
    }));
    return predictions;
}

} // namespace

Stages analysis_stages(const std::string& recipe_folder, const std::string& book_file) {
    Stages stages{
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
    stages.learn = [](const LearningWanted& wanted, const base::Progress& progress) -> base::Result<LearningPointer> {
        auto report = analysis::learn(wanted.sessions, wanted.track, progress);
        if (!report.ok()) return report.error();
        return LearningPointer(std::make_shared<const analysis::LearningReport>(std::move(report).value()));
    };
    stages.further = [](const FurtherWanted& wanted, const base::Progress& progress) -> base::Result<FurtherPointer> {
        auto laps = analysis::further_laps(*wanted.compared->pairing, wanted.laps, progress);
        if (!laps) return base::cancelled();
        return FurtherPointer(std::make_shared<const std::vector<analysis::FurtherLap>>(std::move(*laps)));
    };
    return stages;
}

Worker::Worker(Stages stages, QObject* parent)
    : QObject(parent), stages_(std::move(stages)),
      long_work_(*this, files_at_once, [this](bool busy) { Q_EMIT busy_changed(busy); }), short_work_(*this, 1) {
    connect(this, &Worker::trial_progressed, this, &Worker::progressed);
    connect(this, &Worker::learning_progressed, this, &Worker::progressed);
}

void Worker::load(const std::vector<workspace::Origin>& origins, const std::optional<track::TrackRecord>& track) {
    for (const workspace::Origin& origin : origins) {
        const auto work = [this, origin, track](const base::Progress& progress) -> JobQueue::Answer {
            return [this, origin, result = stages_.load(origin, track, progress)] {
                if (result)
                    Q_EMIT session_ready(origin, *result);
                else
                    Q_EMIT file_refused(origin, result.error());
            };
        };
        long_work_.add(loads_, work, std::bind_front(&Worker::progressed, this));
    }
}

template <typename Value, typename Work>
void Worker::run_newest(JobGroup& group, Work work, void (Worker::*ready)(const Value&),
                        void (Worker::*refused)(const base::Error&), JobQueue::Tell tell) {
    group.cancel();
    const auto told = [this, work, ready, refused](const base::Progress& progress) -> JobQueue::Answer {
        return [this, ready, refused, result = work(progress)] {
            if (result)
                Q_EMIT(this->*ready)(*result);
            else
                Q_EMIT(this->*refused)(result.error());
        };
    };
    long_work_.add(group, told, std::move(tell));
}

void Worker::compare(const Wanted& wanted) {
    const auto work = [this, wanted](const base::Progress& progress) { return stages_.compare(wanted, progress); };
    run_newest(comparison_, work, &Worker::pairing_ready, &Worker::comparison_refused,
               std::bind_front(&Worker::progressed, this));
}

void Worker::explain(const Question& question) {
    const auto work = [this, question](const base::Progress& progress) { return stages_.explain(question, progress); };
    run_newest(explanation_, work, &Worker::explanation_ready, &Worker::explanation_refused,
               std::bind_front(&Worker::progressed, this));
}

void Worker::try_setup(const TrialWanted& wanted) {
    const auto work = [this, wanted](const base::Progress& progress) { return stages_.trial(wanted, progress); };
    run_newest(trial_, work, &Worker::trial_ready, &Worker::trial_refused,
               std::bind_front(&Worker::trial_progressed, this));
}

void Worker::learn(const LearningWanted& wanted) {
    const auto work = [this, wanted](const base::Progress& progress) { return stages_.learn(wanted, progress); };
    run_newest(learning_, work, &Worker::learning_ready, &Worker::learning_refused,
               std::bind_front(&Worker::learning_progressed, this));
}

void Worker::lay_beside(const FurtherWanted& wanted) {
    const auto work = [this, wanted](const base::Progress& progress) { return stages_.further(wanted, progress); };
    run_newest(further_, work, &Worker::further_ready, &Worker::further_refused,
               std::bind_front(&Worker::progressed, this));
}

void Worker::predict(CarPointer car, std::vector<causes::Change> changes) {
    prediction_.cancel();
    const auto work = [this, car = std::move(car),
                       changes = std::move(changes)](const base::Progress& progress) -> JobQueue::Answer {
        return [this, predictions = predictions_of(*car, changes, progress)] { Q_EMIT predictions_ready(predictions); };
    };
    short_work_.add(prediction_, work);
}

void Worker::preview(const QString& path, const import::Options& options) {
    preview_.cancel();
    const auto work = [this, path, options](const base::Progress&) -> JobQueue::Answer {
        return [this, path, result = stages_.preview(models::file_name(path), options)] {
            if (result)
                Q_EMIT preview_ready(path, *result);
            else
                Q_EMIT preview_refused(path, result.error());
        };
    };
    short_work_.add(preview_, work);
}

void Worker::cancel() {
    for (JobGroup* group : {&loads_, &comparison_, &explanation_, &trial_, &learning_, &further_})
        group->cancel();
}

} // namespace lapwright::bridge
