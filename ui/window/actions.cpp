// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/actions.h"

#include "ui/models/text.h"
#include "ui/window/language.h"

#include <QCoreApplication>
#include <QUndoStack>
#include <array>
#include <utility>

namespace lapwright::window {
namespace {

using models::without_mnemonic;

QString tr(const char* words) {
    return QCoreApplication::translate("Lapwright", words);
}

QAction* act(const char* words, QMenu* menu, const QList<QKeySequence>& keys, bool checkable = false) {
    QAction* action = menu->addAction(tr(words));
    action->setObjectName(without_mnemonic(QString::fromUtf8(words))); // by which its keys are kept
    action->setShortcuts(keys);
    action->setCheckable(checkable);
    return action;
}

QAction* act(const char* words, QMenu* menu, const QKeySequence& key, bool checkable = false) {
    return act(words, menu, QList<QKeySequence>{key}, checkable);
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
    open = act("&Open files…", session_menu, QKeySequence::Open);
    recent_menu = session_menu->addMenu(tr("Opened &lately"));
    book = act("Sessions of the &book…", session_menu, Qt::Key_L);
    season = act("&Season of a track or car…", session_menu, QKeySequence(Qt::CTRL | Qt::Key_L));
    pairings = act("Kept &pairings…", session_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    predictions =
        act("Predictions, and how often the&y held…", session_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    add_book();
    names = act("&Names, date and conditions", session_menu, Qt::Key_D);
    judge_lap = act("Se&t the lap aside, count it, or leave it to the program", session_menu, Qt::Key_T);
    laps_by_time = act("Laps by time, the &fastest first", session_menu, Qt::Key_F, true);
    learn = act("Learnin&g: laps and corners over the session…", session_menu, Qt::Key_E);
    columns = act("Columns of this session's &file…", session_menu, Qt::Key_I);
    report = act("Trust r&eport of this session", session_menu, Qt::Key_R);
    recipes = act("&Import recipes…", session_menu, QKeySequence(Qt::CTRL | Qt::Key_R));
    session_menu->addSeparator();
    restore = act("Open again what was open &when the program stopped", session_menu, QList<QKeySequence>{});
    restore->setEnabled(false);
    close_session = act("&Close this session", session_menu, Qt::Key_Delete);
    session_menu->addSeparator();
    cancel = act("Stop what is &running", session_menu, QKeySequence(Qt::CTRL | Qt::Key_Period));
    dismiss = act("&Dismiss the notices", session_menu, Qt::Key_Escape);
    session_menu->addSeparator();
    quit = act("&Quit", session_menu, QKeySequence(Qt::CTRL | Qt::Key_Q));

    add_edits();

    take_a = act("Make this lap &A", pairing_menu, Qt::Key_A);
    take_b = act("Make this lap &B", pairing_menu, Qt::Key_B);
    take_further = act("Show this lap be&hind A and B, or no more", pairing_menu, Qt::Key_C);
    swap = act("&Swap A and B", pairing_menu, Qt::Key_X);
    compare = act("&Compare A and B", pairing_menu, QList<QKeySequence>{Qt::Key_Return, Qt::Key_Enter});
    pairing_menu->addSeparator();
    setup = act("Set&up of both cars…", pairing_menu, QKeySequence(Qt::CTRL | Qt::Key_E));
    trial = act("Setup tri&al…", pairing_menu, QKeySequence(Qt::CTRL | Qt::Key_B));
    wing = act("How much &wing…", pairing_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_W));
    keep_prediction = act("&Keep what is predicted…", pairing_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
    print = act("P&rint the debrief sheet…", pairing_menu, QKeySequence::Print);
    save_sheet = act("Save the debrief sheet as &PDF…", pairing_menu, QKeySequence::Save);
    save_html = act("Save the debrief sheet as &HTML…", pairing_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
    stills = act("Stills of both videos on the debrief sheet", pairing_menu, QKeySequence(Qt::SHIFT | Qt::Key_Y), true);
    save_table = act("Save the &table as CSV…", pairing_menu, QKeySequence(Qt::CTRL | Qt::Key_T));
    save_picture = act("Save the p&lots as SVG or PNG…", pairing_menu, QKeySequence(Qt::CTRL | Qt::Key_D));

    add_track();

    show_sessions = act("&Sessions", view_menu, QKeySequence(Qt::CTRL | Qt::Key_1), true);
    show_compare = act("&Compare", view_menu, QKeySequence(Qt::CTRL | Qt::Key_2), true);
    show_causes = act("Ca&uses", view_menu, QKeySequence(Qt::CTRL | Qt::Key_3), true);
    show_debrief = act("&Debrief", view_menu, QKeySequence(Qt::CTRL | Qt::Key_4), true);
    view_menu->addSeparator();
    zoom_in = act("Show &less of the lap", view_menu, QList<QKeySequence>{Qt::Key_Plus, Qt::Key_Equal});
    zoom_out = act("Show &more of the lap", view_menu, Qt::Key_Minus);
    whole_lap = act("Show the &whole lap", view_menu, Qt::Key_W);
    close_up = act("Show the chosen segment close &up", view_menu, Qt::Key_C);
    view_back = act("Pan &back", view_menu, QKeySequence(Qt::CTRL | Qt::Key_Left));
    view_on = act("Pan &on", view_menu, QKeySequence(Qt::CTRL | Qt::Key_Right));
    view_menu->addSeparator();
    channels_menu = view_menu->addMenu(tr("&Further channels"));
    choose_channels = act("C&hoose channels, and sets of them…", view_menu, Qt::Key_G);
    add_panels();
    band = act("Uncertainty b&and on the gap", view_menu, Qt::Key_U, true);
    spread = act("Spread of each driver's &other clean laps", view_menu, QKeySequence(Qt::SHIFT | Qt::Key_U), true);
    lines = act("Both driven &lines close up, and how far apart", view_menu, QKeySequence(Qt::SHIFT | Qt::Key_L), true);
    values_filled = act("&Values fill the view", view_menu, Qt::Key_V, true);
    summed = act("&Join each corner with its straight", view_menu, Qt::Key_J, true);
    view_menu->addSeparator();
    add_units(bar);
    add_looks(bar);
    add_languages(bar);

    next_segment = act("&Next segment", go_menu, Qt::Key_N);
    previous_segment = act("&Previous segment", go_menu, Qt::Key_P);
    go_menu->addSeparator();
    cursor_on = act("Cursor &on", go_menu, Qt::Key_Right);
    cursor_back = act("Cursor &back", go_menu, Qt::Key_Left);
    cursor_far_on = act("Cursor &far on", go_menu, QKeySequence(Qt::SHIFT | Qt::Key_Right));
    cursor_far_back = act("Cursor far b&ack", go_menu, QKeySequence(Qt::SHIFT | Qt::Key_Left));
    cursor_start = act("Cursor to the &start of the lap", go_menu, Qt::Key_Home);
    cursor_end = act("Cursor to the &end of the lap", go_menu, Qt::Key_End);
    go_menu->addSeparator();
    find = act("&Go to a corner, session, lap or command…", go_menu, QKeySequence(Qt::CTRL | Qt::Key_G));

    add_videos(bar);

    keys = act("&Keys and mouse", help_menu, QKeySequence::HelpContents);
    change_keys = act("&Change the keys…", help_menu, QList<QKeySequence>{});
    show_log = act("Show the folder of the &log…", help_menu, QList<QKeySequence>{});
    about = act("&About Lapwright", help_menu, QList<QKeySequence>{});
}

// Of the plots; each acts on the panel in hand.
void Actions::add_panels() {
    panels_menu = view_menu->addMenu(tr("&Panels of the plots"));
    next_panel = act("Take the &next panel in hand", panels_menu, QKeySequence(Qt::SHIFT | Qt::Key_Z));
    fold_panel = act("&Fold the panel, or open it", panels_menu, Qt::Key_Z);
    taller_panel = act("Panel &taller", panels_menu, QKeySequence(Qt::CTRL | Qt::Key_Up));
    lower_panel = act("Panel &lower", panels_menu, QKeySequence(Qt::CTRL | Qt::Key_Down));
    channel_up = act("Channel one place &up", panels_menu, QKeySequence(Qt::ALT | Qt::Key_Up));
    channel_down = act("Channel one place &down", panels_menu, QKeySequence(Qt::ALT | Qt::Key_Down));
    channels_on = act("Further channels: &on", panels_menu, QKeySequence(Qt::CTRL | Qt::Key_PageDown));
    channels_back = act("Further channels: &back", panels_menu, QKeySequence(Qt::CTRL | Qt::Key_PageUp));
}

void Actions::add_videos(QMenuBar& bar) {
    videos = act("&Videos of both beside the traces", video_menu, Qt::Key_Y, true);
    video_a = act("Video of &A…", video_menu, QList<QKeySequence>{});
    video_b = act("Video of &B…", video_menu, QList<QKeySequence>{});
    video_menu->addSeparator();
    play = act("&Play and pause", video_menu, Qt::Key_Space);
    frame_on = act("One frame &on", video_menu, Qt::Key_PageDown);
    frame_back = act("One frame bac&k", video_menu, Qt::Key_PageUp);
    video_menu->addSeparator();
    one_clock = act("Both let &go at the chosen segment's start", video_menu, Qt::Key_O, true);
    loop = act("Play the chosen segment again and again", video_menu, Qt::Key_H, true);
    play_speed_menu = video_menu->addMenu(tr("Pa&ce"));
    play_speed = new QActionGroup(&bar);
    static constexpr std::array paces{std::pair(100, QT_TR_NOOP("As it &was")), std::pair(50, QT_TR_NOOP("&Half")),
                                      std::pair(25, QT_TR_NOOP("A &quarter"))};
    for (const auto& [percent, words] : paces) {
        QAction* action = act(words, play_speed_menu, QList<QKeySequence>{}, true);
        action->setData(percent);
        play_speed->addAction(action);
    }
    play_speed->actions().front()->setChecked(true);
    video_menu->addSeparator();
    sound_a = act("&Sound of A", video_menu, QKeySequence(Qt::CTRL | Qt::Key_Space), true);
    sound_b = act("So&und of B", video_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Space), true);
    auto* sounds = new QActionGroup(&bar);
    sounds->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
    sounds->addAction(sound_a);
    sounds->addAction(sound_b);
}

// The cursor says where, the chosen segment which.
void Actions::add_track() {
    rename_segment = act("&Name of the segment", track_menu, Qt::Key_D);
    start_here = act("The segment &starts at the cursor", track_menu, Qt::Key_S);
    end_here = act("The segment &ends at the cursor", track_menu, Qt::Key_E);
    split_here = act("S&plit the segment at the cursor", track_menu, Qt::Key_K);
    join_next = act("&Join the segment with the next", track_menu, QKeySequence(Qt::SHIFT | Qt::Key_K));
    other_kind = act("&Corner or straight: make it the other", track_menu, QKeySequence(Qt::SHIFT | Qt::Key_C));
    track_menu->addSeparator();
    gate_here = act("Put the timing &line at the cursor", track_menu, QKeySequence(Qt::SHIFT | Qt::Key_T));
    track_menu->addSeparator();
    export_track = act("Sa&ve the track as a file…", track_menu, QList<QKeySequence>{});
    forget_track = act("&Forget the track's gate and corners", track_menu, QList<QKeySequence>{});
}

// What is done to the book itself.
void Actions::add_book() {
    book_menu = session_menu->addMenu(tr("T&he book itself"));
    removed = act("&Removed sessions…", book_menu, QKeySequence(Qt::CTRL | Qt::Key_Delete));
    merge_book = act("&Merge a friend's book…", book_menu, QKeySequence(Qt::CTRL | Qt::Key_M));
    check_book = act("&Check the whole book", book_menu, QKeySequence(Qt::CTRL | Qt::Key_K));
    write_waiting = act("&Write what waits into the book", book_menu, QList<QKeySequence>{});
    salvage_book = act("&Save what the damaged book holds", book_menu, QList<QKeySequence>{});
}

void Actions::add_edits() {
    undo = act("&Undo", edit_menu, QKeySequence(Qt::CTRL | Qt::Key_Z));
    redo = act("&Redo", edit_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z));
    undo->setEnabled(false);
    redo->setEnabled(false);
    edit_menu->addSeparator();
    copy_table = act("Copy as a &table", edit_menu, QKeySequence::Copy);
    copy_picture = act("Copy as a p&icture", edit_menu, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
    edit_menu->addSeparator();
    const QKeySequence first(Qt::Key_M);
    const QKeySequence second(Qt::SHIFT | Qt::Key_M);
    note_a = act("Note on the segment as &A drove it", edit_menu, first);
    note_b = act("Note on the segment as &B drove it", edit_menu, second);
    note_lap = act("Note on this &lap", edit_menu, first);
    note_session = act("Note on this &session", edit_menu, second);
}

void Actions::add_units(QMenuBar& bar) {
    units_menu = view_menu->addMenu(tr("Un&its"));
    units = new QActionGroup(&bar);
    static constexpr std::array systems{std::pair(base::UnitSystem::metric, QT_TR_NOOP("&Metric: km/h, m")),
                                        std::pair(base::UnitSystem::imperial, QT_TR_NOOP("&Imperial: mph, m")),
                                        std::pair(base::UnitSystem::us, QT_TR_NOOP("&US: mph, ft"))};
    for (const auto& [system, words] : systems) {
        QAction* action = act(words, units_menu, QList<QKeySequence>{}, true);
        action->setData(static_cast<int>(system));
        units->addAction(action);
    }
    next_units = act("Nex&t units", view_menu, QKeySequence(Qt::CTRL | Qt::Key_U));
}

void Actions::add_looks(QMenuBar& bar) {
    look_menu = view_menu->addMenu(tr("Loo&k"));
    look = new QActionGroup(&bar);
    static constexpr std::array choices{std::pair(theme::Choice::light, QT_TR_NOOP("&Light")),
                                        std::pair(theme::Choice::dark, QT_TR_NOOP("&Dark")),
                                        std::pair(theme::Choice::system, QT_TR_NOOP("As the &system"))};
    for (const auto& [choice, words] : choices) {
        QAction* action = act(words, look_menu, QList<QKeySequence>{}, true);
        action->setData(static_cast<int>(choice));
        look->addAction(action);
    }
}

// Each language by its own name, so that one finds back.
void Actions::add_languages(QMenuBar& bar) {
    language_menu = view_menu->addMenu(tr("Lan&guage"));
    language = new QActionGroup(&bar);
    language->addAction(act("The system's &language", language_menu, QList<QKeySequence>{}, true));
    for (const LanguageName& one : languages) {
        QAction* action = language_menu->addAction(QString::fromUtf8(one.own_name));
        action->setObjectName(QStringLiteral("language ") + QLatin1String(one.code));
        action->setCheckable(true);
        action->setData(QString::fromLatin1(one.code));
        language->addAction(action);
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
    return {session_menu, recent_menu, book_menu,     edit_menu, pairing_menu, track_menu,      view_menu,
            units_menu,   look_menu,   language_menu, go_menu,   video_menu,   play_speed_menu, help_menu};
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
        undo->setText(what.isEmpty() ? tr("&Undo") : tr("&Undo %1").arg(in_menu(what)));
    });
    QObject::connect(&edits, &QUndoStack::redoTextChanged, redo, [redo = redo](const QString& what) {
        redo->setText(what.isEmpty() ? tr("&Redo") : tr("&Redo %1").arg(in_menu(what)));
    });
}

} // namespace lapwright::window
