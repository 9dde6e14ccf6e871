// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet on a printer, looked at before: the same strokes as on the page and in the PDF.
#pragma once

#include "ui/sheet/write_pdf.h"

class QPrinter;
class QWidget;

namespace lapwright::window {

// Upright, on the paper that was chosen; the sheet brings its own margins.
void prepare(QPrinter& printer, const sheet::Sheet& sheet, const paper::PdfOptions& options);
// On the printer's paper, whichever a person chose meanwhile.
void print_on(QPrinter& printer, const sheet::Sheet& sheet, const paper::PdfOptions& options);
// Asks for the printer under a preview, in a dialog that stays until it is answered.
void preview_and_print(const sheet::Sheet& sheet, const paper::PdfOptions& options, QWidget* parent);

} // namespace lapwright::window
