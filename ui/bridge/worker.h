// SPDX-License-Identifier: GPL-3.0-or-later
// Long work off the UI thread: reads files, compares laps, tells how far it is, and can be called off.  One signal for
// each finished stage; of several comparisons asked for, only the newest is answered.  All signals arrive on the thread
// that owns the worker.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "ui/models/compared.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QThreadPool>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>

namespace lapwright::bridge {

using SessionPointer = std::shared_ptr<const analysis::Session>;
using models::ComparedPointer;

// The two laps that are to be compared; no number: the session's fastest clean lap.
struct Wanted {
    SessionPointer a;
    SessionPointer b;
    std::optional<int> lap_a;
    std::optional<int> lap_b;
};

// What the worker calls; the window gives it the analysis' own functions, a test may give it slow or failing ones.
struct Stages {
    std::function<base::Result<SessionPointer>(const std::string& path, const base::Progress& progress)> load;
    std::function<base::Result<ComparedPointer>(const Wanted& wanted, const base::Progress& progress)> compare;
};

[[nodiscard]] Stages analysis_stages();

class Worker : public QObject {
    Q_OBJECT

  public:
    explicit Worker(Stages stages, QObject* parent = nullptr);
    ~Worker() override; // calls everything off and waits for it

    void load(const QStringList& paths);
    void compare(const Wanted& wanted);
    // Calls off all that is running or waiting; nothing of it is answered any more.
    void cancel();
    [[nodiscard]] bool busy() const { return running_ > 0; }

  Q_SIGNALS:
    void session_ready(const QString& path, const lapwright::bridge::SessionPointer& session);
    void file_refused(const QString& path, const lapwright::base::Error& error);
    void pairing_ready(const lapwright::models::ComparedPointer& compared);
    void comparison_refused(const lapwright::base::Error& error);
    void progressed(const QString& stage, double part_done);
    void busy_changed(bool busy);

  private:
    using Stop = std::shared_ptr<std::atomic<bool>>;

    void run(Stop stop, std::function<std::function<void()>(const base::Progress&)> work);
    [[nodiscard]] base::Progress progress_for(const Stop& stop);

    Stages stages_;
    QThreadPool pool_;
    Stop stop_loads_;
    Stop stop_comparison_;
    int running_ = 0;
};

} // namespace lapwright::bridge
