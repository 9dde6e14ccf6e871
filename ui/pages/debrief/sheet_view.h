// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet on the screen, painted with the strokes of the printed one, page under page.
#pragma once

#include "core/sheet/sheet.h"
#include "ui/sheet/paint_sheet.h"
#include "ui/sheet/write_pdf.h"

#include <QColor>
#include <QPixmap>
#include <QWidget>
#include <optional>
#include <vector>

namespace lapwright::pages {

class SheetView : public QWidget {
    Q_OBJECT

  public:
    explicit SheetView(QWidget* parent = nullptr);

    void set_sheet(std::optional<sheet::Sheet> sheet);
    void set_options(const paper::PdfOptions& options);
    // The room that the pages have, in pixels; they are as wide as fits, or so small that a whole page is seen.
    void fit(QSize room, bool whole_page);
    void set_ground(const QColor& shadow);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] const std::optional<sheet::Sheet>& sheet() const { return sheet_; }
    [[nodiscard]] double scale() const { return scale_; } // pixels a point

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] std::vector<paper::Page> pages() const;
    void pages_changed();
    [[nodiscard]] QPixmap painted(paper::Page page) const;

    std::optional<sheet::Sheet> sheet_;
    paper::PdfOptions options_;
    std::vector<QPixmap> pictures_; // one a page at the present scale; null: not seen yet
    QColor shadow_;
    double scale_ = 1.0;
};

} // namespace lapwright::pages
