// SPDX-License-Identifier: GPL-3.0-or-later
// Notes written as a person would: a key on what one looks at, typed in its place, seen in the table, on the card, on
// the sheet; undone and done again; there again in the next run.
#include "ui/window/noting.h"

#include "core/base/number_text.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/models/segment_table.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/theme/note_field.h"
#include "ui/window/debriefing.h"

#include <QFile>
#include <QLabel>
#include <QPlainTextEdit>
#include <QUndoStack>
#include <gmock/gmock.h>

using namespace lapwright;
using models::SegmentTable;
using testing::HasSubstr;
using testing::Not;
using workspace::Side;

namespace {

class Noting : public fixture::PairedWindow {
  protected:
    theme::NoteField& field(Side side) { return window->compare_page().card().note(side); }
    [[nodiscard]] QModelIndex row(int segment) const {
        return window->compare_page().table().index(segment, SegmentTable::name_column);
    }
    [[nodiscard]] int chosen() const { return window->compare_page().chosen_segment(); }
    [[nodiscard]] QString name_of_chosen() const { return row(chosen()).data().toString(); }
    void write(const QString& words, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        key(Qt::Key_M, modifiers);
        type(words);
        press(Qt::Key_Return);
    }
    std::string html() {
        EXPECT_TRUE(window->debriefing().save(path("sheet.html")));
        QFile file(path("sheet.html"));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll().toStdString();
    }
    pages::SessionCard& card(std::size_t place) { return *window->sessions_page().cards()[place]; }
};

const QString words = QStringLiteral("felt planted, could lift later & <b>not</b> brake");

} // namespace

TEST_F(Noting, AKeyOnTheChosenSegmentMakesAnEditorInItsCard) {
    write(words);
    EXPECT_FALSE(field(Side::a).typing());
    EXPECT_TRUE(field(Side::a).isVisible());
    EXPECT_EQ(field(Side::a).note(), words);
    EXPECT_TRUE(row(chosen()).data(SegmentTable::NoteRole).toBool());
    EXPECT_THAT(row(chosen()).data(Qt::ToolTipRole).toString().toStdString(),
                HasSubstr("Note of A: felt planted, could lift later &amp; &lt;b&gt;not&lt;/b&gt; brake"));
    EXPECT_FALSE(row(chosen() + 1).data(SegmentTable::NoteRole).toBool());
    for (const QLabel* label : field(Side::a).findChildren<QLabel*>())
        EXPECT_EQ(label->textFormat(), Qt::PlainText);
}

TEST_F(Noting, LettersThatAreKeysOfTheWindowAreTyped) {
    const int before = chosen();
    write(QStringLiteral("nnn pppp xm w"));
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("nnn pppp xm w"));
    EXPECT_EQ(chosen(), before);
    key(Qt::Key_N); // and afterwards they are keys again
    EXPECT_EQ(chosen(), before + 1);
}

TEST_F(Noting, EachDriverHasANoteOnTheSameSegment) {
    write(QStringLiteral("late"));
    write(QStringLiteral("early"), Qt::ShiftModifier);
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("late"));
    EXPECT_EQ(field(Side::b).note(), QStringLiteral("early"));
    key(Qt::Key_X); // swapped: each keeps its own
    ASSERT_TRUE(fixture::wait_for([&] { return field(Side::a).note() == QStringLiteral("early"); }));
    EXPECT_EQ(field(Side::b).note(), QStringLiteral("late"));
}

TEST_F(Noting, EscapeLeavesTheNoteAndGoingElsewhereKeepsIt) {
    write(QStringLiteral("first"));
    key(Qt::Key_M);
    type(QStringLiteral(" and more"));
    press(Qt::Key_Escape);
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("first"));
    EXPECT_EQ(window->edits().count(), 1);
    key(Qt::Key_M);
    type(QStringLiteral(" and second"));
    const int before = chosen();
    window->compare_page().choose(before + 1);
    EXPECT_EQ(field(Side::a).note(), QString());
    window->compare_page().choose(before);
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("first and second"));
}

