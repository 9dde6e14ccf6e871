// SPDX-License-Identifier: GPL-3.0-or-later
// The column dialog and the trust report, operated as a person would, on files that are really read.
#include "ui/window/importing.h"

#include "tests/ui/fixture/importing_fixture.h"
#include "ui/dialogs/column_form.h"
#include "ui/theme/elided_label.h"
#include "ui/window/notices.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSpinBox>
#include <QTableView>

using namespace lapwright;
using fixture::patience_ms;
using models::ColumnTable;
using recording::Meaning;

namespace {

class ImportingTest : public fixture::ImportingFixture {};

} // namespace

TEST_F(ImportingTest, ADoubtfulFileAsksAndTheAnswerIsKeptForTheNextOne) {
    const QString path = doubtful_file();
    window->start({path});
    ASSERT_TRUE(wait_for_dialog());
    const double fitting_mps = top_speed_mps(path);
    ColumnTable& table = dialog()->table();
    const int row = row_of(table, QStringLiteral("Speed [mph]"));
    ASSERT_GE(row, 0);
    EXPECT_EQ(table.doubtful_count(), 1);
    EXPECT_EQ(dialog()->view().currentIndex().row(), row) << "the question stands first";
    EXPECT_TRUE(table.reason(row).contains(QStringLiteral("km/h"))) << table.reason(row).toStdString();
    EXPECT_FALSE(table.values(row).empty());

    const QString before = table.range(row);
    EXPECT_EQ(dialog()->form().unit().currentText(), QStringLiteral("km/h")) << "as the positions say";
    choose(dialog()->form().unit(), QStringLiteral("mph"));
    EXPECT_EQ(table.doubtful_count(), 0);
    EXPECT_TRUE(fixture::wait_for([&] { return table.range(row) != before; }, patience_ms));
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return top_speed_mps(path) > 1.5 * fitting_mps; }, patience_ms));
    EXPECT_NEAR(top_speed_mps(path) / fitting_mps, 1.609344, 1e-9) << "a person's word stays";
    EXPECT_EQ(dialog(), nullptr);
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_EQ(kept().recipes[0].recipe.title, "run");

    // Another day, another file of this shape: no question, and the report says by what it was read.
    const QString next = sample_with("next.csv", "Speed [km/h]", "Speed [mph]");
    open_window();
    window->start({next});
    ASSERT_TRUE(wait_for_session(next));
    QTest::qWait(300);
    EXPECT_EQ(dialog(), nullptr);
    EXPECT_NEAR(top_speed_mps(next), fitting_mps * 1.609344, 1e-9);
    EXPECT_TRUE(card_words().join(QLatin1Char('\n')).contains(QStringLiteral("the recipe \"run\"")));
}

TEST_F(ImportingTest, WhatIsSaidOfOneFileHoldsForTheOthersOfItsShape) {
    const QString one = doubtful_file();
    const QString other = sample_with("other.csv", "Speed [km/h]", "Speed [mph]");
    window->start({one, other});
    ASSERT_TRUE(wait_for_dialog());
    ASSERT_TRUE(wait_for_session(other));
    const QString asked = dialog()->path();
    const double fitting_mps = top_speed_mps(asked);
    ColumnTable& table = dialog()->table();
    dialog()->view().setCurrentIndex(table.index(row_of(table, QStringLiteral("Speed [mph]")), 0));
    choose(dialog()->form().unit(), QStringLiteral("mph"));
    QTest::keyClick(dialog(), Qt::Key_Return);
    for (const QString& path : {one, other})
        EXPECT_TRUE(fixture::wait_for([&] { return top_speed_mps(path) > 1.5 * fitting_mps; }, patience_ms))
            << path.toStdString();
    QTest::qWait(300);
    EXPECT_EQ(dialog(), nullptr) << "the other file is answered for";
}

