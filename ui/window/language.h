// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the window and of all that core says on it: the system's, or the one that a person chose.  It is set
// before the first window and holds until the program ends.
#pragma once

#include <QString>
#include <QStringList>
#include <array>

namespace lapwright::window {

// As the preferences keep them; English stands in the source.
struct LanguageName {
    const char* code;
    const char* own_name;
};
inline constexpr std::array languages{LanguageName{"en", "&English"}, LanguageName{"de", "&Deutsch"},
                                      LanguageName{"fr", "&Français"}, LanguageName{"ja", "日本語 (&J)"}};

// The first of the system's languages that Lapwright speaks; "en" where there is none.
[[nodiscard]] QString language_of(const QStringList& system_languages);

// chosen: a code, or empty for the system's.
void speak(const QString& chosen);

} // namespace lapwright::window
