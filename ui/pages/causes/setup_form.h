// SPDX-License-Identifier: GPL-3.0-or-later
// The setup of both cars as a form: mass with driver and fuel, its uncertainty, tyre, weather, spring rates, figures
// that are known from elsewhere ("0.92 ±0.05"), further items in free words ("Wing angle: 7 deg", one a line).  What is
// left empty is not known.
#pragma once

#include "core/base/display.h"
#include "core/base/result.h"
#include "core/car/setup_sheet.h"

#include <QDialog>
#include <array>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace lapwright::pages {

class SetupForm : public QDialog {
    Q_OBJECT

  public:
    SetupForm(const car::SetupSheet& a, const car::SetupSheet& b, base::UnitSystem units, QWidget* parent = nullptr);

    [[nodiscard]] const car::SetupSheet& setup_a() const { return sheets_[0]; }
    [[nodiscard]] const car::SetupSheet& setup_b() const { return sheets_[1]; }

  public Q_SLOTS:
    void accept() override; // stays open and says so when a field cannot be read

  private:
    struct Fields {
        QLineEdit* mass = nullptr;
        QLineEdit* mass_margin = nullptr;
        QLineEdit* tyre = nullptr;
        QLineEdit* temperature = nullptr;
        QLineEdit* pressure = nullptr;
        QLineEdit* humidity = nullptr;
        QLineEdit* altitude = nullptr;
        QLineEdit* front_spring = nullptr;
        QLineEdit* rear_spring = nullptr;
        QLineEdit* downforce_area = nullptr;
        QLineEdit* drag_area = nullptr;
        QLineEdit* power = nullptr;
        QPlainTextEdit* items = nullptr;
    };

    void add_fields(QGridLayout& grid, int side);
    void fill(int side, const car::SetupSheet& sheet);
    void load(int side);
    void complain(const QString& sentence);
    [[nodiscard]] base::Result<car::SetupSheet> read(int side) const;

    base::UnitSystem units_;
    std::array<car::SetupSheet, 2> sheets_;
    std::array<Fields, 2> fields_;
    QLabel* complaint_;
};

} // namespace lapwright::pages
