// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/compare_page.h"

#include "ui/models/channels.h"
#include "ui/models/text.h"
#include "ui/pages/compare/further_row.h"
#include "ui/pages/compare/pairing_header.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/pages/compare/segment_view.h"
#include "ui/plots/plot_stack.h"
#include "ui/plots/track_map.h"
#include "ui/theme/fonts.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

QFrame* framed(QWidget* content, QWidget* parent) {
    auto* frame = new QFrame(parent);
    frame->setObjectName(QStringLiteral("card"));
    auto* layout = new QGridLayout(frame);
    layout->setContentsMargins(4, 4, 4, 4);
    layout->addWidget(content, 0, 0);
    return frame;
}

bool same_lap(const analysis::Side& one, const analysis::Side& other) {
    return one.lap.number == other.lap.number && one.session->source == other.session->source;
}

bool same_laps_of(const analysis::Pairing& one, const analysis::Pairing& other) {
    return same_lap(one.a, other.a) && same_lap(one.b, other.b);
}

} // namespace

ComparePage::ComparePage(QWidget* parent)
    : QWidget(parent), table_(new models::SegmentTable(this)), header_(new PairingHeader(this)),
      further_row_(new FurtherRow(this)), stack_(new plots::PlotStack), view_(new SegmentView(table_)),
      map_(new plots::TrackMap), card_(new SegmentCard), lines_button_(new QToolButton) {
    auto* scroll = new QScrollArea;
    scroll->setWidget(stack_);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setMinimumWidth(460);

    auto* lower = new QWidget;
    auto* lower_row = new QHBoxLayout(lower);
    lower_row->setContentsMargins(0, 0, 0, 0);
    QFrame* map_frame = framed(map_, lower);
    lines_button_->setObjectName(QStringLiteral("slim"));
    lines_button_->setFont(theme::small());
    lines_button_->setText(tr("Lines"));
    lines_button_->setToolTip(tr("Where both cars drove, close up on the chosen segment, and how far apart they were"));
    lines_button_->setCheckable(true);
    lines_button_->setFocusPolicy(Qt::NoFocus);
    connect(lines_button_, &QToolButton::clicked, this, &ComparePage::lines_asked);
    static_cast<QGridLayout*>(map_frame->layout())->addWidget(lines_button_, 0, 0, Qt::AlignTop | Qt::AlignRight);
    lower_row->addWidget(map_frame, 2);
    lower_row->addWidget(card_, 3);

    auto* right = new QWidget;
    auto* right_column = new QVBoxLayout(right);
    right_column->setContentsMargins(6, 0, 0, 0);
    // The table takes what its rows need, map and card the rest.
    right_column->addWidget(view_, 1000);
    right_column->addWidget(lower, 1);

    auto* halves = new QSplitter(Qt::Horizontal);
    halves->setObjectName(QStringLiteral("halves"));
    halves->addWidget(scroll);
    halves->addWidget(right);
    halves->setStretchFactor(0, 58);
    halves->setStretchFactor(1, 42);
    halves->setChildrenCollapsible(false);
    halves->setSizes({580, 420});

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 2, 12, 8);
    column->addWidget(header_);
    column->addWidget(further_row_);
    column->addWidget(halves, 1);

    connect(stack_, &plots::PlotStack::cursor_moved, this, &ComparePage::follow_cursor);
    connect(stack_, &plots::PlotStack::segment_clicked, this, &ComparePage::choose);
    connect(map_, &plots::TrackMap::place_clicked, this, &ComparePage::go_to);
    connect(view_, &SegmentView::row_chosen, this, &ComparePage::choose);
    connect(card_, &SegmentCard::note_kept, this, [this](workspace::Side side, const QString& note) {
        if (chosen_ >= 0) Q_EMIT note_kept(side, segments_of(static_cast<std::size_t>(chosen_)).first, note);
    });
    connect(card_, &SegmentCard::note_ended, stack_, [this] { stack_->setFocus(); });
    connect_editing();
}

void ComparePage::connect_editing() {
    connect(stack_, &plots::PlotStack::boundary_moved, this, &ComparePage::boundary_moved);
    connect(stack_, &plots::PlotStack::channel_moved, this, &ComparePage::move_channel);
    connect(stack_, &plots::PlotStack::looks_changed, this, [this](const plots::PanelLooks& looks) {
        set_panel_looks(looks);
        Q_EMIT panel_looks_changed(looks);
    });
    connect(map_, &plots::TrackMap::boundary_moved, this, &ComparePage::boundary_moved);
    connect(stack_, &plots::PlotStack::menu_asked, this, &ComparePage::ask_for_menu);
    connect(map_, &plots::TrackMap::menu_asked, this, &ComparePage::ask_for_menu);
    connect(table_, &models::SegmentTable::name_typed, this, [this](int row, const QString& name) {
        Q_EMIT name_typed(segments_of(static_cast<std::size_t>(row)).first, name);
    });
    view_->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(view_, &QWidget::customContextMenuRequested, this, [this](const QPoint& at) {
        if (const QModelIndex index = view_->indexAt(at); index.isValid()) choose(index.row());
        Q_EMIT menu_asked(view_->viewport()->mapToGlobal(at));
    });
}

