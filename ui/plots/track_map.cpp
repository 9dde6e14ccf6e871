// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/track_map.h"

#include "core/base/number_text.h"
#include "ui/models/text.h"
#include "ui/plots/driven_lines.h"
#include "ui/plots/in_words.h"
#include "ui/theme/fonts.h"

#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double margin_px = 24.0; // for the names
constexpr double side_margin_px = 32.0;
constexpr double name_away_px = 11.0; // from the line
constexpr double grip_px = 4.0;       // half the side of a mark
constexpr double reach_px = 8.0;      // of the pointer to a mark
constexpr double drag_starts_px = 4.0;
constexpr double wheel_zoom = 1.25; // for one notch
constexpr double notch = 120.0;     // of QWheelEvent
constexpr double closest = 40.0;    // times as large as the whole track
constexpr double line_px = 6.0;
constexpr double chosen_px = 12.0;
constexpr double seen_px = 0.75;
constexpr double shades = 40.0; // of either colour; more would not be seen

} // namespace

TrackMap::TrackMap(QWidget* parent) : QWidget(parent), palette_(theme::paper()) {
    setAccessibleName(tr("Map of the track, coloured by who wins time"));
    setFont(theme::small());
    setMouseTracking(true);
}

void TrackMap::set_track(std::shared_ptr<const track::Track> track, std::vector<double> favour) {
    if (!track_ || !track || track_->line.length_m != track->line.length_m) view_ = QTransform();
    track_ = std::move(track);
    setAccessibleDescription(track_ ? in_words(*track_) : QString());
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
    show_close_up();
    update();
}

void TrackMap::set_lines(std::shared_ptr<const analysis::Pairing> pairing) {
    if (lines_ && !pairing) view_ = QTransform();
    lines_ = std::move(pairing);
    lay_out();
}

void TrackMap::show_close_up() {
    if (shows_lines()) set_view(close_up_of(track_->line, *stretch_m_, fit_, room()));
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
    const QRectF inside = room().adjusted(side_margin_px, margin_px, -side_margin_px, -margin_px);
    const double scale =
        std::min(inside.width() / std::max(east - west, 1.0), inside.height() / std::max(north - south, 1.0));
    fit_ = QTransform();
    fit_.translate(inside.center().x(), inside.center().y());
    fit_.scale(scale, -scale);
    fit_.translate(-0.5 * (west + east), -0.5 * (south + north));
    to_pixels_ = fit_ * view_;
    show_close_up();
}

// Without the row of the key.
QRectF TrackMap::room() const {
    return QRectF(rect()).adjusted(0.0, 0.0, 0.0, -QFontMetricsF(font()).height() - 4.0);
}

void TrackMap::set_view(const QTransform& view) {
    view_ = view.m11() <= 1.0 ? QTransform() : view;
    to_pixels_ = fit_ * view_;
    background_ = QPixmap();
    update();
}

QPointF TrackMap::pixel_at(double place_m) const {
    const track::Vec2 position = track_->line.position(place_m);
    return to_pixels_.map(QPointF(position.east, position.north));
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
        below.save();
        below.setClipRect(room());
        paint_line(below);
        paint_names(below);
        below.restore();
        if (shows_lines())
            paint_lines_key(below);
        else
            paint_key(below);
    }
    painter.drawPixmap(0, 0, background_);
    painter.setClipRect(room());
    paint_grips(painter);
    painter.setPen(QPen(palette_.ink, 2.0));
    painter.setBrush(palette_.card);
    painter.drawEllipse(pixel(node_at(cursor_m_)), 5.5, 5.5);
}

