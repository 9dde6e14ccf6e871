// SPDX-License-Identifier: GPL-3.0-or-later
// UTF-8 of the core to the window's strings.
#pragma once

#include "core/base/translation.h"

#include <QLocale>
#include <QString>
#include <string_view>

namespace lapwright::models {

[[nodiscard]] inline QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

[[nodiscard]] inline QString labelled(const QString& name, const QString& what) {
    return text(base::labelled(name.toStdString(), what.toStdString()));
}

// Ended as the language ends one.
[[nodiscard]] inline QString sentence(const QString& words) {
    return text(base::said("%1.", {words.toStdString()}));
}

// What stands for a thing that is not known.
inline const QString dash = QStringLiteral("—");

[[nodiscard]] inline QString text_or_dash(std::string_view utf8) {
    return utf8.empty() ? dash : text(utf8);
}

// Of a menu's entry without the letter that underlines it: "Open" of "&Open", "開く" of "開く(&O)".
[[nodiscard]] inline QString without_mnemonic(QString words) {
    const qsizetype behind = words.indexOf(QLatin1String("(&"));
    if (behind >= 0 && words.mid(behind + 3, 1) == QLatin1String(")")) words.remove(behind, 4);
    return words.remove(QLatin1Char('&'));
}

// For figures that Qt writes: the decimal mark of all others, and no marks between thousands.
[[nodiscard]] inline QLocale shown_locale() {
    QLocale locale = base::decimal_mark() == '.' ? QLocale::c() : QLocale(QString::fromLatin1(base::language_code()));
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

} // namespace lapwright::models