// What the menu does is done where it was asked for.
void ComparePage::ask_for_menu(double place_m, const QPoint& at) {
    go_to(place_m);
    Q_EMIT menu_asked(at);
}

std::pair<std::size_t, std::size_t> ComparePage::chosen_segments() const {
    return chosen_ < 0 ? std::pair<std::size_t, std::size_t>() : segments_of(static_cast<std::size_t>(chosen_));
}

void ComparePage::begin_name() {
    if (chosen_ >= 0) view_->begin_name(chosen_);
}

void ComparePage::show_pairing(workspace::ComparedPointer compared) {
    keep_notes();
    const bool same_laps = compared_ && same_laps_of(*compared_->pairing, *compared->pairing);
    const double place_m = stack_->cursor_m();
    compared_ = std::move(compared);
    further_.reset(); // they were against another A, or on another line
    further_row_->show_laps(further_);
    const auto& pairing = compared_->pairing;
    notes_.clear();
    card_->set_one_session(pairing->a.session == pairing->b.session);
    header_->set_pairing(*pairing);
    map_->set_track(std::shared_ptr<const track::Track>(pairing, &pairing->track), compared_->favour);
    chosen_ = -1;
    table_->set_segments(rows());
    fill_stack();
    follow_lines();
    follow_cursor(stack_->cursor_m());
    if (same_laps) {
        go_to(place_m); // the track was edited there, or a name
        return;
    }
    const auto& deciding = pairing->headline.deciding_segment;
    const auto row = std::ranges::find(rows(), deciding, [](const auto& r) { return r.segment.name; });
    choose(row == rows().end() ? 0 : static_cast<int>(row - rows().begin()));
}

void ComparePage::set_palette(const theme::Palette& palette) {
    header_->set_palette(palette);
    further_row_->set_palette(palette);
    stack_->set_palette(palette);
    view_->set_palette(palette);
    map_->set_palette(palette);
    card_->set_palette(palette);
}

void ComparePage::set_units(base::UnitSystem units) {
    units_ = units;
    table_->set_units(units);
    fill_stack();
    fill_card();
}

void ComparePage::set_channels(const QStringList& ids) {
    channels_ = ids;
    fill_stack();
}

void ComparePage::set_band_shown(bool shown) {
    band_shown_ = shown;
    fill_stack();
}

void ComparePage::set_lines_shown(bool shown) {
    lines_shown_ = shown;
    lines_button_->setChecked(shown);
    follow_lines();
    fill_stack();
}

void ComparePage::follow_lines() {
    const bool any = compared_ && !compared_->pairing->comparison.line.empty();
    lines_button_->setEnabled(any || lines_shown_);
    map_->set_lines(lines_shown_ && any ? compared_->pairing : nullptr);
}

void ComparePage::set_panel_looks(plots::PanelLooks looks) {
    panel_looks_ = std::move(looks);
    fill_stack();
}

void ComparePage::move_channel(const QString& id, const QString& to_place_of) {
    const auto place = channels_.indexOf(to_place_of);
    if (place < 0 || !channels_.contains(id)) return;
    channels_.removeAll(id);
    channels_.insert(place, id);
    fill_stack();
    Q_EMIT channels_moved(channels_);
}

void ComparePage::set_spread_shown(bool shown) {
    spread_shown_ = shown;
    fill_stack();
}

void ComparePage::set_further(std::shared_ptr<const std::vector<analysis::FurtherLap>> laps) {
    further_ = std::move(laps);
    further_row_->show_laps(further_);
    fill_stack();
}

void ComparePage::set_values_filled(bool filled) {
    values_filled_ = filled;
    fill_stack();
}

void ComparePage::set_summed(bool summed) {
    if (summed == summed_) return;
    keep_notes();
    const double place = chosen_ >= 0 ? rows()[static_cast<std::size_t>(chosen_)].segment.start_m : stack_->cursor_m();
    summed_ = summed;
    chosen_ = -1;
    table_->set_segments(rows());
    fill_stack();
    fill_notes();
    choose(row_at(place));
}

