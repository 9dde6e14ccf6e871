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

std::string code_name(ErrorCode code) {
    switch (code) {
    case ErrorCode::file_not_readable:
        return "file_not_readable";
    case ErrorCode::file_not_writable:
        return "file_not_writable";
    case ErrorCode::file_too_large:
        return "file_too_large";
    case ErrorCode::not_a_table:
        return "not_a_table";
    case ErrorCode::column_missing:
        return "column_missing";
    case ErrorCode::value_not_readable:
        return "value_not_readable";
    case ErrorCode::time_not_usable:
        return "time_not_usable";
    case ErrorCode::no_motion:
        return "no_motion";
    case ErrorCode::no_laps:
        return "no_laps";
    case ErrorCode::lap_not_found:
        return "lap_not_found";
    case ErrorCode::different_tracks:
        return "different_tracks";
    case ErrorCode::track_not_readable:
        return "track_not_readable";
    case ErrorCode::setup_not_readable:
        return "setup_not_readable";
    case ErrorCode::recipe_not_readable:
        return "recipe_not_readable";
    case ErrorCode::book_not_usable:
        return "book_not_usable";
    case ErrorCode::cannot_be_computed:
        return "cannot_be_computed";
    case ErrorCode::cancelled:
        return "cancelled";
    }
    return "unknown";
}

} // namespace lapwright::base
