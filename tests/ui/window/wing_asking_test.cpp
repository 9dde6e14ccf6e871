// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing the track wants, in the window: reached by its key from any page, a sentence for each car, another cost
// asked anew.
#include "tests/ui/fixture/paired_window.h"
#include "ui/dialogs/wing_dialog.h"
#include "ui/pages/causes/causes_page.h"

#include <QDoubleSpinBox>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;

namespace {

class WingAsking : public fixture::PairedWindow {
  protected:
    [[nodiscard]] dialogs::WingDialog* dialog() const { return window->findChild<dialogs::WingDialog*>(); }
    bool wait_for_answer() {
        return fixture::wait_for([&] {
            return dialog() != nullptr && dialog()->said().contains(QLatin1String("B")) &&
                   !dialog()->said().startsWith(QLatin1String("Both"));
        });
    }
};

} // namespace

TEST_F(WingAsking, TheKeyLeadsThereAndAnotherCostIsAskedAnew) {
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(wait_for_answer());
    EXPECT_NE(window->causes_page().explanation(), nullptr);
    EXPECT_EQ(dialog()->cost().per_downforce, causes::DragCost{}.per_downforce);
    EXPECT_EQ(dialog()->cost().sd, causes::DragCost{}.sd);
    const QString usual = dialog()->said();
    dialog()->cost_box().setValue(0.9);
    EXPECT_NEAR(dialog()->cost().sd, 0.09, 1e-12) << "what a person says is known better";
    EXPECT_TRUE(fixture::wait_for([&] { return dialog()->said() != usual; })) << usual.toStdString();
    dialog()->close();
    EXPECT_TRUE(fixture::wait_for([&] { return dialog() == nullptr; }));
    QApplication::setActiveWindow(window.get());
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier); // and once more
    EXPECT_TRUE(wait_for_answer());
}

// Of the open sessions those that are not compared; the answer changes, or says why that track has none.
TEST_F(WingAsking, TheTrackOfAnotherSessionMayBeAskedAbout) {
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(wait_for_answer());
    EXPECT_FALSE(dialog()->track_box().isVisible()) << "there is no third session";
    dialog()->close();
    ASSERT_TRUE(fixture::wait_for([&] { return dialog() == nullptr; }));
    window->open({path("three.csv")});
    ASSERT_TRUE(fixture::wait_for([&] { return window->sessions().now().entries().size() == 3; }, 30'000));
    fixture::settle();
    QApplication::setActiveWindow(window.get());
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(wait_for_answer());
    ASSERT_TRUE(dialog()->track_box().isVisible());
    ASSERT_EQ(dialog()->track_box().count(), 2);
    EXPECT_EQ(dialog()->track(), -1);
    const QString here = dialog()->said();
    dialog()->track_box().setCurrentIndex(1);
    EXPECT_TRUE(fixture::wait_for([&] { return dialog()->said() != here; }));
    dialog()->track_box().setCurrentIndex(0);
    EXPECT_TRUE(fixture::wait_for([&] { return dialog()->said() == here; }));
}
