// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/figures_card.h"

#include "core/findings/cause_display.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

namespace lapwright::pages {
namespace {

using models::text;

// "1479 ±160" and, where the data did not decide it, who did.
QStringList with_decision(const std::string& figure, const std::string& decided) {
    if (figure.empty()) return {QStringLiteral("—"), {}};
    static constexpr std::array others{QT_TR_NOOP("prior"), QT_TR_NOOP("setup")};
    const auto* const other = std::ranges::find(others, decided);
    return {text(figure), other == others.end() ? QString() : QCoreApplication::translate("Lapwright", *other)};
}

} // namespace

FiguresCard::FiguresCard(QWidget* parent)
    : QFrame(parent), grid_(new QGridLayout), title_(new QLabel(tr("What the data say of each car"), this)),
      foot_(theme::wrapped_label({}, this, theme::small())), palette_(theme::paper()) {
    setObjectName(QStringLiteral("card"));
    setAccessibleName(title_->text());
    title_->setFont(theme::strong(theme::body()));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(3);
    column->addWidget(title_);
    grid_->setHorizontalSpacing(12);
    grid_->setVerticalSpacing(1);
    grid_->setColumnStretch(0, 1);
    column->addLayout(grid_);
    column->addWidget(foot_);
}

void FiguresCard::show_nothing() {
    for (auto& row : cells_)
        qDeleteAll(row);
    cells_.clear();
    foot_->clear();
}

void FiguresCard::show_figures(const causes::Explanation& explanation, base::UnitSystem units) {
    show_nothing();
    add_row(0, QStringList{{}, QStringLiteral("A"), {}, QStringLiteral("B"), {}});
    int row = 0;
    for (const findings::FigureLine& line : findings::figure_lines(explanation, units)) {
        if (line.a.empty() && line.b.empty()) continue;
        add_row(++row, QStringList{text(line.name)} + with_decision(line.a, line.decided_a) +
                           with_decision(line.b, line.decided_b));
    }
    foot_->setText(tr("± is half of the 95 % interval. “prior”: the data could not tell, a stated assumption did; "
                      "“setup”: from the setup sheet; all else the data decided."));
    colour();
}

void FiguresCard::add_row(int row, const QStringList& cells) {
    std::vector<QLabel*> labels;
    for (int column = 0; column < cells.size(); ++column) {
        QLabel* label =
            theme::plain_label(cells[column], this, row == 0 ? theme::strong(theme::small()) : theme::small());
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        label->setFocusPolicy(Qt::NoFocus);
        grid_->addWidget(label, row, column, column % 2 == 0 ? Qt::AlignLeft : Qt::AlignRight);
        label->show();
        labels.push_back(label);
    }
    cells_.push_back(std::move(labels));
}

void FiguresCard::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    colour();
}

void FiguresCard::colour() {
    theme::set_ink(foot_, palette_.quiet);
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        const QColor ink_a = i == 0 ? palette_.a : palette_.ink;
        const QColor ink_b = i == 0 ? palette_.b : palette_.ink;
        const QColor inks[] = {palette_.quiet, ink_a, palette_.quiet, ink_b, palette_.quiet};
        for (std::size_t column = 0; column < cells_[i].size(); ++column)
            theme::set_ink(cells_[i][column], inks[column]);
    }
}

} // namespace lapwright::pages
