// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/watching.h"

#include "core/video/video.h"
#include "core/workspace/kept_step.h"
#include "ui/bridge/book_queue.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/compare/video_view.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/heard_side.h"
#include "ui/window/keep_video.h"
#include "ui/window/moved_by_hand.h"
#include "ui/window/page_stack.h"
#include "ui/window/video_words.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QMainWindow>
#include <QUndoStack>
#include <algorithm>
#include <utility>

namespace lapwright::window {
namespace {

using models::text;
using workspace::Side;

constexpr std::array both{Side::a, Side::b};

QString letter(Side side) {
    return side == Side::a ? QStringLiteral("A") : QStringLiteral("B");
}

} // namespace

Watching::Watching(const Parts& parts) : QObject(&parts.window), parts_(parts) {
    make_panel();
    for (const Side side : both)
        connect_side(side);
    connect_actions();
    connect_book();
    connect(&parts_.pages, &QStackedWidget::currentChanged, this, &Watching::follow_page);
    connect(&page().stack(), &plots::PlotStack::cursor_moved, this, &Watching::follow_cursor);
    prepare_playing();
}

void Watching::make_panel() {
    panel_ = new QDockWidget(tr("Videos"), &parts_.window);
    panel_->setObjectName(QStringLiteral("videos"));
    auto* content = new QWidget(panel_);
    auto* row = new QHBoxLayout(content);
    row->setContentsMargins(8, 0, 8, 4);
    for (const Side side : both) {
        OneSide& one = sides_[index(side)];
        one.view = new pages::VideoView(side, content);
        one.source = new bridge::VideoSource(this);
        row->addWidget(one.view, 1);
    }
    panel_->setWidget(content);
    parts_.window.addDockWidget(Qt::BottomDockWidgetArea, panel_);
    panel_->hide();
}

void Watching::connect_side(Side side) {
    OneSide& one = sides_[index(side)];
    connect(&one.view->frame(), &pages::FramePicture::resized, this,
            [this, side] { source(side).fit(view(side).frame().pixels()); });
    connect(one.view, &pages::VideoView::choose_asked, this, [this, side] { ask_for_video(side); });
    connect(one.view, &pages::VideoView::offset_set, this,
            [this, side](double offset_s) { move_by_hand(side, offset_s); });
    // A source may change sides.
    connect(one.source, &bridge::VideoSource::changed, this,
            [this, source = one.source] { follow_source(side_of(source)); });
    connect(one.source, &bridge::VideoSource::changed, this, [this, source = one.source] { share(side_of(source)); });
    connect(one.source, &bridge::VideoSource::changed, this, &Watching::videos_changed);
    connect(one.source, &bridge::VideoSource::put_in_step, this,
            [this, source = one.source] { keep(side_of(source)); });
    connect(one.source, &bridge::VideoSource::shown, this, [this, source = one.source](const video::Frame& frame) {
        view(side_of(source)).frame().show_frame(frame);
    });
    connect(one.source, &bridge::VideoSource::passed, this,
            [this, source = one.source](const video::Frame& frame, double earlier_s) {
                view(side_of(source)).frame().show_passed(frame, earlier_s);
            });
    connect(one.source, &bridge::VideoSource::refused, this, [this, source = one.source](const QString& sentence) {
        view(side_of(source)).frame().show_words(sentence);
    });
}

void Watching::connect_actions() {
    const Actions& a = parts_.actions;
    connect(a.video_a, &QAction::triggered, this, [this] { ask_for_video(Side::a); });
    connect(a.video_b, &QAction::triggered, this, [this] { ask_for_video(Side::b); });
    connect(a.videos, &QAction::toggled, this, &Watching::follow_page);
    connect(panel_, &QDockWidget::visibilityChanged, this, [this](bool visible) {
        if (visible) follow_cursor();
        // Closed by its own button; on another page it only rests.
        if (!visible && parts_.pages.on_compare() && panel_->isHidden()) parts_.actions.videos->setChecked(false);
    });
    connect(a.play, &QAction::triggered, this, &Watching::play_or_pause);
    connect(a.frame_on, &QAction::triggered, this, [this] { step_frame(true); });
    connect(a.frame_back, &QAction::triggered, this, [this] { step_frame(false); });
    connect(a.one_clock, &QAction::toggled, this, [this] { begin_at(page().stack().cursor_m()); });
    connect(a.play_speed, &QActionGroup::triggered, this, &Watching::hear);
}

void Watching::connect_book() {
    connect(&parts_.pages.sessions(), &pages::SessionsPage::card_made, this,
            [this](const workspace::SessionKey& session, const std::string& file) {
                parts_.book.find_video(session, file);
            });
    connect(&parts_.book, &bridge::BookQueue::video_found, this,
            [this](const workspace::SessionKey& session, const std::vector<std::string>& paths,
                   const std::optional<book::KeptStep>& step) {
                parts_.pages.sessions().show_video(session, names_of(paths));
                const auto side = side_with(session);
                if (side && !source(*side).is_open()) open(*side, paths, workspace::estimate_of(step));
            });
    connect(&parts_.book, &bridge::BookQueue::video_missing, this,
            [this](const workspace::SessionKey& session, const base::Error& error) {
                parts_.pages.sessions().show_video(session, tr("no longer where it was"));
                if (const auto side = side_with(session)) view(*side).frame().show_words(text(base::one_line(error)));
            });
}

std::optional<Side> Watching::side_with(const workspace::SessionKey& session) const {
    for (const Side side : both)
        if (sides_[index(side)].session == session) return side;
    return {};
}

// Two laps of one session have one video, of which one source looks for the step.
void Watching::share(Side side) {
    const Side other = side == Side::a ? Side::b : Side::a;
    if (sides_[0].session == sides_[1].session && sides_[index(side)].looks && !sides_[index(other)].looks &&
        source(other).paths() == source(side).paths())
        source(other).follow(source(side));
}

void Watching::keep(Side side) {
    keep_video(parts_.book, sides_[index(side)].session, source(side));
}

std::optional<workspace::VideoInStep> Watching::in_step(Side side) const {
    const bridge::VideoSource& from = *sides_[index(side)].source;
    if (!from.is_open() || !from.step()) return {};
    return workspace::VideoInStep{from.paths(), from.step()->step};
}

const analysis::Side* Watching::shown(Side side) const {
    if (!compared_) return nullptr;
    return side == Side::a ? &compared_->pairing->a : &compared_->pairing->b;
}

void Watching::set_palette(const theme::Palette& palette) {
    for (const OneSide& one : sides_)
        one.view->set_palette(palette);
}

// Only where both laps are seen.
void Watching::follow_page() {
    if (!parts_.pages.on_compare()) stop();
    const bool shown = parts_.pages.on_compare() && parts_.actions.videos->isChecked();
    panel_->setVisible(shown);
    // The first time as large as traces and table leave it; then as a person left it.
    constexpr int beside_px = 610; // what seven rows of the table need, with all above and below them
    constexpr int least_px = 150;
    const int most_px = parts_.window.height() * 2 / 5;
    if (shown && !std::exchange(sized_, true))
        parts_.window.resizeDocks({panel_}, {std::min(std::max(parts_.window.height() - beside_px, least_px), most_px)},
                                  Qt::Vertical);
}

pages::ComparePage& Watching::page() const {
    return parts_.pages.compare();
}

Side Watching::side_of(const bridge::VideoSource* source) const {
    return sides_[0].source == source ? Side::a : Side::b;
}

// A video belongs to its session: it goes with it to the other side, and away with it.
void Watching::set_pairing(const workspace::ComparedPointer& compared, const workspace::TwoLaps& laps) {
    stop();
    compared_ = compared;
    const auto session = [&laps](Side side) { return side == Side::a ? laps.session_a : laps.session_b; };
    if (sides_[0].session == session(Side::b) && sides_[1].session == session(Side::a)) {
        std::swap(sides_[0].source, sides_[1].source);
        std::swap(sides_[0].session, sides_[1].session);
        std::swap(sides_[0].looks, sides_[1].looks);
    }
    for (const Side side : both) {
        OneSide& one = sides_[index(side)];
        one.source->fit(one.view->frame().pixels());
        one.source->read_ahead(shown(side)->lap.start_s, shown(side)->lap.end_s);
        const bool another = one.session != session(side);
        one.session = session(side);
        if (another) {
            one.source->close();
            one.looks = false;
            parts_.book.find_video(one.session, shown(side)->session->recording->source_file);
        }
        one.view->set_title(letter(side) + QStringLiteral("  ") + text(shown(side)->session->title()));
        if (one.source->frame())
            one.view->frame().show_frame(*one.source->frame());
        else
            one.view->frame().show_words(
                tr("No video of %1: choose one, and it is put in step by itself").arg(letter(side)));
        follow_source(side);
    }
    begin_at(page().stack().cursor_m());
}

QStringList Watching::take_dropped(const QStringList& files, bool on_left_half) {
    if (!compared_ || !parts_.pages.on_compare()) return files;
    QStringList videos;
    QStringList rest;
    for (const QString& file : files)
        (video::is_named_as_video(models::file_name(file)) ? videos : rest) << file;
    open_files(on_left_half ? Side::a : Side::b, videos);
    return rest;
}

void Watching::ask_for_video(Side side) {
    open_files(side, QFileDialog::getOpenFileNames(
                         &parts_.window, tr("Video of %1, all files of it that the camera wrote").arg(letter(side))));
}

void Watching::open_files(Side side, const QStringList& files) {
    std::vector<std::string> paths;
    for (const QString& file : files)
        paths.push_back(models::file_name(file));
    std::ranges::sort(paths);
    if (!paths.empty()) open(side, paths);
}

void Watching::open(Side side, const std::vector<std::string>& paths, const std::optional<video::StepEstimate>& known) {
    const analysis::Side* const lap = shown(side);
    if (lap == nullptr) return;
    parts_.actions.videos->setChecked(true);
    parts_.pages.sessions().show_video(sides_[index(side)].session, names_of(paths));
    for (const Side one : both) {
        if (sides_[index(one)].session != sides_[index(side)].session)
            continue; // two laps of one session have one video
        view(one).frame().show_words(tr("The video is being opened"));
        sides_[index(one)].looks = one == side;
        source(one).open(paths, one == side ? lap->session : nullptr, known);
    }
    follow_cursor();
}

void Watching::follow_source(Side side) {
    const bridge::VideoSource& from = source(side);
    view(side).set_step(from.is_open(), from.step() ? from.step()->step.offset_s : 0.0, step_words(from));
}

void Watching::move_by_hand(Side side, double offset_s) {
    bridge::VideoSource& from = source(side);
    const video::StepEstimate before = from.step().value_or(video::StepEstimate{});
    video::StepEstimate now = video::step_by_hand({0.0, offset_s}, {});
    now.step.drift = before.step.drift;
    now.step.around_s = before.step.around_s;
    // Two laps of one session have one video.
    std::vector<std::pair<bridge::VideoSource*, int>> moved;
    for (const OneSide& one : sides_)
        if (one.session == sides_[index(side)].session) moved.emplace_back(one.source, one.source->serial());
    parts_.edits.push(new MovedByHand(tr("offset of the video of %1").arg(letter(side)), before, now,
                                      [moved](const video::StepEstimate& step) {
                                          for (const auto& [source, serial] : moved)
                                              if (source->serial() == serial) source->set_step(step);
                                      }));
}

void Watching::prepare_playing() {
    constexpr int tick_ms = 16; // 60 times a second
    ticks_.setInterval(tick_ms);
    ticks_.setTimerType(Qt::PreciseTimer);
    connect(&ticks_, &QTimer::timeout, this, &Watching::tick);
    heard_ = new HeardSide(parts_.actions, this);
    connect(heard_, &HeardSide::chosen, this, &Watching::hear);
    connect(heard_, &HeardSide::refused, this, &Watching::say_how);
}

double Watching::speed() const {
    constexpr double percent = 100.0;
    const QAction* chosen = parts_.actions.play_speed->checkedAction();
    return chosen == nullptr ? 1.0 : chosen->data().toInt() / percent;
}

void Watching::follow_cursor() {
    if (moving_cursor_) return;
    begin_at(page().stack().cursor_m());
}

// Both stand there; playing goes on from it.
void Watching::begin_at(double place_m) {
    if (!compared_) return;
    let_go_m_ = place_m;
    const workspace::PlayedMoment moment = workspace::at_place(*compared_->pairing, place_m);
    played_a_s_ = moment.time_a_s;
    show(moment);
    if (playing()) hear();
}

void Watching::show(const workspace::PlayedMoment& moment) {
    moment_ = moment;
    if (!panel_->isVisible()) return;
    source(Side::a).show(moment.time_a_s);
    source(Side::b).show(moment.time_b_s);
    say_how();
}

HowPlayed Watching::how_played() const {
    HowPlayed how;
    how.one_clock = parts_.actions.one_clock->isChecked();
    how.speed = speed();
    how.stretch_of_b = workspace::stretch_of_b(*compared_->pairing, page().stack().cursor_m());
    how.sound = heard_->words(how);
    return how;
}

void Watching::say_how() {
    if (compared_) panel_->setWindowTitle(words(how_played()));
}

// From the moment that is shown on.
void Watching::hear() {
    if (const auto side = heard_->side(); side && playing())
        heard_->play(how_played(), source(*side), *side == Side::a ? moment_.time_a_s : moment_.time_b_s);
    else
        heard_->stop();
    say_how();
}

void Watching::stop() {
    ticks_.stop();
    hear();
}

// From the chosen segment's start on one clock, from the cursor at one place.
void Watching::play_or_pause() {
    if (!compared_) return;
    if (playing()) {
        stop();
        return;
    }
    const auto [first, last] = page().chosen_segments();
    if (parts_.actions.one_clock->isChecked() && first < last)
        page().stack().set_cursor(compared_->pairing->comparison.segments[first].segment.start_m);
    begin_at(page().stack().cursor_m());
    since_.start();
    ticks_.start();
    hear();
}

void Watching::tick() {
    const analysis::Pairing& pairing = *compared_->pairing;
    constexpr double per_second = 1e3;
    played_a_s_ += speed() * static_cast<double>(since_.restart()) / per_second;
    workspace::PlayedMoment moment = parts_.actions.one_clock->isChecked()
                                         ? workspace::on_one_clock(pairing, let_go_m_, played_a_s_)
                                         : workspace::at_time_of(pairing, Side::a, played_a_s_);
    const auto [first, last] = page().chosen_segments();
    const bool loops = parts_.actions.loop->isChecked() && first < last;
    const double end_m = loops ? pairing.comparison.segments[last - 1].segment.end_m : pairing.track.line.length_m;
    const bool ended = moment.place_m >= end_m || moment.time_a_s < played_a_s_;
    if (ended && !loops) stop();
    const double to_m = ended && loops ? pairing.comparison.segments[first].segment.start_m : moment.place_m;
    moving_cursor_ = true;
    page().stack().set_cursor(to_m);
    moving_cursor_ = false;
    if (ended && loops)
        begin_at(to_m);
    else
        show(moment);
}

// Of A's video; where there is none, of B's.
void Watching::step_frame(bool on) {
    if (!compared_) return;
    stop();
    const analysis::Pairing& pairing = *compared_->pairing;
    const Side side = source(Side::a).is_open() ? Side::a : Side::b;
    const auto time_s = on ? source(side).next_frame_s() : source(side).frame_before_s();
    if (!time_s) return;
    const workspace::PlayedMoment moment = workspace::at_time_of(pairing, side, *time_s);
    moving_cursor_ = true;
    page().stack().set_cursor(moment.place_m);
    moving_cursor_ = false;
    let_go_m_ = moment.place_m;
    played_a_s_ = moment.time_a_s;
    show(moment);
}

} // namespace lapwright::window
