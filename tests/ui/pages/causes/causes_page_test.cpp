// SPDX-License-Identifier: GPL-3.0-or-later
// The Causes page operated with keys and mouse, on an explanation made by hand.
#include "ui/pages/causes/causes_page.h"

#include "core/causes/what_if.h"
#include "tests/ui/fixture/explanation_fixture.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/pages/causes/causes_table.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/causes/driver_strip.h"
#include "ui/pages/causes/finding_list.h"
#include "ui/pages/causes/setup_form.h"
#include "ui/pages/causes/what_if_card.h"

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSlider>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <gtest/gtest.h>

using namespace lapwright;
using pages::CausesTable;

namespace {

class CausesPage : public testing::Test {
  protected:
    void SetUp() override { show({}); }

    void show(const fixture::ExplanationOptions& options) {
        compared = workspace::compared(fixture::pairing());
        explanation = fixture::explanation(*compared->pairing, options);
        page = std::make_unique<pages::CausesPage>();
        page->resize(1366, 700);
        page->show_pairing(compared);
        page->show_explanation(explanation);
        page->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
        QApplication::setActiveWindow(page.get());
        fixture::settle();
    }
    QString cell(int row, int column) { return page->matrix().model()->index(row, column).data().toString(); }
    [[nodiscard]] int segments() const { return static_cast<int>(explanation->segments.size()); }

    workspace::ComparedPointer compared;
    std::shared_ptr<const causes::Explanation> explanation;
    std::unique_ptr<pages::CausesPage> page;
};

} // namespace

TEST_F(CausesPage, EveryCellNamesWhomItFavours) {
    const int downforce = CausesTable::column_of(causes::Term::downforce);
    const int grip = CausesTable::column_of(causes::Term::tyre_grip);
    EXPECT_EQ(cell(0, downforce), QStringLiteral("A 0.33"));
    EXPECT_EQ(cell(1, grip), QStringLiteral("B 0.04"));
    EXPECT_EQ(cell(0, grip), QStringLiteral("·"));
    EXPECT_EQ(cell(segments(), CausesTable::name_column), QStringLiteral("Whole lap"));
    EXPECT_EQ(cell(segments() + 1, downforce), QStringLiteral("±0.12"));
}

TEST_F(CausesPage, WhatMayBeChanceIsMarkedApart) {
    const auto told = [&](int row, causes::Cause cause) {
        return page->matrix()
            .model()
            ->index(row, CausesTable::column_of(causes::term(cause)))
            .data(CausesTable::ToldRole)
            .toBool();
    };
    EXPECT_TRUE(told(0, causes::Cause::downforce));
    EXPECT_FALSE(told(1, causes::Cause::tyre_grip));
}

TEST_F(CausesPage, ASumThatIsKnownBetterHasAColumnBeforeItsParts) {
    const int sum = CausesTable::column_of(causes::Term::cornering);
    const int grip = CausesTable::column_of(causes::Term::tyre_grip);
    EXPECT_TRUE(page->matrix().isColumnHidden(sum));
    auto together = std::make_shared<causes::Explanation>(*explanation);
    together->total.cornering = {0.5, 0.46, 0.54};
    page->show_explanation(together);
    EXPECT_FALSE(page->matrix().isColumnHidden(sum));
    EXPECT_TRUE(page->matrix().isColumnHidden(CausesTable::column_of(causes::Term::straights)));
    const auto* model = page->matrix().model();
    EXPECT_EQ(model->headerData(grip, Qt::Horizontal).toString(), QStringLiteral("of it\ntyre grip"));
    EXPECT_TRUE(model->index(0, grip).data(CausesTable::BehindRole).toBool());
    EXPECT_FALSE(model->index(0, sum).data(CausesTable::BehindRole).toBool());
    page->show_explanation(explanation);
    EXPECT_TRUE(page->matrix().isColumnHidden(sum));
}

