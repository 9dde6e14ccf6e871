// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

#include "core/base/number_text.h"

namespace lapwright::base {

std::string one_line(const Error& error) {
    std::string text = error.place.file;
    if (error.place.line) text += ":" + integer_text(static_cast<std::int64_t>(*error.place.line));
    if (!text.empty()) text += ": ";
    if (!error.place.column.empty()) text += "column \"" + error.place.column + "\": ";
    text += error.what;
    if (!error.remedy.empty()) text += " — " + error.remedy;
    for (char& c : text)
        if (c == '\n' || c == '\r') c = ' ';
    return text;
}

} // namespace lapwright::base
