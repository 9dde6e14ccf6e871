// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/segment_card.h"

#include "core/base/wording.h"
#include "core/presentation/figures.h"
#include "ui/models/text.h"
#include "ui/plots/dot_strip.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/favour.h"
#include "ui/theme/fonts.h"
#include "ui/theme/note_field.h"
#include "ui/theme/plain_label.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <cmath>
#include <utility>

namespace lapwright::pages {
namespace {

using base::Quantity;
using comparison::MaybeFigure;
using models::text;

QString speed(const MaybeFigure& figure, base::UnitSystem units) {
    return text(presentation::speed_text(figure, units, presentation::Margin::with));
}

QString place(const MaybeFigure& figure, base::UnitSystem units) {
    return text(presentation::place_text(figure, units, presentation::Margin::with));
}

QString shape_words(const track::Segment& segment, base::UnitSystem units) {
    const QString length = text(base::figure_with_unit(segment.length_m(), Quantity::length, units, 0));
    if (segment.kind == track::SegmentKind::straight) return SegmentCard::tr("straight, %1").arg(length);
    QString words = segment.turned_rad >= 0.0 ? SegmentCard::tr("left") : SegmentCard::tr("right");
    words +=
        QStringLiteral(", ") + text(base::figure_with_unit(std::abs(segment.turned_rad), Quantity::angle, units, 0));
    if (segment.radius_m) {
        words += SegmentCard::tr(", radius %1")
                     .arg(text(base::figure_with_unit(*segment.radius_m, Quantity::length, units, 0)));
    }
    return words;
}

QString repeat_words(const comparison::Repeatability& repeatability) {
    QString words;
    if (repeatability.mean_difference_s && repeatability.low_s && repeatability.high_s) {
        double from_s = *repeatability.low_s;
        double to_s = *repeatability.high_s;
        if (to_s < 0.0) std::swap(from_s, to_s); // B's: the smaller first
        words = SegmentCard::tr("On average %1 s, 95 % between %2 and %3.")
                    .arg(text(base::gain_text(*repeatability.mean_difference_s, std::nullopt)),
                         text(base::gain_text(from_s, std::nullopt)), text(base::gain_text(to_s, std::nullopt)));
    }
    if (repeatability.chance_a_wins) {
        if (!words.isEmpty()) words += QLatin1Char(' ');
        words += SegmentCard::tr("A is quicker in %1 of lap pairs.")
                     .arg(text(base::share_text(*repeatability.chance_a_wins)));
    }
    return words;
}

} // namespace

SegmentCard::SegmentCard(QWidget* parent)
    : QFrame(parent), title_(new theme::ElidedLabel(this)), gain_(theme::plain_label(this, theme::small())),
      shape_(new theme::ElidedLabel(this)), grid_(new QGridLayout),
      dots_title_(theme::plain_label(this, theme::small())), dots_(new plots::DotStrip(this)),
      verdict_(theme::plain_label(this, theme::small())), note_a_(new theme::NoteField(tr("Note of A"), this)),
      note_b_(new theme::NoteField(tr("Note of B"), this)), palette_(theme::paper()) {
    setObjectName(QStringLiteral("card"));
    setAccessibleName(tr("Chosen segment"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(3);
    title_->setFont(theme::strong(theme::body()));
    shape_->setFont(theme::small());
    gain_->setFont(theme::strong(theme::body()));
    auto* top = new QHBoxLayout;
    top->addWidget(title_, 1);
    top->addWidget(gain_);
    column->addLayout(top);
    column->addWidget(shape_);
    grid_->setHorizontalSpacing(10);
    grid_->setVerticalSpacing(1);
    grid_->setColumnStretch(3, 1);
    column->addLayout(grid_);
    column->addSpacing(6);
    dots_title_->setText(tr("All clean laps, quick is left; the ring is this lap"));
    dots_title_->setWordWrap(true);
    verdict_->setWordWrap(true);
    column->addWidget(dots_title_);
    column->addWidget(dots_);
    column->addWidget(verdict_);
    column->addSpacing(2);
    for (const workspace::Side side : {workspace::Side::a, workspace::Side::b}) {
        column->addWidget(&note(side));
        connect(&note(side), &theme::NoteField::kept, this,
                [this, side](const QString& words) { Q_EMIT note_kept(side, words); });
        connect(&note(side), &theme::NoteField::ended, this, &SegmentCard::note_ended);
    }
    column->addStretch(1);
    show_nothing();
}

void SegmentCard::show_nothing() {
    title_->set_text(tr("No segment chosen"));
    gain_->clear();
    shape_->set_text(tr("Choose a row or a stretch"));
    show_rows({});
    for (QWidget* part : std::initializer_list<QWidget*>{dots_title_, dots_, verdict_}) {
        part->hide();
    }
    invites_ = false;
    invite();
    note_b_->set_invitation({});
}

void SegmentCard::set_notes(const workspace::SegmentNotes& notes, const QString& name) {
    note_a_->set_note(text(notes.a));
    note_b_->set_note(text(notes.b));
    note_a_->set_what(tr("Note of A on %1").arg(name));
    note_b_->set_what(tr("Note of B on %1").arg(name));
    invites_ = !notes.any();
    invite();
}

void SegmentCard::set_note_key(const QString& key) {
    note_key_ = key;
    invite();
}

void SegmentCard::invite() {
    const QString words =
        note_key_.isEmpty() ? tr("write a note here by the Edit menu") : tr("%1: write a note here").arg(note_key_);
    note_a_->set_invitation(invites_ ? words : QString());
}

void SegmentCard::set_one_session(bool one) {
    one_session_ = one;
}

void SegmentCard::write_note(workspace::Side side) {
    note(one_session_ ? workspace::Side::a : side).begin();
}

void SegmentCard::keep_notes() {
    note_a_->keep();
    note_b_->keep();
}

void SegmentCard::show_segment(const comparison::SegmentComparison& segment,
                               const comparison::Repeatability* repeatability, base::UnitSystem units) {
    title_->set_text(text(segment.segment.name));
    gain_->setText(text(base::gain_with_margin(segment.gain_s.value, segment.gain_s.sd)) + tr(" s"));
    won_ = segment.gain_s;
    shape_->set_text(shape_words(segment.segment, units));
    show_rows(rows_of(segment, units));
    show_dots(segment, repeatability);
}

std::vector<SegmentCard::Row> SegmentCard::rows_of(const comparison::SegmentComparison& segment,
                                                   base::UnitSystem units) {
    std::vector<Row> rows{{text(base::symbol(base::shown_unit(Quantity::speed, units))) + QStringLiteral(", ") +
                               text(base::symbol(base::shown_unit(Quantity::length, units))),
                           QStringLiteral("A"), QStringLiteral("B"), QString()}};
    const auto add_place = [&](const QString& label, const MaybeFigure& a, const MaybeFigure& b) {
        if (!a && !b) return;
        const QString says = a && b ? text(base::later_text(a->value, a->sd, b->value, b->sd, units)) : QString();
        const bool derived = (a && a->derived) || (b && b->derived);
        rows.push_back({derived ? label + tr(" (derived)") : label, place(a, units), place(b, units), says});
    };
    const auto add_speed = [&](const QString& label, const MaybeFigure& a, const MaybeFigure& b,
                               const std::optional<comparison::LineAt>& line = {}) {
        if (!a && !b) return;
        const QString says = line ? text(presentation::line_text(*line, segment.segment.turned_rad, units)) : QString();
        rows.push_back({label, speed(a, units), speed(b, units), says});
    };
    const auto& a = segment.a;
    const auto& b = segment.b;
    add_speed(tr("Entry"), a.entry_speed_mps, b.entry_speed_mps, segment.line.turn_in);
    add_place(tr("Lift"), a.lift_at_m, b.lift_at_m);
    add_place(tr("Braking point"), a.braking_point_m, b.braking_point_m);
    add_speed(tr("Slowest"), a.min_speed_mps, b.min_speed_mps, segment.line.slowest);
    add_place(tr("Full throttle"), a.full_throttle_m, b.full_throttle_m);
    add_speed(tr("Top speed"), a.top_speed_mps, b.top_speed_mps);
    add_speed(tr("Exit"), a.exit_speed_mps, b.exit_speed_mps, segment.line.exit);
    return rows;
}

void SegmentCard::show_rows(const std::vector<Row>& rows) {
    for (auto& row : cells_) {
        for (QLabel* cell : row)
            delete cell;
    }
    cells_.clear();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const QString texts[] = {rows[i].label, rows[i].a, rows[i].b, rows[i].says};
        std::vector<QLabel*> cells;
        for (int column = 0; column < 4; ++column) {
            auto* cell = theme::plain_label(this, theme::small());
            cell->setText(texts[column]);
            cell->setAlignment((column == 1 || column == 2 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
            if (i == 0) cell->setFont(theme::strong(theme::small()));
            grid_->addWidget(cell, static_cast<int>(i), column);
            cells.push_back(cell);
        }
        cells_.push_back(std::move(cells));
    }
    colour_cells();
}

void SegmentCard::show_dots(const comparison::SegmentComparison& segment,
                            const comparison::Repeatability* repeatability) {
    const bool any =
        repeatability != nullptr && !(repeatability->times_a_s.empty() && repeatability->times_b_s.empty());
    dots_title_->setVisible(any);
    dots_->setVisible(any);
    const QString words = any ? repeat_words(*repeatability) : QString();
    verdict_->setText(words);
    verdict_->setVisible(!words.isEmpty());
    if (!any) return;
    dots_->set_dots({repeatability->times_a_s, repeatability->times_b_s, segment.a.time_s, segment.b.time_s});
}

void SegmentCard::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    dots_->set_palette(palette);
    note_a_->set_mark(QStringLiteral("A"), palette.a);
    note_b_->set_mark(QStringLiteral("B"), palette.b);
    for (QWidget* quiet : std::initializer_list<QWidget*>{shape_, dots_title_})
        theme::set_ink(quiet, palette.quiet);
    colour_cells();
}

void SegmentCard::colour_cells() {
    theme::set_ink(gain_, theme::colour_of_gain(palette_, won_.value, won_.sd));
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        const QColor colours[] = {palette_.quiet, i == 0 ? palette_.a : palette_.ink,
                                  i == 0 ? palette_.b : palette_.ink, palette_.ink};
        for (std::size_t column = 0; column < cells_[i].size(); ++column)
            theme::set_ink(cells_[i][column], colours[column]);
    }
}

} // namespace lapwright::pages