// A straight road: no lap, whatever the columns mean.  "Speed" without a unit is a guess.
TEST_F(ImportingTest, AFileWithoutLapsShowsItsColumns) {
    for (const bool guessed : {true, false}) {
        QByteArray content =
            guessed ? "time (s),latitude,longitude,distance\n" : "time (s),latitude,longitude,speed (m/s)\n";
        for (int i = 0; i < 600; ++i)
            content += QByteArray::number(0.1 * i) + ",54." + QByteArray::number(100000 + 20 * i) + ",2.35," +
                       QByteArray::number(guessed ? 2.2239 * i : 22.239) + "\n";
        const QString path = write(guessed ? "guessed.csv" : "plain.csv", content);
        open_window();
        window->start({path});
        ASSERT_TRUE(wait_for_session(path));
        EXPECT_TRUE(session(path)->laps.empty());
        if (!guessed) {
            fixture::settle();
            EXPECT_EQ(dialog(), nullptr);
            QTest::keyClick(window.get(), Qt::Key_I);
        }
        EXPECT_TRUE(wait_for_dialog()) << guessed;
    }
}

TEST_F(ImportingTest, AQuestionThatIsNotAnsweredIsNotAskedAgainInThisRun) {
    const QString path = doubtful_file();
    window->start({path});
    ASSERT_TRUE(wait_for_dialog());
    QTest::keyClick(dialog(), Qt::Key_Escape);
    fixture::settle();
    EXPECT_EQ(dialog(), nullptr);
    EXPECT_TRUE(kept().recipes.empty());
    window->open({path});
    QTest::qWait(2000);
    EXPECT_EQ(dialog(), nullptr);
    ASSERT_NE(session(path), nullptr);
}

