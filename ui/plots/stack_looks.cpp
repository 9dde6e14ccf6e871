// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/stack_looks.h"

#include "ui/plots/ribbon.h"

#include <algorithm>
#include <cmath>
#include <qcustomplot.h>

namespace lapwright::plots {
namespace {

constexpr double usual_height_px = 16.0; // for one part of a panel's usual share
constexpr int least_resized_px = 26;
constexpr int border_reach_px = 3;

PanelLook look_of(const StackContent& content, const QString& id) {
    const auto found = content.looks.find(id);
    return found == content.looks.end() ? PanelLook{} : found->second;
}

int least_inside_px(const StackContent& content, const QString& id, int usual_px) {
    const PanelLook look = look_of(content, id);
    if (look.folded) return 1;
    return look.height_px > 0.0 ? std::min(usual_px, least_resized_px) : usual_px;
}

int least_height_px(const StackContent& content, const QString& id, int usual_px) {
    return least_inside_px(content, id, usual_px) + title_height() + row_space_px;
}

int always_px(const StackContent& content) {
    int sum_px = least_height_px(content, ribbon_id, ribbon_height_px()) +
                 least_height_px(content, speed_id, speed_height_px) + least_height_px(content, gap_id, gap_height_px) +
                 least_height_px(content, gains_id, gains_height_px) + axis_room_px();
    if (content.show_lines && !content.pairing->comparison.line.empty())
        sum_px += least_height_px(content, line_id, line_height_px);
    return sum_px;
}

} // namespace

int ribbon_height_px() {
    return 37 + Ribbon::name_rows * QFontMetrics(theme::small()).height();
}

int axis_room_px() {
    return 2 * QFontMetrics(theme::small()).height() + 12;
}

bool is_folded(const StackContent& content, const QString& id) {
    return look_of(content, id).folded;
}

void size_panel(const StackContent& content, const StackPanel& panel, QCPLayoutGrid& rows, int row) {
    const PanelLook look = look_of(content, panel.id);
    panel.rect->setMinimumSize(100, least_inside_px(content, panel.id, panel.usual_px));
    const double height_px = look.height_px > 0.0 ? look.height_px : panel.share * usual_height_px;
    rows.setRowStretchFactor(row, look.folded ? 0.01 : height_px);
    if (!look.folded) return;
    panel.rect->setMaximumSize(QWIDGETSIZE_MAX, 1);
    panel.rect->axis(QCPAxis::atLeft)->setVisible(false);
}

ChannelWindow channels_in_view(const StackContent& content, std::size_t first, int height_px) {
    const std::size_t all = content.channels.size();
    const int left_px = height_px - always_px(content);
    const auto fit_from = [&](std::size_t from) {
        int room_px = left_px;
        std::size_t count = 0;
        while (from + count < all) {
            room_px -= least_height_px(content, content.channels[from + count].id, channel_height_px);
            if (room_px < 0) break;
            ++count;
        }
        return count;
    };
    if (fit_from(0) == all) return {0, all};
    first = std::min(first, all - 1);
    while (first > 0 && first - 1 + fit_from(first - 1) >= all)
        --first; // no room is left unused behind the last
    return {first, std::max<std::size_t>(1, fit_from(first))};
}

std::optional<std::size_t> panel_at(const StackRows& panels, const QPoint& pixel) {
    for (std::size_t i = 0; i < panels.size(); ++i) {
        const QRect inside = panels[i]->rect->rect();
        if (pixel.y() >= inside.top() - title_height() && pixel.y() <= inside.bottom()) return i;
    }
    return std::nullopt;
}

std::optional<std::size_t> title_at(const StackRows& panels, const QPoint& pixel) {
    const auto panel = panel_at(panels, pixel);
    if (!panel) return std::nullopt;
    const QRect inside = panels[*panel]->rect->rect();
    const int title_px = QFontMetrics(theme::small()).horizontalAdvance(panels[*panel]->title);
    const bool on_title =
        pixel.y() < inside.top() && pixel.x() >= inside.left() && pixel.x() <= inside.left() + title_px;
    return on_title ? panel : std::nullopt;
}

std::optional<std::size_t> border_at(const StackContent& content, const StackRows& panels, const QPoint& pixel) {
    for (std::size_t i = 1; i < panels.size(); ++i) {
        const int border = panels[i]->rect->rect().top() - title_height() - row_space_px / 2;
        const bool both_open = !is_folded(content, panels[i]->id) && !is_folded(content, panels[i - 1]->id);
        if (both_open && std::abs(pixel.y() - border) <= border_reach_px) return i;
    }
    return std::nullopt;
}

std::optional<std::size_t> find_panel(const StackRows& panels, const QString& id) {
    const auto found = std::ranges::find(panels, id, [](const auto& panel) { return panel->id; });
    return found == panels.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - panels.begin()));
}

bool is_channel(const StackContent& content, const QString& id) {
    return std::ranges::find(content.channels, id, &models::ChannelChoice::id) != content.channels.end();
}

PanelLooks with_border_moved(const StackContent& content, const StackRows& panels, std::size_t below, int by_px) {
    PanelLooks looks = content.looks;
    for (const auto& panel : panels)
        if (!is_folded(content, panel->id)) looks[panel->id].height_px = panel->rect->height();
    double& upper = looks[panels[below - 1]->id].height_px;
    double& lower = looks[panels[below]->id].height_px;
    const double moved =
        std::clamp<double>(by_px, std::min(0.0, least_resized_px - upper), std::max(0.0, lower - least_resized_px));
    upper += moved;
    lower -= moved;
    return looks;
}

} // namespace lapwright::plots
