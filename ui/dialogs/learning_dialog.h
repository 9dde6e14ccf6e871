// SPDX-License-Identifier: GPL-3.0-or-later
// How a session was learned: a sentence, the times over the laps, and for each segment its course and what is still to
// be won.  It computes nothing; the row that is chosen is what the plot shows.
#pragma once

#include "core/analysis/learning_run.h"
#include "ui/theme/palette.h"

#include <QDialog>
#include <memory>

class QLabel;
class QProgressBar;
class QTableWidget;

namespace lapwright::plots {
class LearningPlot;
}

namespace lapwright::dialogs {

class LearningDialog : public QDialog {
    Q_OBJECT

  public:
    LearningDialog(const QString& session, const theme::Palette& palette, QWidget* parent = nullptr);

    void show_progress(const QString& stage, double part_done);
    void show_report(std::shared_ptr<const analysis::LearningReport> report);
    void show_refusal(const QString& sentence);

    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QTableWidget& courses() { return *courses_; }
    [[nodiscard]] plots::LearningPlot& plot() { return *plot_; }

  private:
    void add_row(const QString& name, const comparison::LearningCourse& course, bool whole_lap);
    void follow_row();
    void copy() const;

    std::shared_ptr<const analysis::LearningReport> report_;
    QLabel* sentence_;
    QProgressBar* progress_;
    QLabel* notes_;
    plots::LearningPlot* plot_;
    QTableWidget* courses_;
};

} // namespace lapwright::dialogs