void ComparePage::fill_stack() {
    if (!compared_) return;
    std::vector<models::ChannelChoice> shown; // in the order that was asked for
    const auto offered = models::channels_of(*compared_->pairing);
    for (const QString& id : channels_) {
        const auto choice = std::ranges::find(offered, id, &models::ChannelChoice::id);
        if (choice != offered.end()) shown.push_back(*choice);
    }
    stack_->set_content({compared_->pairing, rows(), std::move(shown), units_, band_shown_, values_filled_,
                         lines_shown_, spread_shown_, further_, panel_looks_});
}

void ComparePage::choose(int segment) {
    if (!compared_ || segment < 0 || segment >= static_cast<int>(rows().size())) return;
    const bool moved = chosen_ != segment;
    if (moved) keep_notes(); // they are about the segment that is left
    chosen_ = segment;
    const track::Segment& stretch = rows()[static_cast<std::size_t>(segment)].segment;
    stack_->choose(static_cast<std::size_t>(segment));
    map_->set_stretch(std::pair(stretch.start_m, stretch.end_m));
    view_->choose(segment);
    if (moved) fill_card();
    const double cursor = stack_->cursor_m();
    if (cursor < stretch.start_m || cursor >= stretch.end_m)
        stack_->set_cursor(0.5 * (stretch.start_m + stretch.end_m));
}

void ComparePage::choose_next(int step) {
    const int count = static_cast<int>(rows().size());
    if (count > 0) choose(((chosen_ < 0 ? 0 : chosen_ + step) + count) % count);
}

void ComparePage::go_to(double place_m) {
    stack_->set_cursor(place_m);
    choose(row_at(place_m));
}

void ComparePage::show_chosen_stretch() {
    if (chosen_ < 0) return;
    const track::Segment& stretch = rows()[static_cast<std::size_t>(chosen_)].segment;
    stack_->show_stretch(stretch.start_m, stretch.end_m);
}

std::pair<std::size_t, std::size_t> ComparePage::segments_of(std::size_t row) const {
    const track::Segment& stretch = rows()[row].segment;
    const auto& all = compared_->pairing->comparison.segments;
    const auto place = [&](double from_m) {
        return static_cast<std::size_t>(
            std::ranges::lower_bound(all, from_m, {}, [](const auto& s) { return s.segment.start_m; }) - all.begin());
    };
    return {place(stretch.start_m), place(stretch.end_m)};
}

void ComparePage::set_notes(std::vector<workspace::SegmentNotes> notes) {
    notes_ = std::move(notes);
    fill_notes();
    fill_card();
}

void ComparePage::fill_notes() {
    std::vector<workspace::SegmentNotes> of_rows;
    for (std::size_t row = 0; row < rows().size() && !notes_.empty(); ++row) {
        const auto [first, last] = segments_of(row);
        workspace::SegmentNotes joined = notes_[first];
        for (std::size_t i = first + 1; i < last; ++i)
            joined.add(notes_[i]);
        of_rows.push_back(joined);
    }
    table_->set_notes(std::move(of_rows));
}

void ComparePage::write_note(workspace::Side side) {
    if (chosen_ >= 0) card_->write_note(side);
}

void ComparePage::keep_notes() {
    card_->keep_notes();
}

void ComparePage::fill_card() {
    if (chosen_ < 0) {
        card_->show_nothing();
        return;
    }
    const auto index = static_cast<std::size_t>(chosen_);
    const auto& repeatability = compared_->pairing->repeatability;
    const bool known = !summed_ && index < repeatability.size();
    card_->show_segment(rows()[index], known ? &repeatability[index] : nullptr, units_);
    const auto [first, last] = segments_of(index);
    card_->set_notes(first < notes_.size() ? notes_[first] : workspace::SegmentNotes{},
                     models::text(compared_->pairing->comparison.segments[first].segment.name));
}

void ComparePage::follow_cursor(double place_m) {
    map_->set_cursor(place_m);
    table_->set_cursor_row(row_at(place_m));
}

const std::vector<comparison::SegmentComparison>& ComparePage::rows() const {
    static const std::vector<comparison::SegmentComparison> none;
    if (!compared_) return none;
    return summed_ ? compared_->summed : compared_->pairing->comparison.segments;
}

int ComparePage::row_at(double place_m) const {
    const auto& all = rows();
    const auto found = std::ranges::find_if(all, [place_m](const auto& r) { return place_m < r.segment.end_m; });
    return found == all.end() ? static_cast<int>(all.size()) - 1 : static_cast<int>(found - all.begin());
}

} // namespace lapwright::pages
