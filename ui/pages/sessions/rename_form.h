// SPDX-License-Identifier: GPL-3.0-or-later
// Another name for a session's driver, car or track, in every session of the book
// that has it, or another date of the session itself.  While the new name is
// another's already the form says that the two become one, and its button does, too.
#pragma once

#include "core/book/names.h"
#include "core/book/search.h"

#include <QDialog>
#include <array>
#include <optional>
#include <string>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace lapwright::pages {

class RenameForm : public QDialog {
    Q_OBJECT

  public:
    RenameForm(const book::SessionSummary& session, book::Names names, QWidget* parent = nullptr);

    // The date is what is changed: nothing of the names says anything then.
    [[nodiscard]] bool dates() const;
    [[nodiscard]] std::optional<double> start_unix_s() const; // absent while it cannot be read

    [[nodiscard]] book::NameTable table() const;
    [[nodiscard]] std::string old_name() const;
    [[nodiscard]] std::string new_name() const; // without blanks around it
    [[nodiscard]] bool unites() const;

    [[nodiscard]] QComboBox& what() { return *what_; }
    [[nodiscard]] QLineEdit& line() { return *line_; }
    [[nodiscard]] QPushButton& done() { return *done_; }
    [[nodiscard]] QString said() const;

  private:
    [[nodiscard]] const std::vector<std::string>& known() const;
    [[nodiscard]] const std::string* other() const; // that has the new name, as the book writes it
    void begin();
    void follow();
    void follow_date();
    void follow_name();

    std::array<std::string, 3> old_names_; // index: NameTable
    std::optional<double> old_start_unix_s_;
    book::Names names_;
    QComboBox* what_; // the names that the session has, and the date
    QLineEdit* line_;
    QLabel* said_;
    QPushButton* done_;
};

} // namespace lapwright::pages
