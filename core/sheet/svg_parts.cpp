// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/svg_parts.h"

#include "core/base/number_text.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"

#include <utility>

namespace lapwright::sheet {

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

std::string line(std::string_view name, const std::string& path, std::uint32_t colour, double width, bool dashed) {
    return "<path" + attribute("class", name) + attribute("d", path) + attribute("fill", "none") +
           attribute("stroke", colour_text(colour)) + attribute("stroke-width", base::fixed_text(width, 1)) +
           (dashed ? attribute("stroke-dasharray", "4 2.5") : "") + "/>\n";
}

std::string disc(double x, double y) {
    return "<circle" + at("cx", x) + at("cy", y) + at("r", mark_radius) + attribute("fill", colour_text(colours::ink)) +
           "/>\n";
}

Words number_in_disc(double x, double y, int number) {
    return {x, y + 2.8, Anchor::middle, base::integer_text(number), 8, true, 0xffffff};
}

Words words_at(double x, double y, Anchor anchor, std::string text) {
    return {x, y, anchor, std::move(text), 7, false, colours::faint_ink};
}

std::string svg_words(const Words& words) {
    const char* const anchor = words.anchor == Anchor::start    ? "start"
                               : words.anchor == Anchor::middle ? "middle"
                                                                : "end";
    return "<text" + at("x", words.x) + at("y", words.y) + attribute("text-anchor", anchor) +
           attribute("font-size", base::integer_text(words.size)) + (words.bold ? " font-weight=\"bold\"" : "") +
           attribute("fill", colour_text(words.colour)) + ">" + escaped(words.text) + "</text>\n";
}

std::string svg_element(const PlotDrawing& drawing, std::string_view kind, std::string_view label) {
    if (drawing.shapes.empty()) return {};
    std::string svg =
        "<svg" + attribute("class", kind) +
        attribute("viewBox", "0 0 " + coordinate(drawing.width_pt) + " " + coordinate(drawing.height_pt)) +
        attribute("role", "img") + attribute("aria-label", label) + ">\n" + drawing.shapes +
        "<g font-family=\"DejaVu Sans, sans-serif\">\n";
    for (const Words& words : drawing.words)
        svg += svg_words(words);
    return svg + "</g>\n</svg>\n";
}

} // namespace lapwright::sheet
