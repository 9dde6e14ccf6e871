// SPDX-License-Identifier: GPL-3.0-or-later
// The style of the HTML sheet: dark ink on white, no file of its own, no font fetched.
#pragma once

#include <string>

namespace lapwright::sheet {

// CSS text for the inside of a <style> element; A4 or US Letter upright for print.
[[nodiscard]] std::string html_style(bool us_letter);

} // namespace lapwright::sheet