TEST_F(ImportingTest, KeyboardAlone) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Sonde 7");
    window->start({path});
    ASSERT_TRUE(wait_for_session(path));
    fixture::settle();
    EXPECT_EQ(dialog(), nullptr) << "nothing is in doubt";
    QTest::keyClick(window.get(), Qt::Key_I);
    ASSERT_TRUE(wait_for_dialog());
    ColumnTable& table = dialog()->table();
    QTableView& view = dialog()->view();
    ASSERT_TRUE(view.hasFocus());
    const int row = row_of(table, QStringLiteral("Sonde 7"));
    while (view.currentIndex().row() < row)
        QTest::keyClick(&view, Qt::Key_Down);
    EXPECT_EQ(table.data(table.index(row, ColumnTable::use_column), Qt::DisplayRole).toString(),
              QStringLiteral("further channel"));
    QTest::keyClick(&view, Qt::Key_Tab);
    QWidget* use = QApplication::focusWidget();
    ASSERT_EQ(use, &dialog()->form().use());
    QTest::keyClicks(use, QStringLiteral("thr"));
    fixture::settle();
    EXPECT_EQ(dialog()->form().use().currentText(), QStringLiteral("throttle"));
    QTest::keyClick(use, Qt::Key_Tab);
    EXPECT_EQ(dialog()->form().unit().currentText(), QStringLiteral("%"));
    QTest::keyClick(dialog(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(table.is_changed(row));
    QTest::keyClick(dialog(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(table.is_changed(row));
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(
        fixture::wait_for([&] { return session(path)->recording->find(Meaning::throttle) != nullptr; }, patience_ms));
}

TEST_F(ImportingTest, TheWholeTrustReportStandsOnThePage) {
    const QString path = QStringLiteral(SAMPLE_SESSIONS "/dunlin-saturday-2.txt");
    window->start({path});
    ASSERT_TRUE(wait_for_session(path));
    fixture::settle();
    const auto words = [this] {
        QStringList all = card_words();
        for (const auto* cell : window->sessions_page().findChildren<theme::ElidedLabel*>())
            all << cell->text();
        return all;
    };
    EXPECT_FALSE(words().contains(QStringLiteral("wheel speed")));
    QTest::keyClick(window.get(), Qt::Key_R);
    fixture::settle();
    EXPECT_TRUE(words().contains(QStringLiteral("wheel speed")));
    EXPECT_TRUE(words().contains(QStringLiteral("Wheel, mph")));
    EXPECT_TRUE(words().contains(QStringLiteral("Wheel speed reads 1.8 % high against satellite speed.")));
    EXPECT_TRUE(words().join(QLatin1Char('\n')).contains(QStringLiteral("Guessed: Times are written without")));
    const auto in_miles = [&] { return words().filter(QStringLiteral("mph")).size(); };
    const auto before = in_miles();
    QTest::keyClick(window.get(), Qt::Key_U, Qt::ControlModifier);
    fixture::settle();
    EXPECT_GT(in_miles(), before) << "the report follows the units";
    for (const QLabel* label : window->sessions_page().findChildren<QLabel*>())
        EXPECT_EQ(label->textFormat(), Qt::PlainText) << label->text().toStdString();
    QTest::keyClick(window.get(), Qt::Key_R);
    fixture::settle();
    EXPECT_FALSE(words().contains(QStringLiteral("wheel speed")));
}

TEST_F(ImportingTest, AFileThatCannotBeReadForWantOfATimeAsks) {
    QByteArray content = "Pos lat;Pos lon;v km/h\n";
    for (int i = 0; i < 200; ++i)
        content += "54,9" + QByteArray::number(1000 + i) + ";2,35;" + QByteArray::number(50 + i % 7) + ",5\n";
    const QString path = write("no-time.txt", content);
    window->start({path});
    ASSERT_TRUE(wait_for_dialog());
    EXPECT_TRUE(window->notices().isVisible());
    auto* outcome = dialog()->findChild<QPlainTextEdit*>();
    EXPECT_TRUE(outcome->toPlainText().contains(QStringLiteral("no column of time")));
    const auto edits = dialog()->findChildren<QLineEdit*>();
    const auto rate = std::ranges::find_if(
        edits, [](const QLineEdit* edit) { return edit->accessibleName() == QStringLiteral("Rows per second"); });
    ASSERT_NE(rate, edits.end());
    (*rate)->setFocus();
    QTest::keyClicks(*rate, QStringLiteral("0,01\t"));
    const auto labels = dialog()->findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->isVisible() && label->text().contains(QStringLiteral("0.1 to 10,000"));
    }));
    (*rate)->setFocus();
    (*rate)->selectAll();
    QTest::keyClicks(*rate, QStringLiteral("10\t"));
    EXPECT_TRUE(fixture::wait_for(
        [&] { return outcome->toPlainText().contains(QStringLiteral("rows make 3 channels")); }, patience_ms))
        << outcome->toPlainText().toStdString();
}

TEST_F(ImportingTest, WhatIsNoUsableNumberIsSaidAndKeepsTheDialogOpen) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Throttle");
    window->importing().ask(path);
    ASSERT_TRUE(wait_for_dialog());
    ColumnTable& table = dialog()->table();
    const int row = row_of(table, QStringLiteral("Altitude [m]"));
    dialog()->view().selectRow(row);
    QLineEdit& scale = dialog()->form().scale();
    scale.setFocus();
    scale.selectAll();
    QTest::keyClicks(&scale, QStringLiteral("many"));
    QTest::keyClick(&scale, Qt::Key_Return);
    fixture::settle();
    ASSERT_NE(dialog(), nullptr);
    scale.selectAll();
    QTest::keyClicks(&scale, QStringLiteral("0,5"));
    QTest::keyClick(&scale, Qt::Key_Return);
    fixture::settle();
    EXPECT_EQ(dialog(), nullptr);
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_EQ(kept().recipes[0].recipe.columns[static_cast<std::size_t>(row)].scale, 0.5);
}

