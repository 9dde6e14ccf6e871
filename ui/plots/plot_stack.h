// SPDX-License-Identifier: GPL-3.0-or-later
// The stacked panels of a pairing on one distance axis: ribbon, speed, further channels, gap with its band, time won
// per segment.  One view and one cursor for all of them.  Mouse: the cursor follows the pointer, the wheel scrolls
// panels that are higher than their room, else zooms at the pointer, as it always does with Ctrl; dragging pans, a
// click chooses the segment, a double-click shows the whole lap; the mark between two segments is dragged on the
// ribbon.  A click on a panel's name folds it, the border between two is dragged, and a further channel is dragged by
// its name to the place of another.  Speed and gap are always in view: of the further channels so many are shown as
// have room, and the wheel goes on to the others.  Keys are the pages' actions, for the panel in hand: the one that was
// clicked or gone to last.
#pragma once

#include "ui/plots/picture.h"
#include "ui/plots/stack_panels.h"
#include "ui/plots/view_range.h"

#include <QPoint>
#include <QSize>
#include <QWidget>
#include <memory>
#include <optional>

class QCustomPlot;
class QMouseEvent;
class QWheelEvent;

namespace lapwright::plots {

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
    // Keys of the panel in hand.
    void take_next_panel();
    void fold_panel(); // or unfold it
    void grow_panel(int steps);
    void move_channel(int places);
    void scroll_channels(int count);
    [[nodiscard]] const ChannelWindow& channels_shown() const { return channels_; }
    [[nodiscard]] const QString& panel_in_hand() const { return hand_; } // empty: none yet
    [[nodiscard]] const StackPanels& panels() const { return *panels_; }
    void replot_now(); // at once and complete; else painting waits for the event loop

    [[nodiscard]] QSize sizeHint() const override { return {800, 600}; }

  Q_SIGNALS:
    void cursor_moved(double place_m);
    void segment_clicked(int segment);
    void boundary_moved(double from_m, double to_m);   // 0 m is the timing line
    void menu_asked(double place_m, const QPoint& at); // on the screen
    void looks_changed(const lapwright::plots::PanelLooks& looks);
    void channel_moved(const QString& id, const QString& to_place_of);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    void build();
    void fold(const QString& id);
    void resize_to(int y);
    [[nodiscard]] bool follow_channels(std::size_t first); // whether others are shown now
    void end_title_press(const QPoint& at);
    void move_cursor_to(double place_m);

    void pressed(const QMouseEvent& event);
    void moved(const QMouseEvent& event);
    void released(const QMouseEvent& event);
    void wheeled(const QWheelEvent& event);

    QCustomPlot* plot_;
    std::unique_ptr<StackPanels> panels_;
    std::optional<std::size_t> chosen_;
    double length_m_ = 1.0;
    double cursor_m_ = 0.0;
    ViewRange view_;
    std::optional<QPoint> pressed_at_;
    std::optional<double> grabbed_m_; // the boundary that is being dragged
    ViewRange view_when_pressed_;
    ChannelWindow channels_;
    QString hand_;                                        // id of the panel in hand
    std::optional<QString> title_pressed_;                // id
    std::optional<std::pair<std::size_t, int>> resizing_; // the lower panel, and where the border was
    bool dragging_ = false;
};

} // namespace lapwright::plots
