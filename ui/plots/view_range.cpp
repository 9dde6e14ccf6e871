// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/view_range.h"

#include <algorithm>

namespace lapwright::plots {

ViewRange inside_lap(ViewRange view, double length_m) {
    const double width = std::clamp(view.width(), std::min(narrowest_view_m, length_m), length_m);
    const double lower = std::clamp(view.lower_m, 0.0, length_m - width);
    return {lower, lower + width};
}

ViewRange zoomed(ViewRange view, double factor, double about_m, double length_m) {
    const double width = std::clamp(view.width() * factor, std::min(narrowest_view_m, length_m), length_m);
    const double part = view.width() > 0.0 ? (about_m - view.lower_m) / view.width() : 0.5;
    const double lower = about_m - part * width;
    return inside_lap({lower, lower + width}, length_m);
}

ViewRange panned(ViewRange view, double by_m, double length_m) {
    return inside_lap({view.lower_m + by_m, view.upper_m + by_m}, length_m);
}

ViewRange following(ViewRange view, double place_m, double length_m) {
    if (place_m < view.lower_m) return panned(view, place_m - view.lower_m, length_m);
    if (place_m > view.upper_m) return panned(view, place_m - view.upper_m, length_m);
    return view;
}

} // namespace lapwright::plots
