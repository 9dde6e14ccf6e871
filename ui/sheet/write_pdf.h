// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet as a vector PDF with selectable text.  The file appears whole or not at all.
#pragma once

#include "core/base/result.h"
#include "core/sheet/sheet.h"

#include <QSizeF>
#include <string>

namespace lapwright::paper {

enum class PaperSize { a4, us_letter };

struct PdfOptions {
    PaperSize paper = PaperSize::a4;
    bool all_segments = false; // a second page
};

[[nodiscard]] QSizeF page_size_pt(PaperSize paper); // upright

// Needs a QGuiApplication (any platform plugin, also one without a display).
[[nodiscard]] base::Result<void> write_pdf(const sheet::Sheet& sheet, const std::string& path,
                                           const PdfOptions& options = {});

// The same from a program that shows no window: starts Qt on its platform without a display and ends it again.
[[nodiscard]] base::Result<void> write_pdf_without_window(const sheet::Sheet& sheet, const std::string& path,
                                                          const PdfOptions& options = {});

} // namespace lapwright::paper
