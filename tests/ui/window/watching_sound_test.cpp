// SPDX-License-Identifier: GPL-3.0-or-later
// The sound of one side while the videos play: whose it is, from where, in the loop, and when there is none.
#include "core/video/made_video.h"
#include "tests/ui/fixture/heard_sound.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/compare/video_view.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/heard_side.h"
#include "ui/window/watching.h"

#include <QDoubleSpinBox>
#include <cmath>

using namespace lapwright;
using workspace::Side;

namespace {

constexpr int rate = bridge::VideoSound::rate_hz;
constexpr double length_s = 24.0;

class WatchingSoundTest : public fixture::PairedWindow {
  protected:
    void SetUp() override {
        fixture::PairedWindow::SetUp();
        window->watching().heard_side().through(heard.opener());
    }
    [[nodiscard]] window::Watching& watching() { return window->watching(); }
    [[nodiscard]] plots::PlotStack& stack() { return window->compare_page().stack(); }
    [[nodiscard]] const analysis::Pairing& pairing() { return *window->compare_page().compared()->pairing; }
    [[nodiscard]] QString said() { return watching().panel().windowTitle(); }
    [[nodiscard]] double offset_s(Side side) {
        return std::round((side == Side::a ? pairing().a : pairing().b).lap.start_s) - 1.0;
    }
    // A video that begins a second before the lap does; each of its samples says its place.
    void open_video(Side side, const std::string& name) {
        fixture::write_coded_sound(workshop.path(name + ".raw"), length_s);
        video::tests::Recipe recipe{name, "libx264", "-preset ultrafast"};
        recipe.frames = static_cast<int>(25 * length_s);
        recipe.before_input = "-f s16le -ar 48000 -ac 1 -i " + name + ".raw ";
        recipe.at_end = "-c:a pcm_s16le ";
        watching().open(side, {workshop.make(recipe).path});
        ASSERT_TRUE(fixture::wait_for(
            [&] { return watching().source(side).is_open() && !watching().source(side).finding(); }, 30'000));
        watching().view(side).offset().setValue(offset_s(side));
        fixture::settle();
    }
    [[nodiscard]] bool heard_for(std::size_t passage, double seconds) {
        return fixture::wait_for(
            [&] {
                const auto passages = heard.passages();
                return passages.size() > passage &&
                       static_cast<double>(passages[passage].samples.size()) > seconds * rate;
            },
            20'000);
    }
    // How far the passage's first sample lies behind that moment of the side's recording, in seconds.
    [[nodiscard]] double behind_s(std::size_t passage, Side side, double recording_s) {
        const int first = fixture::code_of(heard.passages()[passage].samples.front());
        const int wanted = static_cast<int>((recording_s - offset_s(side)) * rate) % fixture::sound_codes;
        return static_cast<double>((first - wanted + fixture::sound_codes) % fixture::sound_codes) / rate;
    }

    video::tests::Workshop workshop;
    fixture::HeardSound heard;
};

TEST_F(WatchingSoundTest, IsOfTheChosenSideAtTheCursorsPlace) {
    open_video(Side::a, "a.mov");
    open_video(Side::b, "b.mov");
    stack().set_cursor(100.0);
    key(Qt::Key_Space);
    fixture::settle();
    QTest::qWait(200);
    EXPECT_EQ(heard.passages().size(), 0U); // silent until it is asked for
    key(Qt::Key_Space);
    key(Qt::Key_Space, Qt::ControlModifier);
    EXPECT_TRUE(window->actions().sound_a->isChecked());
    EXPECT_TRUE(said().endsWith(QStringLiteral("sound of A"))) << said().toStdString();
    stack().set_cursor(100.0);
    const double from_a_s = workspace::at_place(pairing(), 100.0).time_a_s;
    key(Qt::Key_Space);
    ASSERT_TRUE(heard_for(0, 0.3));
    EXPECT_LT(behind_s(0, Side::a, from_a_s), 0.5); // what passed until the device was open
    // Off again: nothing more comes, while it goes on playing.
    key(Qt::Key_Space, Qt::ControlModifier);
    EXPECT_TRUE(watching().playing());
    QTest::qWait(200);
    const std::size_t sent = heard.samples();
    QTest::qWait(200);
    EXPECT_EQ(heard.samples(), sent);
    key(Qt::Key_Space);
}

TEST_F(WatchingSoundTest, OfBOnOneClockAlone) {
    open_video(Side::b, "b.mov");
    key(Qt::Key_Space, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(said().contains(QStringLiteral("no sound of B: it is stretched"))) << said().toStdString();
    stack().set_cursor(100.0);
    key(Qt::Key_Space);
    QTest::qWait(300);
    EXPECT_EQ(heard.passages().size(), 0U);
    key(Qt::Key_Space);
    key(Qt::Key_O);
    window->compare_page().choose(1);
    const auto [first, last] = window->compare_page().chosen_segments();
    ASSERT_LT(first, last); // both are let go at its start
    const double start_m = pairing().comparison.segments[first].segment.start_m;
    const double from_b_s = workspace::at_place(pairing(), start_m).time_b_s;
    key(Qt::Key_Space);
    ASSERT_TRUE(heard_for(0, 0.3));
    EXPECT_LT(behind_s(0, Side::b, from_b_s), 0.5);
    key(Qt::Key_Space);
}

TEST_F(WatchingSoundTest, NoneWhereItPlaysSlower) {
    open_video(Side::a, "a.mov");
    key(Qt::Key_Space, Qt::ControlModifier);
    window->actions().play_speed->actions()[1]->trigger();
    EXPECT_TRUE(said().contains(QStringLiteral("no sound of A: it plays slower"))) << said().toStdString();
    stack().set_cursor(100.0);
    key(Qt::Key_Space);
    QTest::qWait(300);
    EXPECT_EQ(heard.passages().size(), 0U);
    window->actions().play_speed->actions()[0]->trigger(); // while it plays
    EXPECT_TRUE(heard_for(0, 0.2));
    key(Qt::Key_Space);
}

TEST_F(WatchingSoundTest, BeginsAgainWithTheLoop) {
    open_video(Side::a, "a.mov");
    const auto& segments = pairing().comparison.segments;
    window->compare_page().choose(1);
    key(Qt::Key_H);
    key(Qt::Key_Space, Qt::ControlModifier);
    stack().set_cursor(segments[1].segment.end_m - 25.0);
    key(Qt::Key_Space);
    ASSERT_TRUE(fixture::wait_for([&] { return heard.passages().size() >= 2U; }, 10'000));
    ASSERT_TRUE(heard_for(heard.passages().size() - 1, 0.2));
    const double start_s = workspace::at_place(pairing(), segments[1].segment.start_m).time_a_s;
    EXPECT_LT(behind_s(heard.passages().size() - 1, Side::a, start_s), 0.5);
    key(Qt::Key_Space);
}

TEST_F(WatchingSoundTest, SaysWhereThereIsNoDevice) {
    open_video(Side::a, "a.mov");
    watching().heard_side().through([](int) { return nullptr; });
    key(Qt::Key_Space, Qt::ControlModifier);
    key(Qt::Key_Space);
    EXPECT_TRUE(fixture::wait_for(
        [&] { return said().endsWith(QStringLiteral("no sound: this machine has no device for it")); }, 10'000))
        << said().toStdString();
    EXPECT_TRUE(watching().playing());
    key(Qt::Key_Space);
}

} // namespace
