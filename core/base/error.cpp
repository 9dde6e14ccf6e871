// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

namespace lapwright::base {

std::string one_line(const Error& error) {
    std::string text = error.place.file;
    if (error.place.line) text += ":" + integer_text(static_cast<std::int64_t>(*error.place.line));
    if (!text.empty()) text += ": ";
    if (!error.place.column.empty()) text += said("column \"%1\":", {error.place.column}) + " ";
    // What a table or a module with a library of its own holds is English still.
    text += said(error.what.c_str());
    if (!error.remedy.empty()) text += " — " + said(error.remedy.c_str());
    for (char& c : text)
        if (c == '\n' || c == '\r') c = ' ';
    return text;
}

} // namespace lapwright::base
