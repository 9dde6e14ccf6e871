// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/cursor.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double least_read_out_part = 0.25; // of the title row; a long title has the rest
constexpr double piece_space_px = 10.0;

QRect title_row(const QRect& room, int height) {
    return {room.left(), room.top() - height, room.width(), height};
}

} // namespace

Cursor::Cursor(const Title& title, QCPAxisRect* rect, ReadOut read_out, const QColor& line, const QFont& font,
               int title_height, const Drawing* writing)
    : Drawing(rect, QStringLiteral("overlay")), title_(title), read_out_(std::move(read_out)), line_(line), font_(font),
      title_height_(title_height), writing_(writing) {}

QRect Cursor::clipRect() const {
    return room().adjusted(0, -title_height_, 0, 0);
}

void Cursor::draw(QCPPainter* painter) {
    if (view().contains(place_m_)) {
        painter->save();
        keep_clear_of(writing_, *painter);
        painter->setAntialiasing(false);
        painter->setPen(QPen(line_, 1.0));
        const double x = std::round(x_pixel(place_m_));
        painter->drawLine(QPointF(x, room().top()), QPointF(x, room().bottom()));
        painter->restore();
    }
    draw_read_out(*painter);
}

// Pieces from the right; one that finds no room is left out.
void Cursor::draw_read_out(QCPPainter& painter) const {
    if (!read_out_) return;
    const QFontMetricsF metrics(font_);
    const QRectF row(title_row(room(), title_height_));
    double right = row.right();
    const double left = row.left() + title_.taken_px() + piece_space_px;
    const std::vector<Piece> pieces = read_out_(place_m_);
    painter.setFont(font_);
    for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
        const double width = std::ceil(metrics.horizontalAdvance(piece->text)) + 1.0;
        if (right - width < left) continue;
        painter.setPen(piece->colour);
        painter.drawText(QRectF(right - width, row.top(), width, row.height()), Qt::AlignVCenter | Qt::TextSingleLine,
                         piece->text);
        right -= width + piece_space_px;
    }
}

Title::Title(QCPAxisRect* rect, QString text, const QColor& ink, const QFont& font, int title_height)
    : Drawing(rect, QStringLiteral("axes")), text_(std::move(text)), ink_(ink), font_(font),
      title_height_(title_height) {}

QRect Title::clipRect() const {
    return title_row(room(), title_height_);
}

double Title::needed_px() const {
    return std::ceil(QFontMetricsF(font_).horizontalAdvance(text_));
}

double Title::given_px() const {
    return (1.0 - least_read_out_part) * title_row(room(), title_height_).width() - piece_space_px;
}

double Title::taken_px() const {
    return std::min(needed_px(), given_px());
}

bool Title::cut() const {
    return needed_px() > given_px();
}

void Title::draw(QCPPainter* painter) {
    const QRectF row(title_row(room(), title_height_));
    painter->setFont(font_);
    painter->setPen(ink_);
    painter->drawText(QRectF(row.left(), row.top(), given_px(), row.height()), Qt::AlignVCenter | Qt::TextSingleLine,
                      cut() ? QFontMetricsF(font_).elidedText(text_, Qt::ElideRight, given_px()) : text_);
}

} // namespace lapwright::plots
