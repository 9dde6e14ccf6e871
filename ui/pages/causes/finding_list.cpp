// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/finding_list.h"

#include "core/base/number_text.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace lapwright::pages {
namespace {

using models::text;

constexpr std::size_t on_top = 3;

QLabel* words(const QString& sentence, const QFont& font, const QColor& ink, QWidget* parent) {
    QLabel* label = theme::wrapped_label(sentence, parent, font);
    theme::set_ink(label, ink);
    return label;
}

} // namespace

FindingList::FindingList(QWidget* parent)
    : QWidget(parent), in_mind_(theme::plain_label(this, theme::small())), title_(new QLabel(tr("Findings"), this)),
      more_(new QToolButton(this)), column_(new QVBoxLayout(this)), palette_(theme::paper()) {
    title_->setFont(theme::strong(theme::body()));
    more_->setObjectName(QStringLiteral("plain"));
    more_->setCheckable(true);
    more_->setText(tr("Show all"));
    connect(more_, &QToolButton::toggled, this, &FindingList::set_all_shown);
    auto* head = new QHBoxLayout;
    head->addWidget(title_);
    head->addStretch(1);
    head->addWidget(make_mine());
    head->addSpacing(8);
    head->addWidget(more_);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(6);
    column_->addLayout(head);
    in_mind_->setWordWrap(true);
    column_->addWidget(in_mind_);
    column_->addStretch(1);
    fill();
}

QWidget* FindingList::make_mine() {
    mine_ = new QWidget(this);
    auto* row = new QHBoxLayout(mine_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2);
    mine_words_ = theme::plain_label(mine_, theme::small());
    row->addWidget(mine_words_);
    mine_a_ = mine_button(QStringLiteral("A"), causes::Side::a);
    mine_b_ = mine_button(QStringLiteral("B"), causes::Side::b);
    row->addWidget(mine_a_);
    row->addWidget(mine_b_);
    set_mine({}, false);
    return mine_;
}

QToolButton* FindingList::mine_button(const QString& letter, causes::Side side) {
    auto* button = new QToolButton(mine_);
    button->setObjectName(QStringLiteral("plain"));
    button->setText(letter);
    button->setCheckable(true);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setAccessibleName(tr("The car of %1 is yours").arg(letter));
    button->setToolTip(tr("\"Try next\" then speaks to the driver of %1 alone; the book remembers which car is yours. "
                          "Press again for both drivers.")
                           .arg(letter));
    connect(button, &QToolButton::clicked, this,
            [this, side](bool on) { Q_EMIT mine_chosen(on ? std::optional(side) : std::nullopt); });
    return button;
}

void FindingList::set_mine(const analysis::MySides& mine, bool known) {
    mine_words_->setText(known ? tr("Your car:") : tr("Which car is yours?"));
    mine_a_->setChecked(mine.a);
    mine_b_->setChecked(mine.b);
}

void FindingList::show_findings(std::vector<findings::Finding> findings, const QStringList& to_keep_in_mind) {
    findings_ = std::move(findings);
    QStringList lines = to_keep_in_mind;
    if (!lines.isEmpty()) lines.prepend(tr("To keep in mind"));
    in_mind_->setText(lines.join(QLatin1Char('\n')));
    fill();
}

void FindingList::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    fill();
}

void FindingList::set_all_shown(bool all) {
    all_ = all;
    more_->setChecked(all);
    fill();
}

void FindingList::fill() {
    for (QWidget* row : rows_)
        row->deleteLater();
    rows_.clear();
    title_->setVisible(!findings_.empty());
    mine_->setVisible(!findings_.empty());
    theme::set_ink(mine_words_, palette_.quiet);
    in_mind_->setVisible(all_ && !in_mind_->text().isEmpty());
    theme::set_ink(in_mind_, palette_.quiet);
    more_->setVisible(findings_.size() > on_top || !in_mind_->text().isEmpty());
    more_->setText(all_ ? tr("Show the first three") : tr("Show all"));
    const std::size_t count = all_ ? findings_.size() : std::min(on_top, findings_.size());
    for (std::size_t i = 0; i < count; ++i)
        add(i);
}

void FindingList::add(std::size_t index) {
    const findings::Finding& finding = findings_[index];
    auto* row = new QWidget(this);
    auto* grid = new QGridLayout(row);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(1);
    grid->setColumnStretch(1, 1);
    auto* go = new QToolButton(row);
    go->setObjectName(QStringLiteral("plain"));
    go->setText(text(base::integer_text(static_cast<std::int64_t>(index) + 1)));
    const bool placed = finding.end_m > finding.start_m;
    go->setEnabled(placed);
    go->setToolTip(placed ? tr("Show this place on the Compare page") : QString());
    go->setAccessibleName(tr("Finding %1: show it on the Compare page").arg(go->text()));
    connect(go, &QToolButton::clicked, this,
            [this, start = finding.start_m, end = finding.end_m] { Q_EMIT place_asked(start, end); });
    grid->addWidget(go, 0, 0, 2, 1, Qt::AlignTop);
    grid->addWidget(words(text(finding.claim), theme::strong(theme::small()), palette_.ink, row), 0, 1);
    const QColor owner = finding.favours == findings::Favours::a   ? palette_.a
                         : finding.favours == findings::Favours::b ? palette_.b
                                                                   : palette_.quiet;
    auto* worth = words(text(finding.worth), theme::strong(theme::small()), owner, row);
    worth->setWordWrap(false);
    grid->addWidget(worth, 0, 2, Qt::AlignRight | Qt::AlignTop);
    QString under = text(finding.evidence);
    if (!finding.try_next.empty()) {
        if (!under.isEmpty()) under += QLatin1Char(' ');
        under += tr("Try next: %1").arg(text(finding.try_next));
    }
    if (!under.isEmpty()) grid->addWidget(words(under, theme::small(), palette_.quiet, row), 1, 1, 1, 2);
    column_->insertWidget(column_->count() - 2, row); // above what to keep in mind
    rows_.push_back(row);
    row->show();
}

} // namespace lapwright::pages
