// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/write_sheet.h"

#include "ui/sheet/write_pdf.h"

namespace lapwright::window {

base::Result<void> write_sheet(const sheet::Sheet& sheet, const std::string& path, bool us_letter, bool all_segments) {
    const paper::PaperSize size = us_letter ? paper::PaperSize::us_letter : paper::PaperSize::a4;
    return paper::write_pdf_without_window(sheet, path, {size, all_segments});
}

} // namespace lapwright::window
