// SPDX-License-Identifier: GPL-3.0-or-later
// What the sources share that rewrite a whole table before it is read: its lines one by one, and how many of them tell
// its form.
#pragma once

#include "core/base/progress.h"
#include "core/import/text/cells.h"
#include "core/import/text/line_scan.h"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace lapwright::import {

// Of tables with texts in their cells, which blanks cannot part.
inline constexpr std::array text_delimiters{Delimiter{';'}, Delimiter{','}, Delimiter{'\t'}, Delimiter{'|'}};
inline constexpr std::size_t telling_lines = 400;

// use(line, its end) for each; false where it was cancelled.
template <class Use>
[[nodiscard]] bool each_line(std::string_view text, const std::string& stage, const base::Progress& progress,
                             const Use& use) {
    constexpr std::size_t lines_between_looks = 50'000;
    std::size_t lines = 0;
    for (std::size_t at = 0; at < text.size(); ++lines) {
        const double done = static_cast<double>(at) / static_cast<double>(text.size());
        if (lines % lines_between_looks == 0 && !base::go_on(progress, stage, done)) return false;
        const std::size_t end = behind_line_end(text, at);
        std::size_t last = end;
        while (last > at && is_line_end(text[last - 1]))
            --last;
        use(text.substr(at, last - at), text.substr(last, end - last));
        at = end;
    }
    return true;
}

} // namespace lapwright::import
