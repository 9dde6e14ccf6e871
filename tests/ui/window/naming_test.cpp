// SPDX-License-Identifier: GPL-3.0-or-later
// Driver, car, track, date and conditions typed on a session's card, as a hand does, undone, and there the next time.
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/names_form.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QLineEdit>
#include <gmock/gmock.h>

using namespace lapwright;
using pages::NamesForm;

namespace {

class NamingTest : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        PairedWindowWithBook::SetUp();
        go_to_sessions();
        ASSERT_EQ(window->book().finish(), 0U);
        fixture::settle();
        card(0).laps().setFocus();
    }
    // Files that know driver and car, and nothing else.
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages stages = PairedWindowWithBook::stages();
        stages.load = [load = stages.load](const workspace::Origin& origin,
                                           const std::optional<track::TrackRecord>& track,
                                           const base::Progress& progress) -> base::Result<bridge::SessionPointer> {
            const auto session = load(origin, track, progress);
            if (!session) return session;
            workspace::SessionNames names = workspace::names_of(**session);
            names.track.clear();
            names.start_unix_s.reset();
            return workspace::with_names(*session, names);
        };
        return stages;
    }
    pages::SessionCard& card(std::size_t i) { return *window->sessions_page().cards().at(i); }
    QLineEdit& line(NamesForm::Field field) { return card(0).names().line(field); }
    [[nodiscard]] workspace::SessionNames names() {
        return workspace::names_of(*window->sessions().now().entries().front().session);
    }
    void type_into(NamesForm::Field field, const QString& words, int end = Qt::Key_Return) {
        line(field).setFocus();
        fixture::settle();
        line(field).selectAll();
        type(words);
        press(end);
    }
};

} // namespace

TEST_F(NamingTest, WhatTheFileDoesNotKnowIsTypedOnItsCardAndKeptInTheBook) {
    press(Qt::Key_D);
    EXPECT_EQ(QApplication::focusWidget(), &line(NamesForm::track)) << "the first that is not known";
    EXPECT_EQ(line(NamesForm::track).placeholderText(), QStringLiteral("track?"));
    type(QStringLiteral("Gull Head"));
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), &line(NamesForm::date)) << "going on typing in the next field";
    type(QStringLiteral("2026-05-16 10:20"));
    press(Qt::Key_Tab);
    type(QStringLiteral("dry, gusty"));
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), &card(0).laps());
    EXPECT_EQ(names().track, "Gull Head");
    EXPECT_EQ(names().conditions, "dry, gusty");
    EXPECT_EQ(line(NamesForm::date).text(), QStringLiteral("16 May 2026, 10:20 UTC"));
    open_window();
    ASSERT_TRUE(fixture::wait_for([&] { return names().conditions == "dry, gusty"; }));
    EXPECT_EQ(names().track, "Gull Head");
    EXPECT_EQ(names().start_unix_s, std::optional(1778926800.0));
}

TEST_F(NamingTest, ANameIsUndoneAndDoneAgainByName) {
    const std::string before = names().driver;
    type_into(NamesForm::driver, QStringLiteral("Wren Alder"));
    EXPECT_EQ(names().driver, "Wren Alder");
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo names of one.csv"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(names().driver, before);
    EXPECT_EQ(line(NamesForm::driver).text().toStdString(), before);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(names().driver, "Wren Alder");
    ASSERT_EQ(window->book().finish(), 0U);
    window.reset();
    auto book = std::move(book::Book::open(book_file())).value();
    EXPECT_EQ(book::search(book, {.driver = "Wren Alder"})->size(), 1U);
}

TEST_F(NamingTest, EscapeLeavesANameAndABadDateStaysToBeMended) {
    const std::string before = names().driver;
    type_into(NamesForm::driver, QStringLiteral("Wren"), Qt::Key_Escape);
    EXPECT_EQ(names().driver, before);
    EXPECT_EQ(line(NamesForm::driver).text().toStdString(), before);
    type_into(NamesForm::date, QStringLiteral("august"));
    EXPECT_EQ(QApplication::focusWidget(), &line(NamesForm::date));
    EXPECT_FALSE(window->edits().canUndo());
    press(Qt::Key_Escape);
    EXPECT_EQ(names().start_unix_s, std::nullopt);
}

TEST_F(NamingTest, ALetterThatIsAKeyElsewhereIsALetterInAName) {
    const workspace::Picks before = window->sessions().now().picks();
    type_into(NamesForm::car, QStringLiteral("xabr"));
    EXPECT_EQ(names().car, "xabr");
    EXPECT_EQ(window->sessions().now().picks(), before);
}
