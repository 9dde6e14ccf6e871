// SPDX-License-Identifier: GPL-3.0-or-later
// The panels of a pairing, one above the other on one distance axis: what each holds, and what it reads out at the
// cursor.  Which part of the lap is in view, where the cursor stands and what is chosen, the stack says (plot_stack.h).
#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/further_laps.h"
#include "core/base/display.h"
#include "ui/models/channels.h"
#include "ui/plots/panel_looks.h"
#include "ui/plots/view_range.h"
#include "ui/theme/palette.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

class QCPAxisRect;
class QCustomPlot;
class QPoint;
class QString;

namespace lapwright::plots {

class Cursor;
class ChosenStretch;
class Title;
class StackContents;
struct StackPanel;

// What the stack shows, and how.
struct StackContent {
    std::shared_ptr<const analysis::Pairing> pairing;
    std::vector<comparison::SegmentComparison> segments; // the rows that can be chosen
    std::vector<models::ChannelChoice> channels;         // of the same pairing
    base::UnitSystem units = base::UnitSystem::metric;
    bool show_band = true;
    bool fill_values = false; // value axes fit what is in view, not the whole lap
    bool show_lines = false;  // how far A drove to the left of B
    bool show_spread = false; // of each driver's clean laps, behind the speeds
    std::shared_ptr<const std::vector<analysis::FurtherLap>> further = {}; // null: none
    PanelLooks looks = {};
};

// Which of the further channels are shown.
struct ChannelWindow {
    std::size_t first = 0;
    std::size_t count = 0;
    bool operator==(const ChannelWindow&) const = default;
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
        ChannelWindow channels = {};
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

    void set_looks(PanelLooks looks); // of panels that stay as open as they are
    void mark(const QString& id);     // its title is strong; empty: none
    [[nodiscard]] const std::vector<std::unique_ptr<StackPanel>>& panels() const { return panels_; }
    [[nodiscard]] bool empty() const { return panels_.empty(); }
    [[nodiscard]] int left_px() const; // of the panels' inside
    [[nodiscard]] int width_px() const;
    [[nodiscard]] double place_at(double x_pixel) const;
    // Where two segments meet, or the timing line, where the ribbon has its mark under this pixel.
    [[nodiscard]] std::optional<double> boundary_at(const QPoint& pixel) const;

    // For its contents: a further panel beneath the others, and the range of its values.
    StackPanel& add_panel(const QString& id, const QString& title, int usual_px, int share);
    void fit_values(const StackPanel& panel);

  private:
    void show_distance_axis(int width_px);
    void add_overlays(const State& state);

    QCustomPlot* plot_;
    theme::Palette palette_;
    StackContent content_;
    ViewRange view_;
    std::unique_ptr<StackContents> contents_;
    std::vector<std::unique_ptr<StackPanel>> panels_;
    std::vector<Cursor*> cursors_;
    std::vector<ChosenStretch*> stretches_;
    std::vector<Title*> titles_;
};

} // namespace lapwright::plots
