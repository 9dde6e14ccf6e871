// SPDX-License-Identifier: GPL-3.0-or-later
// One course of a session over its laps: a mark for each lap, filled where it is clean, the line through the later
// laps with its 95 % interval at the end, and the own best.
#pragma once

#include "core/analysis/learning_run.h"
#include "ui/theme/palette.h"

#include <QPoint>
#include <QWidget>
#include <memory>
#include <optional>

class QCustomPlot;

namespace lapwright::plots {

class LearningPlot : public QWidget {
    Q_OBJECT

  public:
    explicit LearningPlot(QWidget* parent = nullptr);

    // Of that segment; none: of the whole lap.
    void set_course(std::shared_ptr<const analysis::LearningReport> report, std::optional<std::size_t> segment);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] QPoint place_of(std::size_t lap) const; // in this widget
    [[nodiscard]] QSize sizeHint() const override { return {420, 240}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 150}; }

  private:
    void build();

    QCustomPlot* plot_;
    std::shared_ptr<const analysis::LearningReport> report_;
    std::optional<std::size_t> segment_;
    theme::Palette palette_;
};

} // namespace lapwright::plots