void TrackMap::paint_line(QPainter& painter) const {
    const std::size_t nodes = track_->line.position_m.size();
    // Nodes closer than can be seen cost as much as others.
    const auto path = [this, nodes](std::size_t from, std::size_t to) {
        QPolygonF line;
        const std::size_t last = std::min(to, nodes);
        for (std::size_t i = from; i <= last; ++i) {
            const QPointF at = pixel(i);
            if (line.isEmpty() || i == last || (at - line.back()).manhattanLength() >= seen_px) line.append(at);
        }
        return line;
    };
    if (shows_lines()) {
        painter.setPen(QPen(palette_.edge, 1.0, Qt::DotLine));
        painter.drawPolyline(path(0, nodes));
        paint_driven_lines(painter, *lines_, to_pixels_, *stretch_m_, palette_);
        return;
    }
    if (stretch_m_) {
        const auto to = static_cast<std::size_t>(std::ceil(stretch_m_->second / track_->line.step_m));
        painter.setPen(QPen(palette_.edge, chosen_px, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter.drawPolyline(path(node_at(stretch_m_->first), to));
    }
    painter.setPen(QPen(palette_.rule, line_px + 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(path(0, nodes));
    const auto shade_at = [this](std::size_t i) { return i < favour_.size() ? std::lround(favour_[i] * shades) : 0; };
    for (std::size_t from = 0; from < nodes;) {
        const long shade = shade_at(from);
        std::size_t to = from + 1;
        while (to < nodes && shade_at(to) == shade)
            ++to;
        const QColor colour = theme::blend(palette_.even, shade >= 0 ? palette_.a : palette_.b,
                                           static_cast<double>(std::abs(shade)) / shades);
        painter.setPen(QPen(colour, line_px, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter.drawPolyline(path(from, to));
        from = to;
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

void TrackMap::paint_lines_key(QPainter& painter) const {
    const QFontMetricsF metrics(font());
    const int factor = sideways_factor(*lines_, *stretch_m_, std::hypot(to_pixels_.m11(), to_pixels_.m12()));
    const bool banded = !lines_->comparison.line.low_m.empty();
    QStringList words;
    if (factor > 1) words << tr("sideways × %1").arg(models::text(base::integer_text(factor)));
    words << tr("A solid, B dashed");
    if (banded) words << tr("band: where A may be, seen from B");
    painter.setPen(palette_.quiet);
    constexpr double beside_px = 6.0;
    const double width_px = width() - 2.0 * beside_px;
    const QString all = words.join(QStringLiteral("; "));
    const QRectF needed = metrics.boundingRect(QRectF(0.0, 0.0, width_px, height()), Qt::TextWordWrap, all);
    const QRectF given(beside_px, height() - needed.height() - 4.0, width_px, needed.height());
    painter.fillRect(given, palette_.card); // over names of corners far from the stretch
    painter.drawText(given, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, all);
}

// Beside the corners, away from the side to which they turn; "Corner 7" may be "7" where the whole has no room, and
// what finds no room at all is left out.
std::vector<TrackMap::Label> TrackMap::labels() const {
    std::vector<Label> placed;
    for (const track::Segment& segment : track_->segments) {
        if (segment.kind != track::SegmentKind::corner) continue;
        const QString name = models::text(segment.name);
        QStringList forms{name};
        if (const QString last = name.section(QLatin1Char(' '), -1); last != name && last.front().isDigit())
            forms << last;
        for (const QString& form : forms) {
            const auto box = free_box(segment, form, placed);
            if (!box) continue;
            placed.push_back({form, *box});
            break;
        }
    }
    return placed;
}

std::optional<QRectF> TrackMap::free_box(const track::Segment& segment, const QString& name,
                                         const std::vector<Label>& placed) const {
    const QFontMetricsF metrics(font());
    const double middle_m = 0.5 * (segment.start_m + segment.end_m);
    const track::Vec2 tangent = track_->line.tangent_at(middle_m);
    const QPointF left(-tangent.north, -tangent.east); // north is up, pixels run down
    const QPointF outside = segment.turned_rad > 0.0 ? -left : left;
    const QSizeF size(metrics.horizontalAdvance(name) + 1.0, metrics.height());
    for (const QPointF& side : {outside, -outside}) {
        const double reach =
            name_away_px + 0.5 * (std::abs(side.x()) * size.width() + std::abs(side.y()) * size.height());
        QRectF box(QPointF(), size);
        box.moveCenter(pixel_at(middle_m) + reach * side);
        if (is_free(box, placed)) return box;
    }
    return std::nullopt;
}

bool TrackMap::is_free(const QRectF& box, const std::vector<Label>& placed) const {
    if (!room().contains(box)) return false;
    if (std::ranges::any_of(placed, [&](const Label& other) { return other.box.intersects(box); })) return false;
    const QRectF kept_clear = box.adjusted(-0.5 * line_px, -0.5 * line_px, 0.5 * line_px, 0.5 * line_px);
    const std::size_t nodes = track_->line.position_m.size();
    for (std::size_t i = 0; i < nodes; ++i)
        if (kept_clear.contains(pixel(i))) return false;
    return true;
}

std::vector<QRectF> TrackMap::written() const {
    std::vector<QRectF> boxes;
    if (track_)
        for (const Label& label : labels())
            boxes.push_back(label.box);
    return boxes;
}

void TrackMap::paint_names(QPainter& painter) const {
    painter.setPen(palette_.ink);
    for (const Label& label : labels())
        painter.drawText(label.box, Qt::AlignCenter | Qt::TextSingleLine, label.text);
}

std::vector<double> TrackMap::grips_m() const {
    std::vector<double> places{0.0};
    if (stretch_m_)
        for (const double end_m : {stretch_m_->first, stretch_m_->second})
            if (end_m > 0.0 && end_m < track_->line.length_m - 0.5) places.push_back(end_m);
    return places;
}

void TrackMap::paint_grips(QPainter& painter) const {
    painter.setPen(QPen(palette_.ink, 1.5));
    painter.setBrush(palette_.card);
    for (const double place_m : grips_m())
        painter.drawRect(QRectF(pixel_at(place_m) - QPointF(grip_px, grip_px), QSizeF(2 * grip_px, 2 * grip_px)));
}

std::optional<double> TrackMap::grip_at(const QPointF& at) const {
    for (const double place_m : grips_m())
        if (QLineF(pixel_at(place_m), at).length() <= reach_px) return place_m;
    return std::nullopt;
}

double TrackMap::place_near(const QPointF& at) const {
    std::size_t nearest = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < track_->line.position_m.size(); ++i) {
        const QPointF away = pixel(i) - at;
        const double distance = QPointF::dotProduct(away, away);
        if (distance < least) {
            least = distance;
            nearest = i;
        }
    }
    return static_cast<double>(nearest) * track_->line.step_m;
}

void TrackMap::mousePressEvent(QMouseEvent* event) {
    if (!track_ || track_->line.position_m.empty() || event->button() != Qt::LeftButton) return;
    pressed_at_ = event->position();
    view_when_pressed_ = view_;
    grabbed_m_ = grip_at(event->position());
    dragging_ = false;
}

void TrackMap::mouseMoveEvent(QMouseEvent* event) {
    if (!track_ || track_->line.position_m.empty()) return;
    if (!pressed_at_) {
        setCursor(grip_at(event->position()) ? Qt::OpenHandCursor : Qt::ArrowCursor);
        return;
    }
    const QPointF moved = event->position() - *pressed_at_;
    dragging_ = dragging_ || std::hypot(moved.x(), moved.y()) >= drag_starts_px;
    if (!dragging_) return;
    if (grabbed_m_)
        set_cursor(place_near(event->position()));
    else if (view_when_pressed_.m11() > 1.0)
        set_view(view_when_pressed_ * QTransform::fromTranslate(moved.x(), moved.y()));
}

void TrackMap::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !pressed_at_) return;
    pressed_at_.reset();
    const auto grabbed_m = std::exchange(grabbed_m_, {});
    if (!dragging_)
        Q_EMIT place_clicked(place_near(event->position()));
    else if (grabbed_m)
        Q_EMIT boundary_moved(*grabbed_m, place_near(event->position()));
}

void TrackMap::mouseDoubleClickEvent(QMouseEvent*) {
    set_view(QTransform());
}

void TrackMap::wheelEvent(QWheelEvent* event) {
    const QPointF at = event->position();
    const double now = view_.m11();
    const double wanted = std::clamp(now * std::pow(wheel_zoom, event->angleDelta().y() / notch), 1.0, closest);
    QTransform zoom = QTransform::fromTranslate(-at.x(), -at.y());
    zoom *= QTransform::fromScale(wanted / now, wanted / now);
    zoom *= QTransform::fromTranslate(at.x(), at.y());
    set_view(view_ * zoom);
    event->accept();
}

void TrackMap::contextMenuEvent(QContextMenuEvent* event) {
    if (!track_ || track_->line.position_m.empty()) return;
    Q_EMIT menu_asked(place_near(QPointF(event->pos())), event->globalPos());
}

} // namespace lapwright::plots
