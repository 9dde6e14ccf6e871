// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet on paper or on the screen: the same strokes for both.  Units of the painter are points (1/72 inch).
#pragma once

#include "core/sheet/sheet.h"

#include <QSizeF>
#include <vector>

class QPainter;

namespace lapwright::paper {

enum class Page { first, all_segments, stills };

// In their order; stills have a page where there are any.
[[nodiscard]] std::vector<Page> pages_of(const sheet::Sheet& sheet, bool all_segments);

// Paints one page of that size, margins included, in the paper's colours (never the screen's theme).
void paint_sheet(QPainter& painter, const QSizeF& page_pt, const sheet::Sheet& sheet, Page page = Page::first);

} // namespace lapwright::paper
