// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/month_names.h"

#include "core/import/text/words.h"

#include <array>
#include <string>

namespace lapwright::import {
namespace {

// Folded as words.h does it, each between blanks.
constexpr std::array<std::string_view, 12> names{
    " january jan januar janner janvier janv enero ene gennaio gen januari ",
    " february feb februar fevrier fevr fev febrero febbraio februari ",
    " march mar marz maerz mrz mars marzo maart mrt ",
    " april apr avril avr abril abr aprile ",
    " may mai mayo maggio mag mei ",
    " june jun juni juin junio giugno giu ",
    " july jul juli juillet juil julio luglio lug ",
    " august aug aout agosto ago augustus ",
    " september sep sept septembre septiembre setiembre set settembre sett ",
    " october oct oktober okt octobre octubre ottobre ott ",
    " november nov novembre noviembre ",
    " december dec dezember dez decembre diciembre dic dicembre ",
};

} // namespace

int month_of_name(std::string_view word) {
    if (word.size() < 3 || word.size() > 12) return 0;
    const std::string wanted = " " + folded(word) + " ";
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i].find(wanted) != std::string_view::npos) return static_cast<int>(i) + 1;
    return 0;
}

} // namespace lapwright::import
