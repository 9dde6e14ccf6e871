// SPDX-License-Identifier: GPL-3.0-or-later
// Two laps on one distance axis.  Cursor and chosen segment are one for plots, table, map and card.
#pragma once

#include "core/analysis/further_laps.h"
#include "core/base/display.h"
#include "core/workspace/compared.h"
#include "core/workspace/pairing_notes.h"
#include "core/workspace/session_key.h"
#include "ui/models/segment_table.h"
#include "ui/plots/panel_looks.h"
#include "ui/theme/palette.h"

#include <QStringList>
#include <QWidget>
#include <cstddef>
#include <utility>
#include <vector>

class QSplitter;
class QToolButton;

namespace lapwright::plots {
class PlotStack;
class TrackMap;
} // namespace lapwright::plots

namespace lapwright::pages {

class FurtherRow;
class PairingHeader;
class SegmentCard;
class SegmentView;

class ComparePage : public QWidget {
    Q_OBJECT

  public:
    explicit ComparePage(QWidget* parent = nullptr);

    void show_pairing(workspace::ComparedPointer compared);
    void set_palette(const theme::Palette& palette);
    void set_units(base::UnitSystem units);
    void set_channels(const QStringList& ids); // those that this pairing does not have are left out
    void set_band_shown(bool shown);
    void set_values_filled(bool filled); // value axes fit what is in view
    void set_lines_shown(bool shown);    // both cars' lines, close up on the map, and their difference
    void set_panel_looks(plots::PanelLooks looks);
    void set_spread_shown(bool shown); // of each driver's other clean laps
    // Laps behind A and B, of the pairing that is shown; null: none.
    void set_further(std::shared_ptr<const std::vector<analysis::FurtherLap>> laps);
    void set_summed(bool summed); // corners with the straights they feed
    // One for each segment of the comparison, whether they are shown joined or not.
    void set_notes(std::vector<workspace::SegmentNotes> notes);
    void write_note(workspace::Side side); // on the chosen segment
    void keep_notes();                     // what is being typed

    [[nodiscard]] const workspace::ComparedPointer& compared() const { return compared_; }
    [[nodiscard]] plots::PlotStack& stack() { return *stack_; }
    // The rows of the segment table as it is shown, corners with their straights where they are joined.
    [[nodiscard]] const std::vector<comparison::SegmentComparison>& rows() const;
    [[nodiscard]] FurtherRow& further_row() { return *further_row_; }
    [[nodiscard]] SegmentCard& card() { return *card_; }
    [[nodiscard]] const models::SegmentTable& table() const { return *table_; }
    [[nodiscard]] int chosen_segment() const { return chosen_; } // −1: none
    void choose(int segment);
    void choose_next(int step);
    void go_to(double place_m); // the cursor, and the segment there
    void show_chosen_stretch();
    // The segments of the comparison that are chosen, from the first to before the last; none: {0, 0}.
    [[nodiscard]] std::pair<std::size_t, std::size_t> chosen_segments() const;
    [[nodiscard]] bool summed() const { return summed_; }
    void begin_name(); // of the chosen segment, in its place
    [[nodiscard]] plots::TrackMap& map() { return *map_; }
    [[nodiscard]] SegmentView& segments() { return *view_; }

  Q_SIGNALS:
    // `segment`: of the comparison.
    void note_kept(lapwright::workspace::Side side, std::size_t segment, const QString& note);
    void name_typed(std::size_t segment, const QString& name);
    void boundary_moved(double from_m, double to_m); // 0 m and the lap's length: the timing line
    void menu_asked(const QPoint& at);               // on what is chosen and under the cursor
    void lines_asked();                              // or no more
    void panel_looks_changed(const lapwright::plots::PanelLooks& looks);
    void channels_moved(const QStringList& ids); // the same, in another order

  private:
    void connect_editing();
    void ask_for_menu(double place_m, const QPoint& at);
    void fill_notes();
    // The segments of the comparison that a row stands for: from the first to before the last.
    [[nodiscard]] std::pair<std::size_t, std::size_t> segments_of(std::size_t row) const;
    void fill_stack();
    void follow_lines();
    void fill_card();
    void follow_cursor(double place_m);
    [[nodiscard]] int row_at(double place_m) const;

    workspace::ComparedPointer compared_;
    models::SegmentTable* table_;
    PairingHeader* header_;
    FurtherRow* further_row_;
    plots::PlotStack* stack_;
    SegmentView* view_;
    plots::TrackMap* map_;
    SegmentCard* card_;
    std::vector<workspace::SegmentNotes> notes_;
    void move_channel(const QString& id, const QString& to_place_of);

    QStringList channels_;
    plots::PanelLooks panel_looks_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    bool band_shown_ = true;
    std::shared_ptr<const std::vector<analysis::FurtherLap>> further_;
    QToolButton* lines_button_;
    bool lines_shown_ = false;
    bool spread_shown_ = false;
    bool values_filled_ = false;
    bool summed_ = false;
    int chosen_ = -1;
};

} // namespace lapwright::pages
