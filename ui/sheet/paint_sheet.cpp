// SPDX-License-Identifier: GPL-3.0-or-later
// Laid out from the top: answer, plots, findings, then two
// columns (corners; causes, setup, notes), cautions at the foot.
#include "ui/sheet/paint_sheet.h"

#include "core/base/translation.h"
#include "core/sheet/svg_map.h"
#include "core/sheet/svg_plot.h"
#include "ui/sheet/ink.h"

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <algorithm>
#include <iterator>

namespace lapwright::paper {
namespace {

constexpr double margin_pt = 40.0;
constexpr double foot_height = 34.0;
constexpr double heading_height = 16.0;

QString tr(const char* words) {
    return QCoreApplication::translate("Lapwright", words);
}

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

// Text wrapped to a width, but not within a unit ("km/h"); gives the height that it took.
double paint_text(QPainter& painter, double x, double y, double width, const QString& words, const QFont& font,
                  const QColor& colour) {
    painter.setFont(font);
    painter.setPen(colour);
    const QRectF room(x, y, width, 10000.0);
    QRectF taken;
    static const QRegularExpression within_unit(QStringLiteral("(?<=\\w)/(?=\\w)"));
    const QString whole_units = QString(words).replace(within_unit, QStringLiteral("/\u2060"));
    painter.drawText(room, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, whole_units, &taken);
    return taken.height();
}

void paint_rule(QPainter& painter, double x, double y, double width) {
    painter.setPen(QPen(rule, 0.6));
    painter.drawLine(QPointF(x, y), QPointF(x + width, y));
}

void paint_words(QPainter& painter, double x, double y, const std::vector<sheet::Words>& all) {
    for (const sheet::Words& words : all) {
        painter.setFont(type(words.size, words.bold));
        painter.setPen(QColor(QRgb{words.colour}));
        const QString line = text(words.text);
        const double shift = words.anchor == sheet::Anchor::start    ? 0.0
                             : words.anchor == sheet::Anchor::middle ? 0.5
                                                                     : 1.0;
        const double long_pt = QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(line);
        painter.drawText(QPointF(x + words.x - shift * long_pt, y + words.y), line);
    }
}

// Its words apart, so that they can be selected.
void paint_drawing(QPainter& painter, double x, double y, const sheet::PlotDrawing& drawing) {
    if (drawing.shapes.empty()) return;
    const std::string svg = sheet::svg_plot({drawing.width_pt, drawing.height_pt, drawing.shapes, {}});
    QSvgRenderer(QByteArray::fromStdString(svg)).render(&painter, QRectF(x, y, drawing.width_pt, drawing.height_pt));
    paint_words(painter, x, y, drawing.words);
}

// The map stands at the right of the words.
double paint_top(QPainter& painter, double x, double y, double page_width, const sheet::Sheet& sheet) {
    const double start = y;
    const sheet::PlotDrawing map = sheet::map_drawing(sheet);
    const bool mapped = !map.shapes.empty();
    const double width = page_width - (mapped ? sheet::map_width_pt + 10.0 : 0.0);
    if (mapped) paint_drawing(painter, x + page_width - sheet::map_width_pt, y - 8.0, map);
    y += paint_text(painter, x, y, width, text(sheet.headline), type(20, true), ink) + 2;
    y += paint_text(painter, x, y, width, text(sheet.sentence), type(10), ink) + 4;
    y += paint_text(painter, x, y, width, text(sheet.place), type(8), faint_ink) + 1;
    y += paint_text(painter, x, y, width, text(sheet.side_a), type(8, true), blue_a) + 1;
    y += paint_text(painter, x, y, width, text(sheet.side_b), type(8, true), vermilion_b) + 6;
    return std::max(y - start, mapped ? sheet::map_height_pt - 6.0 : 0.0);
}

double paint_findings(QPainter& painter, double x, double y, double width, const sheet::Sheet& sheet) {
    const double start = y;
    constexpr double worth_width = 92;
    int number = 0;
    for (const sheet::Finding& finding : sheet.findings) {
        paint_rule(painter, x, y, width);
        y += 6;
        painter.setBrush(ink);
        painter.setPen(Qt::NoPen);
        painter.drawEllipse(QPointF(x + 7, y + 7), 7.0, 7.0);
        painter.setPen(Qt::white);
        painter.setFont(type(9, true));
        painter.drawText(QRectF(x, y, 14, 14), Qt::AlignCenter, QString::number(++number));
        painter.setPen(colour_of(finding.favours));
        painter.setFont(type(9, true));
        painter.drawText(QRectF(x + width - worth_width, y, worth_width, 14), Qt::AlignRight | Qt::AlignVCenter,
                         text(finding.worth));
        const double left = x + 24;
        const double room = width - 24 - worth_width - 8;
        y += paint_text(painter, left, y, room, text(finding.claim), type(9, true), ink) + 1;
        y += paint_text(painter, left, y, room, text(finding.evidence), type(8), ink) + 1;
        if (!finding.try_next.empty())
            y += paint_text(painter, left, y, room, tr("Try next: %1").arg(text(finding.try_next)), type(8), ink);
        y += 6;
    }
    return y - start;
}

double paint_heading(QPainter& painter, double x, double y, double width, const QString& words) {
    return paint_text(painter, x, y, width, words, type(9, true), ink) + 3;
}

// A bar from the middle: left for B, right for A.
void paint_won_by(QPainter& painter, const QRectF& cell, const sheet::Row& row, double largest_s) {
    const double gain_s = row.gain_s;
    painter.fillRect(cell, shade);
    const double half = 0.5 * cell.width();
    const double reach = largest_s > 0.0 ? half * std::min(1.0, std::abs(gain_s) / largest_s) : 0.0;
    const double middle = cell.center().x();
    const QRectF bar = gain_s >= 0.0 ? QRectF(middle, cell.top(), reach, cell.height())
                                     : QRectF(middle - reach, cell.top(), reach, cell.height());
    painter.fillRect(bar, QColor(QRgb{sheet::bar_colour(row.favours)}));
}

double largest_gain(const std::vector<sheet::Row>& rows) {
    double most = 0.0;
    for (const sheet::Row& row : rows)
        most = std::max(most, std::abs(row.gain_s));
    return most;
}

double paint_table(QPainter& painter, double x, double y, double width, const sheet::Sheet& sheet,
                   const std::vector<sheet::Row>& rows) {
    const double start = y;
    constexpr double row_height = 13;
    constexpr double bar_width = 28;
    const std::vector<double> shares{0.20, 0.245, 0.305, 0.25};
    const double for_text = width - bar_width;
    const double largest = largest_gain(rows);
    const auto cell = [&](std::size_t column, double top) {
        double left = x;
        for (std::size_t i = 0; i < column; ++i)
            left += shares[i] * for_text + (i == 0 ? bar_width : 0.0);
        return QRectF(left, top, shares[column] * for_text, row_height);
    };
    painter.setFont(type(7));
    painter.setPen(faint_ink);
    for (std::size_t i = 1; i < shares.size() && i < sheet.columns.size(); ++i)
        painter.drawText(cell(i, y), Qt::AlignRight | Qt::AlignVCenter, text(sheet.columns[i]));
    y += row_height;
    for (const sheet::Row& row : rows) {
        paint_rule(painter, x, y, width);
        const double bar_left = x + shares[0] * for_text;
        paint_won_by(painter, QRectF(bar_left, y + 4, bar_width, row_height - 8), row, largest);
        for (std::size_t i = 0; i < shares.size() && i < row.cells.size(); ++i) {
            painter.setFont(type(8, i == 0 && row.corner));
            painter.setPen(ink);
            const QString words = painter.fontMetrics().elidedText(text(row.cells[i]), Qt::ElideRight,
                                                                   static_cast<int>(cell(i, y).width()));
            painter.drawText(cell(i, y), (i == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter, words);
        }
        y += row_height;
    }
    return y - start;
}

// A name and its text, both wrapped; gives the height of the row, which need not be painted.
double pair_row(QPainter& painter, double x, double y, double width, const sheet::Pair& pair, bool paints) {
    const double name_width = 0.42 * width;
    const QRectF room(x + name_width, y + 1, width - name_width, 200);
    const QRectF name_room(x, y + 1, name_width - 4, 200);
    const int flags = Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap;
    const int name_flags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
    painter.setFont(type(8));
    const double high = std::max(painter.boundingRect(room, flags, text(pair.text)).height(),
                                 painter.boundingRect(name_room, name_flags, text(pair.name)).height());
    if (paints) {
        painter.setPen(colour_of(pair.favours));
        painter.drawText(room, flags, text(pair.text));
        painter.setPen(ink);
        painter.drawText(name_room, name_flags, text(pair.name));
        paint_rule(painter, x, y + high + 2, width);
    }
    return high + 2;
}

double height_of_pairs(QPainter& painter, double width, const std::vector<sheet::Pair>& pairs) {
    double height = heading_height;
    for (const sheet::Pair& pair : pairs)
        height += pair_row(painter, 0.0, 0.0, width, pair, false);
    return height;
}

double paint_pairs(QPainter& painter, double x, double y, double width, const QString& heading,
                   const std::vector<sheet::Pair>& pairs) {
    if (pairs.empty()) return 0.0;
    const double start = y;
    y += paint_heading(painter, x, y, width, heading);
    for (const sheet::Pair& pair : pairs)
        y += pair_row(painter, x, y, width, pair, true);
    return y + 8 - start;
}

// Where a part may stand: from `y` down to the cautions.
struct Room {
    double x;
    double y;
    double width;
    double bottom;

    [[nodiscard]] double height() const { return bottom - y; }
};

// Running words, in which many differences still stand whole; those beyond the page are counted.
double paint_as_words(QPainter& painter, const Room& room, const QString& heading,
                      const std::vector<sheet::Pair>& pairs) {
    const double top = room.y + paint_heading(painter, room.x, room.y, room.width, heading);
    const QFont font = type(7);
    painter.setFont(font);
    for (std::size_t shown = pairs.size();; --shown) {
        QStringList words;
        for (std::size_t i = 0; i < shown; ++i)
            words << text(pairs[i].name) + QLatin1Char(' ') + text(pairs[i].text);
        if (shown < pairs.size()) words << tr("and %1 more").arg(pairs.size() - shown);
        const QString all = words.join(QStringLiteral("; "));
        const QRectF whole(room.x, top, room.width, 10000.0);
        const double high = painter.boundingRect(whole, Qt::TextWordWrap, all).height();
        if (top + high > room.bottom && shown > 0) continue;
        return top + paint_text(painter, room.x, top, room.width, all, font, ink) + 8 - room.y;
    }
}

// Heights that were taken of the two columns.
struct Taken {
    double left = 0.0;
    double right = 0.0;
};

// The differences of the setups, in the column that has room for them.
Taken paint_setup(QPainter& painter, const Room& left, const Room& right, const std::vector<sheet::Pair>& pairs) {
    if (pairs.empty()) return {};
    const QString heading = tr("Setup, A · B");
    if (height_of_pairs(painter, right.width, pairs) <= right.height())
        return {0.0, paint_pairs(painter, right.x, right.y, right.width, heading, pairs)};
    if (height_of_pairs(painter, left.width, pairs) <= left.height())
        return {paint_pairs(painter, left.x, left.y, left.width, heading, pairs), 0.0};
    if (left.height() * left.width > right.height() * right.width)
        return {paint_as_words(painter, left, heading, pairs), 0.0};
    return {0.0, paint_as_words(painter, right, heading, pairs)};
}

std::vector<std::string> driving_lines(const sheet::Sheet& sheet) {
    std::vector<std::string> lines;
    for (const sheet::Pair& pair : sheet.driving)
        lines.push_back(base::labelled(pair.name, pair.text));
    return lines;
}

// Lines that do not fit above `bottom` are counted instead; long ones wrap.
double paint_list(QPainter& painter, double x, double y, double width, double bottom, const QString& heading,
                  const std::vector<std::string>& lines) {
    constexpr double min_row = 12;
    if (lines.empty() || y + 3 * min_row > bottom) return 0.0;
    const double start = y;
    y += paint_heading(painter, x, y, width, heading);
    painter.setFont(type(8));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const QRectF room(x, y, width, 10000.0);
        const double high = painter.boundingRect(room, Qt::TextWordWrap, text(lines[i])).height();
        const bool last = i + 1 == lines.size();
        if (y + high + (last ? 0.0 : min_row) > bottom) {
            const QString left_out = tr("and %1 more").arg(lines.size() - i);
            return y + paint_text(painter, x, y, width, left_out, type(8), faint_ink) + 8 - start;
        }
        y += paint_text(painter, x, y, width, text(lines[i]), type(8), ink) + 2;
    }
    return y + 8 - start;
}

void paint_foot(QPainter& painter, const QSizeF& page, const sheet::Sheet& sheet) {
    const double width = page.width() - 2 * margin_pt;
    const double y = page.height() - margin_pt - foot_height;
    paint_rule(painter, margin_pt, y, width);
    const double height = paint_text(painter, margin_pt, y + 4, width, text(sheet.cautions), type(7), faint_ink);
    paint_text(painter, margin_pt, y + 5 + height, width, text(sheet.made_from), type(7), faint_ink);
}

void paint_first(QPainter& painter, const QSizeF& page, const sheet::Sheet& sheet) {
    const double width = page.width() - 2 * margin_pt;
    double y = margin_pt;
    y += paint_top(painter, margin_pt, y, width, sheet);
    paint_drawing(painter, margin_pt, y, sheet::plot_drawing(sheet, width));
    y += sheet::plot_height_pt + 10;
    y += paint_findings(painter, margin_pt, y, width, sheet);
    paint_rule(painter, margin_pt, y, width);
    y += 10;
    const double column = 0.60 * width;
    const double heading = paint_heading(painter, margin_pt, y, column, tr("Corners, and straights that matter"));
    std::vector<sheet::Row> rows;
    std::ranges::copy_if(sheet.segments, std::back_inserter(rows),
                         [](const sheet::Row& row) { return row.corner || row.matters; });
    const double corners = paint_table(painter, margin_pt, y + heading, column, sheet, rows);
    const double right = margin_pt + column + 24;
    const double room = width - column - 24;
    double at = y;
    const double bottom = page.height() - margin_pt - foot_height - 4;
    at += paint_pairs(painter, right, at, room, tr("Causes, whole lap"), sheet.causes);
    at += paint_list(painter, right, at, room, bottom, tr("Notes"), sheet.notes);
    const double below = y + heading + corners + 8;
    const Taken setup =
        paint_setup(painter, {margin_pt, below, column, bottom}, {right, at, room, bottom}, sheet.setup);
    at += setup.right;
    paint_list(painter, margin_pt, below + setup.left, column, bottom, tr("Driven differently"), driving_lines(sheet));
    paint_list(painter, right, at, room, bottom, tr("To keep in mind"), sheet.remarks);
}

void paint_all_segments(QPainter& painter, const QSizeF& page, const sheet::Sheet& sheet) {
    const double width = page.width() - 2 * margin_pt;
    double y = margin_pt;
    y += paint_text(painter, margin_pt, y, width, text(sheet.headline), type(14, true), ink) + 4;
    y += paint_text(painter, margin_pt, y, width, tr("All segments"), type(9, true), ink) + 4;
    paint_table(painter, margin_pt, y, width, sheet, sheet.segments);
}

// The picture with its words below; gives the height that both took.
double paint_still(QPainter& painter, const QRectF& room, const sheet::Still& still, const QColor& colour) {
    constexpr double words_height = 12.0;
    double y = room.top();
    const QImage image = QImage::fromData(QByteArray::fromStdString(still.jpeg), "JPEG");
    if (!image.isNull()) {
        const QSizeF most(room.width(), room.height() - words_height);
        const QSizeF size = QSizeF(image.size()).scaled(most, Qt::KeepAspectRatio);
        painter.save();
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(QRectF(room.topLeft(), size), image);
        painter.restore();
        y += size.height() + 2.0;
    }
    y += paint_text(painter, room.left(), y, room.width(), text(still.words), type(8), colour);
    return y - room.top();
}

void paint_stills(QPainter& painter, const QSizeF& page, const sheet::Sheet& sheet) {
    constexpr double between = 14.0;
    const double width = page.width() - 2 * margin_pt;
    const double half = 0.5 * (width - between);
    double y = margin_pt;
    y += paint_text(painter, margin_pt, y, width, text(sheet.headline), type(14, true), ink) + 8;
    const double bottom = page.height() - margin_pt - foot_height;
    const double most = (bottom - y) / static_cast<double>(sheet::max_still_pairs);
    for (const sheet::StillPair& pair : sheet.stills) {
        const double heading = paint_heading(painter, margin_pt, y, width, text(pair.moment));
        const double room = most - heading - between;
        const double a = paint_still(painter, {margin_pt, y + heading, half, room}, pair.a, blue_a);
        const double b =
            paint_still(painter, {margin_pt + half + between, y + heading, half, room}, pair.b, vermilion_b);
        y += heading + std::max(a, b) + between;
    }
}

} // namespace

std::vector<Page> pages_of(const sheet::Sheet& sheet, bool all_segments) {
    std::vector<Page> pages{Page::first};
    if (all_segments) pages.push_back(Page::all_segments);
    if (!sheet.stills.empty()) pages.push_back(Page::stills);
    return pages;
}

void paint_sheet(QPainter& painter, const QSizeF& page_pt, const sheet::Sheet& sheet, Page page) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(0, 0), page_pt), Qt::white);
    if (page == Page::first)
        paint_first(painter, page_pt, sheet);
    else if (page == Page::all_segments)
        paint_all_segments(painter, page_pt, sheet);
    else
        paint_stills(painter, page_pt, sheet);
    paint_foot(painter, page_pt, sheet);
    painter.restore();
}

} // namespace lapwright::paper
