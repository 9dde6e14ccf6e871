// SPDX-License-Identifier: GPL-3.0-or-later
// The list of recipes and the editing of one without its file, operated as a person would.
#include "ui/dialogs/recipe_list.h"

#include "core/import/columns/recipe_file.h"
#include "core/import/formats/preview.h"
#include "tests/ui/fixture/importing_fixture.h"
#include "ui/dialogs/column_form.h"

#include <QLineEdit>
#include <QTableView>
#include <QTableWidget>

using namespace lapwright;

namespace {

class RecipeListTest : public fixture::ImportingFixture {};

} // namespace
TEST_F(RecipeListTest, RecipesAreListedRenamedDeletedBroughtBackAndShared) {
    const QString path = sample_with("plain.csv", "Throttle [%]", "Throttle");
    const auto preview = import::preview_file(path.toStdString());
    ASSERT_TRUE(preview.ok());
    import::Recipe recipe = preview->recipe;
    recipe.title = "<b>mine</b>";
    const import::RecipeFolder store(recipes());
    ASSERT_TRUE(store.keep(recipe));

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

TEST_F(RecipeListTest, ARecipeIsEditedWithoutItsFile) {
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
