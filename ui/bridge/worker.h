// SPDX-License-Identifier: GPL-3.0-or-later
// Long work off the UI thread: reads files, compares laps, explains the gap, tells how far it is, and can be called
// off. One signal for each finished stage; of several comparisons, explanations, predictions or previews asked for,
// only the newest is answered.  All signals arrive on the thread that owns the worker.
#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/further_laps.h"
#include "core/analysis/learning_run.h"
#include "core/analysis/trial_run.h"
#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/car/setup_sheet.h"
#include "core/causes/explanation.h"
#include "core/import/formats/preview.h"
#include "core/track/track_record.h"
#include "core/workspace/compared.h"
#include "core/workspace/present_pairing.h"
#include "ui/bridge/job_queue.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::bridge {

using workspace::ComparedPointer;
using workspace::ExplanationPointer;
using workspace::SessionPointer;
using PreviewPointer = std::shared_ptr<const import::Preview>;
using TrialPointer = std::shared_ptr<const analysis::TrialReport>;
using LearningPointer = std::shared_ptr<const analysis::LearningReport>;
using FurtherPointer = std::shared_ptr<const std::vector<analysis::FurtherLap>>;
using CarPointer = std::shared_ptr<const causes::CarModel>;

// The two laps that are to be compared; no number: the session's fastest clean lap.
struct Wanted {
    SessionPointer a;
    SessionPointer b;
    std::optional<int> lap_a;
    std::optional<int> lap_b;
    std::optional<track::TrackRecord> track; // its gate and segments, else those that the program finds
};

// The pairing whose gap is to be explained, with what is known of both cars.
struct Question {
    ComparedPointer compared;
    car::SetupSheet setup_a;
    car::SetupSheet setup_b;
};

// A setup trial over whole sessions, in the order in which they were driven.
struct TrialWanted {
    std::vector<analysis::TrialSession> sessions;
    std::optional<track::TrackRecord> track;
};

// Sessions as laps over time.
struct LearningWanted {
    std::vector<SessionPointer> sessions;
    std::optional<track::TrackRecord> track;
};

// Laps to be seen beside a pairing.
struct FurtherWanted {
    ComparedPointer compared;
    std::vector<analysis::FurtherWanted> laps;
};

// What the worker calls; the window gives it the analysis' own functions, a test may give it slow or failing ones.
struct Stages {
    // With a track its gate times the laps.
    std::function<base::Result<SessionPointer>(const workspace::Origin& origin,
                                               const std::optional<track::TrackRecord>& track,
                                               const base::Progress& progress)>
        load;
    std::function<base::Result<ComparedPointer>(const Wanted& wanted, const base::Progress& progress)> compare;
    std::function<base::Result<ExplanationPointer>(const Question& question, const base::Progress& progress)> explain{};
    // What the columns of a table are taken for, from its first rows; none: there is no column dialog.
    std::function<base::Result<PreviewPointer>(const std::string& path, const import::Options& options)> preview{};
    std::function<base::Result<TrialPointer>(const TrialWanted& wanted, const base::Progress& progress)> trial{};
    std::string recipe_folder{}; // where a person's recipes are kept
    std::string book_file{};     // empty: the window has no book
    std::function<base::Result<LearningPointer>(const LearningWanted& wanted, const base::Progress& progress)> learn{};
    std::function<base::Result<FurtherPointer>(const FurtherWanted& wanted, const base::Progress& progress)> further{};
    std::string state_folder{}; // of what outlives a crash, and of the log; empty: neither is kept
};

// Files are read with the recipe of that folder that was made for their shape.
[[nodiscard]] Stages analysis_stages(const std::string& recipe_folder = {}, const std::string& book_file = {});

class Worker : public QObject {
    Q_OBJECT

  public:
    // Its end calls everything off and waits for it.
    explicit Worker(Stages stages, QObject* parent = nullptr);

    void load(const std::vector<workspace::Origin>& origins, const std::optional<track::TrackRecord>& track = {});
    void compare(const Wanted& wanted);
    void cancel_comparison() { comparison_.cancel(); } // that alone
    void explain(const Question& question);
    void try_setup(const TrialWanted& wanted);
    void cancel_trial() { trial_.cancel(); } // that alone
    void learn(const LearningWanted& wanted);
    void cancel_learning() { learning_.cancel(); } // that alone
    void lay_beside(const FurtherWanted& wanted);
    void cancel_further() { further_.cancel(); } // that alone
    // Changes of one car, each for itself; some milliseconds each, so neither progress nor busy is told.
    void predict(CarPointer car, std::vector<causes::Change> changes);
    // The first rows of a file, some milliseconds: neither progress nor busy is told.
    void preview(const QString& path, const import::Options& options);
    // Calls off all that is running or waiting; nothing of it is answered any more.
    void cancel();
    [[nodiscard]] bool busy() const { return long_work_.busy(); }

  Q_SIGNALS:
    void session_ready(const lapwright::workspace::Origin& origin, const lapwright::workspace::SessionPointer& session);
    void file_refused(const lapwright::workspace::Origin& origin, const lapwright::base::Error& error);
    void pairing_ready(const lapwright::workspace::ComparedPointer& compared);
    void comparison_refused(const lapwright::base::Error& error);
    void explanation_ready(const lapwright::workspace::ExplanationPointer& explanation);
    void explanation_refused(const lapwright::base::Error& error);
    void trial_ready(const lapwright::bridge::TrialPointer& report);
    void trial_refused(const lapwright::base::Error& error);
    void learning_ready(const lapwright::bridge::LearningPointer& report);
    void learning_refused(const lapwright::base::Error& error);
    void further_ready(const lapwright::bridge::FurtherPointer& laps);
    void further_refused(const lapwright::base::Error& error);
    void predictions_ready(const std::vector<lapwright::causes::Prediction>& predictions);
    void preview_ready(const QString& path, const lapwright::bridge::PreviewPointer& preview);
    void preview_refused(const QString& path, const lapwright::base::Error& error);
    void progressed(const QString& stage, double part_done);
    void trial_progressed(const QString& stage, double part_done);    // and progressed, too
    void learning_progressed(const QString& stage, double part_done); // the same
    void busy_changed(bool busy);

  private:
    // Calls off what was asked for before it, and tells what comes of it by one of the two signals.
    template <typename Value, typename Work>
    void run_newest(JobGroup& group, Work work, void (Worker::*ready)(const Value&),
                    void (Worker::*refused)(const base::Error&), JobQueue::Tell tell);

    Stages stages_;
    JobGroup loads_;
    JobGroup comparison_;
    JobGroup explanation_;
    JobGroup trial_;
    JobGroup learning_;
    JobGroup further_;
    JobGroup prediction_;
    JobGroup preview_;
    JobQueue long_work_;
    JobQueue short_work_; // beside it
};

} // namespace lapwright::bridge
