// SPDX-License-Identifier: GPL-3.0-or-later
// The stretch of the lap that is in view: always inside 0…length, never narrower than `narrowest`.
#pragma once

namespace lapwright::plots {

struct ViewRange {
    double lower_m = 0.0;
    double upper_m = 1.0;

    [[nodiscard]] double width() const { return upper_m - lower_m; }
    [[nodiscard]] bool contains(double place_m) const { return place_m >= lower_m && place_m <= upper_m; }
    friend bool operator==(const ViewRange&, const ViewRange&) = default;
};

constexpr double narrowest_view_m = 20.0;

// The view pushed (and cut) into the lap.
[[nodiscard]] ViewRange inside_lap(ViewRange view, double length_m);
// factor < 1 shows less; the place `about_m` keeps its place on the screen as far as the lap's ends allow.
[[nodiscard]] ViewRange zoomed(ViewRange view, double factor, double about_m, double length_m);
[[nodiscard]] ViewRange panned(ViewRange view, double by_m, double length_m);
// Moved as little as needed for the place to be seen.
[[nodiscard]] ViewRange following(ViewRange view, double place_m, double length_m);

} // namespace lapwright::plots
