// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/next_test_card.h"

#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QLabel>
#include <QVBoxLayout>

namespace lapwright::pages {

NextTestCard::NextTestCard(QWidget* parent) : QFrame(parent), words_(theme::wrapped_label({}, this, theme::small())) {
    setObjectName(QStringLiteral("card"));
    setAccessibleName(tr("The next test that tells most"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(3);
    auto* title = theme::plain_label(accessibleName(), this, theme::small());
    title->setFont(theme::strong(theme::body()));
    column->addWidget(title);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    words_->setFocusPolicy(Qt::NoFocus);
    column->addWidget(words_);
    hide();
}

void NextTestCard::show_tests(const std::vector<findings::TestWords>& tests) {
    QStringList lines;
    for (const findings::TestWords& test : tests)
        lines << models::text(findings::sentence(test));
    words_->setText(lines.join(QLatin1Char('\n')));
    setVisible(!lines.isEmpty());
}

void NextTestCard::set_palette(const theme::Palette& palette) {
    theme::set_ink(words_, palette.ink);
}

QString NextTestCard::said() const {
    return words_->text();
}

} // namespace lapwright::pages
