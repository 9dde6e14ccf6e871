// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/plot_layout.h"

#include "core/base/check.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <utility>

namespace lapwright::sheet {
namespace {

constexpr std::size_t max_points = 1200;
constexpr double room_for_numbers = 30.0; // left of the panels
constexpr double room_for_discs = 26.0;
constexpr double room_for_title = 142.0; // with the key, and half a name
constexpr double room_for_name = 40.0;   // half of it
constexpr double between = 16.0;
constexpr double room_for_foot = 12.0;
constexpr double share_of_speed = 0.62;

// Least and greatest number of all curves; 0 and 1 where there is none, and never twice the same.
std::pair<double, double> span_of(std::initializer_list<const std::vector<double>*> curves) {
    double low = HUGE_VAL;
    double high = -HUGE_VAL;
    for (const std::vector<double>* curve : curves) {
        for (const double value : *curve) {
            if (!std::isfinite(value)) continue;
            low = std::min(low, value);
            high = std::max(high, value);
        }
    }
    if (low > high) return {0.0, 1.0};
    return low < high ? std::pair(low, high) : std::pair(low - 0.5, high + 0.5);
}

Panel speed_panel(const Box& area, const Plot& plot) {
    const auto [low, high] = span_of({&plot.speed_a, &plot.speed_b});
    return {area, plot.distance_m.back(), low - 0.05 * (high - low), high + 0.03 * (high - low)};
}

Panel gap_panel(const Box& area, const Plot& plot) {
    const auto [low, high] = span_of({&plot.gap_s});
    const double margin = std::max(0.02, 0.12 * (high - low));
    return {area, plot.distance_m.back(), std::min(low, 0.0) - margin, std::max(high, 0.0) + margin};
}

Box shade_between(double start_m, double end_m, const Panel& speed, const Panel& gap) {
    const double left = speed.x(start_m);
    return {left, speed.area.top, speed.x(end_m) - left, gap.area.bottom() - speed.area.top};
}

// No fonts are known here: as wide as letters of 8 points are at most, Japanese ones as their em.
double width_of(const std::string& words) {
    double width = 0.0;
    for (const char letter : words) {
        const auto byte = static_cast<unsigned char>(letter);
        if ((byte & 0xC0U) != 0x80U) width += byte >= 0xE0U ? 8.0 : 4.7;
    }
    return width;
}

constexpr double least_room_for_key = 54.0;

// The name keeps clear of the panel's title at the left and of its right edge.
std::optional<NamedMark> named_mark(const Plot& plot, const Panel& speed, const Panel& gap) {
    if (!plot.deciding) return std::nullopt;
    const Box shade = shade_between(plot.deciding->start_m, plot.deciding->end_m, speed, gap);
    const double right = speed.area.right() - room_for_name;
    const double x =
        std::clamp(shade.left + 0.5 * shade.width,
                   std::min(speed.area.left + room_for_title + room_for_key(plot) - least_room_for_key, right), right);
    return NamedMark{plot.deciding->name, shade, x, speed.area.top - 3.0};
}

// The wished place of a disc, else the next one beside those that are there, within the plot's right end.
double free_place(const std::vector<Mark>& marks, double wished_x, double right) {
    constexpr double step = 2.0 * mark_radius + 2.0;
    const auto taken = [&](double x) {
        return std::ranges::any_of(marks, [&](const Mark& mark) { return std::abs(mark.disc_x - x) < step - 1e-9; });
    };
    for (int way = 0;; ++way) {
        const int steps = (way + 1) / 2;
        const double x = wished_x + step * (way % 2 == 0 ? -steps : steps);
        if (x + mark_radius <= right + 1e-9 && !taken(x)) return x;
    }
}

// Discs of one place, or of two that are near, stand side by side.
std::vector<Mark> marks_of(const std::vector<Finding>& findings, const Panel& speed, const Panel& gap) {
    std::vector<Mark> marks;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Finding& finding = findings[i];
        if (finding.end_m <= finding.start_m) continue;
        const Box shade = shade_between(finding.start_m, finding.end_m, speed, gap);
        const double disc_x = free_place(marks, shade.left + 0.5 * shade.width, speed.area.right());
        marks.push_back({static_cast<int>(i) + 1, shade, disc_x, speed.area.top - 18.0});
    }
    return marks;
}

// The largest of 1, 2, 5 · 10ⁿ that gives at least `least` steps over the span.
double round_step(double span, double least) {
    const double power = std::pow(10.0, std::floor(std::log10(span / least)));
    for (const double factor : {5.0, 2.0}) {
        if (span / (factor * power) >= least) return factor * power;
    }
    return power;
}

} // namespace

PlotLayout lay_out(const Plot& plot, const std::vector<Finding>& findings, const Box& area) {
    base::check(plot.distance_m.size() > 1, "a plot without a distance");
    const double height = area.height - room_for_discs - between - room_for_foot;
    const Box upper{area.left + room_for_numbers, area.top + room_for_discs, area.width - room_for_numbers,
                    share_of_speed * height};
    const Box lower{upper.left, upper.bottom() + between, upper.width, (1.0 - share_of_speed) * height};
    PlotLayout layout{speed_panel(upper, plot), gap_panel(lower, plot), {}, {}};
    layout.marks = marks_of(findings, layout.speed, layout.gap);
    layout.named = named_mark(plot, layout.speed, layout.gap);
    return layout;
}

std::string speed_title(const Plot& plot) {
    return base::said("speed, %1", {plot.speed_unit});
}

double room_for_key(const Plot& plot) {
    return std::max(least_room_for_key, width_of(speed_title(plot)) + 2.0);
}

std::vector<double> grid_values(const Panel& panel) {
    const double step = round_step(panel.high - panel.low, 3.0);
    const double first = std::ceil(panel.low / step);
    std::vector<double> values;
    for (double n = first; n * step <= panel.high + 1e-9; n += 1.0)
        values.push_back(n * step);
    return values;
}

std::vector<std::size_t> drawn_points(std::size_t count) {
    const std::size_t stride = std::max<std::size_t>(1, count / max_points);
    std::vector<std::size_t> points;
    for (std::size_t i = 0; i < count; i += stride)
        points.push_back(i);
    if (count > 0 && points.back() != count - 1) points.push_back(count - 1);
    return points;
}

} // namespace lapwright::sheet
