// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/label_layout.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace lapwright::plots {
namespace {

constexpr double min_part = 0.45; // of a name's width, below which a shortened one says nothing

struct Hole {
    double left = 0.0;
    double right = 0.0;

    [[nodiscard]] double width() const { return right - left; }
};

// The free room of one row around an anchor.
std::optional<Hole> hole_at(const std::vector<PlacedName>& placed, int row, double anchor, double space, Hole whole) {
    for (const PlacedName& other : placed) {
        if (other.row != row) continue;
        const double other_left = other.left - space;
        const double other_right = other.left + other.width + space;
        if (anchor > other_left && anchor < other_right) return std::nullopt;
        if (other_right <= anchor) whole.left = std::max(whole.left, other_right);
        if (other_left >= anchor) whole.right = std::min(whole.right, other_left);
    }
    return whole.width() > 0.0 ? std::optional(whole) : std::nullopt;
}

PlacedName put(std::size_t index, const QString& text, double width, double anchor, Hole hole, int row) {
    const double left = std::clamp(anchor - width / 2, hole.left, std::max(hole.left, hole.right - width));
    return {index, text, left, width, row};
}

} // namespace

std::vector<PlacedName> place_names(const std::vector<Name>& names, double left, double right, int rows, double space,
                                    const Measure& measure, const Shorten& shorten) {
    std::vector<std::size_t> order(names.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::ranges::greater{}, [&](std::size_t i) { return names[i].importance; });

    std::vector<PlacedName> placed;
    for (const std::size_t index : order) {
        const Name& name = names[index];
        if (name.anchor < left || name.anchor > right || name.text.isEmpty()) continue;
        const double wanted = measure(name.text);
        std::optional<PlacedName> best;
        for (int row = 0; row < rows; ++row) {
            const auto hole = hole_at(placed, row, name.anchor, space, {left, right});
            if (!hole) continue;
            if (hole->width() >= wanted) {
                best = put(index, name.text, wanted, name.anchor, *hole, row);
                break;
            }
            if (best || hole->width() < min_part * wanted) continue;
            const QString text = shorten(name.text, hole->width());
            const double width = measure(text);
            if (width <= hole->width()) best = put(index, text, width, name.anchor, *hole, row);
        }
        if (best) placed.push_back(*best);
    }
    return placed;
}

} // namespace lapwright::plots
