// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/svg_map.h"

#include "core/base/translation.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"
#include "core/sheet/plot_layout.h"
#include "core/sheet/svg_parts.h"

#include <algorithm>
#include <cmath>

namespace lapwright::sheet {
namespace {

using base::said;

constexpr double margin_pt = 14.0; // a disc beside the line

struct Point {
    double x = 0.0;
    double y = 0.0;
};

// The line on the page, as large as it goes, in the middle.
std::vector<Point> on_page(const Map& map) {
    const auto [west, east] = std::ranges::minmax(map.east_m);
    const auto [south, north] = std::ranges::minmax(map.north_m);
    const double scale = std::min((map_width_pt - 2.0 * margin_pt) / std::max(east - west, 1.0),
                                  (map_height_pt - 2.0 * margin_pt) / std::max(north - south, 1.0));
    std::vector<Point> points;
    for (std::size_t i = 0; i < map.east_m.size(); ++i)
        points.push_back({0.5 * map_width_pt + scale * (map.east_m[i] - 0.5 * (west + east)),
                          0.5 * map_height_pt - scale * (map.north_m[i] - 0.5 * (south + north))});
    return points;
}

std::string path_of(const std::vector<Point>& points, std::size_t from, std::size_t to) {
    std::string path;
    for (std::size_t i = from; i < to; ++i)
        path += (path.empty() ? "M" : "L") + coordinate(points[i].x) + " " + coordinate(points[i].y);
    return path;
}

std::size_t index_at(const Map& map, double distance_m) {
    const auto found = std::ranges::lower_bound(map.distance_m, distance_m);
    return std::min(static_cast<std::size_t>(found - map.distance_m.begin()), map.distance_m.size() - 1);
}

// Square to the line there.
Point across(const std::vector<Point>& points, std::size_t i) {
    const Point& before = points[i > 0 ? i - 1 : points.size() - 2];
    const Point& after = points[i + 1 < points.size() ? i + 1 : 1];
    const double length = std::max(std::hypot(after.x - before.x, after.y - before.y), 1e-9);
    return {-(after.y - before.y) / length, (after.x - before.x) / length};
}

double nearest(const std::vector<Point>& others, const Point& p) {
    double least = HUGE_VAL;
    for (const Point& other : others)
        least = std::min(least, std::hypot(other.x - p.x, other.y - p.y));
    return least;
}

// Beside the line, on the side and at the distance where it is freest of the line and of the discs that are there.
Point place_of_disc(const std::vector<Point>& points, std::size_t i, const std::vector<Point>& discs) {
    const Point n = across(points, i);
    const auto freedom = [&](const Point& p) {
        const bool inside = p.x > mark_radius && p.x < map_width_pt - mark_radius && p.y > mark_radius &&
                            p.y < map_height_pt - mark_radius;
        return (inside ? 0.0 : -100.0) + std::min(nearest(points, p), 9.0) + std::min(nearest(discs, p), 14.0);
    };
    Point best{points[i].x + 10.0 * n.x, points[i].y + 10.0 * n.y};
    for (const double away : {10.0, -10.0, 16.0, -16.0, 24.0, -24.0})
        if (const Point p{points[i].x + away * n.x, points[i].y + away * n.y}; freedom(p) > freedom(best) + 1e-9)
            best = p;
    return best;
}

std::uint32_t colour_of(Favours favours) {
    return favours == Favours::a ? colours::blue_a : favours == Favours::b ? colours::vermilion_b : colours::ink;
}

void add_gate(PlotDrawing& drawing, const std::vector<Point>& points) {
    const Point n = across(points, 0);
    const Point& at = points.front();
    drawing.shapes +=
        line("gate", path_of({{at.x - 5.0 * n.x, at.y - 5.0 * n.y}, {at.x + 5.0 * n.x, at.y + 5.0 * n.y}}, 0, 2),
             colours::ink, 1.5, false);
}

} // namespace

PlotDrawing map_drawing(const Sheet& sheet) {
    PlotDrawing drawing{map_width_pt, map_height_pt, {}, {}};
    if (sheet.map.distance_m.size() < 3) return drawing;
    const std::vector<Point> points = on_page(sheet.map);
    drawing.shapes = line("track", path_of(points, 0, points.size()) + "Z", colours::faint_ink, 1.2, false);
    add_gate(drawing, points);
    std::vector<Point> discs;
    for (std::size_t f = 0; f < sheet.findings.size(); ++f) {
        const Finding& finding = sheet.findings[f];
        if (finding.end_m <= finding.start_m) continue;
        const std::size_t from = index_at(sheet.map, finding.start_m);
        const std::size_t to = index_at(sheet.map, finding.end_m) + 1;
        drawing.shapes += line("place", path_of(points, from, to), colour_of(finding.favours), 3.0, false);
        const Point at = place_of_disc(points, (from + to) / 2, discs);
        discs.push_back(at);
        drawing.words.push_back(number_in_disc(at.x, at.y, static_cast<int>(f) + 1));
    }
    for (const Point& at : discs)
        drawing.shapes += disc(at.x, at.y);
    return drawing;
}

std::string svg_map(const Sheet& sheet) {
    return svg_element(map_drawing(sheet), "map", said("The track from above, with the places of the findings"));
}

} // namespace lapwright::sheet
