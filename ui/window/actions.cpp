// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/actions.h"

#include <QCoreApplication>
#include <QUndoStack>
#include <array>
#include <utility>

namespace lapwright::window {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("actions", words);
}

QString without_mnemonic(QString words) {
    return words.remove(QLatin1Char('&'));
}

QAction* act(QMenu* menu, const char* words, const QList<QKeySequence>& keys, bool checkable = false) {
    QAction* action = menu->addAction(tr(words));
    action->setObjectName(without_mnemonic(QString::fromUtf8(words))); // by which its keys are kept
    action->setShortcuts(keys);
    action->setCheckable(checkable);
    return action;
}

QAction* act(QMenu* menu, const char* words, const QKeySequence& key, bool checkable = false) {
    return act(menu, words, QList<QKeySequence>{key}, checkable);
}

} // namespace

QString in_menu(QString words) {
    return words.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

QString key_of(const QAction& action) {
    return action.shortcut().toString(QKeySequence::NativeText);
}

Actions::Actions(QMenuBar& bar)
    : session_menu(bar.addMenu(tr("&Session"))), edit_menu(bar.addMenu(tr("&Edit"))),
      pairing_menu(bar.addMenu(tr("&Pairing"))), track_menu(bar.addMenu(tr("&Track"))),
      view_menu(bar.addMenu(tr("&View"))), go_menu(bar.addMenu(tr("&Go"))), video_menu(bar.addMenu(tr("Vi&deo"))),
      help_menu(bar.addMenu(tr("&Help"))) {
    open = act(session_menu, "&Open files…", QKeySequence::Open);
    recent_menu = session_menu->addMenu(tr("Opened &lately"));
    book = act(session_menu, "Sessions of the &book…", Qt::Key_L);
    season = act(session_menu, "&Season of a track or car…", QKeySequence(Qt::CTRL | Qt::Key_L));
    pairings = act(session_menu, "Kept &pairings…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    add_book();
    names = act(session_menu, "&Names, date and conditions", Qt::Key_D);
    judge_lap = act(session_menu, "Se&t the lap aside, count it, or leave it to the program", Qt::Key_T);
    laps_by_time = act(session_menu, "Laps by time, the &fastest first", Qt::Key_F, true);
    learn = act(session_menu, "Learnin&g: laps and corners over the session…", Qt::Key_E);
    columns = act(session_menu, "Columns of this session's &file…", Qt::Key_I);
    report = act(session_menu, "Trust r&eport of this session", Qt::Key_R);
    recipes = act(session_menu, "&Import recipes…", QKeySequence(Qt::CTRL | Qt::Key_R));
    session_menu->addSeparator();
    restore = act(session_menu, "Open again what was open &when the program stopped", QList<QKeySequence>{});
    restore->setEnabled(false);
    close_session = act(session_menu, "&Close this session", Qt::Key_Delete);
    session_menu->addSeparator();
    cancel = act(session_menu, "Stop what is &running", QKeySequence(Qt::CTRL | Qt::Key_Period));
    dismiss = act(session_menu, "&Dismiss the notices", Qt::Key_Escape);
    session_menu->addSeparator();
    quit = act(session_menu, "&Quit", QKeySequence(Qt::CTRL | Qt::Key_Q));

    add_edits();

    take_a = act(pairing_menu, "Make this lap &A", Qt::Key_A);
    take_b = act(pairing_menu, "Make this lap &B", Qt::Key_B);
    take_further = act(pairing_menu, "Show this lap be&hind A and B, or no more", Qt::Key_C);
    swap = act(pairing_menu, "&Swap A and B", Qt::Key_X);
    compare = act(pairing_menu, "&Compare A and B", QList<QKeySequence>{Qt::Key_Return, Qt::Key_Enter});
    pairing_menu->addSeparator();
    setup = act(pairing_menu, "Set&up of both cars…", QKeySequence(Qt::CTRL | Qt::Key_E));
    trial = act(pairing_menu, "Setup tri&al…", QKeySequence(Qt::CTRL | Qt::Key_B));
    wing = act(pairing_menu, "How much &wing…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_W));
    print = act(pairing_menu, "P&rint the debrief sheet…", QKeySequence::Print);
    save_sheet = act(pairing_menu, "Save the debrief sheet as &PDF…", QKeySequence::Save);
    save_html = act(pairing_menu, "Save the debrief sheet as &HTML…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
    stills = act(pairing_menu, "Stills of both videos on the debrief sheet", QKeySequence(Qt::SHIFT | Qt::Key_Y), true);
    save_table = act(pairing_menu, "Save the &table as CSV…", QKeySequence(Qt::CTRL | Qt::Key_T));
    save_picture = act(pairing_menu, "Save the p&lots as SVG or PNG…", QKeySequence(Qt::CTRL | Qt::Key_D));

    add_track();

    show_sessions = act(view_menu, "&Sessions", QKeySequence(Qt::CTRL | Qt::Key_1), true);
    show_compare = act(view_menu, "&Compare", QKeySequence(Qt::CTRL | Qt::Key_2), true);
    show_causes = act(view_menu, "Ca&uses", QKeySequence(Qt::CTRL | Qt::Key_3), true);
    show_debrief = act(view_menu, "&Debrief", QKeySequence(Qt::CTRL | Qt::Key_4), true);
    view_menu->addSeparator();
    zoom_in = act(view_menu, "Show &less of the lap", QList<QKeySequence>{Qt::Key_Plus, Qt::Key_Equal});
    zoom_out = act(view_menu, "Show &more of the lap", Qt::Key_Minus);
    whole_lap = act(view_menu, "Show the &whole lap", Qt::Key_W);
    close_up = act(view_menu, "Show the chosen segment close &up", Qt::Key_C);
    view_back = act(view_menu, "Pan &back", QKeySequence(Qt::CTRL | Qt::Key_Left));
    view_on = act(view_menu, "Pan &on", QKeySequence(Qt::CTRL | Qt::Key_Right));
    view_menu->addSeparator();
    channels_menu = view_menu->addMenu(tr("&Further channels"));
    choose_channels = act(view_menu, "C&hoose channels, and sets of them…", Qt::Key_G);
    add_panels();
    band = act(view_menu, "Uncertainty b&and on the gap", Qt::Key_U, true);
    spread = act(view_menu, "Spread of each driver's &other clean laps", QKeySequence(Qt::SHIFT | Qt::Key_U), true);
    lines = act(view_menu, "Both driven &lines close up, and how far apart", QKeySequence(Qt::SHIFT | Qt::Key_L), true);
    values_filled = act(view_menu, "&Values fill the view", Qt::Key_V, true);
    summed = act(view_menu, "&Join each corner with its straight", Qt::Key_J, true);
    view_menu->addSeparator();
    add_units(bar);
    add_looks(bar);

    next_segment = act(go_menu, "&Next segment", Qt::Key_N);
    previous_segment = act(go_menu, "&Previous segment", Qt::Key_P);
    go_menu->addSeparator();
    cursor_on = act(go_menu, "Cursor &on", Qt::Key_Right);
    cursor_back = act(go_menu, "Cursor &back", Qt::Key_Left);
    cursor_far_on = act(go_menu, "Cursor &far on", QKeySequence(Qt::SHIFT | Qt::Key_Right));
    cursor_far_back = act(go_menu, "Cursor far b&ack", QKeySequence(Qt::SHIFT | Qt::Key_Left));
    cursor_start = act(go_menu, "Cursor to the &start of the lap", Qt::Key_Home);
    cursor_end = act(go_menu, "Cursor to the &end of the lap", Qt::Key_End);
    go_menu->addSeparator();
    find = act(go_menu, "&Go to a corner, session, lap or command…", QKeySequence(Qt::CTRL | Qt::Key_G));

    add_videos(bar);

    keys = act(help_menu, "&Keys and mouse", QKeySequence::HelpContents);
    change_keys = act(help_menu, "&Change the keys…", QList<QKeySequence>{});
    show_log = act(help_menu, "Show the folder of the &log…", QList<QKeySequence>{});
    about = act(help_menu, "&About Lapwright", QList<QKeySequence>{});
}

// Of the plots; each acts on the panel in hand.
void Actions::add_panels() {
    panels_menu = view_menu->addMenu(tr("&Panels of the plots"));
    next_panel = act(panels_menu, "Take the &next panel in hand", QKeySequence(Qt::SHIFT | Qt::Key_Z));
    fold_panel = act(panels_menu, "&Fold the panel, or open it", Qt::Key_Z);
    taller_panel = act(panels_menu, "Panel &taller", QKeySequence(Qt::CTRL | Qt::Key_Up));
    lower_panel = act(panels_menu, "Panel &lower", QKeySequence(Qt::CTRL | Qt::Key_Down));
    channel_up = act(panels_menu, "Channel one place &up", QKeySequence(Qt::ALT | Qt::Key_Up));
    channel_down = act(panels_menu, "Channel one place &down", QKeySequence(Qt::ALT | Qt::Key_Down));
    channels_on = act(panels_menu, "Further channels: &on", QKeySequence(Qt::CTRL | Qt::Key_PageDown));
    channels_back = act(panels_menu, "Further channels: &back", QKeySequence(Qt::CTRL | Qt::Key_PageUp));
}

void Actions::add_videos(QMenuBar& bar) {
    videos = act(video_menu, "&Videos of both beside the traces", Qt::Key_Y, true);
    video_a = act(video_menu, "Video of &A…", QList<QKeySequence>{});
    video_b = act(video_menu, "Video of &B…", QList<QKeySequence>{});
    video_menu->addSeparator();
    play = act(video_menu, "&Play and pause", Qt::Key_Space);
    frame_on = act(video_menu, "One frame &on", Qt::Key_PageDown);
    frame_back = act(video_menu, "One frame bac&k", Qt::Key_PageUp);
    video_menu->addSeparator();
    one_clock = act(video_menu, "Both let &go at the chosen segment's start", Qt::Key_O, true);
    loop = act(video_menu, "Play the chosen segment again and again", Qt::Key_H, true);
    play_speed_menu = video_menu->addMenu(tr("Pa&ce"));
    play_speed = new QActionGroup(&bar);
    static constexpr std::array paces{std::pair(100, "As it &was"), std::pair(50, "&Half"),
                                      std::pair(25, "A &quarter")};
    for (const auto& [percent, words] : paces) {
        QAction* action = act(play_speed_menu, words, QList<QKeySequence>{}, true);
        action->setData(percent);
        play_speed->addAction(action);
    }
    play_speed->actions().front()->setChecked(true);
    video_menu->addSeparator();
    sound_a = act(video_menu, "&Sound of A", QKeySequence(Qt::CTRL | Qt::Key_Space), true);
    sound_b = act(video_menu, "So&und of B", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Space), true);
    auto* sounds = new QActionGroup(&bar);
    sounds->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
    sounds->addAction(sound_a);
    sounds->addAction(sound_b);
}

// The cursor says where, the chosen segment which.
void Actions::add_track() {
    rename_segment = act(track_menu, "&Name of the segment", Qt::Key_D);
    start_here = act(track_menu, "The segment &starts at the cursor", Qt::Key_S);
    end_here = act(track_menu, "The segment &ends at the cursor", Qt::Key_E);
    split_here = act(track_menu, "S&plit the segment at the cursor", Qt::Key_K);
    join_next = act(track_menu, "&Join the segment with the next", QKeySequence(Qt::SHIFT | Qt::Key_K));
    other_kind = act(track_menu, "&Corner or straight: make it the other", QKeySequence(Qt::SHIFT | Qt::Key_C));
    track_menu->addSeparator();
    gate_here = act(track_menu, "Put the timing &line at the cursor", QKeySequence(Qt::SHIFT | Qt::Key_T));
    track_menu->addSeparator();
    export_track = act(track_menu, "Sa&ve the track as a file…", QList<QKeySequence>{});
    forget_track = act(track_menu, "&Forget the track's gate and corners", QList<QKeySequence>{});
}

// What is done to the book itself.
void Actions::add_book() {
    book_menu = session_menu->addMenu(tr("T&he book itself"));
    removed = act(book_menu, "&Removed sessions…", QKeySequence(Qt::CTRL | Qt::Key_Delete));
    merge_book = act(book_menu, "&Merge a friend's book…", QKeySequence(Qt::CTRL | Qt::Key_M));
    check_book = act(book_menu, "&Check the whole book", QKeySequence(Qt::CTRL | Qt::Key_K));
    write_waiting = act(book_menu, "&Write what waits into the book", QList<QKeySequence>{});
    salvage_book = act(book_menu, "&Save what the damaged book holds", QList<QKeySequence>{});
}

void Actions::add_edits() {
    undo = act(edit_menu, "&Undo", QKeySequence(Qt::CTRL | Qt::Key_Z));
    redo = act(edit_menu, "&Redo", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z));
    undo->setEnabled(false);
    redo->setEnabled(false);
    edit_menu->addSeparator();
    copy_table = act(edit_menu, "Copy as a &table", QKeySequence::Copy);
    copy_picture = act(edit_menu, "Copy as a p&icture", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
    edit_menu->addSeparator();
    const QKeySequence first(Qt::Key_M);
    const QKeySequence second(Qt::SHIFT | Qt::Key_M);
    note_a = act(edit_menu, "Note on the segment as &A drove it", first);
    note_b = act(edit_menu, "Note on the segment as &B drove it", second);
    note_lap = act(edit_menu, "Note on this &lap", first);
    note_session = act(edit_menu, "Note on this &session", second);
}

void Actions::add_units(QMenuBar& bar) {
    units_menu = view_menu->addMenu(tr("Un&its"));
    units = new QActionGroup(&bar);
    static constexpr std::array systems{std::pair(base::UnitSystem::metric, "&Metric: km/h, m"),
                                        std::pair(base::UnitSystem::imperial, "&Imperial: mph, m"),
                                        std::pair(base::UnitSystem::us, "&US: mph, ft")};
    for (const auto& [system, words] : systems) {
        QAction* action = act(units_menu, words, QList<QKeySequence>{}, true);
        action->setData(static_cast<int>(system));
        units->addAction(action);
    }
    next_units = act(view_menu, "Nex&t units", QKeySequence(Qt::CTRL | Qt::Key_U));
}

void Actions::add_looks(QMenuBar& bar) {
    look_menu = view_menu->addMenu(tr("Loo&k"));
    look = new QActionGroup(&bar);
    static constexpr std::array choices{std::pair(theme::Choice::light, "&Light"),
                                        std::pair(theme::Choice::dark, "&Dark"),
                                        std::pair(theme::Choice::system, "As the &system")};
    for (const auto& [choice, words] : choices) {
        QAction* action = act(look_menu, words, QList<QKeySequence>{}, true);
        action->setData(static_cast<int>(choice));
        look->addAction(action);
    }
}

std::vector<QAction*> Actions::of_sessions_page() const {
    return {names,    judge_lap,    laps_by_time, learn,  columns,      report, close_session,
            note_lap, note_session, take_a,       take_b, take_further, compare};
}

std::vector<QAction*> Actions::of_compare_page() const {
    return {zoom_in,         zoom_out,
            choose_channels, whole_lap,
            close_up,        view_back,
            view_on,         band,
            spread,          lines,
            values_filled,   summed,
            next_segment,    previous_segment,
            cursor_on,       cursor_back,
            cursor_far_on,   cursor_far_back,
            cursor_start,    cursor_end,
            note_a,          note_b,
            rename_segment,  start_here,
            end_here,        split_here,
            join_next,       other_kind,
            gate_here,       export_track,
            videos,          video_a,
            video_b,         play,
            frame_on,        frame_back,
            one_clock,       loop,
            sound_a,         sound_b,
            next_panel,      fold_panel,
            taller_panel,    lower_panel,
            channel_up,      channel_down,
            channels_on,     channels_back};
}

std::vector<QMenu*> Actions::menus() const {
    return {session_menu, recent_menu, book_menu, edit_menu,  pairing_menu,    track_menu, view_menu,
            units_menu,   look_menu,   go_menu,   video_menu, play_speed_menu, help_menu};
}

std::vector<QMenu*> Actions::menus_with_keys() const {
    return {session_menu, book_menu,   edit_menu, pairing_menu, track_menu,
            view_menu,    panels_menu, go_menu,   video_menu,   help_menu};
}

std::vector<dialogs::KeyGroup> Actions::key_groups() const {
    std::vector<dialogs::KeyGroup> groups;
    for (const QMenu* menu : menus_with_keys()) {
        dialogs::KeyGroup group{without_mnemonic(menu->title()), {}};
        for (const QAction* action : menu->actions()) {
            QStringList key_names;
            for (const QKeySequence& key : action->shortcuts())
                key_names << key.toString(QKeySequence::NativeText);
            if (!key_names.isEmpty()) {
                group.lines.emplace_back(without_mnemonic(action->text()), key_names.join(tr(" or ")));
            }
        }
        groups.push_back(std::move(group));
    }
    groups.push_back({tr("Laps on the Sessions page"),
                      {{tr("Choose a lap"), tr("Up, Down")},
                       {tr("Go to another session"), tr("Left, Right, Tab")},
                       {tr("Sort the laps"), tr("click on \"lap\" or \"time\" above them")}}});
    groups.push_back({tr("The book on the Sessions page"),
                      {{tr("From the words to the list, and back"), tr("Down, Up in the first row")},
                       {tr("Open what is chosen"), tr("Return, double-click")},
                       {tr("Change its names or date"), tr("F2")},
                       {tr("Take a session or a pairing out of the book"), tr("Delete")},
                       {tr("Less, more, all of the season"), tr("+, −, W")},
                       {tr("Back to the open sessions"), tr("Escape")}}});
    groups.push_back({tr("Mouse on the plots"),
                      {{tr("Cursor"), tr("move the pointer")},
                       {tr("Choose a segment"), tr("click")},
                       {tr("Go on to further channels; where all is in view, show less or more"), tr("wheel")},
                       {tr("Fold a panel, or open it"), tr("click on its name")},
                       {tr("Make a panel taller or lower"), tr("drag the border between two")},
                       {tr("Move a further channel"), tr("drag it by its name to another's place")},
                       {tr("Show less or more, at the pointer"), tr("Ctrl and wheel")},
                       {tr("Pan"), tr("drag, or wheel sideways")},
                       {tr("Whole lap"), tr("double-click")},
                       {tr("Move an end, or the timing line"), tr("drag its mark on ribbon or map")},
                       {tr("What can be done there"), tr("right click")}}});
    return groups;
}

void Actions::name_edits(QUndoStack& edits) const {
    QObject::connect(&edits, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
    QObject::connect(&edits, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
    QObject::connect(&edits, &QUndoStack::undoTextChanged, undo, [undo = undo](const QString& what) {
        undo->setText(tr("&Undo %1").arg(in_menu(what)).trimmed());
    });
    QObject::connect(&edits, &QUndoStack::redoTextChanged, redo, [redo = redo](const QString& what) {
        redo->setText(tr("&Redo %1").arg(in_menu(what)).trimmed());
    });
}

} // namespace lapwright::window
