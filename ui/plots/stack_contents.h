// SPDX-License-Identifier: GPL-3.0-or-later
// What each panel of the stack holds, and what it reads out at the cursor.
#pragma once

#include "ui/plots/stack_panels.h"

#include <functional>
#include <vector>

namespace lapwright::plots {

struct StackPanel;

class StackContents {
  public:
    explicit StackContents(StackPanels& panels); // which outlives it; its content and palette are looked at anew

    void add_ribbon();
    void add_speed();
    void add_channel(const models::ChannelChoice& choice, const QString& among); // "2–3 of 5 · ", or nothing
    void add_sideways();
    void add_gap();
    void add_gains();

  private:
    using OfFurther = std::function<const std::vector<double>*(const analysis::FurtherLap& lap)>; // null: has none

    void add_spreads(StackPanel& panel);
    void draw_further(StackPanel& panel, const OfFurther& values); // before A and B: it lies behind them
    void read_further(StackPanel& panel, const OfFurther& values, base::Unit unit, int decimals);
    void add_pair(StackPanel& panel, const std::vector<double>* a, const std::vector<double>* b);

    StackPanels& panels_;
    const StackContent& content_;
    const theme::Palette& palette_;
};

} // namespace lapwright::plots
