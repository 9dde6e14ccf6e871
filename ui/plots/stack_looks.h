// SPDX-License-Identifier: GPL-3.0-or-later
// How high the panels of the stack are, which of the further channels have room between speed and gap, and what of the
// panels lies under a pixel.
#pragma once

#include "ui/plots/stack_panel.h"
#include "ui/plots/stack_panels.h"

#include <QPoint>
#include <memory>
#include <optional>
#include <vector>

class QCPLayoutGrid;

namespace lapwright::plots {

using StackRows = std::vector<std::unique_ptr<StackPanel>>;

[[nodiscard]] int ribbon_height_px();
[[nodiscard]] int axis_room_px(); // beneath the last panel
[[nodiscard]] bool is_folded(const StackContent& content, const QString& id);

// The frame of a panel as it is wanted; `usual_px` and `share` where nobody said.
void size_panel(const StackContent& content, const StackPanel& panel, QCPLayoutGrid& rows, int row);

// Those that have room from that one on, in a stack of that height: ribbon, speed, gap and time won always have theirs,
// what is left of it is the channels', one at least.
[[nodiscard]] ChannelWindow channels_in_view(const StackContent& content, std::size_t first, int height_px);

[[nodiscard]] std::optional<std::size_t> panel_at(const StackRows& panels, const QPoint& pixel);
[[nodiscard]] std::optional<std::size_t> title_at(const StackRows& panels, const QPoint& pixel);
// The panel under this pixel's border with the one above it, where both are open.
[[nodiscard]] std::optional<std::size_t> border_at(const StackContent& content, const StackRows& panels,
                                                   const QPoint& pixel);
[[nodiscard]] std::optional<std::size_t> find_panel(const StackRows& panels, const QString& id);
[[nodiscard]] bool is_channel(const StackContent& content, const QString& id);
// The looks of all of them, since shares mean something beside each other alone, with that border moved down.
[[nodiscard]] PanelLooks with_border_moved(const StackContent& content, const StackRows& panels, std::size_t below,
                                           int by_px);

} // namespace lapwright::plots
