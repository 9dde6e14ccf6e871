// SPDX-License-Identifier: GPL-3.0-or-later
// Both drivers' videos beside the traces: a panel that follows the cursor, plays the pairing, and may stand in a window
// of its own.
#pragma once

#include "core/book/videos.h"
#include "core/workspace/compared.h"
#include "core/workspace/playing.h"
#include "core/workspace/stills.h"
#include "ui/bridge/video_source.h"
#include "ui/theme/palette.h"

#include <QDockWidget>
#include <QElapsedTimer>
#include <QTimer>
#include <array>
#include <functional>

class QMainWindow;
class QUndoStack;

namespace lapwright::bridge {
class BookQueue;
} // namespace lapwright::bridge

namespace lapwright::pages {
class ComparePage;
class VideoView;
} // namespace lapwright::pages

namespace lapwright::window {

struct Actions;
class HeardSide;
struct HowPlayed;
class PageStack;

class Watching : public QObject {
    Q_OBJECT

  public:
    using Side = workspace::Side;
    struct Parts {
        const Actions& actions;
        PageStack& pages;
        bridge::BookQueue& book;
        QUndoStack& edits;
        QMainWindow& window;
    };
    explicit Watching(const Parts& parts); // all outlive it

    void set_pairing(const workspace::ComparedPointer& compared, const workspace::TwoLaps& laps);
    void set_palette(const theme::Palette& palette);
    void open(Side side, const std::vector<std::string>& paths, const std::optional<video::StepEstimate>& known = {});
    // Of dropped files the videos, for A where they fell on the left half, else for B; those that are left.
    [[nodiscard]] QStringList take_dropped(const QStringList& files, bool on_left_half);
    [[nodiscard]] bridge::VideoSource& source(Side side) { return *sides_[index(side)].source; }
    [[nodiscard]] pages::VideoView& view(Side side) { return *sides_[index(side)].view; }
    [[nodiscard]] QDockWidget& panel() { return *panel_; }
    [[nodiscard]] bool playing() const { return ticks_.isActive(); }
    [[nodiscard]] HeardSide& heard_side() { return *heard_; }
    // Nothing where it is not open or not in step.
    [[nodiscard]] std::optional<workspace::VideoInStep> in_step(Side side) const;

  Q_SIGNALS:
    void videos_changed(); // opened, closed, put in step

  private:
    struct OneSide {
        pages::VideoView* view = nullptr;
        bridge::VideoSource* source = nullptr;
        workspace::SessionKey session; // whose video it is
        bool looks = false;            // for the step; where both sides have one video, one of them does
    };
    static constexpr std::size_t index(Side side) { return side == Side::a ? 0 : 1; }

    void follow_page();
    [[nodiscard]] pages::ComparePage& page() const;
    [[nodiscard]] Side side_of(const bridge::VideoSource* source) const;
    void make_panel();
    void connect_side(Side side);
    void connect_actions();
    void connect_book();
    void keep(Side side); // in the book
    void share(Side side);
    [[nodiscard]] std::optional<Side> side_with(const workspace::SessionKey& session) const;
    void ask_for_video(Side side);
    void open_files(Side side, const QStringList& files);
    void follow_source(Side side);
    void move_by_hand(Side side, double offset_s);
    void prepare_playing();
    void follow_cursor();
    void play_or_pause();
    void begin_at(double place_m);
    void tick();
    void step_frame(bool on);
    void show(const workspace::PlayedMoment& moment);
    void stop();
    void hear();
    [[nodiscard]] HowPlayed how_played() const;
    void say_how();
    [[nodiscard]] const analysis::Side* shown(Side side) const;
    [[nodiscard]] double speed() const;

    Parts parts_;
    QDockWidget* panel_ = nullptr;
    std::array<OneSide, 2> sides_;
    workspace::ComparedPointer compared_;
    QTimer ticks_;
    QElapsedTimer since_;     // the last tick
    double played_a_s_ = 0.0; // A's recording
    double let_go_m_ = 0.0;   // where both were let go
    workspace::PlayedMoment moment_;
    HeardSide* heard_ = nullptr;
    bool moving_cursor_ = false;
    bool sized_ = false; // the panel has once been given its room
};

} // namespace lapwright::window