TEST_F(Noting, WhatIsUndoneIsNamedAndComesBack) {
    EXPECT_FALSE(window->actions().undo->isEnabled());
    write(QStringLiteral("first"));
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo note on ") + name_of_chosen());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(field(Side::a).note(), QString());
    EXPECT_FALSE(row(chosen()).data(SegmentTable::NoteRole).toBool());
    EXPECT_EQ(window->actions().redo->text(), QStringLiteral("&Redo note on ") + name_of_chosen());
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("first"));
    EXPECT_TRUE(row(chosen()).data(SegmentTable::NoteRole).toBool());
}

TEST_F(Noting, AJoinedRowShowsTheNoteOfItsCorner) {
    window->compare_page().choose(0);
    write(QStringLiteral("planted"));
    key(Qt::Key_J);
    window->compare_page().choose(0);
    EXPECT_TRUE(row(0).data(SegmentTable::NoteRole).toBool());
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("planted"));
}

TEST_F(Noting, NotesStandOnTheSheetAndAreThereInTheNextRun) {
    write(words);
    const std::string name = name_of_chosen().toStdString();
    go_to_sessions();
    card(0).laps().setFocus();
    write(QStringLiteral("cold tyres"));
    card(1).laps().setFocus();
    write(QStringLiteral("after the rain"), Qt::ShiftModifier);
    const auto expect_all = [&] {
        const std::string sheet = html();
        EXPECT_THAT(sheet, HasSubstr(name + ", A: felt planted, could lift later &amp; &lt;b&gt;not&lt;/b&gt; brake"));
        EXPECT_THAT(sheet, HasSubstr("<li>B: after the rain</li>"));
    };
    expect_all();
    open_window();
    expect_all();
    EXPECT_EQ(card(0).lap_note().note(), QStringLiteral("cold tyres"));
    EXPECT_EQ(card(1).session_note().note(), QStringLiteral("after the rain"));
}

TEST_F(Noting, ALapsNoteIsShownUnderTheLapsWhenItIsChosen) {
    go_to_sessions();
    pages::LapList& laps = card(0).laps();
    laps.setFocus();
    const int lap = laps.current_lap();
    write(QStringLiteral("traffic"));
    EXPECT_TRUE(laps.hasFocus());
    EXPECT_THAT(laps.accessibleName().toStdString(), HasSubstr("Note: traffic"));
    EXPECT_TRUE(card(0).lap_note().isVisible());
    QTest::keyClick(&laps, Qt::Key_Down);
    EXPECT_NE(laps.current_lap(), lap);
    EXPECT_FALSE(card(0).lap_note().isVisible());
    EXPECT_THAT(laps.accessibleName().toStdString(), Not(HasSubstr("traffic")));
    EXPECT_EQ(window->notes().text({card(0).key(), lap}), QStringLiteral("traffic"));
}

TEST_F(Noting, TheLapsOfThePairingBringTheirNotesToTheSheet) {
    const int lap = window->compare_page().compared()->pairing->a.lap.number;
    const workspace::SessionKey session = window->sessions().now().picks().a->session;
    window->notes().put({session, lap}, QStringLiteral("hot"));
    window->notes().put({session, lap - 1}, QStringLiteral("another lap"));
    EXPECT_THAT(html(), HasSubstr("A, lap " + base::integer_text(lap) + ": hot"));
    EXPECT_THAT(html(), Not(HasSubstr("another lap")));
}

TEST_F(Noting, TheChoiceOfLapsIsUndoneToo) {
    go_to_sessions();
    pages::LapList& laps = card(1).laps();
    laps.setFocus();
    const auto before = window->sessions().now().picks().b;
    QTest::keyClick(&laps, Qt::Key_Up);
    key(Qt::Key_B);
    EXPECT_NE(window->sessions().now().picks().b, before);
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo choice of lap B"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window->sessions().now().picks().b, before);
    const auto a = window->sessions().now().picks().a;
    key(Qt::Key_X);
    EXPECT_EQ(window->sessions().now().picks().b, a);
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo swap of A and B"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window->sessions().now().picks().a, a);
    EXPECT_FALSE(window->actions().undo->isEnabled());
}
