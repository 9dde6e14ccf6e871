// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/stroke_raster.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

namespace lapwright::plots {
namespace {

constexpr int tile_px = 48;
constexpr int per_pixel = 4;     // narrow columns a pixel
constexpr double steep_px = 1.0; // of a step from column to column, above which a hole is cut across rows

struct Interval {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();

    [[nodiscard]] bool empty() const { return low > high; }
    [[nodiscard]] double middle() const { return 0.5 * (low + high); }
    void take(double from, double to) {
        low = std::min({low, from, to});
        high = std::max({high, from, to});
    }
};

// Narrow columns: number k spans x = left + k / per_pixel … left + (k + 1) / per_pixel.
class Columns {
  public:
    Columns(const QRect& room, double radius)
        : margin_(static_cast<int>(std::ceil(radius * per_pixel)) + 1), left_(room.left()),
          spans_(static_cast<std::size_t>(room.width() * per_pixel + 2 * margin_)) {}

    [[nodiscard]] int margin() const { return margin_; }
    [[nodiscard]] std::vector<Interval>& spans() { return spans_; }

    void add(const QPointF& from, const QPointF& to) {
        const double first = position(from.x());
        const double last = position(to.x());
        if (last < 0.0 || first >= static_cast<double>(spans_.size())) return;
        const auto begin = static_cast<std::ptrdiff_t>(std::max(0.0, std::floor(first)));
        const auto end = std::min(static_cast<std::ptrdiff_t>(std::floor(last)), std::ssize(spans_) - 1);
        const double slope = last > first ? (to.y() - from.y()) / (last - first) : 0.0;
        for (std::ptrdiff_t k = begin; k <= end; ++k) {
            const double enters = std::max(first, static_cast<double>(k));
            const double leaves = std::min(last, static_cast<double>(k + 1));
            const double y_in = from.y() + slope * (enters - first);
            const double y_out = leaves >= last ? to.y() : from.y() + slope * (leaves - first);
            spans_[static_cast<std::size_t>(k)].take(y_in, y_out);
        }
    }

  private:
    [[nodiscard]] double position(double x) const { return (x - left_) * per_pixel + margin_; }

    int margin_;
    double left_;
    std::vector<Interval> spans_;
};

// Each column widened by what a disc on its neighbours reaches.
std::vector<Interval> thickened(const std::vector<Interval>& spans, int margin, double radius) {
    std::vector<double> reach; // of a disc, k columns aside
    for (int k = 0; k <= margin && k < radius * per_pixel; ++k) {
        const double aside = static_cast<double>(k) / per_pixel;
        reach.push_back(std::sqrt(radius * radius - aside * aside));
    }
    std::vector<Interval> thick(spans.size());
    const auto size = std::ssize(spans);
    for (std::ptrdiff_t i = 0; i < size; ++i) {
        const Interval& span = spans[static_cast<std::size_t>(i)];
        if (span.empty()) continue;
        for (std::ptrdiff_t k = 0; k < std::ssize(reach); ++k) {
            const double r = reach[static_cast<std::size_t>(k)];
            if (i - k >= 0) thick[static_cast<std::size_t>(i - k)].take(span.low - r, span.high + r);
            if (i + k < size) thick[static_cast<std::size_t>(i + k)].take(span.low - r, span.high + r);
        }
    }
    return thick;
}

// Rows low…high of pixel columns left…right where a steep piece of the line has a hole.
struct RowHole {
    int left = 0;
    int right = 0;
    Interval rows;
};

// Walks along the middle of the line with the dash pattern.  Where the line is flat whole narrow columns are left out;
// where it is steep the hole is cut across rows.
class Dashes {
  public:
    Dashes(const std::vector<Interval>& spans, int margin, const StrokeStyle& style) : holes_(spans.size(), false) {
        double along = 0.0;
        const Interval* before = nullptr;
        for (std::size_t i = 0; i < spans.size(); ++i) {
            if (spans[i].empty()) {
                before = nullptr;
                continue;
            }
            const double rise = before != nullptr ? spans[i].middle() - before->middle() : 0.0;
            const double step = std::hypot(1.0 / per_pixel, rise);
            if (step <= steep_px) {
                holes_[i] = std::fmod(along, style.dash_px + style.hole_px) >= style.dash_px;
            } else {
                const int pixel = (static_cast<int>(i) - margin) / per_pixel;
                cut_rows(before->middle(), rise, along, step, pixel, style);
            }
            along += step;
            before = &spans[i];
        }
    }

