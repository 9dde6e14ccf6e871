// SPDX-License-Identifier: GPL-3.0-or-later
// Short good files that mutants are made from: three laps of an invented short track at 10 Hz, in several forms.
#pragma once

#include <string>
#include <vector>

namespace hostile {

enum class Form { table, lines };

struct GoodFile {
    std::string name;
    std::string text;
    Form form = Form::table;
    char delimiter = ',';
};

// A table with everything, one without positions, one with positions and a clock of the day alone, a GPX, an NMEA.
[[nodiscard]] std::vector<GoodFile> good_files();
[[nodiscard]] std::string good_track_file();
[[nodiscard]] std::string good_setup_file();

} // namespace hostile
