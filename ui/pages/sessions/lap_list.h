// SPDX-License-Identifier: GPL-3.0-or-later
// The laps of one session, a bar a lap on a time scale shared by all sessions.  A clean lap's bar is full, a flying lap
// that was set aside is hatched, out, in and incomplete laps are outlines; the words beside it say the same.  Two marks
// at the left make a lap A or B, by mouse or by the page's keys on the lap that has the focus.
#pragma once

#include "core/analysis/analysis.h"
#include "ui/theme/palette.h"

#include <QWidget>
#include <map>
#include <memory>
#include <optional>

namespace lapwright::pages {

class LapList : public QWidget {
    Q_OBJECT

  public:
    explicit LapList(std::shared_ptr<const analysis::Session> session, QWidget* parent = nullptr);

    void set_palette(const theme::Palette& palette);
    void set_scale(double full_s);                // the time that a bar of full length stands for
    void set_notes(std::map<int, QString> notes); // by the number of the lap
    void set_picked(std::optional<int> lap_a, std::optional<int> lap_b);

    [[nodiscard]] int current_lap() const; // the number of the lap with the focus
    [[nodiscard]] QRect mark_rect(int row, bool is_a) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void picked(int lap, bool as_a);
    void moved(); // the focus, to another lap

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    [[nodiscard]] int row_height() const;
    [[nodiscard]] QString lap_words(const lap::Lap& lap) const;
    [[nodiscard]] int row_at(const QPoint& point) const;
    void paint_row(QPainter& painter, int row) const;
    void paint_mark(QPainter& painter, int row, bool is_a) const;
    void paint_bar(QPainter& painter, const QRectF& room, const lap::Lap& lap) const;
    [[nodiscard]] QString note_of(const lap::Lap& lap) const;
    void move_to(int row);

    std::shared_ptr<const analysis::Session> session_;
    theme::Palette palette_;
    double full_s_ = 1.0;
    std::map<int, QString> notes_;
    std::optional<int> lap_a_;
    std::optional<int> lap_b_;
    int row_ = 0;
};

} // namespace lapwright::pages
