// SPDX-License-Identifier: GPL-3.0-or-later
// The laps of one session, under a ruler that all open sessions share: a clean lap's bar is as long as the lap is
// behind the fastest, with the 95 % margin of its time as a whisker, so that a tenth can be seen; what is no clean lap
// has words in the place of a bar that say why.  Two marks at the left make a lap A or B, a third lays it behind these,
// by mouse or by the page's keys on the lap that has the focus; a click on the ruler's words sorts.
#pragma once

#include "core/analysis/analysis.h"
#include "core/workspace/lap_scale.h"
#include "ui/theme/palette.h"

#include <QWidget>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::pages {

class LapList : public QWidget {
    Q_OBJECT

  public:
    explicit LapList(std::shared_ptr<const analysis::Session> session, QWidget* parent = nullptr);

    void set_palette(const theme::Palette& palette);
    void set_session(std::shared_ptr<const analysis::Session> session); // the same laps, otherwise judged
    // The lap that bars are measured from, and the seconds that a bar of full length stands for.
    void set_scale(std::optional<double> fastest_s, double full_s);
    void set_order(workspace::LapOrder order);
    void set_notes(std::map<int, QString> notes); // by the number of the lap
    void set_picked(std::optional<int> lap_a, std::optional<int> lap_b);

    void set_further(std::map<int, QString> letters); // of the laps behind A and B, by their numbers

    [[nodiscard]] int current_lap() const; // the number of the lap with the focus
    [[nodiscard]] QRect mark_rect(int row, bool is_a) const;
    [[nodiscard]] QRect further_rect(int row) const;
    [[nodiscard]] QString row_words(int row) const; // all that is said of its lap
    [[nodiscard]] int rows() const { return static_cast<int>(laps_.size()); }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void picked(int lap, bool as_a);
    void further_asked(int lap);
    void session_asked(int step); // the one before or behind this
    void moved();                 // the focus, to another lap
    void order_asked(lapwright::workspace::LapOrder order);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    // Where the columns of a row begin and end.
    struct Columns {
        int lap = 0;
        int time = 0;
        int behind = 0;
        int bar = 0;
        int kind = 0;
        int note = 0;
        int right = 0;
    };
    [[nodiscard]] Columns columns() const;
    [[nodiscard]] int row_height() const;
    [[nodiscard]] int row_at(const QPoint& point) const;
    [[nodiscard]] const lap::Lap& lap_at(int row) const { return *laps_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] QString kind_words(const lap::Lap& lap) const;
    [[nodiscard]] QString reason_words(const lap::Lap& lap) const;
    [[nodiscard]] double to_x(double behind_s) const;
    [[nodiscard]] std::vector<double> ticks_s() const;
    void write(QPainter& painter, const QRect& room, Qt::Alignment side, const QString& words, const QColor& ink) const;
    void paint_ruler(QPainter& painter) const;
    void paint_row(QPainter& painter, int row) const;
    void paint_mark(QPainter& painter, int row, bool is_a) const;
    void paint_bar(QPainter& painter, const QRect& whole, const lap::Lap& lap) const;
    void paint_letter(QPainter& painter, const QRect& mark, const QString& letter, const QColor& fill, bool on) const;
    void move_to(int row);
    void put_in_order(int current);

    std::shared_ptr<const analysis::Session> session_;
    std::vector<const lap::Lap*> laps_; // of session_, as they are shown
    workspace::LapOrder order_ = workspace::LapOrder::driven;
    theme::Palette palette_;
    std::optional<double> fastest_s_;
    double full_s_ = 1.0;
    std::map<int, QString> notes_;
    std::optional<int> lap_a_;
    std::optional<int> lap_b_;
    std::map<int, QString> further_;
    int row_ = 0;
};

} // namespace lapwright::pages
