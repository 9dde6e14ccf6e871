// SPDX-License-Identifier: GPL-3.0-or-later
// The column dialog and the recipes, operated as a person would, on files that are really read.
#include "ui/window/importing.h"

#include "core/import/recipe_file.h"
#include "core/import/recipe_folder.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/dialogs/column_dialog.h"
#include "ui/dialogs/column_form.h"
#include "ui/dialogs/recipe_list.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>

using namespace lapwright;
using models::ColumnTable;
using recording::Meaning;

namespace {

constexpr int patience_ms = 30'000;

class ImportingTest : public testing::Test {
  protected:
    void SetUp() override { open_window(); }

    void open_window() {
        window.reset();
        window = std::make_unique<window::MainWindow>(bridge::analysis_stages(recipes()), settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
    }
    [[nodiscard]] std::string recipes() const { return folder.filePath(QStringLiteral("recipes")).toStdString(); }
    [[nodiscard]] import::KeptRecipes kept() const { return import::RecipeFolder(recipes()).list(); }

    // A sample session with a part of its header written otherwise.
    QString sample_with(const char* name, const QByteArray& header_part, const QByteArray& instead) {
        QFile sample(QStringLiteral(SAMPLE_SESSIONS "/plover-saturday-2.csv"));
        EXPECT_TRUE(sample.open(QIODevice::ReadOnly));
        QByteArray content = sample.readAll();
        const qsizetype header_end = content.indexOf('\n');
        QByteArray header = content.left(header_end);
        EXPECT_TRUE(header.contains(header_part));
        header.replace(header_part, instead);
        return write(name, header + content.mid(header_end));
    }
    QString write(const char* name, const QByteArray& content) {
        const QString path = folder.filePath(QLatin1String(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
        return path;
    }
    // Miles are written where kilometres fit the positions.
    QString doubtful_file() { return sample_with("run.csv", "Speed [km/h]", "Speed [mph]"); }

    [[nodiscard]] dialogs::ColumnDialog* dialog() const {
        auto* found = window->findChild<dialogs::ColumnDialog*>();
        return found != nullptr && found->isVisible() ? found : nullptr;
    }
    bool wait_for_dialog() {
        return fixture::wait_for([this] { return dialog() != nullptr && dialog()->has_preview(); }, patience_ms);
    }
    bool wait_for_session(const QString& path) {
        return fixture::wait_for([&] { return window->shelf().session(path) != nullptr; }, patience_ms);
    }
    [[nodiscard]] double top_speed_mps(const QString& path) const {
        const auto* channel = window->shelf().session(path)->recording->find(Meaning::speed);
        return channel == nullptr ? 0.0 : *std::ranges::max_element(channel->values);
    }
    [[nodiscard]] QStringList card_words() const {
        QStringList words;
        for (pages::SessionCard* card : window->sessions_page().cards()) {
            const auto labels = card->findChildren<QLabel*>();
            for (const QLabel* label : labels)
                words << label->text();
        }
        return words;
    }
    static int row_of(ColumnTable& table, const QString& header) {
        for (int row = 0; row < table.rowCount(); ++row)
            if (table.index(row, ColumnTable::name_column).data().toString() == header) return row;
        return -1;
    }
    // Chosen in a list as a person does: the key of its first letters.
    static void choose(QComboBox& box, const QString& words) {
        box.setFocus();
        const int index = box.findText(words);
        ASSERT_GE(index, 0) << words.toStdString();
        while (box.currentIndex() > index)
            QTest::keyClick(&box, Qt::Key_Up);
        while (box.currentIndex() < index)
            QTest::keyClick(&box, Qt::Key_Down);
        fixture::settle();
    }
    static void settle_preview(dialogs::ColumnDialog& open, const std::function<bool()>& holds) {
        Q_UNUSED(open);
        EXPECT_TRUE(fixture::wait_for(holds, patience_ms));
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

} // namespace

TEST_F(ImportingTest, ADoubtfulFileAsksAndTheAnswerIsKeptForTheNextOne) {
    const QString path = doubtful_file();
    window->start({path});
    ASSERT_TRUE(wait_for_dialog());
    const double wrong_mps = top_speed_mps(path);
    ColumnTable& table = dialog()->table();
    const int row = row_of(table, QStringLiteral("Speed [mph]"));
    ASSERT_GE(row, 0);
    EXPECT_EQ(table.doubtful_count(), 1);
    EXPECT_EQ(dialog()->view().currentIndex().row(), row) << "the question stands first";
    EXPECT_TRUE(table.reason(row).contains(QStringLiteral("km/h"))) << table.reason(row).toStdString();
    EXPECT_FALSE(table.values(row).empty());

    const QString before = table.range(row);
    choose(dialog()->form().unit(), QStringLiteral("km/h"));
    EXPECT_EQ(table.doubtful_count(), 0);
    settle_preview(*dialog(), [&] { return table.range(row) != before; });
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return top_speed_mps(path) < 0.7 * wrong_mps; }, patience_ms));
    EXPECT_NEAR(wrong_mps / top_speed_mps(path), 1.609344, 1e-9);
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
    EXPECT_DOUBLE_EQ(top_speed_mps(next), wrong_mps / 1.609344);
    EXPECT_TRUE(card_words().join(QLatin1Char('\n')).contains(QStringLiteral("the recipe \"run\"")));
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
    ASSERT_NE(window->shelf().session(path), nullptr);
}

TEST_F(ImportingTest, KeyboardAlone) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Pedal 7");
    window->start({path});
    ASSERT_TRUE(wait_for_session(path));
    fixture::settle();
    EXPECT_EQ(dialog(), nullptr) << "nothing is in doubt";
    QTest::keyClick(window.get(), Qt::Key_I);
    ASSERT_TRUE(wait_for_dialog());
    ColumnTable& table = dialog()->table();
    QTableView& view = dialog()->view();
    ASSERT_TRUE(view.hasFocus());
    const int row = row_of(table, QStringLiteral("Pedal 7"));
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
    ASSERT_TRUE(fixture::wait_for(
        [&] { return window->shelf().session(path)->recording->find(Meaning::throttle) != nullptr; }, patience_ms));
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
    const QString path =
        write("<b>bold<b>.csv", "Time [s],<img src=x>&amp; <b>v</b>,two\vlines\n0,<i>1</i>,1\n1,2,2\n"
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

TEST_F(ImportingTest, RecipesAreListedRenamedDeletedBroughtBackAndShared) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Throttle");
    const auto preview = import::preview_file(path.toStdString());
    ASSERT_TRUE(preview.ok());
    import::Recipe recipe = preview->recipe;
    recipe.title = "<b>mine</b>";
    const import::RecipeFolder store(recipes());
    ASSERT_FALSE(store.keep(recipe));

    dialogs::RecipeList list(store, base::UnitSystem::metric, theme::paper(), window.get());
    list.show();
    ASSERT_EQ(list.list().rowCount(), 1);
    EXPECT_EQ(list.list().item(0, 0)->text(), QStringLiteral("<b>mine</b>"));
    const QString shared = folder.filePath(QStringLiteral("for a friend.recipe.json"));
    list.write_to(shared);
    EXPECT_TRUE(list.said().contains(QStringLiteral("is written")));

    // Renamed with the keyboard.
    list.list().setCurrentCell(0, 0);
    list.list().setFocus();
    QTest::keyClick(&list.list(), Qt::Key_F2);
    auto* editor = list.list().findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("season"));
    QTest::keyClick(editor, Qt::Key_Return);
    fixture::settle();
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_EQ(kept().recipes[0].recipe.title, "season");
    EXPECT_TRUE(list.isVisible()) << "Return ends the editing, not the dialog";

