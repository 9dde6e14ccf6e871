// SPDX-License-Identifier: GPL-3.0-or-later
// Keys of commands: what they are at first is free of conflicts, each can be changed, is told where another has it, is
// remembered, and comes back as it was.
#include "tests/ui/fixture/paired_window.h"
#include "ui/dialogs/key_changer.h"
#include "ui/dialogs/key_field.h"
#include "ui/dialogs/keys_help.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/theme/note_field.h"
#include "ui/window/preferences.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QTreeWidget>

using namespace lapwright;
using dialogs::KeyChanger;

namespace {

class ChangedKeys : public fixture::PairedWindow {
  protected:
    // As by its command in the menu.
    KeyChanger& dialog() {
        if (auto* open = window->findChild<KeyChanger*>()) return *open;
        window->actions().change_keys->trigger();
        return *window->findChild<KeyChanger*>();
    }
    std::size_t row_of(const QString& words) {
        for (int row = 0; row < dialog().list().topLevelItemCount(); ++row)
            if (dialog().list().topLevelItem(row)->text(0).endsWith(words)) return static_cast<std::size_t>(row);
        ADD_FAILURE() << "no command " << words.toStdString();
        return 0;
    }
    void press_key(const QString& words, int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        dialog().choose(row_of(words));
        QTest::keyClick(&dialog().field(), static_cast<Qt::Key>(key), modifiers);
    }
    void close_dialog() {
        dialog().close();
        QTest::qWait(10);
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QApplication::setActiveWindow(window.get());
    }
    [[nodiscard]] QString in_help(const QString& command) const {
        for (const dialogs::KeyGroup& group : window->actions().key_groups())
            for (const dialogs::KeyLine& line : group.lines)
                if (line.first == command) return line.second;
        return {};
    }
};

} // namespace

TEST_F(ChangedKeys, AtFirstNoTwoCommandsOfOnePageHaveOneKey) {
    for (int row = 0; row < dialog().list().topLevelItemCount(); ++row) {
        dialog().choose(static_cast<std::size_t>(row));
        const QString keys = dialog().list().topLevelItem(row)->text(1);
        for (const QString& key : keys.split(QStringLiteral(" or "), Qt::SkipEmptyParts)) {
            dialog().field().set_key(QKeySequence(key));
            Q_EMIT dialog().field().key_pressed(dialog().field().key());
            EXPECT_EQ(dialog().said(), QString()) << key.toStdString();
        }
    }
    EXPECT_GT(dialog().list().topLevelItemCount(), 90);
}

TEST_F(ChangedKeys, ACommandActsByItsNewKeyAndNoLongerByTheOldOne) {
    press_key(QStringLiteral("Next segment"), Qt::Key_F7);
    EXPECT_EQ(dialog().said(), QString());
    dialog().take().click();
    EXPECT_EQ(in_help(QStringLiteral("Next segment")), QStringLiteral("F7")) << "the list of keys follows";
    close_dialog();
    window->compare_page().choose(0);
    key(Qt::Key_N);
    EXPECT_EQ(window->compare_page().chosen_segment(), 0);
    key(Qt::Key_F7);
    EXPECT_EQ(window->compare_page().chosen_segment(), 1);
}

TEST_F(ChangedKeys, AKeyOfAnotherCommandIsToldAndTakenFromThere) {
    press_key(QStringLiteral("Next segment"), Qt::Key_P);
    EXPECT_TRUE(dialog().said().contains(QStringLiteral("Previous segment"))) << dialog().said().toStdString();
    dialog().take().click();
    EXPECT_EQ(in_help(QStringLiteral("Next segment")), QStringLiteral("P"));
    EXPECT_EQ(in_help(QStringLiteral("Previous segment")), QString());
    // A key of the other page is no conflict: they are never there together.
    press_key(QStringLiteral("Previous segment"), Qt::Key_R);
    EXPECT_EQ(dialog().said(), QString());
    dialog().take().click();
    EXPECT_EQ(in_help(QStringLiteral("Previous segment")), QStringLiteral("R"));
    EXPECT_EQ(in_help(QStringLiteral("Trust report of this session")), QStringLiteral("R"));
    // One of every page is.
    press_key(QStringLiteral("Previous segment"), Qt::Key_X);
    EXPECT_TRUE(dialog().said().contains(QStringLiteral("Swap A and B")));
}

TEST_F(ChangedKeys, AreThereInTheNextRunAndComeBackAsTheyWere) {
    press_key(QStringLiteral("Swap A and B"), Qt::Key_F8, Qt::ControlModifier);
    dialog().take().click();
    dialog().choose(row_of(QStringLiteral("Trust report of this session")));
    dialog().none().click();
    close_dialog();
    window->close();
    settings.sync();
    open_window();
    EXPECT_EQ(window->actions().swap->shortcut(), QKeySequence(Qt::CTRL | Qt::Key_F8));
    EXPECT_TRUE(window->actions().report->shortcuts().isEmpty());
    dialog().choose(row_of(QStringLiteral("Swap A and B")));
    dialog().usual().click();
    EXPECT_EQ(window->actions().swap->shortcut(), QKeySequence(Qt::Key_X));
    dialog().all_usual().click();
    EXPECT_EQ(window->actions().report->shortcut(), QKeySequence(Qt::Key_R));
    EXPECT_TRUE(window::load_preferences(settings).keys.isEmpty());
}

// What a page says of a key is true after it was changed, and after it was taken away.
TEST_F(ChangedKeys, PagesTellTheKeysThatHold) {
    const auto said_of_print = [this] {
        QString said;
        for (const QToolButton* button : window->debrief_page().findChildren<QToolButton*>())
            if (button->text().startsWith(QStringLiteral("Print"))) said = button->text();
        return said;
    };
    const auto said_of_note = [this] {
        QStringList said;
        for (const QLabel* label : window->compare_page().card().note(workspace::Side::a).findChildren<QLabel*>())
            said << label->text();
        return said.join(QLatin1Char(' '));
    };
    window->compare_page().choose(1);
    EXPECT_TRUE(said_of_print().endsWith(QStringLiteral("Ctrl+P"))) << said_of_print().toStdString();
    EXPECT_TRUE(said_of_note().contains(QStringLiteral("M: "))) << said_of_note().toStdString();
    window->actions().print->setShortcut(QKeySequence(Qt::Key_F9));
    window->actions().note_a->setShortcut(QKeySequence(Qt::Key_F10));
    EXPECT_TRUE(said_of_print().endsWith(QStringLiteral("F9"))) << said_of_print().toStdString();
    EXPECT_TRUE(said_of_note().contains(QStringLiteral("F10: "))) << said_of_note().toStdString();
    window->actions().note_a->setShortcuts(QList<QKeySequence>());
    EXPECT_FALSE(said_of_note().contains(QStringLiteral("F10"))) << said_of_note().toStdString();
}

TEST_F(ChangedKeys, CommandsAreFoundByNameAndByKey) {
    const auto shown = [this] {
        QStringList names;
        for (int row = 0; row < dialog().list().topLevelItemCount(); ++row)
            if (!dialog().list().topLevelItem(row)->isHidden()) names << dialog().list().topLevelItem(row)->text(0);
        return names;
    };
    dialog().words().setText(QStringLiteral("swap"));
    ASSERT_EQ(shown().size(), 1);
    dialog().words().setText(QStringLiteral("Ctrl+G"));
    ASSERT_EQ(shown().size(), 1);
    EXPECT_TRUE(shown().front().contains(QStringLiteral("Go to")));
}
