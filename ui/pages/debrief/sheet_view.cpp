// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/debrief/sheet_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace lapwright::pages {
namespace {

constexpr int around_px = 14;
constexpr double min_scale = 0.4;
constexpr double max_scale = 2.2;

} // namespace

SheetView::SheetView(QWidget* parent) : QWidget(parent), shadow_(0, 0, 0, 60) {
    setAccessibleName(tr("The debrief sheet as it will print"));
}

void SheetView::set_sheet(std::optional<sheet::Sheet> sheet) {
    sheet_ = std::move(sheet);
    pages_changed();
}

void SheetView::set_options(const paper::PdfOptions& options) {
    options_ = options;
    pages_changed();
}

void SheetView::set_ground(const QColor& shadow) {
    shadow_ = shadow;
    pages_changed();
}

void SheetView::fit(QSize room, bool whole_page) {
    const QSizeF page = paper::page_size_pt(options_.paper);
    const double wide = (room.width() - 2 * around_px) / page.width();
    const double high = (room.height() - 2 * around_px) / page.height();
    const double scale = std::clamp(whole_page ? std::min(wide, high) : wide, min_scale, max_scale);
    if (scale == scale_) return;
    scale_ = scale;
    pages_changed();
}

std::vector<paper::Page> SheetView::pages() const {
    return sheet_ ? paper::pages_of(*sheet_, options_.all_segments) : std::vector{paper::Page::first};
}

QSize SheetView::sizeHint() const {
    const QSizeF page = paper::page_size_pt(options_.paper) * scale_;
    return {static_cast<int>(std::ceil(page.width())) + 2 * around_px,
            static_cast<int>(pages().size()) * (static_cast<int>(std::ceil(page.height())) + around_px) + around_px};
}

void SheetView::pages_changed() {
    picture_ = {};
    setFixedSize(sizeHint());
    update();
}

QPixmap SheetView::painted_pages() const {
    const double ratio = devicePixelRatioF();
    QPixmap picture(size() * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    if (!sheet_) return picture;
    QPainter painter(&picture);
    const QSizeF page = paper::page_size_pt(options_.paper);
    double top = around_px;
    for (const paper::Page one : pages()) {
        painter.save();
        painter.translate(around_px, top);
        painter.fillRect(QRectF(QPointF(2.0, 3.0), page * scale_), shadow_);
        painter.scale(scale_, scale_);
        paper::paint_sheet(painter, page, *sheet_, one);
        painter.restore();
        top += std::ceil(page.height() * scale_) + around_px;
    }
    return picture;
}

void SheetView::paintEvent(QPaintEvent*) {
    if (picture_.isNull() || picture_.devicePixelRatio() != devicePixelRatioF()) picture_ = painted_pages();
    QPainter painter(this);
    painter.drawPixmap(0, 0, picture_);
}

} // namespace lapwright::pages
