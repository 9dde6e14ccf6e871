// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/view_actions.h"

#include "ui/dialogs/channel_picker.h"
#include "ui/models/channels.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/preferences.h"

namespace lapwright::window {
namespace {

constexpr double zoom_step = 0.7;
constexpr double pan_step = 0.25;
constexpr int far_steps = 10;

// A way of showing the plots that is on or off.
void connect_switch(const ViewParts& parts, QAction* action, bool Preferences::* kept,
                    void (pages::ComparePage::*show)(bool)) {
    action->setChecked(parts.preferences.*kept);
    (parts.page.*show)(parts.preferences.*kept);
    QObject::connect(action, &QAction::triggered, &parts.page, [parts, kept, show](bool on) {
        parts.preferences.*kept = on;
        (parts.page.*show)(on);
        parts.remember();
    });
}

// Beside the plots, which follow while channels are ticked.
void choose_channels(const ViewParts& parts) {
    if (!parts.page.compared()) return;
    const auto choices = models::channels_of(*parts.page.compared()->pairing);
    auto* picker =
        new dialogs::ChannelPicker(choices, parts.preferences.channels, parts.preferences.channel_sets, &parts.page);
    picker->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(picker, &dialogs::ChannelPicker::shown_changed, &parts.page, [parts](const QStringList& ids) {
        parts.preferences.channels = ids;
        parts.page.set_channels(ids);
        for (QAction* action : parts.actions.channels_menu->actions())
            action->setChecked(ids.contains(action->data().toString()));
        parts.remember();
    });
    QObject::connect(picker, &dialogs::ChannelPicker::sets_changed, &parts.page,
                     [parts](const dialogs::ChannelSets& sets) {
                         parts.preferences.channel_sets = sets;
                         parts.remember();
                     });
    picker->open();
}

} // namespace

void connect_view_actions(const ViewParts& parts) {
    const Actions& a = parts.actions;
    pages::ComparePage* page = &parts.page;
    plots::PlotStack* plots = &page->stack();
    const auto on = [page](QAction* action, auto work) { QObject::connect(action, &QAction::triggered, page, work); };
    const auto tell_key = [page, note = a.note_a] { page->card().set_note_key(key_of(*note)); };
    QObject::connect(a.note_a, &QAction::changed, page, tell_key);
    tell_key();
    on(a.zoom_in, [plots] { plots->zoom(zoom_step); });
    on(a.zoom_out, [plots] { plots->zoom(1.0 / zoom_step); });
    on(a.whole_lap, [plots] { plots->fit(); });
    on(a.close_up, [page] { page->show_chosen_stretch(); });
    on(a.view_back, [plots] { plots->pan(-pan_step); });
    on(a.view_on, [plots] { plots->pan(pan_step); });
    on(a.next_segment, [page] { page->choose_next(1); });
    on(a.previous_segment, [page] { page->choose_next(-1); });
    on(a.cursor_on, [plots] { plots->step_cursor(1); });
    on(a.cursor_back, [plots] { plots->step_cursor(-1); });
    on(a.cursor_far_on, [plots] { plots->step_cursor(far_steps); });
    on(a.cursor_far_back, [plots] { plots->step_cursor(-far_steps); });
    on(a.cursor_start, [plots] { plots->set_cursor(0.0); });
    on(a.cursor_end, [plots] { plots->set_cursor(plots->length_m()); });
    connect_switch(parts, a.band, &Preferences::band_shown, &pages::ComparePage::set_band_shown);
    on(a.next_panel, [plots] { plots->take_next_panel(); });
    on(a.fold_panel, [plots] { plots->fold_panel(); });
    on(a.taller_panel, [plots] { plots->grow_panel(1); });
    on(a.lower_panel, [plots] { plots->grow_panel(-1); });
    on(a.channel_up, [plots] { plots->move_channel(-1); });
    on(a.channel_down, [plots] { plots->move_channel(1); });
    on(a.channels_on, [plots] { plots->scroll_channels(1); });
    on(a.channels_back, [plots] { plots->scroll_channels(-1); });
    page->set_panel_looks(parts.preferences.panel_looks);
    QObject::connect(page, &pages::ComparePage::panel_looks_changed, page, [parts](const plots::PanelLooks& looks) {
        parts.preferences.panel_looks = looks;
        parts.remember();
    });
    QObject::connect(page, &pages::ComparePage::channels_moved, page, [parts](const QStringList& ids) {
        parts.preferences.channels = ids;
        parts.remember();
    });
    connect_switch(parts, a.lines, &Preferences::lines_shown, &pages::ComparePage::set_lines_shown);
    QObject::connect(page, &pages::ComparePage::lines_asked, a.lines, &QAction::trigger);
    connect_switch(parts, a.spread, &Preferences::spread_shown, &pages::ComparePage::set_spread_shown);
    connect_switch(parts, a.values_filled, &Preferences::values_filled, &pages::ComparePage::set_values_filled);
    connect_switch(parts, a.summed, &Preferences::summed, &pages::ComparePage::set_summed);
    page->set_channels(parts.preferences.channels);
    on(a.choose_channels, [parts] { choose_channels(parts); });
}

void fill_channels_menu(const ViewParts& parts) {
    QMenu& menu = *parts.actions.channels_menu;
    menu.clear();
    for (const auto& choice : models::channels_of(*parts.page.compared()->pairing)) {
        QAction* action = menu.addAction(in_menu(choice.title));
        action->setCheckable(true);
        action->setData(choice.id);
        action->setChecked(parts.preferences.channels.contains(choice.id));
        QObject::connect(action, &QAction::triggered, &parts.page, [parts, id = choice.id](bool shown) {
            parts.preferences.channels.removeAll(id);
            if (shown) parts.preferences.channels << id;
            parts.page.set_channels(parts.preferences.channels);
            parts.remember();
        });
    }
}

} // namespace lapwright::window
