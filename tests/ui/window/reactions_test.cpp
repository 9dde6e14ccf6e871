// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window takes to its first reaction: what counts as one, and which.
#include "ui/window/reactions.h"

#include "tests/ui/fixture/waiting.h"

#include <qcustomplot.h>

using namespace lapwright;

namespace {

constexpr int slow_ms = 40;

// A plot that answers as slowly as it is told, or not at all.
class Answering : public QCustomPlot {
  public:
    bool answers = true;
    int takes_ms = 0;

  protected:
    void mouseMoveEvent(QMouseEvent*) override { answer(); }
    void keyPressEvent(QKeyEvent*) override { answer(); }
    void wheelEvent(QWheelEvent*) override { answer(); }

  private:
    void answer() {
        if (!answers) return;
        QTest::qSleep(takes_ms);
        update();
    }
};

class ReactionsTest : public testing::Test {
  protected:
    void SetUp() override {
        plot_.resize(300, 200);
        plot_.show();
        fixture::settle();
        plot_.setFocus();
    }

    void move_to(int x_px) {
        QTest::mouseMove(plot_.windowHandle(), {x_px, 100});
        fixture::settle();
    }

    // To the window as the desktop gives it.
    void press(Qt::Key key) {
        QTest::keyClick(plot_.windowHandle(), key);
        fixture::settle();
    }

    bool on_plots_ = true;
    Answering plot_;
    window::Reactions reactions_{[this] { return on_plots_; }};
};

TEST_F(ReactionsTest, PointerThatMovesTheCursorCountsForThePlotsAlone) {
    plot_.takes_ms = slow_ms;
    for (const int x_px : {50, 60, 70})
        move_to(x_px);
    ASSERT_EQ(reactions_.on_plots().seconds.size(), 3U);
    EXPECT_GE(reactions_.on_plots().quantile_s(0.0), 0.001 * slow_ms);
    EXPECT_TRUE(reactions_.to_all().seconds.empty());
}

TEST_F(ReactionsTest, PointerThatMovesNothingIsNotBlamedForWhatIsPaintedLater) {
    plot_.answers = false;
    move_to(50);
    QTest::qWait(slow_ms);
    plot_.update();
    fixture::settle();
    EXPECT_TRUE(reactions_.on_plots().seconds.empty());
}

TEST_F(ReactionsTest, KeysThatMoveOrZoomCountForBoth) {
    plot_.takes_ms = slow_ms;
    press(Qt::Key_Right);
    press(Qt::Key_Plus);
    plot_.takes_ms = 0;
    press(Qt::Key_W);
    EXPECT_EQ(reactions_.to_all().seconds.size(), 3U);
    EXPECT_EQ(reactions_.on_plots().seconds.size(), 2U);
    EXPECT_GE(reactions_.to_all().quantile_s(1.0), 0.001 * slow_ms);
}

TEST_F(ReactionsTest, NothingMovesACursorOnAnotherPage) {
    on_plots_ = false;
    move_to(50);
    press(Qt::Key_Right);
    EXPECT_TRUE(reactions_.on_plots().seconds.empty());
    EXPECT_EQ(reactions_.to_all().seconds.size(), 1U);
}

TEST(ReactionTimesTest, QuantilesAreOfWhatWasMeasured) {
    EXPECT_EQ(window::ReactionTimes{}.quantile_s(0.5), 0.0);
    const window::ReactionTimes times{{0.5, 0.1, 0.4, 0.2, 0.3}};
    EXPECT_EQ(times.quantile_s(0.0), 0.1);
    EXPECT_EQ(times.quantile_s(0.5), 0.3);
    EXPECT_EQ(times.quantile_s(1.0), 0.5);
}

} // namespace
