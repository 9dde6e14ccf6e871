// SPDX-License-Identifier: GPL-3.0-or-later
// What a sheet's file is called where nobody has said otherwise.
#pragma once

#include <string>

namespace lapwright::sheet {

// "Ternbank 2026-05-16 Ylva Tarnby - Odran Pell": what is known of it, in letters that every file system takes, at most
// 120 bytes; "debrief" where nothing is.  Without an ending.
[[nodiscard]] std::string file_name_for(const std::string& track, const std::string& date, const std::string& driver_a,
                                        const std::string& driver_b);

} // namespace lapwright::sheet
