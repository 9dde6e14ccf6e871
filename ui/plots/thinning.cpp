// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/thinning.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::plots {
namespace {

// The samples of one pixel column, as they come.
class Column {
  public:
    void open(const QPointF& point) {
        first_ = low_ = high_ = last_ = point;
        low_index_ = high_index_ = count_ = 0;
    }
    void add(const QPointF& point) {
        ++count_;
        last_ = point;
        if (point.y() < low_.y()) {
            low_ = point;
            low_index_ = count_;
        }
        if (point.y() > high_.y()) {
            high_ = point;
            high_index_ = count_;
        }
    }
    void close(Polyline& line) const {
        line.push_back(first_);
        const bool low_first = low_index_ < high_index_;
        const auto inner = [&](const QPointF& point, int index) {
            if (index != 0 && index != count_) line.push_back(point);
        };
        inner(low_first ? low_ : high_, low_first ? low_index_ : high_index_);
        inner(low_first ? high_ : low_, low_first ? high_index_ : low_index_);
        if (count_ > 0) line.push_back(last_);
    }

  private:
    QPointF first_, low_, high_, last_;
    int low_index_ = 0;
    int high_index_ = 0;
    int count_ = 0;
};

} // namespace

std::vector<Polyline> thinned(std::span<const double> xs, std::span<const double> ys, double lower, double upper,
                              const PixelMap& map, double columns_per_pixel) {
    std::vector<Polyline> lines;
    const auto from = std::ranges::lower_bound(xs, lower) - xs.begin();
    const auto to = std::ranges::upper_bound(xs, upper) - xs.begin();
    const auto begin = static_cast<std::size_t>(std::max<std::ptrdiff_t>(from - 1, 0));
    const auto end = std::min(static_cast<std::size_t>(to) + 1, std::min(xs.size(), ys.size()));

    bool open = false;
    Column column;
    double column_number = 0.0;
    const auto finish = [&] {
        if (open) column.close(lines.back());
        open = false;
    };
    for (std::size_t i = begin; i < end; ++i) {
        if (!std::isfinite(ys[i])) {
            finish();
            continue;
        }
        const QPointF point = map.point(xs[i], ys[i]);
        const double number = std::floor(point.x() * columns_per_pixel);
        if (open && number == column_number) {
            column.add(point);
            continue;
        }
        if (open) {
            column.close(lines.back());
        } else {
            lines.emplace_back();
        }
        column.open(point);
        column_number = number;
        open = true;
    }
    finish();
    return lines;
}

double value_at(std::span<const double> xs, std::span<const double> ys, double x) {
    const std::size_t size = std::min(xs.size(), ys.size());
    if (size == 0 || x < xs[0] || x > xs[size - 1]) return std::numeric_limits<double>::quiet_NaN();
    const auto next = static_cast<std::size_t>(std::ranges::lower_bound(xs.first(size), x) - xs.begin());
    if (next == 0 || xs[next] == x) return ys[next];
    const double part = (x - xs[next - 1]) / (xs[next] - xs[next - 1]);
    return ys[next - 1] + part * (ys[next] - ys[next - 1]);
}

std::span<const double> within(std::span<const double> xs, std::span<const double> ys, double lower, double upper) {
    const auto from = static_cast<std::size_t>(std::ranges::lower_bound(xs, lower) - xs.begin());
    const auto to = static_cast<std::size_t>(std::ranges::upper_bound(xs, upper) - xs.begin());
    const std::size_t end = std::min(to, ys.size());
    return from < end ? ys.subspan(from, end - from) : ys.first(0);
}

std::pair<double, double> extent(std::span<const double> values) {
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const double value : values) {
        if (!std::isfinite(value)) continue;
        low = std::min(low, value);
        high = std::max(high, value);
    }
    return low <= high ? std::pair(low, high) : std::pair(0.0, 1.0);
}

std::vector<Polyline> dashes(const Polyline& line, double on, double off) {
    std::vector<Polyline> pieces;
    bool drawing = true;
    double left = on; // of the current dash or hole
    if (!line.empty()) pieces.push_back({line.front()});
    for (std::size_t i = 1; i < line.size(); ++i) {
        QPointF from = line[i - 1];
        const QPointF to = line[i];
        double rest = std::hypot(to.x() - from.x(), to.y() - from.y());
        while (rest >= left) {
            from += (to - from) * (rest > 0.0 ? left / rest : 0.0);
            rest -= left;
            if (drawing) {
                pieces.back().push_back(from);
            } else {
                pieces.push_back({from});
            }
            drawing = !drawing;
            left = drawing ? on : off;
        }
        left -= rest;
        if (drawing) pieces.back().push_back(to);
    }
    std::erase_if(pieces, [](const Polyline& piece) { return piece.size() < 2; });
    return pieces;
}

} // namespace lapwright::plots
