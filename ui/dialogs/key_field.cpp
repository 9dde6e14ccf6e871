// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/key_field.h"

#include <QKeyEvent>
#include <algorithm>
#include <array>

namespace lapwright::dialogs {
namespace {

bool keeps_its_meaning(int key) {
    static constexpr std::array others{Qt::Key_Tab,  Qt::Key_Backtab, Qt::Key_Escape, Qt::Key_Shift,  Qt::Key_Control,
                                       Qt::Key_Meta, Qt::Key_Alt,     Qt::Key_AltGr,  Qt::Key_unknown};
    return std::ranges::find(others, key) != others.end();
}

} // namespace

KeyField::KeyField(QWidget* parent) : QLineEdit(parent) {
    setReadOnly(true);
    setPlaceholderText(tr("press a key here"));
}

void KeyField::set_key(const QKeySequence& key) {
    key_ = key;
    setText(key.toString(QKeySequence::NativeText));
}

bool KeyField::event(QEvent* event) {
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride) return QLineEdit::event(event);
    const auto* pressed = static_cast<QKeyEvent*>(event);
    if (keeps_its_meaning(pressed->key())) return QLineEdit::event(event);
    event->accept();
    if (event->type() == QEvent::ShortcutOverride) return true;
    Qt::KeyboardModifiers modifiers = pressed->modifiers() & ~Qt::KeypadModifier;
    // "+" and "?" are what was pressed, however the keyboard writes them.
    const bool is_sign = pressed->text().size() == 1 && pressed->text().front().isPrint() &&
                         !pressed->text().front().isLetterOrNumber() && !pressed->text().front().isSpace();
    if (is_sign) modifiers &= ~Qt::ShiftModifier;
    set_key(QKeySequence(QKeyCombination(modifiers, static_cast<Qt::Key>(pressed->key()))));
    Q_EMIT key_pressed(key_);
    return true;
}

} // namespace lapwright::dialogs
