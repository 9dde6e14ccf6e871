// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/causes_page.h"

#include "core/analysis/findings_of.h"
#include "core/findings/cause_display.h"
#include "core/findings/findings.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_table.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/causes/driver_strip.h"
#include "ui/pages/causes/figures_card.h"
#include "ui/pages/causes/finding_list.h"
#include "ui/pages/causes/next_test_card.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/plots/evidence_plot.h"
#include "ui/plots/region_plot.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>
#include <optional>
#include <utility>

namespace lapwright::pages {
namespace {

using models::text;

constexpr int min_findings_px = 110;

QLabel* wrapped(QWidget* parent, const QFont& font) {
    QLabel* label = theme::wrapped_label({}, parent, font);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setFocusPolicy(Qt::NoFocus);
    return label;
}

QFont answer_font() {
    QFont font = theme::verdict();
    font.setPointSizeF(14.0);
    return font;
}

QScrollArea* scrolled(QWidget* content) {
    auto* scroll = new QScrollArea;
    scroll->setWidget(content);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    return scroll;
}

QFrame* plot_card(const QString& title, QWidget* plot) {
    auto* card = new QFrame;
    card->setObjectName(QStringLiteral("card"));
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(10, 6, 10, 6);
    column->setSpacing(2);
    auto* head = new QLabel(title, card);
    head->setFont(theme::strong(theme::small()));
    head->setWordWrap(true);
    column->addWidget(head);
    column->addWidget(plot, 1);
    return card;
}

} // namespace

CausesPage::CausesPage(QWidget* parent)
    : QWidget(parent), sentence_(wrapped(this, answer_font())), notes_(wrapped(this, theme::small())),
      setup_words_(wrapped(this, theme::small())), setup_(new QToolButton(this)), table_(new CausesTable(this)),
      matrix_(new CausesView(table_)), drivers_(new DriverStrip), findings_(new FindingList), figures_(new FiguresCard),
      cornering_(new plots::EvidencePlot(tr("Cornering acceleration against speed"))),
      driving_(new plots::EvidencePlot(tr("Driving acceleration against speed"))), split_(new plots::RegionPlot),
      next_test_(new NextTestCard), what_if_(new WhatIfCard) {
    setup_->setObjectName(QStringLiteral("plain"));
    setup_->setText(tr("Setup…"));
    setup_->setFocusPolicy(Qt::StrongFocus);
    connect(setup_, &QToolButton::clicked, this, &CausesPage::setup_asked);
    auto* halves = new QSplitter(Qt::Horizontal);
    halves->addWidget(make_left());
    halves->addWidget(make_right());
    halves->setStretchFactor(0, 56);
    halves->setStretchFactor(1, 44);
    halves->setChildrenCollapsible(false);
    halves->setSizes({560, 440});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 8, 12, 8);
    column->setSpacing(4);
    column->addWidget(sentence_);
    auto* words = new QVBoxLayout;
    words->setSpacing(1);
    words->addWidget(notes_);
    words->addWidget(setup_words_);
    auto* row = new QHBoxLayout;
    row->addLayout(words, 1);
    row->addWidget(setup_);
    column->addLayout(row);
    column->addWidget(halves, 1);
    connect(findings_, &FindingList::place_asked, this, &CausesPage::place_asked);
    connect(what_if_, &WhatIfCard::predicted, this, [this](const causes::Prediction& prediction) {
        table_->set_what_if(prediction, what_if_->side());
        matrix_->setColumnHidden(CausesTable::what_if_column, false);
    });
    connect(what_if_, &WhatIfCard::taken_back, this, [this] {
        table_->forget_what_if();
        matrix_->setColumnHidden(CausesTable::what_if_column, true);
    });
    matrix_->setColumnHidden(CausesTable::what_if_column, true);
    connect(matrix_, &CausesView::row_chosen, this, &CausesPage::show_drivers);
    connect(matrix_, &CausesView::segment_asked, this, [this](int segment_row) {
        if (const track::Segment* segment = table_->segment(segment_row))
            Q_EMIT place_asked(segment->start_m, segment->end_m);
    });
}

QWidget* CausesPage::make_left() {
    auto* left = new QWidget;
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 6, 0);
    column->setSpacing(8);
    column->addWidget(matrix_);
    column->addWidget(drivers_);
    auto* list = scrolled(findings_);
    list->setMinimumHeight(min_findings_px); // the matrix scrolls before them
    column->addWidget(list, 1);
    return left;
}

QWidget* CausesPage::make_right() {
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 6, 0);
    column->setSpacing(8);
    column->addWidget(figures_);
    auto* plots_row = new QHBoxLayout;
    plots_row->setSpacing(8);
    plots_row->addWidget(
        plot_card(tr("Cornering acceleration and fitted limit: A filled, B hollow; triangle: flat out"), cornering_));
    plots_row->addWidget(plot_card(tr("Grip and downforce that the laps allow: A solid, B dashed"), split_));
    plots_row->addWidget(plot_card(tr("Acceleration at full throttle and fitted curve: A solid, B dashed"), driving_));
    column->addLayout(plots_row, 1);
    column->addWidget(next_test_);
    auto* right = new QWidget;
    auto* parts = new QVBoxLayout(right);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(8);
    parts->addWidget(scrolled(content), 1);
    parts->addWidget(what_if_); // beneath what scrolls: controls and result stay in view
    right->setMinimumWidth(440);
    return right;
}