TEST_F(CausesPage, ASegmentThatTheModelDoesNotFitSaysSo) {
    EXPECT_TRUE(cell(2, CausesTable::rest_column).contains(QStringLiteral("no fit")));
    const QString full = page->matrix().model()->index(2, CausesTable::rest_column).data(Qt::ToolTipRole).toString();
    EXPECT_TRUE(full.contains(QStringLiteral("cannot be made to take 3.2 s")));
}

TEST_F(CausesPage, EnterOnARowAsksForItsPlace) {
    QSignalSpy asked(page.get(), &pages::CausesPage::place_asked);
    page->matrix().setFocus();
    fixture::settle();
    QTest::keyClick(&page->matrix(), Qt::Key_Down);
    QTest::keyClick(&page->matrix(), Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_DOUBLE_EQ(asked[0][0].toDouble(), explanation->segments[1].segment.start_m);
    EXPECT_DOUBLE_EQ(asked[0][1].toDouble(), explanation->segments[1].segment.end_m);
}

TEST_F(CausesPage, AFindingLeadsToItsPlaceAndTheRestIsShownOnDemand) {
    QSignalSpy asked(page.get(), &pages::CausesPage::place_asked);
    EXPECT_EQ(page->findings().shown(), 3);
    for (auto* button : page->findings().findChildren<QToolButton*>()) {
        if (button->text() == QStringLiteral("1")) QTest::mouseClick(button, Qt::LeftButton);
    }
    EXPECT_EQ(asked.size(), 1);
    const auto said = [&](const std::string& words) {
        return std::ranges::any_of(page->findings().findChildren<QLabel*>(), [&](const QLabel* label) {
            return label->isVisibleTo(page.get()) && label->text().contains(QString::fromStdString(words));
        });
    };
    ASSERT_FALSE(explanation->warnings.empty());
    EXPECT_FALSE(said(explanation->warnings.front()));
    page->findings().set_all_shown(true);
    EXPECT_GT(page->findings().shown(), 3);
    EXPECT_TRUE(said(explanation->warnings.front()));
}

TEST_F(CausesPage, ArrowKeysOnAControlGiveOnePredictionForThemAll) {
    pages::WhatIfCard& card = page->what_if();
    QSignalSpy asked(&card, &pages::WhatIfCard::predictions_asked);
    QSlider& slider = card.slider(findings::Lever::downforce);
    for (int i = 0; i < 5; ++i)
        QTest::keyClick(&slider, Qt::Key_Right);
    ASSERT_TRUE(fixture::wait_for([&] { return asked.size() > 0; }));
    QTest::qWait(80);
    ASSERT_EQ(asked.size(), 1);
    const auto changes = asked[0][1].value<std::vector<causes::Change>>();
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_NEAR(changes[0].downforce_share, 0.10, 1e-12);
    const auto prediction = causes::what_if(*explanation->model_a, changes[0]);
    EXPECT_LT(prediction.lap.value, 0.0); // more downforce is quicker on this course
    card.show_predictions({prediction});
    EXPECT_TRUE(card.prediction_text().contains(QStringLiteral("predicted: −")))
        << card.prediction_text().toStdString();
    card.reset();
    EXPECT_EQ(slider.value(), 0);
    EXPECT_FALSE(card.prediction_text().contains(QStringLiteral("predicted:")));
}

TEST_F(CausesPage, WhatMovesWhileAnAnswerIsAwaitedIsAskedForNext) {
    pages::WhatIfCard& card = page->what_if();
    QSignalSpy asked(&card, &pages::WhatIfCard::predictions_asked);
    QSlider& slider = card.slider(findings::Lever::downforce);
    QTest::keyClick(&slider, Qt::Key_Right);
    ASSERT_TRUE(fixture::wait_for([&] { return asked.size() == 1; }));
    QTest::keyClick(&slider, Qt::Key_Right);
    fixture::settle();
    QTest::keyClick(&slider, Qt::Key_Right);
    fixture::settle();
    ASSERT_EQ(asked.size(), 1); // the first is not called off: a long drag is answered on its way
    const auto first = asked[0][1].value<std::vector<causes::Change>>();
    card.show_predictions({causes::what_if(*explanation->model_a, first[0])});
    EXPECT_TRUE(card.prediction_text().contains(QStringLiteral("predicted:")));
    ASSERT_EQ(asked.size(), 2);
    const auto second = asked[1][1].value<std::vector<causes::Change>>();
    EXPECT_NEAR(second[0].downforce_share, 3.0 * first[0].downforce_share, 1e-12);
    card.show_predictions({causes::what_if(*explanation->model_a, second[0])});
    EXPECT_EQ(asked.size(), 2);
}

TEST_F(CausesPage, WhereTheModelDoesNotFitTheWordsHaveRoom) {
    page->resize(1366, 700);
    fixture::settle();
    const pages::CausesView& matrix = page->matrix();
    const int rest = CausesTable::rest_column;
    const QFontMetrics metrics(matrix.font());
    EXPECT_GE(matrix.columnWidth(rest), metrics.horizontalAdvance(QStringLiteral("driver & rest")));
    int told = 0;
    for (int row = 0; row < segments(); ++row) {
        if (!cell(row, rest).endsWith(QStringLiteral("no fit"))) continue;
        ++told;
        EXPECT_GE(matrix.columnWidth(rest), metrics.horizontalAdvance(cell(row, rest)));
    }
    EXPECT_GT(told, 0);
}

TEST_F(CausesPage, WhatTheDriversDoFollowsTheChosenRow) {
    pages::DriverStrip& drivers = page->drivers();
    EXPECT_EQ(drivers.title(), QStringLiteral("Drivers, whole lap"));
    page->matrix().setFocus();
    fixture::settle();
    QTest::keyClick(&page->matrix(), Qt::Key_Down);
    EXPECT_TRUE(drivers.title().endsWith(QString::fromStdString(explanation->segments[1].segment.name)));
    EXPECT_EQ(drivers.cell(1, 1), QStringLiteral("97 %"));
    for (int i = 0; i < segments(); ++i)
        QTest::keyClick(&page->matrix(), Qt::Key_Down);
    EXPECT_EQ(drivers.title(), QStringLiteral("Drivers, whole lap"));
    page->show_pairing(compared);
    EXPECT_FALSE(drivers.isVisible());
}

TEST_F(CausesPage, APredictionIsAColumnOfTheMatrixUntilItIsTakenBack) {
    EXPECT_TRUE(page->matrix().isColumnHidden(CausesTable::what_if_column));
    pages::WhatIfCard& card = page->what_if();
    QSignalSpy asked(&card, &pages::WhatIfCard::predictions_asked);
    QTest::keyClick(&card.slider(findings::Lever::grip), Qt::Key_Right);
    ASSERT_TRUE(fixture::wait_for([&] { return asked.size() > 0; }));
    const auto changes = asked[0][1].value<std::vector<causes::Change>>();
    const auto prediction = causes::what_if(*explanation->model_a, changes[0]);
    card.show_predictions({prediction});
    EXPECT_FALSE(page->matrix().isColumnHidden(CausesTable::what_if_column));
    EXPECT_TRUE(cell(segments(), CausesTable::what_if_column).startsWith(QStringLiteral("A ")));
    EXPECT_TRUE(cell(segments() + 1, CausesTable::what_if_column).startsWith(QStringLiteral("±")));
    card.reset();
    EXPECT_TRUE(page->matrix().isColumnHidden(CausesTable::what_if_column));
}

TEST_F(CausesPage, WithoutAMassItWorksPerKilogramAndSaysSo) {
    show({false, true});
    EXPECT_TRUE(page->notes().contains(QStringLiteral("mass of car A is not known")));
    EXPECT_TRUE(page->notes().contains(QStringLiteral("per kilogram")));
    const int mass = CausesTable::column_of(causes::Term::mass);
    EXPECT_EQ(cell(0, mass), QStringLiteral("—"));
    EXPECT_FALSE(page->what_if().slider(findings::Lever::mass).isEnabled());
    EXPECT_TRUE(page->what_if().slider(findings::Lever::downforce).isEnabled());
}

TEST_F(CausesPage, UnitsAreChangedEverywhere) {
    const auto shows = [&](const QString& words) {
        const auto labels = page->findChildren<QLabel*>();
        return std::ranges::any_of(labels, [&](const QLabel* label) { return label->text().contains(words); });
    };
    EXPECT_TRUE(shows(QStringLiteral("180 km/h")) || shows(QStringLiteral("180\u00a0km/h")));
    page->set_units(base::UnitSystem::us);
    EXPECT_TRUE(shows(QStringLiteral("mph")));
    EXPECT_TRUE(shows(QStringLiteral("power at the wheels, hp")));
}

TEST(SetupForm, TakesSpringsAndKnownFigures) {
    pages::SetupForm form({}, {}, base::UnitSystem::us);
    const auto type = [&](const char* field, const QString& words) {
        auto* line = form.findChild<QLineEdit*>(QString::fromUtf8(field));
        ASSERT_TRUE(line != nullptr) << field;
        line->setText(words);
    };
    form.show();
    type("front spring rateA", QStringLiteral("62,5"));
    form.accept();
    EXPECT_TRUE(form.isVisible()); // the rear one is missing
    type("rear spring rateA", QStringLiteral("48"));
    type("drag areaB", QStringLiteral("0.92 ±"));
    form.accept();
    EXPECT_TRUE(form.isVisible());
    type("drag areaB", QStringLiteral("0,92 ±0.05"));
    type("powerB", QStringLiteral("300"));
    form.accept();
    EXPECT_EQ(form.result(), QDialog::Accepted);
    ASSERT_TRUE(form.setup_a().springs && form.setup_b().known.drag_area_m2 && form.setup_b().known.power_w);
    EXPECT_NEAR(form.setup_a().springs->front_n_per_m, 62.5e3, 1e-6);
    EXPECT_NEAR(form.setup_b().known.drag_area_m2->sd, 0.05, 1e-12);
    EXPECT_NEAR(form.setup_b().known.power_w->value, 223.7e3, 100.0); // 300 hp
    const pages::SetupForm again(form.setup_a(), form.setup_b(), base::UnitSystem::us);
    EXPECT_EQ(again.findChild<QLineEdit*>(QStringLiteral("drag areaB"))->text(), QStringLiteral("0.92 ±0.050"));
}

TEST(SetupForm, TakesWhatIsTypedAndKeepsOpenOnAMistake) {
    pages::SetupForm form({}, {}, base::UnitSystem::us);
    form.show();
    auto* mass = form.findChild<QLineEdit*>(QStringLiteral("massA"));
    auto* temperature = form.findChild<QLineEdit*>(QStringLiteral("air temperatureA"));
    ASSERT_TRUE(mass != nullptr && temperature != nullptr);
    QTest::keyClicks(mass, QStringLiteral("heavy"));
    form.accept();
    EXPECT_EQ(form.result(), 0);
    EXPECT_TRUE(form.isVisible());
    mass->selectAll();
    QTest::keyClicks(mass, QStringLiteral("2921"));
    QTest::keyClicks(temperature, QStringLiteral("68,0"));
    form.accept();
    EXPECT_EQ(form.result(), QDialog::Accepted);
    ASSERT_TRUE(form.setup_a().mass);
    EXPECT_NEAR(form.setup_a().mass->value_kg, 1324.94, 0.01); // 2921 × 0.45359237
    EXPECT_NEAR(*form.setup_a().conditions.temperature_k, 293.15, 1e-6);
    EXPECT_FALSE(form.setup_b().mass);
}