    list.remove();
    EXPECT_TRUE(kept().recipes.empty());
    list.bring_back();
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_EQ(kept().recipes[0].recipe.title, "season");

    list.take_from(shared);
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_EQ(kept().recipes[0].recipe, recipe);
    EXPECT_TRUE(list.said().contains(QStringLiteral("\"season\""))) << "what it replaced is named";
    list.bring_back();
    EXPECT_EQ(kept().recipes[0].recipe.title, "season");

    list.take_from(path);
    EXPECT_TRUE(list.said().contains(QStringLiteral("no JSON"))) << list.said().toStdString();
    for (const QLabel* label : list.findChildren<QLabel*>())
        EXPECT_EQ(label->textFormat(), Qt::PlainText) << label->text().toStdString();
}

TEST_F(ImportingTest, ARecipeIsEditedWithoutItsFile) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Throttle");
    const auto preview = import::preview_file(path.toStdString());
    ASSERT_TRUE(preview.ok());
    import::RecipeFolder store(recipes());
    dialogs::ColumnDialog open([&](const import::Recipe& recipe) { return store.keep(recipe); },
                               base::UnitSystem::metric, theme::paper());
    open.open_recipe(preview->recipe);
    open.show();
    const int row = row_of(open.table(), QStringLiteral("Speed [km/h]"));
    open.view().selectRow(row);
    choose(open.form().unit(), QStringLiteral("mph"));
    QTest::keyClick(&open, Qt::Key_Return);
    ASSERT_EQ(kept().recipes.size(), 1U);
    EXPECT_EQ(kept().recipes[0].recipe.columns[static_cast<std::size_t>(row)].unit, base::Unit::mile_per_hour);
}
