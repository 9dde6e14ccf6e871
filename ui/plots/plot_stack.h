// SPDX-License-Identifier: GPL-3.0-or-later
// The stacked panels of a pairing on one distance axis: ribbon, speed, further channels, gap with its band, time won
// per segment.  One view and one cursor for all of them.  Mouse: the cursor follows the pointer, the wheel zooms at it,
// dragging pans, a click chooses the segment, a double-click shows the whole lap.  Keys are the pages' actions.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "ui/models/channels.h"
#include "ui/plots/picture.h"
#include "ui/plots/view_range.h"
#include "ui/theme/palette.h"

#include <QPoint>
#include <QSize>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

class QCustomPlot;
class QCPAxisRect;
class QMouseEvent;
class QWheelEvent;

namespace lapwright::plots {

class Cursor;
class ChosenStretch;

// What the stack shows, and how.
struct StackContent {
    std::shared_ptr<const analysis::Pairing> pairing;
    std::vector<comparison::SegmentComparison> segments; // the rows that can be chosen
    std::vector<models::ChannelChoice> channels;         // of the same pairing
    base::UnitSystem units = base::UnitSystem::metric;
    bool show_band = true;
    bool fill_values = false; // value axes fit what is in view, not the whole lap
};

class PlotStack : public QWidget {
    Q_OBJECT

  public:
    explicit PlotStack(QWidget* parent = nullptr);
    ~PlotStack() override;

    void set_palette(const theme::Palette& palette);
    void set_content(StackContent content); // keeps view and cursor while the pairing is the same

    [[nodiscard]] double length_m() const { return length_m_; }
    [[nodiscard]] ViewRange view() const { return view_; }
    void set_view(ViewRange view);
    void zoom(double factor); // about the cursor when it is in view, else about the middle
    void pan(double part);    // of the view's width
    void fit();
    void show_stretch(double start_m, double end_m); // with some room on both sides

    [[nodiscard]] double cursor_m() const { return cursor_m_; }
    void set_cursor(double place_m); // the view follows
    // Steps of one two-hundredth of the view, but a metre at least.
    void step_cursor(int steps);

    void choose(std::optional<std::size_t> segment); // marks its stretch
    // As it is shown, without the cursor.
    [[nodiscard]] QByteArray picture(const QString& heading, PictureForm form);
    void replot_now(); // at once and complete; else painting waits for the event loop

    [[nodiscard]] QSize sizeHint() const override { return {800, 600}; }

  Q_SIGNALS:
    void cursor_moved(double place_m);
    void segment_clicked(int segment);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct Panel;

    void build();
    void add_ribbon();
    void add_speed();
    void add_channel(const models::ChannelChoice& choice);
    void add_gap();
    void add_gains();
    Panel& add_panel(const QString& title, int min_height, int stretch);
    void add_pair(Panel& panel, const std::vector<double>* a, const std::vector<double>* b);
    void fit_values(const Panel& panel);
    void show_distance_axis();
    void space_distance_ticks();
    void add_overlays();
    void paint_overlay();
    void move_cursor_to(double place_m);

    void pressed(const QMouseEvent& event);
    void moved(const QMouseEvent& event);
    void released(const QMouseEvent& event);
    void wheeled(const QWheelEvent& event);
    [[nodiscard]] double place_at(double x_pixel) const;
    [[nodiscard]] std::optional<std::size_t> segment_at(double place_m) const;

    QCustomPlot* plot_;
    theme::Palette palette_;
    StackContent content_;
    std::vector<std::unique_ptr<Panel>> panels_;
    std::vector<Cursor*> cursors_;
    std::vector<ChosenStretch*> stretches_;
    std::optional<std::size_t> chosen_;
    double length_m_ = 1.0;
    double cursor_m_ = 0.0;
    ViewRange view_;
    std::optional<QPoint> pressed_at_;
    ViewRange view_when_pressed_;
    bool dragging_ = false;
};

} // namespace lapwright::plots
