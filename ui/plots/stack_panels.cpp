// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/stack_panels.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"
#include "ui/plots/cursor.h"
#include "ui/plots/curve.h"
#include "ui/plots/gain_bars.h"
#include "ui/plots/ribbon.h"
#include "ui/plots/stretches.h"
#include "ui/plots/unit_ticker.h"
#include "ui/theme/favour.h"
#include "ui/theme/fonts.h"

#include <algorithm>
#include <cmath>

namespace lapwright::plots {
namespace {

constexpr double room_above_values = 0.06; // of their extent, above and below
constexpr int gap_band_alpha = 70;
constexpr int right_margin_px = 8;
constexpr double grip_px = 4.0; // to both sides of a boundary

QString unit_suffix(base::Unit unit) {
    const QString symbol = models::text(base::symbol(unit));
    return symbol.isEmpty() ? QString() : QStringLiteral(", ") + symbol;
}

std::pair<double, double> joined(std::pair<double, double> one, std::pair<double, double> other) {
    return {std::min(one.first, other.first), std::max(one.second, other.second)};
}

int title_height() {
    return QFontMetrics(theme::small()).height() + 2;
}

// One figure of a side, or nothing where it was not measured.
void add_side(std::vector<Piece>& pieces, const char* side, const std::vector<double>& xs,
              const std::vector<double>* ys, double place_m, base::Unit unit, int decimals, const QColor& colour) {
    if (ys == nullptr) return;
    const double value = value_at(xs, *ys, place_m);
    if (!std::isfinite(value)) return;
    QString figure = models::text(base::fixed_text(base::from_si(value, unit), decimals));
    figure.replace(QLatin1Char('-'), QChar(0x2212)); // the minus of all other figures
    pieces.push_back({QLatin1String(side) + QChar(0xA0) + figure, colour});
}

// As many digits as let the extent be told in some hundred steps.
int read_out_decimals(std::pair<double, double> extent, base::Unit unit) {
    const double span = std::abs(extent.second - extent.first) / base::definition(unit).factor;
    if (!(span > 0.0)) return 1;
    return std::clamp(static_cast<int>(std::ceil(2.0 - std::log10(span))), 0, 3);
}

std::optional<ViewRange> stretch_of(const StackContent& content, std::optional<std::size_t> row) {
    if (!row) return std::nullopt;
    const track::Segment& segment = content.segments[*row].segment;
    return ViewRange{segment.start_m, segment.end_m};
}

} // namespace

// Points of one curve; not owned.
struct Series {
    std::span<const double> xs;
    std::span<const double> ys;
};

struct StackPanels::Panel {
    QString title;
    QCPAxisRect* rect = nullptr;
    ReadOut read_out;
    const Drawing* writing = nullptr; // names or numbers that lines keep clear of
    std::vector<Series> series;       // what the value axis is fitted to
    bool with_zero = false;           // the whole lap's values are shown with zero among them
};

std::optional<std::size_t> segment_at(const StackContent& content, double place_m) {
    for (std::size_t i = 0; i < content.segments.size(); ++i) {
        const track::Segment& segment = content.segments[i].segment;
        if (place_m >= segment.start_m && place_m < segment.end_m) return i;
    }
    return std::nullopt;
}

StackPanels::StackPanels(QCustomPlot* plot) : plot_(plot), palette_(theme::paper()) {}

StackPanels::~StackPanels() = default;

void StackPanels::set_view(ViewRange view) {
    view_ = view;
    for (const auto& panel : panels_)
        panel->rect->axis(QCPAxis::atBottom)->setRange(view_.lower_m, view_.upper_m);
    if (content_.fill_values)
        for (const auto& panel : panels_)
            fit_values(*panel);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StackPanels::set_cursor(double place_m) {
    for (Cursor* cursor : cursors_)
        cursor->set(place_m);
    plot_->layer(QStringLiteral("overlay"))->replot();
}

void StackPanels::show_cursors(bool shown) {
    for (Cursor* cursor : cursors_)
        cursor->setVisible(shown);
}

void StackPanels::choose(std::optional<std::size_t> segment) {
    for (ChosenStretch* drawing : stretches_)
        drawing->set(stretch_of(content_, segment));
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

int StackPanels::left_px() const {
    return panels_.front()->rect->rect().left();
}

int StackPanels::width_px() const {
    return panels_.front()->rect->width();
}

double StackPanels::place_at(double x_pixel) const {
    return panels_.front()->rect->axis(QCPAxis::atBottom)->pixelToCoord(x_pixel);
}

std::optional<double> StackPanels::boundary_at(const QPoint& pixel) const {
    if (panels_.empty() || !panels_.front()->rect->rect().contains(pixel)) return std::nullopt;
    const QCPAxis& axis = *panels_.front()->rect->axis(QCPAxis::atBottom);
    const auto& segments = content_.pairing->track.segments;
    std::optional<double> nearest;
    double least_px = grip_px;
    const auto look_at = [&](double place_m) {
        const double away_px = std::abs(axis.coordToPixel(place_m) - pixel.x());
        if (away_px > least_px) return;
        least_px = away_px;
        nearest = place_m;
    };
    for (const track::Segment& segment : segments)
        look_at(segment.start_m);
    if (!segments.empty()) look_at(segments.back().end_m);
    return nearest;
}

void StackPanels::build(const State& state) {
    view_ = state.view;
    cursors_.clear();
    stretches_.clear();
    panels_.clear();
    remove_drawings(*plot_);
    plot_->plotLayout()->clear();
    plot_->plotLayout()->setRowSpacing(3);
    plot_->setBackground(QBrush(palette_.paper));
    if (content_.pairing) {
        add_ribbon();
        add_speed();
        for (const auto& choice : content_.channels)
            add_channel(choice);
        add_gap();
        add_gains();
        show_distance_axis(state.width_px);
        add_overlays(state);
    }
    int least = 0;
    for (const auto& panel : panels_) {
        least +=
            panel->rect->minimumSize().height() + panel->rect->margins().top() + panel->rect->margins().bottom() + 3;
    }
    plot_->setMinimumHeight(least);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

StackPanels::Panel& StackPanels::add_panel(const QString& title, int min_height, int stretch) {
    auto* rect = new QCPAxisRect(plot_, true);
    const int row = static_cast<int>(panels_.size());
    plot_->plotLayout()->addElement(row, 0, rect);
    plot_->plotLayout()->setRowStretchFactor(row, stretch);
    for (QCPAxis* axis : rect->axes()) {
        axis->setLayer(QStringLiteral("axes"));
        axis->grid()->setLayer(QStringLiteral("grid"));
        axis->setVisible(axis == rect->axis(QCPAxis::atLeft));
        axis->setBasePen(Qt::NoPen);
        axis->setTickPen(Qt::NoPen);
        axis->setSubTickPen(Qt::NoPen);
        axis->setTickLabelFont(theme::small());
        axis->setTickLabelColor(palette_.quiet);
        axis->setTickLabelPadding(4);
    }
    QCPAxis* values = rect->axis(QCPAxis::atLeft);
    values->grid()->setPen(QPen(palette_.rule, 1.0));
    values->grid()->setZeroLinePen(QPen(palette_.edge, 1.0));
    values->grid()->setAntialiased(false);
    values->grid()->setAntialiasedZeroLine(false);
    rect->axis(QCPAxis::atBottom)->setRange(view_.lower_m, view_.upper_m);
    rect->setAutoMargins(QCP::msNone);
    const int left = QFontMetrics(theme::small()).horizontalAdvance(QStringLiteral("−00.00")) + 8;
    rect->setMargins(QMargins(left, title_height(), right_margin_px, 0));
    rect->setMinimumSize(100, min_height);
    panels_.push_back(std::make_unique<Panel>(Panel{title, rect, {}, nullptr, {}, false}));
    new Corners(rect, content_.pairing->track, palette_.tint);
    return *panels_.back();
}

void StackPanels::add_ribbon() {
    const track::Track& track = content_.pairing->track;
    const int height = 37 + Ribbon::name_rows * QFontMetrics(theme::small()).height();
    Panel& panel = add_panel(QObject::tr("Track, unrolled: bumps up are left-handers"), height, 1);
    panel.rect->setMaximumSize(QWIDGETSIZE_MAX, height);
    panel.rect->axis(QCPAxis::atLeft)->setVisible(false);
    panel.writing = new Ribbon(panel.rect, track, palette_.ribbon, palette_.ink, theme::small());
    const base::UnitSystem units = content_.units;
    panel.read_out = [this, units](double place) -> std::vector<Piece> {
        std::vector<Piece> pieces;
        if (const auto segment = segment_at(content_, place)) {
            pieces.push_back({models::text(content_.segments[*segment].segment.name), palette_.ink});
        }
        pieces.push_back({models::text(base::figure_with_unit(place, base::Quantity::length, units, 0)), palette_.ink});
        return pieces;
    };
}

void StackPanels::add_speed() {
    const lap::LapTrace& a = content_.pairing->a.trace.best;
    const lap::LapTrace& b = content_.pairing->b.trace.best;
    const base::Unit unit = base::shown_unit(base::Quantity::speed, content_.units);
    Panel& panel = add_panel(QObject::tr("Speed") + unit_suffix(unit), 110, 10);
    panel.rect->axis(QCPAxis::atLeft)->setTicker(QSharedPointer<UnitTicker>::create(unit, 5));
    add_pair(panel, &a.speed_mps, &b.speed_mps);
    panel.read_out = [this, &a, &b, unit](double place) {
        std::vector<Piece> pieces;
        add_side(pieces, "A", a.distance_m, &a.speed_mps, place, unit, 0, palette_.a);
        add_side(pieces, "B", b.distance_m, &b.speed_mps, place, unit, 0, palette_.b);
        return pieces;
    };
}

void StackPanels::add_channel(const models::ChannelChoice& choice) {
    const lap::LapTrace& a = content_.pairing->a.trace.best;
    const lap::LapTrace& b = content_.pairing->b.trace.best;
    const base::Unit unit = models::unit_of(choice, content_.units);
    Panel& panel = add_panel(choice.title + unit_suffix(unit), 56, 4);
    panel.rect->axis(QCPAxis::atLeft)->setTicker(QSharedPointer<UnitTicker>::create(unit, 3));
    add_pair(panel, choice.a, choice.b);
    const QCPRange shown = panel.rect->axis(QCPAxis::atLeft)->range();
    const int decimals = choice.whole_numbers ? 0 : read_out_decimals({shown.lower, shown.upper}, unit);
    panel.read_out = [this, &a, &b, choice, unit, decimals](double place) {
        std::vector<Piece> pieces;
        add_side(pieces, "A", a.distance_m, choice.a, place, unit, decimals, palette_.a);
        add_side(pieces, "B", b.distance_m, choice.b, place, unit, decimals, palette_.b);
        return pieces;
    };
}

void StackPanels::add_pair(Panel& panel, const std::vector<double>* a, const std::vector<double>* b) {
    const auto& xs_a = content_.pairing->a.trace.best.distance_m;
    const auto& xs_b = content_.pairing->b.trace.best.distance_m;
    if (b != nullptr) {
        new Curve(panel.rect, xs_b, *b, palette_.b, Stroke::dashed);
        panel.series.push_back({xs_b, *b});
    }
    if (a != nullptr) {
        new Curve(panel.rect, xs_a, *a, palette_.a, Stroke::solid);
        panel.series.push_back({xs_a, *a});
    }
    fit_values(panel);
}

// To the whole lap's values, or to those in view.
void StackPanels::fit_values(const Panel& panel) {
    if (panel.series.empty()) return;
    std::optional<std::pair<double, double>> shown;
    for (const Series& series : panel.series) {
        const auto own = content_.fill_values ? extent(within(series.xs, series.ys, view_.lower_m, view_.upper_m))
                                              : extent(series.ys);
        shown = shown ? joined(*shown, own) : own;
    }
    if (panel.with_zero && !content_.fill_values) shown = joined(*shown, {0.0, 0.0});
    const double span = std::max(shown->second - shown->first, 1e-9);
    panel.rect->axis(QCPAxis::atLeft)
        ->setRange(shown->first - room_above_values * span, shown->second + room_above_values * span);
}

void StackPanels::add_gap() {
    const comparison::GapTrace& gap = content_.pairing->comparison.gap;
    const bool banded = content_.show_band && !gap.low_s.empty() && !gap.high_s.empty();
    Panel& panel = add_panel(banded ? QObject::tr("Gap with 95 % band, s: above zero A is ahead")
                                    : QObject::tr("Gap, s: above zero A is ahead"),
                             70, 5);
    panel.rect->axis(QCPAxis::atLeft)->setTicker(QSharedPointer<UnitTicker>::create(base::Unit::second, 4));
    panel.with_zero = true;
    panel.series.push_back({gap.distance_m, gap.gap_s});
    if (banded) {
        QColor fill = palette_.edge;
        fill.setAlpha(gap_band_alpha);
        new Band(panel.rect, gap.distance_m, gap.low_s, gap.high_s, fill);
        panel.series.push_back({gap.distance_m, gap.low_s});
        panel.series.push_back({gap.distance_m, gap.high_s});
    }
    new Curve(panel.rect, gap.distance_m, gap.gap_s, palette_.ink, Stroke::solid);
    fit_values(panel);
    panel.read_out = [this, &gap](double place) -> std::vector<Piece> {
        const double value = value_at(gap.distance_m, gap.gap_s, place);
        const double sd = gap.sd_s.empty() ? std::nan("") : value_at(gap.distance_m, gap.sd_s, place);
        const std::optional<double> known = std::isfinite(sd) ? std::optional(sd) : std::nullopt;
        const QString margin = models::text(base::gain_margin_text(known));
        const QString words = models::text(base::gap_text(value, known));
        return {
            {margin.isEmpty() ? words : words + QChar(' ') + margin, theme::colour_of_gain(palette_, value, known)}};
    };
}

void StackPanels::add_gains() {
    Panel& panel = add_panel(QObject::tr("Time won, s: A up, B down; outline: within its error"), 76, 4);
    panel.rect->axis(QCPAxis::atLeft)->setVisible(false);
    panel.writing = new GainBars(panel.rect, content_.segments, palette_.a, palette_.b, palette_.ink, theme::small());
    panel.read_out = [this](double place) -> std::vector<Piece> {
        const auto segment = segment_at(content_, place);
        if (!segment) return {};
        const comparison::Figure& gain = content_.segments[*segment].gain_s;
        return {{models::text(base::gain_with_margin(gain.value, gain.sd)),
                 theme::colour_of_gain(palette_, gain.value, gain.sd)}};
    };
}

void StackPanels::show_distance_axis(int width_px) {
    QCPAxisRect* rect = panels_.back()->rect;
    QCPAxis* axis = rect->axis(QCPAxis::atBottom);
    const base::Unit unit = base::shown_unit(base::Quantity::length, content_.units);
    axis->setVisible(true);
    axis->grid()->setVisible(false);
    axis->setTicker(QSharedPointer<UnitTicker>::create(unit, 8));
    space_distance_ticks(width_px);
    axis->setTickPen(QPen(palette_.edge, 1.0));
    axis->setBasePen(QPen(palette_.edge, 1.0));
    axis->setTickLength(0, 4);
    axis->setSubTicks(false);
    axis->setLabel(QObject::tr("Distance along the track") + unit_suffix(unit));
    axis->setLabelFont(theme::small());
    axis->setLabelColor(palette_.quiet);
    axis->setLabelPadding(1);
    QMargins margins = rect->margins();
    margins.setBottom(2 * QFontMetrics(theme::small()).height() + 12);
    rect->setMargins(margins);
}

void StackPanels::space_distance_ticks(int width_px) {
    if (panels_.empty()) return;
    const int number = QFontMetrics(theme::small()).horizontalAdvance(QStringLiteral("000000"));
    panels_.back()->rect->axis(QCPAxis::atBottom)->ticker()->setTickCount(std::clamp(width_px / (2 * number), 2, 12));
}

void StackPanels::add_overlays(const State& state) {
    const auto stretch = stretch_of(content_, state.chosen);
    for (const auto& panel : panels_) {
        stretches_.push_back(new ChosenStretch(panel->rect, palette_.chosen, palette_.edge, panel->writing));
        stretches_.back()->set(stretch);
        new Title(panel->rect, panel->title, palette_.quiet, theme::small(), title_height());
        cursors_.push_back(
            new Cursor(panel->rect, panel->read_out, palette_.ink, theme::small(), title_height(), panel->writing));
        cursors_.back()->set(state.cursor_m);
    }
}

} // namespace lapwright::plots
