// SPDX-License-Identifier: GPL-3.0-or-later
// Where the sheet's speed and gap plots put their lines: x to the right, y downwards, in
// the length unit of the area that is given.  Speed above, gap below, both over the same distance.
#pragma once

#include "core/base/translation.h"
#include "core/sheet/sheet.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::sheet {

struct Box {
    double left = 0.0;
    double top = 0.0;
    double width = 0.0;
    double height = 0.0;

    [[nodiscard]] double right() const { return left + width; }
    [[nodiscard]] double bottom() const { return top + height; }
};

// From data to page.
struct Panel {
    Box area;
    double length_m = 1.0;
    double low = 0.0; // value at the lower edge
    double high = 1.0;

    [[nodiscard]] double x(double distance_m) const { return area.left + area.width * distance_m / length_m; }
    [[nodiscard]] double y(double value) const { return area.bottom() - area.height * (value - low) / (high - low); }
};

// A deciding place: shaded over both panels, its number in a disc above.
struct Mark {
    int number = 0; // of the finding, from 1
    Box shade;
    double disc_x = 0.0;
    double disc_y = 0.0;
};

// The place that the headline names: shaded like the others, its name centred right above the speed panel.
struct NamedMark {
    std::string name;
    Box shade;
    double name_x = 0.0;
    double name_y = 0.0; // of the letters' feet
};

struct PlotLayout {
    Panel speed;
    Panel gap;
    std::vector<Mark> marks;
    std::optional<NamedMark> named;
};

inline constexpr double mark_radius = 6.0;

// The plot holds at least two distances, and a value of each curve for each; values that are no numbers do not count.
[[nodiscard]] PlotLayout lay_out(const Plot& plot, const std::vector<Finding>& findings, const Box& area);

// Round values between the edges of the panel, at least three steps of 1, 2 or 5 · 10ⁿ over its span.
[[nodiscard]] std::vector<double> grid_values(const Panel& panel);

// Which of `count` points are drawn: more than some 1200 are not told apart on paper.  First and last always.
[[nodiscard]] std::vector<std::size_t> drawn_points(std::size_t count);

// In the middle below the plot, where no name of a corner stands.
inline constexpr const char* const foot_words = base::word("distance along the track · speed: A solid, B dashed");
inline constexpr const char* const narrow_foot_words = base::word("A solid, B dashed"); // narrower than narrow_pt
inline constexpr double narrow_pt = 320.0;
// Of the speed panel; and how far right of its left edge the key stands.
[[nodiscard]] std::string speed_title(const Plot& plot);
[[nodiscard]] double room_for_key(const Plot& plot);

} // namespace lapwright::sheet
