// SPDX-License-Identifier: GPL-3.0-or-later
// What is printed or saved says what holds now: names that were just given, laps that were just picked, the causes.
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/sessions/names_form.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QFileDialog>
#include <QLineEdit>
#include <QTimer>
#include <atomic>

using namespace lapwright;

namespace {

class SettledDebriefTest : public fixture::PairedWindowWithBook {
  protected:
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages stages = PairedWindowWithBook::stages();
        stages.compare = [compare = stages.compare, times = times_compared, held = held_up](auto&&... with) {
            while (*held)
                QTest::qSleep(1);
            ++*times;
            return compare(with...);
        };
        return stages;
    }
    void SetUp() override {
        PairedWindowWithBook::SetUp();
        answers_.setInterval(5);
        QObject::connect(&answers_, &QTimer::timeout, [this] { answer(); });
        answers_.start();
    }

    // On the first card, and to be saved before the laps can have been compared anew.
    void name_and_save(const QString& driver) {
        go_to_sessions();
        ASSERT_EQ(window->book().finish(), 0U);
        fixture::settle();
        QLineEdit& line = window->sessions_page().cards().front()->names().line(pages::NamesForm::driver);
        line.setFocus();
        fixture::settle();
        line.selectAll();
        type(driver);
        press(Qt::Key_Return);
        const auto& named = window->sessions().now().entries().front();
        ASSERT_TRUE(
            fixture::wait_for([&] { return workspace::names_of(*named.session).driver == driver.toStdString(); }));
        window->actions().save_sheet->trigger();
    }
    [[nodiscard]] bool named(const std::string& driver) const {
        return workspace::names_of(*window->sessions().now().entries().front().session).driver == driver;
    }
    [[nodiscard]] bool saved() const { return saw_dialog_; }

    const std::shared_ptr<std::atomic<int>> times_compared = std::make_shared<std::atomic<int>>(0);
    const std::shared_ptr<std::atomic<bool>> held_up = std::make_shared<std::atomic<bool>>(false); // comparing
    int compared_when_asked = 0;
    bool explained_when_asked = false;

  private:
    void answer() {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (dialog == nullptr || saw_dialog_) return;
        saw_dialog_ = true;
        compared_when_asked = *times_compared;
        explained_when_asked = window->causes_page().explanation() != nullptr;
        dialog->reject();
    }

    QTimer answers_;
    bool saw_dialog_ = false;
};

} // namespace

TEST_F(SettledDebriefTest, WaitsForTheNameThatWasJustGivenAndForTheCauses) {
    name_and_save(QStringLiteral("Imke Vance"));
    ASSERT_TRUE(fixture::wait_for([this] { return saved(); }));
    EXPECT_EQ(compared_when_asked, 2) << "with the new name";
    EXPECT_TRUE(explained_when_asked);
}

TEST_F(SettledDebriefTest, AsksForNothingOnceAnotherPageIsWanted) {
    *held_up = true;
    name_and_save(QStringLiteral("Imke Vance"));
    window->actions().show_sessions->trigger();
    fixture::settle();
    *held_up = false;
    ASSERT_TRUE(fixture::wait_for([this] { return *times_compared == 2; }));
    QTest::qWait(300);
    EXPECT_FALSE(saved());
    key(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    QTest::qWait(300);
    EXPECT_FALSE(saved());
}
