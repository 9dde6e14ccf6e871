// SPDX-License-Identifier: GPL-3.0-or-later
// The panels of a pairing, one above the other on one distance axis: what each holds, and what it reads out at the
// cursor.  Which part of the lap is in view, where the cursor stands and what is chosen, the stack says (plot_stack.h).
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "ui/models/channels.h"
#include "ui/plots/view_range.h"
#include "ui/theme/palette.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

class QCustomPlot;
class QPoint;
class QString;

namespace lapwright::plots {

class Cursor;
class ChosenStretch;

// What the stack shows, and how.
struct StackContent {
    std::shared_ptr<const analysis::Pairing> pairing;
    std::vector<comparison::SegmentComparison> segments; // the rows that can be chosen
    std::vector<models::ChannelChoice> channels;         // of the same pairing
    base::UnitSystem units = base::UnitSystem::metric;
    bool show_band = true;
    bool fill_values = false; // value axes fit what is in view, not the whole lap
};

// The row whose stretch a place lies in.
[[nodiscard]] std::optional<std::size_t> segment_at(const StackContent& content, double place_m);

class StackPanels {
  public:
    explicit StackPanels(QCustomPlot* plot);
    ~StackPanels();

    struct State {
        ViewRange view;
        double cursor_m = 0.0;
        std::optional<std::size_t> chosen;
        int width_px = 0; // of the stack
    };

    void set_palette(const theme::Palette& palette) { palette_ = palette; }
    void set_content(StackContent content) { content_ = std::move(content); }
    [[nodiscard]] const theme::Palette& palette() const { return palette_; }
    [[nodiscard]] const StackContent& content() const { return content_; }
    void build(const State& state); // all anew

    void set_view(ViewRange view);
    void set_cursor(double place_m); // paints it at once
    void show_cursors(bool shown);
    void choose(std::optional<std::size_t> segment);
    void space_distance_ticks(int width_px); // no more ticks than have room for their numbers

    [[nodiscard]] bool empty() const { return panels_.empty(); }
    [[nodiscard]] int left_px() const; // of the panels' inside
    [[nodiscard]] int width_px() const;
    [[nodiscard]] double place_at(double x_pixel) const;
    // Where two segments meet, or the timing line, where the ribbon has its mark under this pixel.
    [[nodiscard]] std::optional<double> boundary_at(const QPoint& pixel) const;

  private:
    struct Panel;

    void add_ribbon();
    void add_speed();
    void add_channel(const models::ChannelChoice& choice);
    void add_gap();
    void add_gains();
    Panel& add_panel(const QString& title, int min_height, int stretch);
    void add_pair(Panel& panel, const std::vector<double>* a, const std::vector<double>* b);
    void fit_values(const Panel& panel);
    void show_distance_axis(int width_px);
    void add_overlays(const State& state);

    QCustomPlot* plot_;
    theme::Palette palette_;
    StackContent content_;
    ViewRange view_;
    std::vector<std::unique_ptr<Panel>> panels_;
    std::vector<Cursor*> cursors_;
    std::vector<ChosenStretch*> stretches_;
};

} // namespace lapwright::plots
