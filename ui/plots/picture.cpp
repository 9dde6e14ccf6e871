// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/picture.h"

#include "ui/theme/fonts.h"

#include <QBuffer>
#include <QFontMetrics>
#include <QImage>
#include <QSvgGenerator>
#include <algorithm>
#include <qcustomplot.h>

namespace lapwright::plots {
namespace {

constexpr int scale_of_png = 2;
constexpr int margin_px = 12;

int heading_height() {
    return QFontMetrics(theme::strong(theme::body())).height() + margin_px;
}

int caption_height(const std::vector<PicturePart>& parts) {
    const bool any = std::ranges::any_of(parts, [](const PicturePart& part) { return !part.caption.isEmpty(); });
    return any ? QFontMetrics(theme::small()).height() + 4 : 0;
}

QSize whole_size(const std::vector<PicturePart>& parts) {
    QSize whole(margin_px, 0);
    for (const PicturePart& part : parts) {
        whole.rwidth() += part.size.width() + margin_px;
        whole.setHeight(std::max(whole.height(), part.size.height()));
    }
    whole.rheight() += margin_px + heading_height() + caption_height(parts) + margin_px;
    return whole;
}

void draw(QCPPainter& painter, const std::vector<PicturePart>& parts, const QString& heading,
          const PictureStyle& style) {
    painter.setModes(QCPPainter::pmVectorized | QCPPainter::pmNoCaching | QCPPainter::pmNonCosmetic);
    const QSize whole = whole_size(parts);
    painter.fillRect(QRect(QPoint(), whole), style.ground);
    painter.setPen(QPen(style.ink));
    painter.setFont(theme::strong(theme::body()));
    const int width = whole.width() - 2 * margin_px;
    painter.drawText(QRect(margin_px, margin_px, width, heading_height()), Qt::AlignLeft | Qt::AlignTop, heading);
    const int caption = caption_height(parts);
    int left = margin_px;
    for (const PicturePart& part : parts) {
        const int top = margin_px + heading_height();
        painter.setPen(QPen(style.ink));
        painter.setFont(theme::small());
        painter.drawText(QRect(left, top, part.size.width(), caption), Qt::AlignLeft | Qt::AlignTop, part.caption);
        painter.save();
        painter.translate(left, top + caption);
        part.plot->toPainter(&painter, part.size.width(), part.size.height());
        painter.restore();
        left += part.size.width() + margin_px;
    }
}

QByteArray svg(const std::vector<PicturePart>& parts, const QString& heading, const PictureStyle& style) {
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(whole_size(parts));
    generator.setViewBox(QRect(QPoint(), whole_size(parts)));
    {
        QCPPainter painter(&generator);
        draw(painter, parts, heading, style);
    }
    return buffer.data();
}

QByteArray png(const std::vector<PicturePart>& parts, const QString& heading, const PictureStyle& style) {
    QImage image(scale_of_png * whole_size(parts), QImage::Format_RGB32);
    if (image.isNull()) return {};
    image.fill(style.ground);
    {
        QCPPainter painter(&image);
        painter.scale(scale_of_png, scale_of_png);
        draw(painter, parts, heading, style);
    }
    QBuffer buffer;
    return image.save(&buffer, "PNG") ? buffer.data() : QByteArray();
}

} // namespace

QByteArray picture_of(const std::vector<PicturePart>& parts, const QString& heading, const PictureStyle& style,
                      PictureForm form) {
    return form == PictureForm::svg ? svg(parts, heading, style) : png(parts, heading, style);
}

} // namespace lapwright::plots
