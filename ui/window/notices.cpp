// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/notices.h"

#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace lapwright::window {
namespace {

constexpr int side_px = 8;
constexpr int least_whole_px = 560;

QToolButton* small_button(const QString& words, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setObjectName(QStringLiteral("slim"));
    button->setFont(theme::small());
    button->setText(words);
    return button;
}

} // namespace

Notices::Notices(QWidget* parent)
    : QFrame(parent), newest_(new theme::ElidedLabel(this)), all_(small_button({}, this)) {
    setObjectName(QStringLiteral("notice"));
    newest_->setFont(theme::small());
    // A sign each: words of some languages left the sentence no room.
    QToolButton* close = small_button(QStringLiteral("×"), this);
    close->setToolTip(tr("Dismiss"));
    close->setAccessibleName(tr("Dismiss"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(side_px, 1, 2, 1);
    row->addWidget(newest_, 1);
    row->addWidget(all_);
    row->addWidget(close);
    QSizePolicy kept = sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    kept.setVerticalPolicy(QSizePolicy::Fixed);
    setSizePolicy(kept);
    connect(all_, &QToolButton::clicked, this, &Notices::show_all);
    connect(close, &QToolButton::clicked, this, &Notices::dismiss);
    hide();
}

void Notices::add(const QString& sentence) {
    sentences_.removeAll(sentence);
    sentences_.append(sentence);
    show_sentences();
    // After the strip's layout: how much of it is read there is known then.
    QTimer::singleShot(0, this, &Notices::show_passing);
}

void Notices::withdraw(const QString& path) {
    sentences_.removeIf([&](const QString& sentence) { return sentence.startsWith(path + QLatin1Char(':')); });
    show_sentences();
}

void Notices::withdraw_sentence(const QString& sentence) {
    sentences_.removeAll(sentence);
    show_sentences();
}

void Notices::dismiss() {
    sentences_.clear();
    show_sentences();
}

QString Notices::shown() const {
    return newest_->text();
}

QFrame* Notices::in_full(const QStringList& sentences, QWidget* parent, Qt::WindowFlags flags) const {
    auto* whole = new QFrame(parent, flags);
    whole->setAttribute(Qt::WA_DeleteOnClose);
    whole->setObjectName(QStringLiteral("notice"));
    auto* column = new QVBoxLayout(whole);
    for (const QString& sentence : sentences) {
        QLabel* label = theme::wrapped_label(sentence, whole, theme::small());
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        column->addWidget(label);
    }
    const int width_px = std::max(width(), least_whole_px);
    whole->setFixedSize(width_px, column->totalHeightForWidth(width_px)); // its hint knows no wrapped lines
    return whole;
}

void Notices::show_all() {
    if (passing_) passing_->close();
    QFrame* whole = in_full(sentences_, this, Qt::Popup);
    whole->move(mapToGlobal(QPoint(std::min(0, width() - whole->width()), height() + 2)));
    whole->show();
}

void Notices::show_passing() {
    if (passing_) passing_->close();
    if (!isVisible() || !newest_->cut()) return;
    passing_ = in_full({sentences_.last()}, window(), Qt::Widget);
    passing_->setAttribute(Qt::WA_TransparentForMouseEvents);
    place_passing();
    passing_->show();
    passing_->raise();
    // A letter in 60 ms is slow reading (common practice, no source).
    constexpr int to_begin_ms = 3'000;
    constexpr int letter_ms = 60;
    QTimer::singleShot(to_begin_ms + letter_ms * static_cast<int>(sentences_.last().size()), passing_, &QWidget::close);
}

void Notices::place_passing() {
    if (passing_) passing_->move(mapTo(window(), QPoint(width() - passing_->width(), height() + 2)));
}

void Notices::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    place_passing();
}

void Notices::moveEvent(QMoveEvent* event) {
    QFrame::moveEvent(event);
    place_passing();
}

void Notices::show_sentences() {
    setVisible(!sentences_.isEmpty());
    if (passing_) passing_->close();
    if (sentences_.isEmpty()) return;
    newest_->set_text(sentences_.last());
    const bool several = sentences_.size() > 1;
    all_->setText(several ? QStringLiteral("%1…").arg(sentences_.size()) : QStringLiteral("…"));
    all_->setToolTip(several ? tr("All %1…").arg(sentences_.size()) : tr("In full…"));
    all_->setAccessibleName(all_->toolTip());
    setAccessibleName(sentences_.join(QLatin1Char('\n')));
}

} // namespace lapwright::window
