// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that can be done, as actions with names and keys, and the menus that hold them.  A key acts in the whole
// window; what belongs to one page is switched off on the other.
#pragma once

#include "core/base/display.h"
#include "ui/dialogs/keys_help.h"
#include "ui/theme/palette.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <vector>

class QUndoStack;

namespace lapwright::window {

// A name as a menu writes it, where a single & would underline a letter.
[[nodiscard]] QString in_menu(QString words);

// The command's first key as the system writes it; empty without one.
[[nodiscard]] QString key_of(const QAction& action);

struct Actions {
    explicit Actions(QMenuBar& bar);

    QMenu* session_menu;
    QMenu* recent_menu; // filled by the window
    QMenu* book_menu;
    QMenu* edit_menu;
    QMenu* pairing_menu;
    QMenu* track_menu;
    QMenu* view_menu;
    QMenu* channels_menu; // filled by the window for each pairing
    QMenu* panels_menu;
    QMenu* units_menu;
    QMenu* look_menu;
    QMenu* language_menu;
    QMenu* go_menu;
    QMenu* video_menu;
    QMenu* play_speed_menu;
    QMenu* help_menu;

    QAction* open;
    QAction* book;
    QAction* season;
    QAction* pairings;
    QAction* predictions;
    QAction* write_waiting;
    QAction* removed;
    QAction* check_book;
    QAction* merge_book;
    QAction* salvage_book;
    QAction* names;
    QAction* judge_lap;
    QAction* laps_by_time;
    QAction* learn;
    QAction* columns;
    QAction* report;
    QAction* recipes;
    QAction* restore;
    QAction* close_session;
    QAction* cancel;
    QAction* dismiss;
    QAction* quit;
    QAction* undo;
    QAction* redo;
    QAction* copy_table;
    QAction* copy_picture;
    QAction* note_a; // these four: a key each for two pages
    QAction* note_b;
    QAction* note_lap;
    QAction* note_session;
    QAction* take_a;
    QAction* take_b;
    QAction* take_further;
    QAction* swap;
    QAction* compare;
    QAction* setup;
    QAction* trial;
    QAction* wing;
    QAction* keep_prediction;
    QAction* print;
    QAction* save_sheet;
    QAction* save_html;
    QAction* stills;
    QAction* save_table;
    QAction* save_picture;
    QAction* rename_segment;
    QAction* start_here;
    QAction* end_here;
    QAction* split_here;
    QAction* join_next;
    QAction* other_kind;
    QAction* gate_here;
    QAction* export_track;
    QAction* forget_track;
    QAction* show_sessions;
    QAction* show_compare;
    QAction* show_causes;
    QAction* show_debrief;
    QAction* zoom_in;
    QAction* zoom_out;
    QAction* whole_lap;
    QAction* close_up;
    QAction* view_back;
    QAction* view_on;
    QAction* choose_channels;
    QAction* band;
    QAction* spread;
    QAction* lines;
    QAction* next_panel; // takes it in hand
    QAction* fold_panel;
    QAction* taller_panel;
    QAction* lower_panel;
    QAction* channel_up;
    QAction* channel_down;
    QAction* channels_on;
    QAction* channels_back;
    QAction* values_filled;
    QAction* summed;
    QActionGroup* units;
    QAction* next_units;
    QActionGroup* look;
    QActionGroup* language;
    QAction* next_segment;
    QAction* previous_segment;
    QAction* cursor_on;
    QAction* cursor_back;
    QAction* cursor_far_on;
    QAction* cursor_far_back;
    QAction* cursor_start;
    QAction* cursor_end;
    QAction* videos;
    QAction* video_a;
    QAction* video_b;
    QAction* play;
    QAction* frame_on;
    QAction* frame_back;
    QAction* one_clock;
    QAction* loop;
    QActionGroup* play_speed; // data: percent of life
    QAction* sound_a;
    QAction* sound_b; // one of the two or none
    QAction* find;
    QAction* keys;
    QAction* change_keys;
    QAction* show_log;
    QAction* about;

    [[nodiscard]] std::vector<QAction*> of_sessions_page() const;
    [[nodiscard]] std::vector<QAction*> of_compare_page() const;
    [[nodiscard]] std::vector<QMenu*> menus() const;
    [[nodiscard]] std::vector<QMenu*> menus_with_keys() const;
    [[nodiscard]] std::vector<dialogs::KeyGroup> key_groups() const;
    void name_edits(QUndoStack& edits) const; // undo and redo say what they would undo or do again

  private:
    void add_book();
    void add_edits();
    void add_panels();
    void add_videos(QMenuBar& bar);
    void add_track();
    void add_units(QMenuBar& bar);
    void add_looks(QMenuBar& bar);
    void add_languages(QMenuBar& bar);
};

} // namespace lapwright::window
