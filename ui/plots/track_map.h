// SPDX-License-Identifier: GPL-3.0-or-later
// The track from above, coloured by who is winning time there, with the cursor's place.  North is up.
#pragma once

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

    [[nodiscard]] QSize sizeHint() const override { return {260, 200}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {140, 110}; }

  Q_SIGNALS:
    void place_clicked(double place_m);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    void lay_out();
    void paint_line(QPainter& painter) const;
    void paint_key(QPainter& painter) const;
    [[nodiscard]] QPointF pixel(std::size_t node) const;
    [[nodiscard]] std::size_t node_at(double place_m) const;

    std::shared_ptr<const track::Track> track_;
    std::vector<double> favour_;
    theme::Palette palette_;
    QTransform to_pixels_;
    QPixmap background_; // all but the cursor
    double cursor_m_ = 0.0;
    std::optional<std::pair<double, double>> stretch_m_;
};

} // namespace lapwright::plots
