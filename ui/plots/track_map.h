// SPDX-License-Identifier: GPL-3.0-or-later
// The track from above, coloured by who is winning time there, with the corners' names and the cursor's place.  North
// is up.  Mouse: a click goes there, the wheel zooms at the pointer, dragging pans, a double click shows all; the marks
// at the ends of the chosen segment, and the timing line, are dragged along the track.  With the driven lines it is a
// close-up of the chosen segment, in which both cars' lines stand beside each other.
#pragma once

#include "core/analysis/analysis.h"
#include "core/track/track.h"
#include "ui/theme/palette.h"

#include <QPainterPath>
#include <QTransform>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::plots {

class TrackMap : public QWidget {
    Q_OBJECT

  public:
    explicit TrackMap(QWidget* parent = nullptr);

    // `favour` has one value for each node of the line, −1 (B wins most) … 1 (A wins most).
    void set_track(std::shared_ptr<const track::Track> track, std::vector<double> favour);
    void set_palette(const theme::Palette& palette);
    void set_cursor(double place_m);
    void set_stretch(std::optional<std::pair<double, double>> stretch_m);

    // Whose driven lines are shown, close up; null: none, and the whole track.
    void set_lines(std::shared_ptr<const analysis::Pairing> pairing);

    [[nodiscard]] QSize sizeHint() const override { return {260, 200}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {140, 110}; }

    [[nodiscard]] QPointF pixel_at(double place_m) const; // of the line, in this widget
    [[nodiscard]] std::vector<QRectF> written() const;    // where the corners' names stand

  Q_SIGNALS:
    void place_clicked(double place_m);
    void boundary_moved(double from_m, double to_m);   // 0 m is the timing line
    void menu_asked(double place_m, const QPoint& at); // on the screen

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    struct Label {
        QString text;
        QRectF box;
    };

    void lay_out();
    void set_view(const QTransform& view); // of what fits the widget
    void paint_line(QPainter& painter) const;
    void paint_names(QPainter& painter) const;
    void paint_grips(QPainter& painter) const;
    [[nodiscard]] std::vector<Label> labels() const;
    [[nodiscard]] std::optional<QRectF> free_box(const track::Segment& segment, const QString& name,
                                                 const std::vector<Label>& placed) const;
    [[nodiscard]] bool is_free(const QRectF& box, const std::vector<Label>& placed) const;
    [[nodiscard]] std::vector<double> grips_m() const; // that can be dragged
    [[nodiscard]] std::optional<double> grip_at(const QPointF& at) const;
    [[nodiscard]] double place_near(const QPointF& at) const;
    [[nodiscard]] QRectF room() const;
    void paint_key(QPainter& painter) const;
    void paint_lines_key(QPainter& painter) const;
    void show_close_up();
    [[nodiscard]] bool shows_lines() const { return lines_ && stretch_m_; }
    [[nodiscard]] QPointF pixel(std::size_t node) const;
    [[nodiscard]] std::size_t node_at(double place_m) const;

    std::shared_ptr<const track::Track> track_;
    std::vector<double> favour_;
    std::shared_ptr<const analysis::Pairing> lines_;
    theme::Palette palette_;
    QTransform fit_; // of the whole track
    QTransform view_;
    QTransform to_pixels_;
    std::optional<QPointF> pressed_at_;
    QTransform view_when_pressed_;
    std::optional<double> grabbed_m_;
    bool dragging_ = false;
    QPixmap background_; // all but the cursor
    double cursor_m_ = 0.0;
    std::optional<std::pair<double, double>> stretch_m_;
};

} // namespace lapwright::plots
