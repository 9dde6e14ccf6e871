// SPDX-License-Identifier: GPL-3.0-or-later
// "Which car is yours?", asked once on the Causes page, remembered by the book, and undone like any other edit.
#include "ui/window/my_car.h"

#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/finding_list.h"
#include "ui/window/debriefing.h"

#include <QLabel>
#include <QToolButton>

using namespace lapwright;

namespace {

// Both fixtures' window with the sessions that were asked for,
// so that a swap is one; of the findings those that advise.
bridge::Stages with_their_sessions(bridge::Stages stages) {
    stages.compare = [](const bridge::Wanted& wanted,
                        const base::Progress&) -> base::Result<workspace::ComparedPointer> {
        auto pairing = std::make_shared<analysis::Pairing>(*fixture::pairing());
        pairing->a.session = wanted.a;
        pairing->b.session = wanted.b;
        return workspace::compared(pairing);
    };
    return stages;
}

template <typename Base>
class Asks : public Base {
  protected:
    [[nodiscard]] bridge::Stages stages() const override { return with_their_sessions(Base::stages()); }
    void show_causes() {
        this->key(Qt::Key_3, Qt::ControlModifier);
        ASSERT_TRUE(fixture::wait_for([this] { return list().shown() > 0; }));
        list().set_all_shown(true);
        fixture::settle();
    }
    pages::FindingList& list() { return this->window->causes_page().findings(); }
    QToolButton* button(const QString& name) {
        for (auto* one : list().template findChildren<QToolButton*>())
            if (one->accessibleName() == name) return one;
        return nullptr;
    }
    QToolButton& a() { return *button(QStringLiteral("The car of A is yours")); }
    QToolButton& b() { return *button(QStringLiteral("The car of B is yours")); }
    void press(QToolButton& one) {
        QTest::mouseClick(&one, Qt::LeftButton);
        fixture::settle();
    }
    // Whom the advice of the list speaks to, and that of the sheet.
    [[nodiscard]] std::string spoken_to() {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // rows of before
        bool to_a = false;
        bool to_b = false;
        for (const auto* label : list().template findChildren<QLabel*>()) {
            to_a = to_a || label->text().contains(QStringLiteral("Try next: A:"));
            to_b = to_b || label->text().contains(QStringLiteral("Try next: B:"));
        }
        return std::string(to_a ? "A" : "") + (to_b ? "B" : "");
    }
    [[nodiscard]] std::vector<sheet::Finding> on_the_sheet() const {
        return this->window->debriefing().composed()->findings;
    }
    [[nodiscard]] bool asks() {
        for (const auto* label : list().template findChildren<QLabel*>())
            if (label->text() == QStringLiteral("Which car is yours?")) return true;
        return false;
    }
};

using MyCarWithBook = Asks<fixture::PairedWindowWithBook>;
using MyCarWithoutBook = Asks<fixture::PairedWindow>;

} // namespace

TEST_F(MyCarWithBook, IsAskedOnceAndFollowsTheSwapAndTheNextWindow) {
    show_causes();
    EXPECT_TRUE(asks());
    EXPECT_EQ(spoken_to(), "AB");
    press(a());
    EXPECT_FALSE(asks());
    EXPECT_TRUE(a().isChecked());
    EXPECT_EQ(spoken_to(), "A");
    window->actions().swap->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return b().isChecked() && list().shown() > 0; }));
    EXPECT_FALSE(a().isChecked());
    EXPECT_EQ(spoken_to(), "B");
    ASSERT_EQ(window->book().finish(), 0U);
    open_window(); // another run, the same book
    show_causes();
    ASSERT_TRUE(fixture::wait_for([this] { return a().isChecked(); }));
    EXPECT_FALSE(asks());
    EXPECT_EQ(spoken_to(), "A");
}

TEST_F(MyCarWithBook, IsUndoneAndTakenBack) {
    show_causes();
    press(b());
    EXPECT_EQ(spoken_to(), "B");
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo choice of your car"));
    window->actions().undo->trigger();
    fixture::settle();
    EXPECT_TRUE(asks());
    EXPECT_EQ(spoken_to(), "AB");
    window->actions().redo->trigger();
    fixture::settle();
    EXPECT_TRUE(b().isChecked());
    press(b()); // again: nobody's
    EXPECT_FALSE(b().isChecked());
    EXPECT_EQ(spoken_to(), "AB");
}

TEST_F(MyCarWithBook, TheSheetSpeaksToTheSameDriver) {
    show_causes();
    press(b());
    ASSERT_TRUE(fixture::wait_for([this] { return window->debriefing().composed().has_value(); }));
    bool any = false;
    for (const sheet::Finding& finding : on_the_sheet()) {
        EXPECT_FALSE(finding.try_next.starts_with("A:")) << finding.try_next;
        any = any || finding.try_next.starts_with("B:");
    }
    press(a());
    for (const sheet::Finding& finding : on_the_sheet()) {
        EXPECT_FALSE(finding.try_next.starts_with("B:")) << finding.try_next;
        any = any || finding.try_next.starts_with("A:");
    }
    EXPECT_TRUE(any) << "the invented findings advise somebody";
}

TEST_F(MyCarWithoutBook, IsRememberedForThisRun) {
    show_causes();
    press(a());
    EXPECT_EQ(spoken_to(), "A");
    window->actions().swap->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return b().isChecked() && list().shown() > 0; }));
    EXPECT_EQ(spoken_to(), "B");
}
