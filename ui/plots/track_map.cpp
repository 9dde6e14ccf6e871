// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/track_map.h"

#include "ui/theme/fonts.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double margin_px = 16.0;
constexpr double line_px = 6.0;
constexpr double chosen_px = 12.0;
constexpr std::size_t max_strokes = 600; // more would not be seen

} // namespace

TrackMap::TrackMap(QWidget* parent) : QWidget(parent), palette_(theme::paper()) {
    setAccessibleName(tr("Map of the track, coloured by who wins time"));
    setFont(theme::small());
}

void TrackMap::set_track(std::shared_ptr<const track::Track> track, std::vector<double> favour) {
    track_ = std::move(track);
    favour_ = std::move(favour);
    stretch_m_.reset();
    cursor_m_ = 0.0;
    lay_out();
}

void TrackMap::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    lay_out();
}

void TrackMap::set_cursor(double place_m) {
    cursor_m_ = place_m;
    update();
}

void TrackMap::set_stretch(std::optional<std::pair<double, double>> stretch_m) {
    stretch_m_ = stretch_m;
    background_ = QPixmap();
    update();
}

void TrackMap::resizeEvent(QResizeEvent*) {
    lay_out();
}

void TrackMap::lay_out() {
    background_ = QPixmap();
    update();
    if (!track_ || track_->line.position_m.empty()) return;
    double west = std::numeric_limits<double>::infinity();
    double east = -west;
    double south = west;
    double north = -west;
    for (const track::Vec2& p : track_->line.position_m) {
        west = std::min(west, p.east);
        east = std::max(east, p.east);
        south = std::min(south, p.north);
        north = std::max(north, p.north);
    }
    const double key_height = QFontMetricsF(font()).height() + 4.0;
    const QRectF room = QRectF(rect()).adjusted(margin_px, margin_px, -margin_px, -margin_px - key_height);
    const double scale =
        std::min(room.width() / std::max(east - west, 1.0), room.height() / std::max(north - south, 1.0));
    to_pixels_ = QTransform();
    to_pixels_.translate(room.center().x(), room.center().y());
    to_pixels_.scale(scale, -scale);
    to_pixels_.translate(-0.5 * (west + east), -0.5 * (south + north));
}

QPointF TrackMap::pixel(std::size_t node) const {
    const auto& position = track_->line.position_m[node % track_->line.position_m.size()];
    return to_pixels_.map(QPointF(position.east, position.north));
}

std::size_t TrackMap::node_at(double place_m) const {
    const auto& line = track_->line;
    const auto node = static_cast<std::size_t>(std::max(0.0, std::round(place_m / line.step_m)));
    return node % line.position_m.size();
}

void TrackMap::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (!track_ || track_->line.position_m.size() < 2) return;
    if (background_.isNull()) {
        background_ = QPixmap(size() * devicePixelRatioF());
        background_.setDevicePixelRatio(devicePixelRatioF());
        background_.fill(Qt::transparent);
        QPainter below(&background_);
        below.setRenderHint(QPainter::Antialiasing);
        below.setFont(font());
        paint_line(below);
        paint_key(below);
    }
    painter.drawPixmap(0, 0, background_);
    painter.setPen(QPen(palette_.ink, 2.0));
    painter.setBrush(palette_.card);
    painter.drawEllipse(pixel(node_at(cursor_m_)), 5.5, 5.5);
}

void TrackMap::paint_line(QPainter& painter) const {
    const std::size_t nodes = track_->line.position_m.size();
    const auto path = [this, nodes](std::size_t from, std::size_t to) {
        QPolygonF line;
        for (std::size_t i = from; i <= std::min(to, nodes); ++i)
            line.append(pixel(i));
        return line;
    };
    if (stretch_m_) {
        const auto to = static_cast<std::size_t>(std::ceil(stretch_m_->second / track_->line.step_m));
        painter.setPen(QPen(palette_.edge, chosen_px, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter.drawPolyline(path(node_at(stretch_m_->first), to));
    }
    painter.setPen(QPen(palette_.rule, line_px + 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(path(0, nodes));
    const std::size_t step = std::max<std::size_t>(1, nodes / max_strokes);
    for (std::size_t i = 0; i < nodes; i += step) {
        const double favour = i < favour_.size() ? favour_[i] : 0.0;
        const QColor colour = theme::blend(palette_.even, favour >= 0.0 ? palette_.a : palette_.b, std::abs(favour));
        painter.setPen(QPen(colour, line_px, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter.drawPolyline(path(i, i + step));
    }
    const track::Vec2& tangent = track_->line.tangent.empty() ? track::Vec2{1.0, 0.0} : track_->line.tangent.front();
    const QPointF gate = pixel(0);
    painter.setPen(QPen(palette_.ink, 2.0));
    const QPointF across(-tangent.north, -tangent.east); // north is up, pixels run down
    painter.drawLine(gate + 8.0 * across, gate - 8.0 * across);
}

void TrackMap::paint_key(QPainter& painter) const {
    const QFontMetricsF metrics(font());
    const double height = metrics.height();
    const QRectF row(6.0, this->height() - height - 4.0, width() - 12.0, height);
    QString a = tr("A wins time");
    QString b = tr("B wins time");
    if (metrics.horizontalAdvance(a + b) + 2 * 18.0 + 14.0 > row.width()) {
        a = QStringLiteral("A");
        b = QStringLiteral("B");
    }
    double left = row.left();
    for (const auto& [text, colour] : {std::pair(a, palette_.a), std::pair(b, palette_.b)}) {
        painter.fillRect(QRectF(left, row.center().y() - 2.0, 14.0, 4.0), colour);
        left += 18.0;
        painter.setPen(palette_.quiet);
        painter.drawText(QRectF(left, row.top(), row.right() - left, height), Qt::AlignVCenter | Qt::TextSingleLine,
                         text);
        left += metrics.horizontalAdvance(text) + 12.0;
    }
}

void TrackMap::mousePressEvent(QMouseEvent* event) {
    if (!track_ || track_->line.position_m.empty()) return;
    std::size_t nearest = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < track_->line.position_m.size(); ++i) {
        const QPointF away = pixel(i) - event->position();
        const double distance = QPointF::dotProduct(away, away);
        if (distance < least) {
            least = distance;
            nearest = i;
        }
    }
    Q_EMIT place_clicked(static_cast<double>(nearest) * track_->line.step_m);
}

} // namespace lapwright::plots
