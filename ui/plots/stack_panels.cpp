// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/stack_panels.h"

#include "ui/plots/curve.h"
#include "ui/plots/stack_contents.h"
#include "ui/plots/stack_looks.h"
#include "ui/plots/stack_panel.h"
#include "ui/plots/stretches.h"
#include "ui/plots/unit_ticker.h"
#include "ui/theme/fonts.h"

#include <algorithm>
#include <cmath>

namespace lapwright::plots {
namespace {

constexpr double room_above_values = 0.06; // of their extent, above and below
constexpr int right_margin_px = 8;
constexpr double boundary_reach_px = 4.0; // to both sides of a boundary

std::pair<double, double> joined(std::pair<double, double> one, std::pair<double, double> other) {
    return {std::min(one.first, other.first), std::max(one.second, other.second)};
}

// "2–3 of 5 · " before the first channel's name, where not all have room.
QString place_among(const ChannelWindow& shown, std::size_t all) {
    if (shown.count == all) return {};
    const QString last = QString::number(shown.first + shown.count);
    const QString which = shown.count == 1 ? last : QString::number(shown.first + 1) + QStringLiteral("–") + last;
    return QObject::tr("%1 of %2 · ").arg(which, QString::number(all));
}

std::optional<ViewRange> stretch_of(const StackContent& content, std::optional<std::size_t> row) {
    if (!row) return std::nullopt;
    const track::Segment& segment = content.segments[*row].segment;
    return ViewRange{segment.start_m, segment.end_m};
}

} // namespace

std::optional<std::size_t> segment_at(const StackContent& content, double place_m) {
    for (std::size_t i = 0; i < content.segments.size(); ++i) {
        const track::Segment& segment = content.segments[i].segment;
        if (place_m >= segment.start_m && place_m < segment.end_m) return i;
    }
    return std::nullopt;
}

StackPanels::StackPanels(QCustomPlot* plot)
    : plot_(plot), palette_(theme::paper()), contents_(std::make_unique<StackContents>(*this)) {}

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
    double least_px = boundary_reach_px;
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
    titles_.clear();
    panels_.clear();
    remove_drawings(*plot_);
    plot_->plotLayout()->clear();
    plot_->plotLayout()->setRowSpacing(row_space_px);
    plot_->setBackground(QBrush(palette_.paper));
    if (content_.pairing) {
        contents_->add_ribbon();
        contents_->add_speed();
        const auto [first, count] = state.channels;
        for (std::size_t i = first; i < first + count; ++i)
            contents_->add_channel(content_.channels[i],
                                   i == first ? place_among(state.channels, content_.channels.size()) : QString());
        if (content_.show_lines) contents_->add_sideways();
        contents_->add_gap();
        contents_->add_gains();
        show_distance_axis(state.width_px);
        add_overlays(state);
    }
    int least = 0;
    for (const auto& panel : panels_) {
        least += panel->rect->minimumSize().height() + panel->rect->margins().top() + panel->rect->margins().bottom() +
                 row_space_px;
    }
    plot_->setMinimumHeight(least);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

StackPanel& StackPanels::add_panel(const QString& id, const QString& title, int usual_px, int share) {
    auto* rect = new QCPAxisRect(plot_, true);
    const int row = static_cast<int>(panels_.size());
    plot_->plotLayout()->addElement(row, 0, rect);
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
    const QString sign = is_folded(content_, id) ? QStringLiteral("▸ ") : QStringLiteral("▾ ");
    panels_.push_back(
        std::make_unique<StackPanel>(StackPanel{id, sign + title, rect, {}, nullptr, {}, usual_px, share, false}));
    size_panel(content_, *panels_.back(), *plot_->plotLayout(), row);
    new Corners(rect, content_.pairing->track, palette_.tint);
    return *panels_.back();
}

// To the whole lap's values, or to those in view.
void StackPanels::fit_values(const StackPanel& panel) {
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

void StackPanels::set_looks(PanelLooks looks) {
    content_.looks = std::move(looks);
    for (std::size_t i = 0; i < panels_.size(); ++i) {
        size_panel(content_, *panels_[i], *plot_->plotLayout(), static_cast<int>(i));
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StackPanels::mark(const QString& id) {
    for (std::size_t i = 0; i < titles_.size(); ++i)
        titles_[i]->set_font(panels_[i]->id == id ? theme::strong(theme::small()) : theme::small());
    plot_->replot(QCustomPlot::rpQueuedReplot);
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
    margins.setBottom(axis_room_px());
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
        titles_.push_back(new Title(panel->rect, panel->title, palette_.quiet, theme::small(), title_height()));
        cursors_.push_back(new Cursor(*titles_.back(), panel->rect, panel->read_out, palette_.ink, theme::small(),
                                      title_height(), panel->writing));
        cursors_.back()->set(state.cursor_m);
    }
}

} // namespace lapwright::plots
