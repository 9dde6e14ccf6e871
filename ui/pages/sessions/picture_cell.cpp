// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/picture_cell.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

constexpr int picture_px = 72;
constexpr double margin_px = 4.0;
constexpr double line_px = 1.4;

} // namespace

SmallPicture picture_of(const book::GapCurve& gaps_s) {
    SmallPicture picture;
    for (std::size_t i = 0; i < gaps_s.size(); ++i)
        picture.points << QPointF(static_cast<double>(i), static_cast<double>(gaps_s[i]));
    picture.level_y = 0.0;
    return picture;
}

SmallPicture picture_of(const book::Outline& places_m) {
    SmallPicture picture;
    for (const auto& [east_m, north_m] : places_m)
        picture.points << QPointF(static_cast<double>(east_m), static_cast<double>(north_m));
    picture.closed = true;
    return picture;
}

void draw(QPainter& painter, const QRectF& room, const SmallPicture& picture, const QColor& ink, const QColor& quiet) {
    QRectF extent = picture.points.boundingRect();
    if (picture.level_y) {
        extent.setTop(std::min(extent.top(), *picture.level_y));
        extent.setBottom(std::max(extent.bottom(), *picture.level_y));
    }
    double x_scale = room.width() / std::max(extent.width(), 1e-9);
    double y_scale = room.height() / std::max(extent.height(), 1e-9);
    if (picture.closed) x_scale = y_scale = std::min(x_scale, y_scale);
    const auto place = [&](const QPointF& point) {
        return QPointF(room.center().x() + (point.x() - extent.center().x()) * x_scale,
                       room.center().y() - (point.y() - extent.center().y()) * y_scale);
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (picture.level_y) {
        painter.setPen(QPen(quiet, 1.0));
        const double y = place({extent.center().x(), *picture.level_y}).y();
        painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
    }
    QPolygonF placed;
    for (const QPointF& point : picture.points)
        placed << place(point);
    painter.setPen(QPen(ink, line_px, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    if (picture.closed)
        painter.drawPolygon(placed);
    else
        painter.drawPolyline(placed);
    painter.restore();
}

PictureCell::PictureCell(PictureOf picture_of, QObject* parent)
    : QStyledItemDelegate(parent), picture_of_(std::move(picture_of)) {}

void PictureCell::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem whole = option;
    initStyleOption(&whole, index);
    const QWidget* widget = option.widget;
    (widget != nullptr ? widget->style() : QApplication::style())
        ->drawPrimitive(QStyle::PE_PanelItemViewItem, &whole, painter, widget);
    QStyleOptionViewItem words = option;
    words.rect.setLeft(option.rect.left() + picture_px);
    QStyledItemDelegate::paint(painter, words, index);
    const SmallPicture* picture = picture_of_(index.row());
    if (picture == nullptr) return;
    const QRectF room = QRectF(option.rect.left(), option.rect.top(), picture_px, option.rect.height())
                            .adjusted(margin_px, margin_px, -margin_px, -margin_px);
    draw(*painter, room, *picture, option.palette.color(QPalette::Text),
         option.palette.color(QPalette::PlaceholderText));
}

QSize PictureCell::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return QStyledItemDelegate::sizeHint(option, index) + QSize(picture_px, 0);
}

} // namespace lapwright::pages
