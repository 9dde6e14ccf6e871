// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/stack_contents.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/presentation/figures.h"
#include "ui/models/open_sessions.h"
#include "ui/plots/curve.h"
#include "ui/plots/gain_bars.h"
#include "ui/plots/ribbon.h"
#include "ui/plots/stack_looks.h"
#include "ui/plots/stack_panel.h"
#include "ui/plots/stack_panels.h"
#include "ui/plots/unit_ticker.h"
#include "ui/theme/favour.h"

#include <algorithm>
#include <cmath>

namespace lapwright::plots {
namespace {

constexpr int gap_band_alpha = 70;
constexpr int spread_alpha = 42;
constexpr double further_width_px = 1.1;

// One figure of a side, or nothing where it was not measured.
void add_side(std::vector<Piece>& pieces, const QString& side, const std::vector<double>& xs,
              const std::vector<double>* ys, double place_m, base::Unit unit, int decimals, const QColor& colour) {
    if (ys == nullptr) return;
    const double value = value_at(xs, *ys, place_m);
    if (!std::isfinite(value)) return;
    QString figure = models::text(base::shown_text(base::from_si(value, unit), decimals));
    figure.replace(QLatin1Char('-'), QChar(0x2212)); // the minus of all other figures
    pieces.push_back({side + QChar(0xA0) + figure, colour});
}

// As many digits as let the extent be told in some hundred steps.
int read_out_decimals(std::pair<double, double> extent, base::Unit unit) {
    const double span = std::abs(extent.second - extent.first) / base::definition(unit).factor;
    if (!(span > 0.0)) return 1;
    return std::clamp(static_cast<int>(std::ceil(2.0 - std::log10(span))), 0, 3);
}

} // namespace

StackContents::StackContents(StackPanels& panels)
    : panels_(panels), content_(panels.content()), palette_(panels.palette()) {}

void StackContents::add_ribbon() {
    const track::Track& track = content_.pairing->track;
    const int height = ribbon_height_px();
    StackPanel& panel =
        panels_.add_panel(ribbon_id, QObject::tr("Track, unrolled: bumps up are left-handers"), height, 1);
    if (!is_folded(content_, ribbon_id)) panel.rect->setMaximumSize(QWIDGETSIZE_MAX, height);
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

void StackContents::add_speed() {
    const lap::LapTrace& a = content_.pairing->a.trace.best;
    const lap::LapTrace& b = content_.pairing->b.trace.best;
    const base::Unit unit = base::shown_unit(base::Quantity::speed, content_.units);
    StackPanel& panel = panels_.add_panel(speed_id, QObject::tr("Speed") + unit_suffix(unit), speed_height_px, 10);
    panel.rect->axis(QCPAxis::atLeft)->setTicker(QSharedPointer<UnitTicker>::create(unit, 5));
    const auto of_further = [](const analysis::FurtherLap& lap) { return &lap.trace.speed_mps; };
    add_spreads(panel);
    draw_further(panel, of_further);
    add_pair(panel, &a.speed_mps, &b.speed_mps);
    panel.read_out = [this, &a, &b, unit](double place) {
        std::vector<Piece> pieces;
        add_side(pieces, QStringLiteral("A"), a.distance_m, &a.speed_mps, place, unit, 0, palette_.a);
        add_side(pieces, QStringLiteral("B"), b.distance_m, &b.speed_mps, place, unit, 0, palette_.b);
        return pieces;
    };
    read_further(panel, of_further, unit, 0);
}

void StackContents::add_channel(const models::ChannelChoice& choice, const QString& among) {
    const lap::LapTrace& a = content_.pairing->a.trace.best;
    const lap::LapTrace& b = content_.pairing->b.trace.best;
    const base::Unit unit = models::unit_of(choice, content_.units);
    StackPanel& panel = panels_.add_panel(choice.id, among + choice.title + unit_suffix(unit), channel_height_px, 4);
    panel.rect->axis(QCPAxis::atLeft)->setTicker(QSharedPointer<UnitTicker>::create(unit, 3));
    const auto of_further = [id = choice.id](const analysis::FurtherLap& lap) {
        return models::values_on(lap.trace, id);
    };
    draw_further(panel, of_further);
    add_pair(panel, choice.a, choice.b);
    const QCPRange shown = panel.rect->axis(QCPAxis::atLeft)->range();
    const int decimals = choice.whole_numbers ? 0 : read_out_decimals({shown.lower, shown.upper}, unit);
    panel.read_out = [this, &a, &b, choice, unit, decimals](double place) {
        std::vector<Piece> pieces;
        add_side(pieces, QStringLiteral("A"), a.distance_m, choice.a, place, unit, decimals, palette_.a);
        add_side(pieces, QStringLiteral("B"), b.distance_m, choice.b, place, unit, decimals, palette_.b);
        return pieces;
    };
    read_further(panel, of_further, unit, decimals);
}

void StackContents::add_pair(StackPanel& panel, const std::vector<double>* a, const std::vector<double>* b) {
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
    panels_.fit_values(panel);
}

// Behind all else: where the middle four fifths of a driver's clean laps lie.
void StackContents::add_spreads(StackPanel& panel) {
    if (!content_.show_spread) return;
    for (const auto& [spread, colour] :
         {std::pair(&content_.pairing->spread_b, palette_.b), std::pair(&content_.pairing->spread_a, palette_.a)}) {
        if (spread->distance_m.empty()) continue;
        QColor fill = colour;
        fill.setAlpha(spread_alpha);
        new Band(panel.rect, spread->distance_m, spread->low_mps, spread->high_mps, fill);
        panel.series.push_back({spread->distance_m, spread->low_mps});
        panel.series.push_back({spread->distance_m, spread->high_mps});
    }
}

void StackContents::draw_further(StackPanel& panel, const OfFurther& values) {
    if (!content_.further) return;
    for (std::size_t i = 0; i < content_.further->size(); ++i) {
        const analysis::FurtherLap& lap = (*content_.further)[i];
        const std::vector<double>* own = lap.refused ? nullptr : values(lap);
        if (!own) continue;
        const int place = static_cast<int>(i);
        new Curve(panel.rect, lap.trace.distance_m, *own, theme::further_colour(palette_, place),
                  theme::further_dashed(place) ? Stroke::dashed : Stroke::solid, further_width_px);
        panel.series.push_back({lap.trace.distance_m, *own});
    }
}

void StackContents::read_further(StackPanel& panel, const OfFurther& values, base::Unit unit, int decimals) {
    if (!content_.further || content_.further->empty()) return;
    panel.read_out = [this, before = panel.read_out, values, unit, decimals](double place) {
        std::vector<Piece> pieces = before(place);
        for (std::size_t i = 0; i < content_.further->size(); ++i) {
            const analysis::FurtherLap& lap = (*content_.further)[i];
            if (!lap.refused)
                add_side(pieces, models::further_letter(i), lap.trace.distance_m, values(lap), place, unit, decimals,
                         theme::further_colour(palette_, static_cast<int>(i)));
        }
        return pieces;
    };
}

void StackContents::add_sideways() {
    const comparison::LineDifference& line = content_.pairing->comparison.line;
    if (line.empty()) return;
    const base::Unit unit = base::shown_unit(base::Quantity::length, content_.units);
    const QString title = QObject::tr("Line%1: above zero A is further left").arg(unit_suffix(unit));
    StackPanel& panel =
        panels_.add_panel(line_id, line.low_m.empty() ? title : title + QObject::tr("; 95 % band"), line_height_px, 4);
    panel.rect->axis(QCPAxis::atLeft)->setTicker(QSharedPointer<UnitTicker>::create(unit, 3));
    panel.with_zero = true;
    panel.series.push_back({line.distance_m, line.difference_m});
    if (!line.low_m.empty()) {
        QColor fill = palette_.edge;
        fill.setAlpha(gap_band_alpha);
        new Band(panel.rect, line.distance_m, line.low_m, line.high_m, fill);
        panel.series.push_back({line.distance_m, line.low_m});
        panel.series.push_back({line.distance_m, line.high_m});
    }
    new Curve(panel.rect, line.distance_m, line.difference_m, palette_.ink, Stroke::solid);
    panels_.fit_values(panel);
    panel.read_out = [this, &line](double place) -> std::vector<Piece> {
        const double sd = line.sd_m.empty() ? std::nan("") : value_at(line.distance_m, line.sd_m, place);
        const double difference_m = value_at(line.distance_m, line.difference_m, place);
        return {{models::text(presentation::sideways_text(
                     difference_m, std::isfinite(sd) ? std::optional(sd) : std::nullopt, content_.units)),
                 palette_.ink}};
    };
}

void StackContents::add_gap() {
    const comparison::GapTrace& gap = content_.pairing->comparison.gap;
    const bool banded = content_.show_band && !gap.low_s.empty() && !gap.high_s.empty();
    StackPanel& panel = panels_.add_panel(gap_id,
                                          banded ? QObject::tr("Gap with 95 % band, s: above zero A is ahead")
                                                 : QObject::tr("Gap, s: above zero A is ahead"),
                                          gap_height_px, 5);
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
    const auto of_further = [](const analysis::FurtherLap& lap) { return &lap.gap.gap_s; };
    draw_further(panel, of_further);
    new Curve(panel.rect, gap.distance_m, gap.gap_s, palette_.ink, Stroke::solid);
    panels_.fit_values(panel);
    panel.read_out = [this, &gap](double place) -> std::vector<Piece> {
        const double value = value_at(gap.distance_m, gap.gap_s, place);
        const double sd = gap.sd_s.empty() ? std::nan("") : value_at(gap.distance_m, gap.sd_s, place);
        const std::optional<double> known = std::isfinite(sd) ? std::optional(sd) : std::nullopt;
        const QString margin = models::text(base::gain_margin_text(known));
        const QString words = models::text(base::gap_text(value, known));
        return {
            {margin.isEmpty() ? words : words + QChar(' ') + margin, theme::colour_of_gain(palette_, value, known)}};
    };
    read_further(panel, of_further, base::Unit::second, 2);
}

void StackContents::add_gains() {
    StackPanel& panel = panels_.add_panel(gains_id, QObject::tr("Time won, s: A up, B down; outline: within its error"),
                                          gains_height_px, 4);
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

} // namespace lapwright::plots
