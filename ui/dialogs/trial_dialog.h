// SPDX-License-Identifier: GPL-3.0-or-later
// What is a change to the car worth?  Each open session is a baseline, has the change, or is left out; the answer is a
// sentence and a table of segments with their intervals.  It computes nothing.
#pragma once

#include "core/analysis/trial_run.h"
#include "core/workspace/session_key.h"

#include <QDialog>
#include <QString>
#include <array>
#include <memory>
#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace lapwright::dialogs {

enum class TrialPart { left_out, baseline, change };

// One session as it is offered, in the order in which they were driven.
struct TrialRow {
    workspace::SessionKey session;
    QString title;
    QString file;
    QString when; // empty where the file has no clock
    QString clean_laps;
};

class TrialDialog : public QDialog {
    Q_OBJECT

  public:
    // Two sessions begin as baseline and change, three as baseline, change, baseline; of more none is chosen.
    explicit TrialDialog(const std::vector<TrialRow>& rows, QWidget* parent = nullptr);

    [[nodiscard]] std::vector<std::pair<workspace::SessionKey, TrialPart>> parts() const;
    // While the answer is being reckoned.
    void show_progress(const QString& stage, double part_done);
    void show_report(const std::shared_ptr<const analysis::TrialReport>& report);
    void show_refusal(const QString& sentence);

    [[nodiscard]] QComboBox& part_of(std::size_t row) { return *choices_[row]; }
    [[nodiscard]] QPushButton& run() { return *run_; }
    [[nodiscard]] QPushButton& stop() { return *stop_; }
    [[nodiscard]] QProgressBar& progress() { return *progress_; }
    [[nodiscard]] QTableWidget& effects() { return *effects_; }
    [[nodiscard]] QString sentence() const;

  Q_SIGNALS:
    void run_asked();
    void stop_asked(); // also when it is closed, or a part changed, while it works

  private:
    QTableWidget* make_sessions(const std::vector<TrialRow>& rows);
    QTableWidget* make_effects();
    QWidget* make_working();
    void begin();
    void call_off(); // whatever is being reckoned
    void set_working(bool working);
    void follow();
    void add_effect(const QString& name, const comparison::TrialEffect& effect, bool whole_lap);
    void add_row(const std::array<QString, 3>& cells, bool whole_lap);

    std::vector<workspace::SessionKey> sessions_;
    std::vector<QComboBox*> choices_;
    QLabel* sentence_;
    QLabel* laps_;
    QPushButton* run_;
    QPushButton* stop_;
    QProgressBar* progress_;
    QTableWidget* effects_;
    QWidget* working_; // bar and stop, shown while it works
    bool works_ = false;
};

} // namespace lapwright::dialogs
