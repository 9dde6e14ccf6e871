// SPDX-License-Identifier: GPL-3.0-or-later
// Predictions in the window: what What if shows and what is quickest for a wing are kept by key and button, undone and
// redone, listed with the score, taken back and given a session by hand.
#include "core/book/predictions.h"
#include "core/book/sessions.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/dialogs/wing_dialog.h"
#include "ui/models/prediction_list.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/predictions_view.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/notices.h"

#include <QComboBox>
#include <QInputDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSlider>
#include <QToolButton>
#include <QUndoStack>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;

namespace {

class Predicting : public fixture::PairedWindowWithBook {
  protected:
    [[nodiscard]] QInputDialog* dialog() const { return window->findChild<QInputDialog*>(); }
    pages::WhatIfCard& card() { return window->causes_page().what_if(); }
    pages::PredictionsView& view() { return window->sessions_page().book_panel().predictions(); }

    std::vector<book::KeptPrediction> kept() {
        auto book = std::move(book::Book::open(book_file())).value();
        return book::predictions(book).value();
    }
    bool wait_for_kept(std::size_t count) {
        return fixture::wait_for([&] { return kept().size() == count; });
    }
    // More grip of A, which is predicted.
    bool predict() {
        key(Qt::Key_3, Qt::ControlModifier);
        if (!fixture::wait_for([&] { return window->causes_page().explanation() != nullptr; }, 30'000)) return false;
        QTest::keyClick(&card().slider(findings::Lever::grip), Qt::Key_PageUp);
        return fixture::wait_for([&] { return card().keep_button().isEnabled(); });
    }
    void answer(const QString& words) {
        ASSERT_TRUE(fixture::wait_for([&] { return dialog() != nullptr && dialog()->isVisible(); }));
        dialog()->setTextValue(words);
        dialog()->accept();
        EXPECT_TRUE(fixture::wait_for([&] { return dialog() == nullptr; }));
        QApplication::setActiveWindow(window.get());
    }
    void keep_by_key(const QString& words) {
        key(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
        answer(words);
    }
};

} // namespace

TEST_F(Predicting, WhatIfIsKeptByKeyAndUndone) {
    ASSERT_TRUE(predict());
    keep_by_key(QStringLiteral("tyre pressure=1.8 bar ; blanket=on"));
    ASSERT_TRUE(wait_for_kept(1));
    const book::Prediction p = kept()[0].prediction;
    EXPECT_EQ(p.source, book::PredictedBy::what_if);
    EXPECT_GT(p.asked.grip_share, 0.0);
    EXPECT_EQ(p.change.value, card().shown()->lap.value);
    EXPECT_LT(p.change.low, p.change.high);
    EXPECT_GT(p.lap_s.value_or(0.0), 10.0);
    EXPECT_FALSE(p.program.empty());
    ASSERT_EQ(p.expected.items.size(), 2U);
    EXPECT_EQ(p.expected.items[1].name, "blanket");
    window->edits().undo();
    EXPECT_TRUE(wait_for_kept(0));
    window->edits().redo();
    ASSERT_TRUE(wait_for_kept(1));
    EXPECT_EQ(kept()[0].prediction.uid, p.uid);
    EXPECT_EQ(kept()[0].prediction.kept_unix_s, p.kept_unix_s);
}

TEST_F(Predicting, NothingIsKeptOfNothingNorOfAMistypedItem) {
    key(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(dialog(), nullptr);
    ASSERT_TRUE(predict());
    keep_by_key(QStringLiteral("wing"));
    EXPECT_TRUE(kept().empty());
    EXPECT_EQ(window->edits().count(), 0);
    card().keep_button().click();
    ASSERT_TRUE(fixture::wait_for([&] { return dialog() != nullptr; }));
    dialog()->reject();
    EXPECT_TRUE(fixture::wait_for([&] { return dialog() == nullptr; }));
    EXPECT_TRUE(kept().empty());
    card().reset();
    EXPECT_FALSE(card().keep_button().isEnabled());
    EXPECT_FALSE(card().shown());
}

TEST_F(Predicting, TheWingThatIsQuickestIsKept) {
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    dialogs::WingDialog* wing = nullptr;
    ASSERT_TRUE(fixture::wait_for(
        [&] {
            wing = window->findChild<dialogs::WingDialog*>();
            return wing != nullptr && wing->said().contains(QLatin1String("B")) &&
                   !wing->said().startsWith(QLatin1String("Both"));
        },
        30'000));
    ASSERT_TRUE(wing->keep_button(causes::Side::b).isEnabled()) << wing->said().toStdString();
    wing->keep_button(causes::Side::b).click();
    answer({});
    ASSERT_TRUE(wait_for_kept(1));
    EXPECT_EQ(kept()[0].prediction.source, book::PredictedBy::wing);
    EXPECT_NE(kept()[0].prediction.asked.downforce_area_m2, 0.0);
    EXPECT_EQ(kept()[0].whose.source.file_name, "two.csv");
}

TEST_F(Predicting, TheListTakesBackAndBringsBack) {
    ASSERT_TRUE(predict());
    keep_by_key({});
    ASSERT_TRUE(wait_for_kept(1));
    key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(window->sessions_page().book_panel().part(), pages::BookPanel::Part::predictions);
    ASSERT_TRUE(fixture::wait_for([&] { return view().model().rowCount() == 1; }));
    ASSERT_TRUE(fixture::wait_for([&] { return view().said().contains(QLatin1String("Return names")); }));
    EXPECT_THAT(view().said().toStdString(), HasSubstr("No prediction has been judged yet."));
    const auto cell = [&](int column) { return view().model().index(0, column).data().toString().toStdString(); };
    EXPECT_THAT(cell(models::PredictionList::change_column), HasSubstr("grip"));
    EXPECT_THAT(cell(models::PredictionList::outcome_column), HasSubstr("not yet"));
    view().list().choose_row(0);
    QTest::keyClick(&view().list(), Qt::Key_Delete);
    ASSERT_TRUE(wait_for_kept(0));
    ASSERT_TRUE(fixture::wait_for([&] { return view().model().rowCount() == 0; }));
    window->edits().undo();
    ASSERT_TRUE(wait_for_kept(1));
    EXPECT_TRUE(fixture::wait_for([&] { return view().model().rowCount() == 1; }));
}

TEST_F(Predicting, AChangeIsSaidInTheUnitsOfTheWindow) {
    ASSERT_TRUE(predict());
    QTest::keyClick(&card().slider(findings::Lever::mass), Qt::Key_PageDown);
    ASSERT_TRUE(fixture::wait_for([&] { return card().shown() && card().shown()->change.mass_kg != 0.0; }));
    key(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog() != nullptr; }));
    EXPECT_THAT(dialog()->labelText().toStdString(), HasSubstr("\u00a0kg"));
    answer({});
    ASSERT_TRUE(wait_for_kept(1));
    key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return view().model().rowCount() == 1; }));
    view().list().choose_row(0);
    const auto said = [&] {
        return view().model().index(0, models::PredictionList::change_column).data().toString().toStdString();
    };
    EXPECT_THAT(said(), HasSubstr("\u00a0kg"));
    for (int i = 0; i < 3 && window->sessions_page().units() != base::UnitSystem::us; ++i)
        window->actions().next_units->trigger();
    EXPECT_THAT(said(), HasSubstr("\u00a0lb"));
    EXPECT_EQ(view().list().current_row(), 0);
}

TEST_F(Predicting, ASessionIsNamedByHand) {
    ASSERT_TRUE(predict());
    keep_by_key({});
    ASSERT_TRUE(wait_for_kept(1));
    const auto later = [&] {
        auto book = std::move(book::Book::open(book_file())).value();
        const book::KeptPrediction one = book::predictions(book)->front();
        EXPECT_TRUE(book::change_start(book, one.prediction.session, one.prediction.kept_unix_s + 3600.0));
        return one.whose.source.checksum;
    }();
    key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return view().said().contains(QLatin1String("Return names")); }));
    view().list().choose_row(0);
    QTest::keyClick(&view().list(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog() != nullptr; }));
    ASSERT_EQ(dialog()->comboBoxItems().size(), 2);
    answer(dialog()->comboBoxItems()[1]);
    EXPECT_TRUE(fixture::wait_for([&] { return kept().front().prediction.driven == std::vector{later}; }));
    window->edits().undo();
    EXPECT_TRUE(fixture::wait_for([&] { return kept().front().prediction.driven.empty(); }));
}
