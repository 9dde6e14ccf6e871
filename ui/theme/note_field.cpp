// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/note_field.h"

#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <algorithm>
#include <utility>

namespace lapwright::theme {
namespace {

constexpr int fewest_lines = 2;
constexpr int max_lines = 5;

bool is_return(int key) {
    return key == Qt::Key_Return || key == Qt::Key_Enter;
}

} // namespace

NoteField::NoteField(const QString& what, QWidget* parent)
    : QWidget(parent), mark_(plain_label(this, strong(small()))), words_(wrapped_label({}, this, small())),
      editor_(new QPlainTextEdit(this)) {
    for (QLabel* label : {mark_, words_})
        label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    mark_->hide();
    editor_->setFont(small());
    editor_->setTabChangesFocus(true);
    editor_->setLineWrapMode(QPlainTextEdit::WidgetWidth);
    editor_->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    editor_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    editor_->installEventFilter(this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    row->addWidget(mark_, 0, Qt::AlignTop);
    row->addWidget(words_, 1);
    row->addWidget(editor_, 1);
    connect(editor_, &QPlainTextEdit::textChanged, this, &NoteField::fit_editor);
    set_what(what);
    show_state();
}

void NoteField::set_what(const QString& what) {
    editor_->setAccessibleName(what);
    setToolTip(tr("Return keeps the note, Shift+Return begins a new line, Escape leaves it as it was"));
}

void NoteField::set_mark(const QString& mark, const QColor& colour) {
    mark_->setText(mark);
    set_ink(mark_, colour);
    show_state();
}

void NoteField::set_note(const QString& note) {
    note_ = note;
    show_state();
}

void NoteField::set_invitation(const QString& words) {
    invitation_ = words;
    show_state();
}

void NoteField::begin() {
    if (!typing_) {
        editor_->setPlainText(note_);
        editor_->moveCursor(QTextCursor::End);
        typing_ = true;
        show_state();
    }
    editor_->setFocus();
}

void NoteField::keep() {
    if (!typing_) return;
    const QString before = std::exchange(note_, editor_->toPlainText().trimmed());
    end();
    if (note_ != before) Q_EMIT kept(note_);
}

void NoteField::let_go() {
    if (typing_) end();
}

void NoteField::end() {
    typing_ = false;
    show_state();
}

void NoteField::show_state() {
    const bool shown = typing_ || !note_.isEmpty() || !invitation_.isEmpty();
    words_->setText(note_.isEmpty() ? invitation_ : note_);
    words_->setForegroundRole(note_.isEmpty() ? QPalette::PlaceholderText : QPalette::WindowText);
    words_->setVisible(!typing_);
    mark_->setVisible(!mark_->text().isEmpty() && (typing_ || !note_.isEmpty()));
    editor_->setVisible(typing_);
    setVisible(shown);
    if (typing_) fit_editor();
}

void NoteField::fit_editor() {
    if (!typing_) return;
    const auto lines = std::clamp(editor_->document()->blockCount() + 1, fewest_lines, max_lines);
    const int frame = 2 * editor_->frameWidth() + static_cast<int>(2 * editor_->document()->documentMargin());
    editor_->setFixedHeight(lines * editor_->fontMetrics().lineSpacing() + frame);
}

// Escape would else dismiss the window's notices.
bool NoteField::eventFilter(QObject* watched, QEvent* event) {
    if (watched != editor_ || !typing_) return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason) keep();
        return false;
    }
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool keeps = is_return(key->key()) && !key->modifiers().testFlag(Qt::ShiftModifier);
    const bool leaves = key->key() == Qt::Key_Escape;
    if (!keeps && !leaves) return false;
    event->accept();
    if (event->type() == QEvent::ShortcutOverride) return true;
    if (keeps)
        keep();
    else
        let_go();
    Q_EMIT ended();
    return true;
}

void NoteField::mousePressEvent(QMouseEvent* event) {
    if (typing_ || (note_.isEmpty() && invitation_.isEmpty())) {
        QWidget::mousePressEvent(event);
        return;
    }
    begin();
}

} // namespace lapwright::theme
