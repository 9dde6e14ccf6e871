// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/notices.h"

#include "ui/theme/fonts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace lapwright::window {
namespace {

constexpr qsizetype max_shown = 4;

} // namespace

Notices::Notices(QWidget* parent) : QFrame(parent), label_(new QLabel(this)) {
    setObjectName(QStringLiteral("notice"));
    label_->setTextFormat(Qt::PlainText);
    label_->setWordWrap(true);
    label_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* close = new QToolButton(this);
    close->setObjectName(QStringLiteral("plain"));
    close->setText(tr("Dismiss"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    row->addWidget(label_, 1);
    row->addWidget(close, 0, Qt::AlignTop);
    connect(close, &QToolButton::clicked, this, &Notices::dismiss);
    hide();
}

void Notices::add(const QString& sentence) {
    sentences_.removeAll(sentence);
    sentences_.append(sentence);
    show_sentences();
}

void Notices::withdraw(const QString& path) {
    const auto of_file = [&](const QString& sentence) { return sentence.startsWith(path + QLatin1Char(':')); };
    if (sentences_.removeIf(of_file) > 0) show_rest();
}

void Notices::withdraw_sentence(const QString& sentence) {
    if (sentences_.removeAll(sentence) > 0) show_rest();
}

void Notices::show_rest() {
    if (sentences_.isEmpty())
        hide();
    else
        show_sentences();
}

void Notices::dismiss() {
    sentences_.clear();
    hide();
}

void Notices::show_sentences() {
    QStringList shown = sentences_.mid(qMax<qsizetype>(0, sentences_.size() - max_shown));
    const auto hidden = static_cast<int>(sentences_.size() - shown.size());
    if (hidden > 0) shown.prepend(tr("%n earlier", nullptr, hidden));
    label_->setText(shown.join(QLatin1Char('\n')));
    setAccessibleName(label_->text());
    show();
}

} // namespace lapwright::window
