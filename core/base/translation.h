// SPDX-License-Identifier: GPL-3.0-or-later
// Words for people, in their language.  The source is English, with %1 to %9 where values go; the window sets a
// translator before its first thread starts, the command line sets none: there all is English with a point as decimal
// mark. packaging/translations finds the sources by these functions' names, so that each is a literal at its call.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>

namespace lapwright::base {

// Nothing where the language has no words for it.  Called from every thread.
using Translator = std::optional<std::string> (*)(const char* english);

struct Language {
    Translator translator = nullptr; // English
    char decimal_mark = '.';
    const char* code = "en"; // as in lang="en"; lives as long as the program
};

void set_language(const Language& language);
[[nodiscard]] char decimal_mark();
[[nodiscard]] const char* language_code();

[[nodiscard]] std::string said(const char* english);
// Values take the place of %1, %2, …; they are not looked into.
[[nodiscard]] std::string said(const char* english, std::initializer_list<std::string> values);

// "power: 307 kW", as the language parts a name from what is said of it.
[[nodiscard]] std::string labelled(const std::string& name, const std::string& what);

// Marks a source that stands in a table and is given to said() later.
[[nodiscard]] constexpr const char* word(const char* english) {
    return english;
}

} // namespace lapwright::base
