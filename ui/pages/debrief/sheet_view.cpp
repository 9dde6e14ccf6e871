// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/debrief/sheet_view.h"

#include <QPaintEvent>
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
    pictures_.assign(pages().size(), {});
    setFixedSize(sizeHint());
    update();
}

// paint_sheet covers the whole page: filled here, too, it would take as long as a third of the strokes.
QPixmap SheetView::painted(paper::Page one) const {
    const QSizeF page = paper::page_size_pt(options_.paper);
    const double ratio = devicePixelRatioF();
    QPixmap picture((page * scale_ * ratio).toSize());
    picture.setDevicePixelRatio(ratio);
    QPainter painter(&picture);
    painter.scale(picture.width() / ratio / page.width(), picture.height() / ratio / page.height());
    paper::paint_sheet(painter, page, *sheet_, one);
    return picture;
}

// Of the pages only those in sight: each is some ten thousand strokes.
void SheetView::paintEvent(QPaintEvent* event) {
    if (!sheet_) return;
    QPainter painter(this);
    const std::vector<paper::Page> all = pages();
    const QSizeF page = paper::page_size_pt(options_.paper) * scale_;
    double top = around_px;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QRectF place(QPointF(around_px, top), page);
        top += std::ceil(page.height()) + around_px;
        if (!event->rect().intersects(place.toAlignedRect())) continue;
        QPixmap& picture = pictures_[i];
        if (picture.isNull() || picture.devicePixelRatio() != devicePixelRatioF()) picture = painted(all[i]);
        painter.fillRect(place.translated(2.0, 3.0), shadow_);
        painter.drawPixmap(place.topLeft(), picture);
    }
}

} // namespace lapwright::pages
