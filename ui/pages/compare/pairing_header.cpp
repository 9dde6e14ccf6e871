// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/pairing_header.h"

#include "core/base/number_text.h"
#include "core/findings/trial_words.h"
#include "core/presentation/figures.h"
#include "core/recording/warning_words.h"
#include "ui/models/text.h"
#include "ui/pages/compare/line_sample.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <utility>

namespace lapwright::pages {
namespace {

using models::text;

QString lap_words(const analysis::Side& side) {
    const QString number = text(base::integer_text(side.lap.number));
    const QString time = text(presentation::lap_time_text(side.trace.best, side.lap));
    const QString own = text(analysis::own_time_text(side));
    return own.isEmpty() ? PairingHeader::tr("lap %1 · %2").arg(number, time)
                         : PairingHeader::tr("lap %1 · %2 (%3)").arg(number, time, own);
}

QString file_words(const analysis::Side& side) {
    if (!side.session) return {};
    return QStringLiteral(" · ") + QFileInfo(text(side.session->recording->source_file)).fileName();
}

} // namespace

PairingHeader::PairingHeader(QWidget* parent)
    : QWidget(parent), verdict_(theme::plain_label(this, theme::verdict())),
      uncertainty_(theme::plain_label(this, theme::body())), sentence_(theme::plain_label(this, theme::body())),
      doubts_(new theme::ElidedLabel(this)), ideal_(new theme::ElidedLabel(this)), palette_(theme::paper()) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 4, 0, 2);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(0);
    a_ = add_side(*grid, true);
    b_ = add_side(*grid, false);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(8);
    middle->addStretch();
    middle->addWidget(verdict_);
    middle->addWidget(uncertainty_, 0, Qt::AlignVCenter);
    middle->addStretch();
    grid->addLayout(middle, 0, 2, 2, 1);
    sentence_->setAlignment(Qt::AlignHCenter);
    sentence_->setWordWrap(true);
    grid->addWidget(sentence_, 2, 0, 1, 5);
    doubts_->setFont(theme::small());
    doubts_->set_alignment(Qt::AlignHCenter);
    grid->addWidget(doubts_, 3, 0, 1, 5);
    ideal_->setFont(theme::small());
    ideal_->set_alignment(Qt::AlignHCenter);
    grid->addWidget(ideal_, 4, 0, 1, 5);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 1);
}

PairingHeader::SideLabels PairingHeader::add_side(QGridLayout& grid, bool is_a) {
    SideLabels labels{new LineSample(is_a ? workspace::Side::a : workspace::Side::b, this),
                      new theme::ElidedLabel(this), new theme::ElidedLabel(this)};
    labels.who->setFont(theme::strong(theme::body()));
    labels.which->setFont(theme::small());
    const Qt::Alignment side = is_a ? Qt::AlignLeft : Qt::AlignRight;
    labels.who->set_alignment(side);
    labels.which->set_alignment(side);
    grid.addWidget(labels.line, 0, is_a ? 0 : 4, Qt::AlignVCenter);
    grid.addWidget(labels.who, 0, is_a ? 1 : 3);
    grid.addWidget(labels.which, 1, is_a ? 1 : 3);
    return labels;
}

void PairingHeader::set_pairing(const analysis::Pairing& pairing) {
    const auto fill = [](const SideLabels& labels, const analysis::Side& side, const QString& letter) {
        labels.who->set_text(letter + QStringLiteral("  ") + (side.session ? text(side.session->title()) : QString()));
        labels.which->set_text(lap_words(side) + file_words(side));
    };
    fill(a_, pairing.a, QStringLiteral("A"));
    fill(b_, pairing.b, QStringLiteral("B"));
    verdict_->setText(text(pairing.headline.verdict));
    uncertainty_->setText(text(pairing.headline.uncertainty));
    uncertainty_->setVisible(!pairing.headline.uncertainty.empty());
    sentence_->setText(text(pairing.headline.sentence));
    QStringList doubts;
    for (const auto& warning : pairing.warnings)
        doubts << text(recording::words(warning));
    doubts_->set_text(doubts.join(QStringLiteral(" · ")));
    doubts_->setVisible(!doubts.isEmpty());
    QStringList ideal;
    for (const auto& [lap, letter] : {std::pair(&pairing.ideal_a, "A"), std::pair(&pairing.ideal_b, "B")})
        if (const std::string words = findings::ideal_lap_text(*lap, letter); !words.empty()) ideal << text(words);
    ideal_->set_text(ideal.join(QStringLiteral(" · ")));
    ideal_->setVisible(!ideal.isEmpty());
    ahead_ = pairing.headline.ahead;
    colour_verdict();
}

void PairingHeader::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    a_.line->set_palette(palette);
    b_.line->set_palette(palette);
    for (QWidget* quiet : std::initializer_list<QWidget*>{a_.which, b_.which, uncertainty_, doubts_, ideal_})
        theme::set_ink(quiet, palette.quiet);
    colour_verdict();
}

void PairingHeader::colour_verdict() {
    theme::set_ink(verdict_, ahead_ == findings::Favours::a   ? palette_.a
                             : ahead_ == findings::Favours::b ? palette_.b
                                                              : palette_.ink);
}

} // namespace lapwright::pages