    [[nodiscard]] bool hole(std::size_t column) const { return holes_[column]; }
    [[nodiscard]] const std::vector<RowHole>& row_holes() const { return row_holes_; }

  private:
    void cut_rows(double from_y, double rise, double along, double step, int pixel, const StrokeStyle& style) {
        const double period = style.dash_px + style.hole_px;
        const int aside = static_cast<int>(std::ceil(0.5 * style.width_px)) + 1;
        double begin = std::floor(along / period) * period + style.dash_px; // of a hole
        for (; begin < along + step; begin += period) {
            const double enters = std::clamp((begin - along) / step, 0.0, 1.0);
            const double leaves = std::clamp((begin + style.hole_px - along) / step, 0.0, 1.0);
            if (leaves <= enters) continue;
            RowHole hole{pixel - aside, pixel + aside, {}};
            hole.rows.take(from_y + enters * rise, from_y + leaves * rise);
            row_holes_.push_back(hole);
        }
    }

    std::vector<bool> holes_;
    std::vector<RowHole> row_holes_;
};

// Coverage of one pixel column's rows, from the intervals of its narrow columns.
class PixelColumn {
  public:
    explicit PixelColumn(int rows) : parts_(static_cast<std::size_t>(rows) + 2, 0.0F) {}

    // Adds an interval of rows; each part of it counts one narrow column.
    void add(double low, double high) {
        low = std::max(low, 0.0);
        high = std::min(high, static_cast<double>(parts_.size() - 2));
        if (low >= high) return;
        edge(low, 1.0F);
        edge(high, -1.0F);
        first_ = std::min(first_, static_cast<int>(low));
        last_ = std::max(last_, static_cast<int>(high));
    }

    // Calls paint(row, coverage 0…1) for each row that is touched, and is clean again.
    template <typename Paint>
    void finish(Paint paint) {
        float sum = 0.0F;
        const int end = std::min(last_ + 1, static_cast<int>(parts_.size()) - 1);
        for (int row = first_; row <= end; ++row) {
            auto& part = parts_[static_cast<std::size_t>(row)];
            sum += std::exchange(part, 0.0F);
            if (sum > 1e-4F) paint(row, std::min(sum / per_pixel, 1.0F));
        }
        first_ = std::numeric_limits<int>::max();
        last_ = -1;
    }

  private:
    // Differences between rows, such that their running sum is the part of each row below the edge.
    void edge(double at, float sign) {
        const auto row = static_cast<std::size_t>(at);
        const auto part = static_cast<float>(at - std::floor(at));
        parts_[row] += sign * (1.0F - part);
        parts_[row + 1] += sign * part;
    }

    std::vector<float> parts_;
    int first_ = std::numeric_limits<int>::max();
    int last_ = -1;
};

QRgb covered(const QColor& colour, float coverage) {
    const auto alpha = static_cast<float>(colour.alphaF()) * coverage * 255.0F;
    const auto part = [alpha](float channel) { return static_cast<int>(channel * alpha + 0.5F); };
    return qRgba(part(colour.redF()), part(colour.greenF()), part(colour.blueF()), static_cast<int>(alpha + 0.5F));
}

// Pixel columns first…end − 1 of the room.
struct Stretch {
    int first = 0;
    int end = 0;
};

// The line as it is ready to be painted.
struct Line {
    QRect room;
    int margin = 0;
    std::vector<Interval> thick;
    std::optional<Dashes> dashes;
    std::array<QRgb, 256> shades{}; // the colour at each coverage

