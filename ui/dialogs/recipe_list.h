// SPDX-License-Identifier: GPL-3.0-or-later
// The import recipes that a person has made: listed, renamed, edited, deleted, written to a file for a friend and taken
// from one.  What was deleted or replaced last can be brought back.
#pragma once

#include "core/base/display.h"
#include "core/base/error.h"
#include "core/import/formats/recipe_folder.h"
#include "ui/theme/palette.h"

#include <QDialog>
#include <optional>

class QLabel;
class QPushButton;
class QTableWidget;

namespace lapwright::dialogs {

class RecipeList : public QDialog {
    Q_OBJECT

  public:
    RecipeList(import::RecipeFolder folder, base::UnitSystem units, const theme::Palette& palette,
               QWidget* parent = nullptr);

    // What the buttons do once a file is known; what became of it stands in the dialog.
    void take_from(const QString& path);
    void write_to(const QString& path);
    void edit();
    void remove();
    void bring_back();
    [[nodiscard]] QTableWidget& list() { return *list_; }
    [[nodiscard]] QString said() const;

  private:
    void fill(const std::optional<import::Recipe>& chosen = {});
    void follow();
    void rename(int row, const QString& title);
    void ask_and_take();
    void ask_and_write();
    [[nodiscard]] const import::Recipe* chosen() const;
    void say(const QString& sentence);
    bool said_problem(const base::Result<void>& done);

    import::RecipeFolder folder_;
    base::UnitSystem units_;
    theme::Palette palette_;
    std::vector<import::KeptRecipe> recipes_;
    std::optional<import::Recipe> gone_; // deleted or replaced last
    bool filling_ = false;
    QTableWidget* list_;
    QLabel* said_;
    QPushButton* edit_;
    QPushButton* remove_;
    QPushButton* bring_back_;
    QPushButton* write_;
};

} // namespace lapwright::dialogs
