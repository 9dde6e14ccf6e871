// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with an input, in one sentence for people: which file, which line or column, what is wrong, what to do.
// Bad data travels as Result<T>; a broken invariant of the program itself is check() in check.h.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace lapwright::base {

enum class ErrorCode {
    file_not_readable,
    file_not_writable,
    file_too_large,
    not_a_table,
    column_missing,
    value_not_readable,
    time_not_usable,
    no_motion,
    no_laps,
    lap_not_found,
    different_tracks,
    track_not_readable,
    setup_not_readable,
    recipe_not_readable,
    book_not_usable,
    cannot_be_computed,
    cancelled,
};

// Where in the input; the line counts from 1 as an editor does.
struct Place {
    std::string file;
    std::optional<std::uint64_t> line;
    std::string column;
};

struct Error {
    ErrorCode code{};
    Place place;
    std::string what;   // "the time column runs backwards", no full stop
    std::string remedy; // "export the session again", no full stop; may be empty
};

// "FILE:LINE: what is wrong — what to do", without a line break; parts that are not known are left out.
[[nodiscard]] std::string one_line(const Error& error);

} // namespace lapwright::base