    [[nodiscard]] std::size_t narrow(int pixel) const { return static_cast<std::size_t>(pixel * per_pixel + margin); }
};

// Where the line lies there; empty when it is not in the room.
Interval rows_of(const Line& line, Stretch stretch) {
    Interval rows;
    for (std::size_t i = line.narrow(stretch.first); i < line.narrow(stretch.end); ++i)
        if (!line.thick[i].empty()) rows.take(line.thick[i].low, line.thick[i].high);
    rows.low = std::max(std::floor(rows.low), static_cast<double>(line.room.top()));
    rows.high = std::min(std::ceil(rows.high), static_cast<double>(line.room.bottom()));
    return rows;
}

QImage painted(const Line& line, Stretch stretch, int top, int rows) {
    QImage image(stretch.end - stretch.first, rows, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    auto* bits = reinterpret_cast<QRgb*>(image.bits());
    const std::ptrdiff_t stride = image.bytesPerLine() / static_cast<std::ptrdiff_t>(sizeof(QRgb));
    PixelColumn column(rows);
    for (int x = 0; x < image.width(); ++x) {
        for (std::size_t i = line.narrow(stretch.first + x); i < line.narrow(stretch.first + x + 1); ++i) {
            if (line.thick[i].empty() || (line.dashes && line.dashes->hole(i))) continue;
            column.add(line.thick[i].low - top, line.thick[i].high - top);
        }
        column.finish([&](int row, float coverage) {
            if (row < rows) bits[row * stride + x] = line.shades[static_cast<std::size_t>(coverage * 255.0F + 0.5F)];
        });
    }
    return image;
}

// Holes come from left to right and are equally wide.
void cut(QImage& image, const std::vector<RowHole>& holes, int left, int top) {
    const auto end = std::ranges::upper_bound(holes, left + image.width() - 1, {}, &RowHole::left);
    for (auto hole = std::ranges::lower_bound(holes, left, {}, &RowHole::right); hole < end; ++hole) {
        const int first = std::max(0, static_cast<int>(std::lround(hole->rows.low)) - top);
        const int last = std::min(image.height(), static_cast<int>(std::lround(hole->rows.high)) - top);
        const int right = std::min(hole->right - left, image.width() - 1);
        for (int row = first; row < last; ++row) {
            auto* pixels = reinterpret_cast<QRgb*>(image.scanLine(row));
            for (int x = std::max(0, hole->left - left); x <= right; ++x)
                pixels[x] = 0;
        }
    }
}

Line prepared(std::span<const double> xs, std::span<const double> ys, const PixelMap& map, const QRect& room,
              const StrokeStyle& style) {
    const double radius = 0.5 * style.width_px;
    Columns columns(room, radius);
    for (std::size_t i = 1; i < std::min(xs.size(), ys.size()); ++i)
        if (std::isfinite(ys[i]) && std::isfinite(ys[i - 1]))
            columns.add(map.point(xs[i - 1], ys[i - 1]), map.point(xs[i], ys[i]));
    Line line{room, columns.margin(), thickened(columns.spans(), columns.margin(), radius), std::nullopt, {}};
    if (style.dash_px > 0.0) line.dashes.emplace(columns.spans(), columns.margin(), style);
    for (std::size_t i = 0; i < line.shades.size(); ++i)
        line.shades[i] = covered(style.colour, static_cast<float>(i) / 255.0F);
    return line;
}

} // namespace

std::vector<RasterTile> raster_stroke(std::span<const double> xs, std::span<const double> ys, const PixelMap& map,
                                      const QRect& room, const StrokeStyle& style) {
    std::vector<RasterTile> tiles;
    const Line line = prepared(xs, ys, map, room, style);
    for (int first = 0; first < room.width(); first += tile_px) {
        const Stretch stretch{first, std::min(first + tile_px, room.width())};
        const Interval rows = rows_of(line, stretch);
        if (rows.empty()) continue;
        const int top = static_cast<int>(rows.low);
        QImage image = painted(line, stretch, top, static_cast<int>(rows.high) - top + 1);
        if (line.dashes) cut(image, line.dashes->row_holes(), first, top);
        tiles.push_back({std::move(image), {room.left() + first, top}});
    }
    return tiles;
}

} // namespace lapwright::plots
