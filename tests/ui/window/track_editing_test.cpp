// SPDX-License-Identifier: GPL-3.0-or-later
// Corners named, moved, split and joined in the window, by keys and by the mouse, on the sample sessions: undone, kept
// in the book, there when the window is opened again, written as a track file.
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/compare/segment_view.h"
#include "ui/plots/plot_stack.h"
#include "ui/plots/track_map.h"
#include "ui/window/exporting.h"
#include "ui/window/notices.h"

#include <QLineEdit>
#include <QMenu>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;

namespace {

class TrackEditingTest : public fixture::PairedWindow {
  protected:
    [[nodiscard]] bridge::Stages stages() const override {
        return bridge::analysis_stages({}, path("book.sqlite").toStdString());
    }
    void SetUp() override {
        show_window();
        window->start({QStringLiteral(SAMPLE_SESSIONS "/dunlin-saturday-2.txt"),
                       QStringLiteral(SAMPLE_SESSIONS "/plover-saturday-2.csv")});
        ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }, 60'000));
        fixture::settle();
        ASSERT_EQ(window->book().finish(), 0U);
        settle_compared();
        page().choose(1);
        fixture::settle();
    }
    pages::ComparePage& page() { return window->compare_page(); }
    [[nodiscard]] const std::vector<track::Segment>& segments() { return page().compared()->pairing->track.segments; }
    // Names that the book had come after the first comparison and are compared again.
    void settle_compared() {
        ASSERT_TRUE(
            fixture::wait_for([this] { return window->pairing().shows(window->sessions().now().picks()); }, 60'000));
        fixture::settle();
    }
    bool wait_for_segment(const std::string& name) {
        return fixture::wait_for(
            [&] { return std::ranges::any_of(segments(), [&](const auto& s) { return s.name == name; }); }, 60'000);
    }
    bool wait_for_count(std::size_t count) {
        return fixture::wait_for([&] { return segments().size() == count; }, 60'000);
    }
};

} // namespace

TEST_F(TrackEditingTest, ACornerIsNamedInItsRowAndUndoneAndThereNextTime) {
    const std::string before = segments()[1].name;
    key(Qt::Key_D);
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(line, nullptr) << "the name is typed in its place";
    EXPECT_EQ(line->text().toStdString(), before);
    line->selectAll();
    type(QStringLiteral("Kiln corner"));
    press(Qt::Key_Return);
    ASSERT_TRUE(wait_for_segment("Kiln corner"));
    EXPECT_EQ(page().chosen_segment(), 1) << "the person stays where they were";
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo name Kiln corner"));
    window->actions().undo->trigger();
    ASSERT_TRUE(wait_for_segment(before));
    window->actions().redo->trigger();
    ASSERT_TRUE(wait_for_segment("Kiln corner"));
    ASSERT_EQ(window->book().finish(), 0U);
    SetUp();
    EXPECT_EQ(segments()[1].name, "Kiln corner");
}

TEST_F(TrackEditingTest, EndsGoToTheCursorAndPartsAreSplitAndJoined) {
    const std::vector<track::Segment> before = segments();
    page().stack().set_cursor(before[1].end_m + 25.0);
    key(Qt::Key_E);
    ASSERT_TRUE(
        fixture::wait_for([&] { return std::abs(segments()[1].end_m - before[1].end_m - 25.0) < 0.1; }, 60'000));
    EXPECT_NEAR(segments()[2].start_m, before[1].end_m + 25.0, 0.1);
    page().stack().set_cursor(0.5 * (before[1].start_m + before[1].end_m));
    key(Qt::Key_K);
    ASSERT_TRUE(wait_for_count(before.size() + 1));
    key(Qt::Key_K, Qt::ShiftModifier);
    ASSERT_TRUE(wait_for_count(before.size()));
    for (int i = 0; i < 3; ++i) {
        window->actions().undo->trigger();
        settle_compared();
    }
    ASSERT_TRUE(fixture::wait_for([&] { return std::abs(segments()[1].end_m - before[1].end_m) < 0.1; }, 60'000));
}

TEST_F(TrackEditingTest, AnEndIsDraggedOnTheMapAndWhatCannotBeIsSaid) {
    plots::TrackMap& map = page().map();
    const double end_m = segments()[1].end_m;
    const QPoint from = map.pixel_at(end_m).toPoint();
    const QPoint to = map.pixel_at(end_m + 60.0).toPoint();
    QTest::mousePress(&map, Qt::LeftButton, {}, from);
    QTest::mouseMove(&map, (from + to) / 2);
    QTest::mouseMove(&map, to);
    QTest::mouseRelease(&map, Qt::LeftButton, {}, to);
    ASSERT_TRUE(fixture::wait_for([&] { return segments()[1].end_m > end_m + 30.0; }, 60'000));
    page().stack().set_cursor(segments()[1].start_m + 2.0);
    key(Qt::Key_K);
    EXPECT_THAT(window->notices().shown().toStdString(), HasSubstr("would be shorter than 10 m"));
}

TEST_F(TrackEditingTest, TheTimingLineGoesToTheCursorAndTheTrackIsWrittenAsAFile) {
    const double length_m = page().compared()->pairing->track.line.length_m;
    const std::string first = segments()[3].name;
    page().stack().set_cursor(segments()[3].start_m + 1.0);
    key(Qt::Key_T, Qt::ShiftModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return segments().front().name == first; }, 60'000));
    EXPECT_NEAR(page().compared()->pairing->track.line.length_m, length_m, 5.0);
    const QString file = path("out.track.json");
    ASSERT_TRUE(window->exporting().save_track(file).ok());
    const auto written = track::read_track_record(file.toStdString());
    ASSERT_TRUE(written.ok());
    EXPECT_EQ(written.value().segments.front().name, first);
}

TEST_F(TrackEditingTest, TheMenuUnderThePointerActsThere) {
    plots::TrackMap& map = page().map();
    const double place_m = 0.5 * (segments()[4].start_m + segments()[4].end_m);
    const QPoint at = map.pixel_at(place_m).toPoint();
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, map.mapToGlobal(at));
    QApplication::sendEvent(&map, &event);
    fixture::settle();
    EXPECT_EQ(page().chosen_segment(), 4);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_TRUE(menu->actions().contains(window->actions().split_here));
    EXPECT_TRUE(menu->actions().contains(window->actions().copy_picture));
    menu->close();
}
