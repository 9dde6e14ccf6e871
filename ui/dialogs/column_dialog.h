// SPDX-License-Identifier: GPL-3.0-or-later
// What each column of a file is: the program's guesses, corrected by a person with a preview of what comes out, and
// kept as an import recipe.  The dialog reads nothing itself: it asks for previews and is given them.  Without a file
// it edits a recipe that was made before.
#pragma once

#include "core/base/display.h"
#include "core/base/error.h"
#include "core/import/formats/preview.h"
#include "ui/models/column_table.h"
#include "ui/theme/palette.h"

#include <QDialog>
#include <functional>
#include <optional>

class QDialogButtonBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTableView;

namespace lapwright::dialogs {

class ColumnForm;
class LayoutRow;

// Puts the recipe away; what is wrong, or nothing.
using Keep = std::function<base::Result<void>(const import::Recipe&)>;

class ColumnDialog : public QDialog {
    Q_OBJECT

  public:
    ColumnDialog(Keep keep, base::UnitSystem units, const theme::Palette& palette, QWidget* parent = nullptr);

    // Asks for a preview at once; `kept`: the recipe by which the file was read.
    void open_file(const QString& path, const std::optional<import::Recipe>& kept);
    void open_recipe(const import::Recipe& recipe);
    void show_preview(const models::ColumnTable::PreviewPointer& preview);
    void show_refusal(const base::Error& error);
    void accept() override;

    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] models::ColumnTable& table() { return *table_; }
    [[nodiscard]] QTableView& view() { return *view_; }
    [[nodiscard]] ColumnForm& form() { return *form_; }
    [[nodiscard]] bool has_preview() const { return known_; }

  Q_SIGNALS:
    void preview_asked(const lapwright::import::Options& options);

  private:
    QWidget* make_head();
    QWidget* make_foot();
    void make_keys();
    void ask_for_guesses();
    void ask_for_preview();
    void follow_table();
    void tell_outcome(const import::Preview& preview);
    void go_to_question(int after);
    void complain(const QString& sentence, bool of_preview = false);
    void complain_of_rate(const QString& sentence); // empty: there is a usable one
    [[nodiscard]] import::Recipe recipe() const;

    Keep keep_;
    QString path_;
    std::optional<import::Recipe> kept_;
    bool known_ = false; // guesses have come
    bool guessing_ = false;
    bool complaint_of_preview_ = false; // goes when a preview comes
    models::ColumnTable* table_;
    QTableView* view_;
    ColumnForm* form_;
    LayoutRow* layout_;
    QLabel* question_;
    QLabel* complaint_;
    QPlainTextEdit* outcome_;
    QLineEdit* title_;
    QPushButton* right_;
    QPushButton* next_;
    QDialogButtonBox* buttons_;
};

} // namespace lapwright::dialogs
