// SPDX-License-Identifier: GPL-3.0-or-later
// A cell of a table with a small drawing before its words: the gap over a lap about a line of no gap, or the way around
// a track, north up.  One ink: a picture of this size is no place to say who won what.
#pragma once

#include "core/book/pictures.h"

#include <QPolygonF>
#include <QStyledItemDelegate>
#include <functional>
#include <optional>

namespace lapwright::pages {

struct SmallPicture {
    QPolygonF points;              // x to the right, y up; of any size
    bool closed = false;           // the last joins the first, and one scale holds for both ways
    std::optional<double> level_y; // a line through the whole picture
};

[[nodiscard]] SmallPicture picture_of(const book::GapCurve& gaps_s);
[[nodiscard]] SmallPicture picture_of(const book::Outline& places_m);

// Fitted into the room.
void draw(QPainter& painter, const QRectF& room, const SmallPicture& picture, const QColor& ink, const QColor& quiet);

class PictureCell : public QStyledItemDelegate {
    Q_OBJECT

  public:
    // Null: nothing is drawn there, its room stays.
    using PictureOf = std::function<const SmallPicture*(int row)>;

    explicit PictureCell(PictureOf picture_of, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    static constexpr int row_px = 34;

  private:
    PictureOf picture_of_;
};

} // namespace lapwright::pages
