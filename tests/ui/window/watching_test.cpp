// SPDX-License-Identifier: GPL-3.0-or-later
// The videos beside the traces, operated as a person would: each frame bears its number, so that what is shown is read
// back and held against the cursor.
#include "ui/window/watching.h"

#include "core/math/random.h"
#include "core/video/made_video.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/compare/video_view.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"

#include <QDoubleSpinBox>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QUndoStack>
#include <QUrl>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fstream>

using namespace lapwright;
using workspace::Side;

namespace {

constexpr double rate_hz = 25.0;
constexpr int frames = 600;

class WatchingTest : public fixture::PairedWindow {
  protected:
    [[nodiscard]] window::Watching& watching() { return window->watching(); }
    [[nodiscard]] plots::PlotStack& stack() { return window->compare_page().stack(); }
    [[nodiscard]] const analysis::Pairing& pairing() { return *window->compare_page().compared()->pairing; }

    // A video that begins a second before the lap does.
    void open_video(Side side, const std::string& name) {
        video::tests::Recipe recipe{name, "libx264", "-preset veryfast -bf 2"};
        recipe.frames = frames;
        open(side, workshop.make(recipe).path);
        ASSERT_TRUE(fixture::wait_for(
            [&] { return watching().source(side).is_open() && !watching().source(side).finding(); }, 30'000));
        watching().view(side).offset().setValue(offset_s(side));
        fixture::settle();
    }
    void open(Side side, const std::string& path) { watching().open(side, {path}); }
    [[nodiscard]] double offset_s(Side side) {
        return std::round((side == Side::a ? pairing().a : pairing().b).lap.start_s) - 1.0;
    }
    [[nodiscard]] int number_shown(Side side) {
        const QImage image = watching().view(side).frame().picture().convertToFormat(QImage::Format_RGB888);
        video::Picture picture{image.width(), image.height(), {}};
        for (int y = 0; y < image.height(); ++y)
            picture.rgb.insert(picture.rgb.end(), image.scanLine(y), image.scanLine(y) + 3 * image.width());
        return image.isNull() ? -1 : video::tests::number_in(picture).value_or(-2);
    }
    [[nodiscard]] int number_at_cursor(Side side) {
        const auto moment = workspace::at_place(pairing(), stack().cursor_m());
        const double time_s = (side == Side::a ? moment.time_a_s : moment.time_b_s) - offset_s(side);
        return std::clamp(static_cast<int>(std::floor(time_s * rate_hz)), 0, frames - 1);
    }
    [[nodiscard]] bool comes_to(Side side) {
        return fixture::wait_for([&] { return number_shown(side) == number_at_cursor(side); }, 10'000);
    }

    video::tests::Workshop workshop;
};

TEST_F(WatchingTest, FramesOfBothLapsFollowTheCursor) {
    open_video(Side::a, "a.mp4");
    open_video(Side::b, "b.mp4");
    EXPECT_TRUE(watching().panel().isVisible());
    EXPECT_TRUE(window->actions().videos->isChecked());
    math::Random random(4);
    for (int i = 0; i < 20; ++i) {
        stack().set_cursor(random.uniform() * pairing().track.line.length_m);
        EXPECT_TRUE(comes_to(Side::a)) << number_shown(Side::a) << " in place of " << number_at_cursor(Side::a);
        EXPECT_TRUE(comes_to(Side::b)) << number_shown(Side::b) << " in place of " << number_at_cursor(Side::b);
    }
}

TEST_F(WatchingTest, KeysGoFrameByFrame) {
    open_video(Side::a, "a.mp4");
    stack().set_cursor(200.0);
    ASSERT_TRUE(comes_to(Side::a));
    const int before = number_shown(Side::a);
    key(Qt::Key_PageDown);
    EXPECT_TRUE(fixture::wait_for([&] { return number_shown(Side::a) == before + 1; }));
    key(Qt::Key_PageDown);
    EXPECT_TRUE(fixture::wait_for([&] { return number_shown(Side::a) == before + 2; }));
    key(Qt::Key_PageUp);
    EXPECT_TRUE(fixture::wait_for([&] { return number_shown(Side::a) == before + 1; }));
    EXPECT_EQ(number_at_cursor(Side::a), before + 1); // the cursor went with it
}

// Without a turn of the event loop, in which the decoder could have answered.
TEST_F(WatchingTest, WhatIsDecodedIsShownAtOnce) {
    open_video(Side::a, "a.mp4");
    stack().set_cursor(200.0);
    ASSERT_TRUE(comes_to(Side::a));
    QTest::qWait(3000); // what lies around is decoded
    const int before = number_shown(Side::a);
    stack().set_cursor(208.0);
    EXPECT_GT(number_at_cursor(Side::a), before);
    EXPECT_EQ(number_shown(Side::a), number_at_cursor(Side::a));
    stack().set_cursor(192.0);
    EXPECT_LT(number_at_cursor(Side::a), before);
    EXPECT_EQ(number_shown(Side::a), number_at_cursor(Side::a));
}

TEST_F(WatchingTest, PicturesAreAsLargeAsTheirPlace) {
    open_video(Side::a, "a.mp4");
    pages::FramePicture& frame = watching().view(Side::a).frame();
    stack().set_cursor(200.0);
    ASSERT_TRUE(comes_to(Side::a));
    watching().panel().setFloating(true);
    watching().panel().resize(300, 90);
    EXPECT_TRUE(fixture::wait_for([&] { return frame.picture().width() < 128; })); // the video's own width
    const QSize most = frame.pixels();
    EXPECT_TRUE(frame.picture().width() <= most.width() + 1 && frame.picture().height() <= most.height() + 1);
    EXPECT_TRUE(comes_to(Side::a));
}

TEST_F(WatchingTest, AFrameOnTheWaySaysSo) {
    open_video(Side::a, "a.mp4");
    stack().set_cursor(200.0);
    ASSERT_TRUE(comes_to(Side::a));
    pages::FramePicture& frame = watching().view(Side::a).frame();
    const video::Frame shown = *watching().source(Side::a).frame();
    Q_EMIT watching().source(Side::a).passed(shown, 0.84);
    EXPECT_EQ(frame.mark(), QStringLiteral("for now 0.8 s earlier"));
    frame.show_passed(shown, -1.25);
    EXPECT_TRUE(frame.mark().contains(QStringLiteral("s later")));
    frame.show_frame(shown);
    EXPECT_TRUE(frame.mark().isEmpty());
}

TEST_F(WatchingTest, SpacePlaysAndPauses) {
    open_video(Side::a, "a.mp4");
    stack().set_cursor(100.0);
    key(Qt::Key_Space);
    EXPECT_TRUE(watching().playing());
    EXPECT_TRUE(fixture::wait_for([&] { return stack().cursor_m() > 120.0; }));
    key(Qt::Key_Space);
    EXPECT_FALSE(watching().playing());
    const double place_m = stack().cursor_m();
    fixture::settle();
    EXPECT_EQ(stack().cursor_m(), place_m);
    EXPECT_TRUE(comes_to(Side::a));
}

TEST_F(WatchingTest, LoopStaysInTheChosenSegment) {
    open_video(Side::a, "a.mp4");
    const auto& segments = pairing().comparison.segments;
    window->compare_page().choose(1);
    key(Qt::Key_H);
    stack().set_cursor(segments[1].segment.end_m - 1.0);
    key(Qt::Key_Space);
    EXPECT_TRUE(
        fixture::wait_for([&] { return stack().cursor_m() < segments[1].segment.end_m - 5.0; })); // it began again
    EXPECT_GE(stack().cursor_m(), segments[1].segment.start_m - 1e-6);
    key(Qt::Key_Space);
}

TEST_F(WatchingTest, OffsetMovedByHandIsUndone) {
    open_video(Side::a, "a.mp4");
    stack().set_cursor(300.0);
    ASSERT_TRUE(comes_to(Side::a));
    const int before = number_shown(Side::a);
    watching().view(Side::a).offset().stepBy(5);
    EXPECT_TRUE(fixture::wait_for([&] { return number_shown(Side::a) == std::max(before - 5, 0); }));
    window->edits().undo();
    EXPECT_TRUE(fixture::wait_for([&] { return number_shown(Side::a) == before; }));
    EXPECT_NEAR(watching().view(Side::a).offset().value(), offset_s(Side::a), 1e-9);
}

TEST_F(WatchingTest, TwoLapsOfOneSessionHaveOneOffset) {
    const workspace::SessionKey session = key_of("one.csv");
    watching().set_pairing(window->compare_page().compared(), {session, 2, session, 3});
    open_video(Side::a, "a.mp4");
    const double before = watching().view(Side::a).offset().value();
    EXPECT_EQ(watching().view(Side::b).offset().value(), before);
    watching().view(Side::b).offset().setValue(before + 0.5);
    fixture::settle();
    EXPECT_EQ(watching().view(Side::a).offset().value(), before + 0.5);
    window->edits().undo();
    EXPECT_EQ(watching().view(Side::a).offset().value(), before);
    EXPECT_EQ(watching().view(Side::b).offset().value(), before);
}

TEST_F(WatchingTest, WhatIsNoVideoIsSaidInItsPlace) {
    const std::string path = workshop.path("text.mp4");
    std::ofstream(path) << "time,speed\n";
    open(Side::b, path);
    EXPECT_TRUE(fixture::wait_for(
        [&] { return watching().view(Side::b).frame().words().contains(QStringLiteral("no video of a kind")); }));
    stack().set_cursor(100.0); // and nothing else happens
    fixture::settle();
    EXPECT_FALSE(watching().source(Side::b).is_open());
}

TEST_F(WatchingTest, DroppedVideoGoesToTheHalfItFellOn) {
    video::tests::Recipe recipe{"b.MP4", "libx264", "-preset veryfast"};
    recipe.frames = 50;
    const QString video = QString::fromStdString(workshop.make(recipe).path);
    QMimeData dropped;
    dropped.setUrls({QUrl::fromLocalFile(video)});
    QDragEnterEvent enter(QPoint(200, 300), Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    QDropEvent drop(QPointF(window->width() * 0.8, 300.0), Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &drop);
    EXPECT_TRUE(fixture::wait_for([&] { return watching().source(Side::b).is_open(); }, 30'000))
        << watching().view(Side::b).frame().words().toStdString();
    EXPECT_FALSE(watching().source(Side::a).is_open());
    EXPECT_TRUE(window->on_compare_page());
    EXPECT_EQ(watching().take_dropped({video, path("three.csv")}, true), QStringList{path("three.csv")});
}

TEST_F(WatchingTest, PanelClosesAndRestsOnOtherPages) {
    open_video(Side::a, "a.mp4");
    key(Qt::Key_1, Qt::ControlModifier);
    EXPECT_FALSE(watching().panel().isVisible());
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(watching().panel().isVisible());
    watching().panel().setFloating(true);
    fixture::settle();
    EXPECT_TRUE(watching().panel().isWindow());
    watching().panel().close();
    fixture::settle();
    EXPECT_FALSE(window->actions().videos->isChecked());
    QApplication::setActiveWindow(window.get());
    key(Qt::Key_Y);
    EXPECT_TRUE(watching().panel().isVisible());
}

// Closed and opened again, the window shows the video as it was left; a moved one is asked for.
class KeptVideoTest : public fixture::PairedWindowWithBook {
  protected:
    video::tests::Workshop workshop;
};

TEST_F(KeptVideoTest, TheBookRemembersItsPlaceAndOffset) {
    video::tests::Recipe recipe{"a.mp4", "libx264", "-preset veryfast"};
    recipe.frames = 100;
    const std::string path = workshop.make(recipe).path;
    window->watching().open(Side::a, {path});
    const auto source = [this]() -> bridge::VideoSource& { return window->watching().source(Side::a); };
    ASSERT_TRUE(fixture::wait_for([&] { return source().is_open() && !source().finding(); }, 30'000));
    window->watching().view(Side::a).offset().setValue(12.34);
    ASSERT_EQ(window->book().finish(), 0U);
    open_window();
    EXPECT_TRUE(fixture::wait_for([&] { return source().is_open() && source().step(); }, 30'000));
    EXPECT_DOUBLE_EQ(source().step()->step.offset_s, 12.34);
    EXPECT_EQ(source().step()->method, video::StepMethod::by_hand);
    EXPECT_FALSE(source().finding());
    EXPECT_TRUE(window->watching().panel().isVisible());
    ASSERT_EQ(std::rename(path.c_str(), (path + ".gone").c_str()), 0);
    open_window();
    EXPECT_TRUE(fixture::wait_for(
        [&] { return window->watching().view(Side::a).frame().words().contains(QStringLiteral("no longer there")); }));
    EXPECT_FALSE(source().is_open());
}

// A video of the recording's own name beside it is found, with a book and without one.  (That it is
// opened is seen in the real window: these pairings are of invented files.)
template <typename Base>
class BesideTest : public Base {
  protected:
    void SetUp() override {
        video::tests::Recipe recipe{"made.mp4", "libx264", "-preset veryfast"};
        recipe.frames = 50;
        ASSERT_TRUE(QFile::copy(QString::fromStdString(workshop.make(recipe).path), this->path("two.MP4")));
        Base::SetUp();
    }
    void expect_named() {
        const auto facts_of = [this](const char* name) {
            for (const pages::SessionCard* card : this->window->sessions_page().cards())
                if (card->key() == this->key_of(name)) return card->facts();
            return QString();
        };
        EXPECT_TRUE(fixture::wait_for([&] { return facts_of("two.csv").contains(QStringLiteral("video: two.MP4")); }));
        EXPECT_FALSE(facts_of("one.csv").contains(QStringLiteral("video")));
    }
    video::tests::Workshop workshop;
};
using BesideWithBook = BesideTest<fixture::PairedWindowWithBook>;
using BesideWithoutBook = BesideTest<fixture::PairedWindow>;
TEST_F(BesideWithBook, IsNamedOnTheCard) {
    expect_named();
}
TEST_F(BesideWithoutBook, IsNamedOnTheCard) {
    expect_named();
}

TEST_F(KeptVideoTest, AMissingFileIsSaidOnTheCard) {
    video::tests::Recipe recipe{"a.mp4", "libx264", "-preset veryfast"};
    recipe.frames = 50;
    const std::string path = workshop.make(recipe).path;
    window->watching().open(Side::a, {path});
    ASSERT_TRUE(fixture::wait_for([&] { return window->watching().source(Side::a).is_open(); }, 30'000));
    ASSERT_TRUE(fixture::wait_for([&] { return !window->watching().source(Side::a).finding(); }, 30'000));
    ASSERT_EQ(window->book().finish(), 0U);
    ASSERT_EQ(std::rename(path.c_str(), (path + ".gone").c_str()), 0);
    open_window();
    const auto any_says = [this](const QString& words) {
        return std::ranges::any_of(window->sessions_page().cards(),
                                   [&](const auto* card) { return card->facts().contains(words); });
    };
    EXPECT_TRUE(fixture::wait_for([&] { return any_says(QStringLiteral("video: no longer where it was")); }));
}

TEST_F(WatchingTest, SwapTakesTheVideoToTheOtherSide) {
    open_video(Side::a, "a.mp4");
    stack().set_cursor(200.0);
    ASSERT_TRUE(comes_to(Side::a));
    const double offset = watching().view(Side::a).offset().value();
    key(Qt::Key_X);
    EXPECT_TRUE(fixture::wait_for([&] { return watching().source(Side::b).is_open(); }));
    EXPECT_FALSE(watching().source(Side::a).is_open());
    EXPECT_EQ(watching().view(Side::b).offset().value(), offset);
    EXPECT_TRUE(watching().view(Side::a).frame().picture().isNull());
}

} // namespace
