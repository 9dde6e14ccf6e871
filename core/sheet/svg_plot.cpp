// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/svg_plot.h"

#include "core/base/number_text.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"
#include "core/sheet/plot_layout.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace lapwright::sheet {
namespace {

constexpr Box whole{0.0, 0.0, 515.0, 215.0}; // the width between the margins of an A4 page, in points

std::string attribute(std::string_view name, std::string_view value) {
    return " " + std::string(name) + "=\"" + std::string(value) + "\"";
}

std::string at(std::string_view name, double value) {
    return attribute(name, coordinate(value));
}

std::string rectangle(const Box& box, std::uint32_t fill) {
    return "<rect" + at("x", box.left) + at("y", box.top) + at("width", box.width) + at("height", box.height) +
           attribute("fill", colour_text(fill)) + "/>\n";
}

std::string words_at(double x, double y, std::string_view anchor, std::string_view words) {
    return "<text" + at("x", x) + at("y", y) + attribute("text-anchor", anchor) + ">" + escaped(words) + "</text>\n";
}

// The pen is lifted over what is no number.
std::string curve(const Panel& panel, const std::vector<double>& distance_m, const std::vector<double>& values) {
    std::string path;
    bool down = false;
    for (const std::size_t i : drawn_points(std::min(distance_m.size(), values.size()))) {
        if (!std::isfinite(values[i])) {
            down = false;
            continue;
        }
        path += (down ? "L" : "M") + coordinate(panel.x(distance_m[i])) + " " + coordinate(panel.y(values[i]));
        down = true;
    }
    return path;
}

std::string line(std::string_view name, const std::string& path, std::uint32_t colour, bool dashed) {
    return "<path" + attribute("class", name) + attribute("d", path) + attribute("fill", "none") +
           attribute("stroke", colour_text(colour)) + attribute("stroke-width", "1") +
           (dashed ? attribute("stroke-dasharray", "4 2.5") : "") + "/>\n";
}

// Along the upper edge and back along the lower one.
std::string band(const Panel& panel, const Plot& plot) {
    if (plot.low_s.empty() || plot.high_s.size() != plot.low_s.size()) return {};
    std::string path;
    const auto add = [&](std::size_t i, double value) {
        if (std::isfinite(value))
            path +=
                (path.empty() ? "M" : "L") + coordinate(panel.x(plot.distance_m[i])) + " " + coordinate(panel.y(value));
    };
    std::vector<std::size_t> points = drawn_points(std::min(plot.low_s.size(), plot.distance_m.size()));
    for (const std::size_t i : points)
        add(i, plot.high_s[i]);
    std::ranges::reverse(points);
    for (const std::size_t i : points)
        add(i, plot.low_s[i]);
    if (path.empty()) return {};
    return "<path" + attribute("class", "band") + attribute("d", path + "Z") +
           attribute("fill", colour_text(colours::band)) + "/>\n";
}

std::string grid(const Panel& panel, std::string_view title, int decimals) {
    std::string svg;
    for (const double value : grid_values(panel)) {
        const double y = panel.y(value);
        const bool zero = std::abs(value) < 1e-9;
        svg += "<line" + at("x1", panel.area.left) + at("x2", panel.area.right()) + at("y1", y) + at("y2", y) +
               attribute("stroke", colour_text(zero ? colours::faint_ink : colours::rule)) +
               attribute("stroke-width", "0.5") + "/>\n" +
               words_at(panel.area.left - 4.0, y + 2.5, "end", base::fixed_text(value, decimals));
    }
    return svg + words_at(panel.area.left, panel.area.top - 3.0, "start", title);
}

std::string shades(const PlotLayout& layout) {
    std::string svg;
    if (layout.named) svg += rectangle(layout.named->shade, colours::shade);
    for (const Mark& mark : layout.marks)
        svg += rectangle(mark.shade, colours::shade);
    return svg;
}

std::string discs(const PlotLayout& layout) {
    std::string svg;
    for (const Mark& mark : layout.marks) {
        svg += "<circle" + at("cx", mark.disc_x) + at("cy", mark.disc_y) + at("r", mark_radius) +
               attribute("fill", colour_text(colours::ink)) + "/>\n<text class=\"number\"" + at("x", mark.disc_x) +
               at("y", mark.disc_y + 2.8) + attribute("text-anchor", "middle") + ">" + base::integer_text(mark.number) +
               "</text>\n";
    }
    if (layout.named) svg += words_at(layout.named->name_x, layout.named->name_y, "middle", layout.named->name);
    return svg;
}

std::string foot(const Panel& panel) {
    const double y = panel.area.bottom() + 9.0;
    return words_at(panel.area.left, y, "start", "0 m") +
           words_at(panel.area.left + 0.5 * panel.area.width, y, "middle", foot_words) +
           words_at(panel.area.right(), y, "end", base::fixed_text(panel.length_m, 0) + " m");
}

} // namespace

std::string svg_plot(const Sheet& sheet) {
    const Plot& plot = sheet.plot;
    if (plot.distance_m.size() < 2) return {};
    const PlotLayout layout = lay_out(plot, sheet.findings, whole);
    std::string svg = "<svg class=\"plot\" viewBox=\"0 0 515 215\" role=\"img\" aria-label=\"Speed of A and B, and the "
                      "gap, over the distance along the track\">\n";
    svg += shades(layout) + discs(layout);
    svg += grid(layout.speed, "speed, " + plot.speed_unit, 0) + grid(layout.gap, "gap, s: A ahead is up", 1);
    svg += line("speed-b", curve(layout.speed, plot.distance_m, plot.speed_b), colours::vermilion_b, true);
    svg += line("speed-a", curve(layout.speed, plot.distance_m, plot.speed_a), colours::blue_a, false);
    svg += band(layout.gap, plot);
    svg += line("gap", curve(layout.gap, plot.distance_m, plot.gap_s), colours::ink, false);
    return svg + foot(layout.gap) + "</svg>\n";
}

std::string svg_bar(double gain_s, double largest_s) {
    constexpr Box cell{0.0, 0.0, 40.0, 6.0};
    const double half = 0.5 * cell.width;
    const double reach = largest_s > 0.0 ? half * std::min(1.0, std::abs(gain_s) / largest_s) : 0.0;
    const bool for_a = gain_s >= 0.0;
    const Box bar{for_a ? half : half - reach, 0.0, reach, cell.height};
    return "<svg class=\"bar\" viewBox=\"0 0 40 6\" aria-hidden=\"true\">" + rectangle(cell, colours::shade) +
           rectangle(bar, for_a ? colours::blue_a : colours::vermilion_b) + "</svg>";
}

} // namespace lapwright::sheet