void CausesPage::show_pairing(workspace::ComparedPointer compared) {
    compared_ = std::move(compared);
    explanation_.reset();
    without_ = tr("Working out why…");
    fill();
}

void CausesPage::show_explanation(std::shared_ptr<const causes::Explanation> explanation) {
    explanation_ = std::move(explanation);
    fill();
}

void CausesPage::show_refusal(const QString& sentence) {
    explanation_.reset();
    without_ = sentence;
    fill();
}

void CausesPage::set_setup_words(const QString& words) {
    setup_words_->setText(words);
}

void CausesPage::set_mine(const analysis::MySides& mine, bool known) {
    findings_->set_mine(mine, known);
    if (std::exchange(mine_, mine) == mine) return;
    fill_findings();
}

void CausesPage::set_units(base::UnitSystem units) {
    units_ = units;
    cornering_->set_units(units);
    driving_->set_units(units);
    what_if_->set_units(units);
    fill();
}

void CausesPage::fill() {
    table_->set_explanation(explanation_);
    fill_notes();
    if (!explanation_ || !compared_) {
        sentence_->setText(without_);
        figures_->show_nothing();
        drivers_->show_nothing();
        what_if_->show_nothing();
        cornering_->set_evidence({});
        driving_->set_evidence({});
        split_->set_regions({}, {}, false);
        findings_->show_findings({});
        next_test_->show_tests({});
        return;
    }
    const analysis::Pairing& pairing = *compared_->pairing;
    sentence_->setText(text(findings::causes_sentence(*explanation_)));
    figures_->show_figures(*explanation_, units_);
    drivers_->show_explanation(explanation_, units_);
    show_drivers(matrix_->currentIndex().row());
    what_if_->show_explanation(explanation_, pairing.a.trace.best.lap_time_s(), pairing.b.trace.best.lap_time_s());
    cornering_->set_evidence(plots::cornering_evidence(*explanation_));
    driving_->set_evidence(plots::driving_evidence(*explanation_));
    split_->set_regions(explanation_->grip_downforce_a, explanation_->grip_downforce_b, explanation_->per_kilogram);
    fill_findings();
}

void CausesPage::fill_findings() {
    if (!explanation_ || !compared_) return;
    next_test_->show_tests(findings::next_tests(*explanation_, units_, analysis::spoken_to(mine_)));
    findings_->show_findings(
        analysis::findings_of(*compared_->pairing, explanation_.get(), units_, analysis::spoken_to(mine_)), warnings());
}

void CausesPage::show_drivers(int row) {
    drivers_->choose(table_->segment(row) ? std::optional(static_cast<std::size_t>(row)) : std::nullopt);
}

QStringList CausesPage::warnings() const {
    QStringList lines;
    for (const std::string& warning : explanation_->warnings)
        lines << text(warning);
    return lines;
}

void CausesPage::fill_notes() {
    QStringList lines;
    if (explanation_) {
        const QString cornering = text(findings::cornering_sentence(*explanation_));
        if (!cornering.isEmpty()) lines << cornering;
        lines << text(findings::aero_sentence(*explanation_));
        const QString missing = text(findings::missing_mass_sentence(*explanation_));
        if (!missing.isEmpty()) lines << missing;
        notes_->setToolTip(warnings().join(QLatin1Char('\n')));
        lines << tr("Each number is seconds, with the letter and in the colour of whoever it favours; a row adds up to "
                    "what was measured. Filled: surely so. Dotted: may be chance. Of it: a part of the column before, "
                    "bare where that is known better.");
    }
    notes_->setText(lines.join(QLatin1Char('\n')));
    notes_->setVisible(!lines.isEmpty());
}

QString CausesPage::sentence() const {
    return sentence_->text();
}

QString CausesPage::notes() const {
    return notes_->text();
}

QByteArray CausesPage::picture(const QString& heading, plots::PictureForm form) const {
    return plots::picture_of({cornering_->picture_part(), split_->picture_part(), driving_->picture_part()}, heading,
                             {palette_.card, palette_.ink}, form);
}

void CausesPage::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    for (QLabel* quiet : {notes_, setup_words_})
        theme::set_ink(quiet, palette.quiet);
    matrix_->set_palette(palette);
    figures_->set_palette(palette);
    drivers_->set_palette(palette);
    findings_->set_palette(palette);
    cornering_->set_palette(palette);
    driving_->set_palette(palette);
    split_->set_palette(palette);
    next_test_->set_palette(palette);
    what_if_->set_palette(palette);
}

} // namespace lapwright::pages
