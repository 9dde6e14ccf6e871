// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet as one HTML file that needs nothing else: style and drawings inside, no script, no address of
// anything outside.  Light paper on any screen; prints on A4 or US Letter (CSS Paged Media Level 3, @page).
#pragma once

#include "core/base/result.h"
#include "core/sheet/sheet.h"

#include <string>
#include <string_view>

namespace lapwright::sheet {

struct HtmlOptions {
    bool us_letter = false;    // else A4
    bool all_segments = false; // on a second page
};

// Stands in the head of every sheet: how one of ours is told from a foreign page.
inline constexpr std::string_view html_mark = "<meta name=\"generator\" content=\"Lapwright\"/>";

// UTF-8.  HTML5 that is well-formed XML as well.  The exact gain in seconds stands in a <data> element's value, its
// rounded text inside.
[[nodiscard]] std::string html_sheet(const Sheet& sheet, const HtmlOptions& options = {});

// The file appears whole or not at all.  What is wrong, or nothing.
[[nodiscard]] base::Result<void> write_html_sheet(const Sheet& sheet, const std::string& path,
                                                  const HtmlOptions& options = {});

// Whether a file name asks for the HTML form: it ends with .html or .htm, in any case.
[[nodiscard]] bool names_html(const std::string& path);

} // namespace lapwright::sheet
