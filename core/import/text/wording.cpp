// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/wording.h"

#include "core/base/number_text.h"

namespace lapwright::import {

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
    return base::integer_text(static_cast<std::int64_t>(count)) + " " + std::string(count == 1 ? one : many);
}

std::string lines_text(const LineTally& tally) {
    std::string text = tally.count == 1 ? "line " : "lines ";
    for (std::size_t i = 0; i < tally.first_lines.size(); ++i)
        text += (i > 0 ? ", " : "") + base::integer_text(tally.first_lines[i]);
    if (tally.count > tally.first_lines.size())
        text +=
            " and " + base::integer_text(static_cast<std::int64_t>(tally.count - tally.first_lines.size())) + " more";
    return text;
}

} // namespace lapwright::import