TEST_F(ImportingTest, AnotherLayoutIsPreviewedAndKept) {
    const QString path =
        write("odd.txt", "when v\n2026-05-16 10:20:01,1\n2026-05-16 10:20:02,2\n2026-05-16 10:20:03,3\n");
    window->importing().ask(path);
    ASSERT_TRUE(wait_for_dialog());
    auto boxes = dialog()->findChildren<QComboBox*>();
    const auto delimiter = std::ranges::find_if(
        boxes, [](const QComboBox* box) { return box->accessibleName() == QStringLiteral("Parted by"); });
    ASSERT_NE(delimiter, boxes.end());
    EXPECT_EQ((*delimiter)->currentText(), QStringLiteral("comma"));
    (*delimiter)->setCurrentIndex(4);
    Q_EMIT(*delimiter)->activated(4);
    auto* line = dialog()->findChild<QSpinBox*>();
    line->setValue(1);
    EXPECT_TRUE(fixture::wait_for([&] { return row_of(dialog()->table(), QStringLiteral("when")) == 0; }, patience_ms));
    QTest::keyClick(dialog(), Qt::Key_Return);
    fixture::settle();
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_TRUE(kept().recipes[0].recipe.delimiter.blanks);
    EXPECT_TRUE(import::recipe_for(path.toStdString(), kept().recipes));
}

TEST_F(ImportingTest, AFileWithoutColumnsIsOneSentence) {
    const QString path = write("track.gpx", "<?xml version=\"1.0\"?><gpx version=\"1.1\" "
                                            "xmlns=\"http://www.topografix.com/GPX/1/1\"></gpx>");
    window->importing().ask(path);
    ASSERT_TRUE(fixture::wait_for([this] { return window->notices().isVisible(); }, patience_ms));
    EXPECT_EQ(dialog(), nullptr);
    EXPECT_TRUE(window->notices().sentences().front().contains(QStringLiteral("no columns to choose")));
}

TEST_F(ImportingTest, ARecipeThatCannotBeKeptKeepsTheDialogOpen) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Throttle");
    write("recipes", "a file where the folder should be");
    window->importing().ask(path);
    ASSERT_TRUE(wait_for_dialog());
    QTest::keyClick(dialog(), Qt::Key_Return);
    fixture::settle();
    ASSERT_NE(dialog(), nullptr);
    const auto labels = dialog()->findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->isVisible() && label->text().contains(QStringLiteral("cannot be written"));
    }));
}

TEST_F(ImportingTest, NothingThatAFileWritesIsInterpreted) {
    const QString path = write("<b>bold<b>.csv", "Time [s],<img src=x>&amp; <b>v</b>,two\vlines\n0,<i>1</i>,1\n1,2,2\n"
                                                 "2,3,3\n3,4,4\n4,5,5\n5,6,6\n6,7,7\n7,8,8\n8,9,9\n9,9,9\n");
    window->importing().ask(path);
    ASSERT_TRUE(wait_for_dialog());
    EXPECT_GE(row_of(dialog()->table(), QStringLiteral("<img src=x>&amp; <b>v</b>")), 0);
    for (int row = 0; row < dialog()->table().rowCount(); ++row) {
        dialog()->view().selectRow(row);
        fixture::settle();
        for (int column = 0; column < dialog()->table().columnCount(); ++column) {
            const auto index = dialog()->table().index(row, column);
            EXPECT_FALSE(index.data(Qt::ToolTipRole).isValid()) << "a tool tip would be taken for rich text";
            EXPECT_FALSE(index.data().toString().contains(QLatin1Char('\v')));
        }
    }
    QWidget* top = dialog();
    for (const QLabel* label : top->findChildren<QLabel*>())
        EXPECT_EQ(label->textFormat(), Qt::PlainText) << label->text().toStdString();
    for (const QWidget* widget : top->findChildren<QWidget*>())
        EXPECT_FALSE(widget->toolTip().contains(QLatin1Char('<'))) << widget->toolTip().toStdString();
}
