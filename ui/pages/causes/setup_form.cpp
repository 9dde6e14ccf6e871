// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/setup_form.h"

#include "core/base/number_text.h"
#include "core/base/units.h"
#include "core/car/write_setup_sheet.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace lapwright::pages {
namespace {

using base::Quantity;
using models::text;

constexpr int first_column = 1; // of side A; side B is the next

QString number(std::optional<double> si_value, base::Unit unit, int decimals) {
    return si_value ? text(base::shown_text(base::from_si(*si_value, unit), decimals)) : QString();
}

base::Error not_a_number(const QString& field) {
    return {
        base::ErrorCode::setup_not_readable, {}, field.toStdString() + " is not a number", "correct it or empty it"};
}

// A number in the field's unit, absent where it is empty; a decimal comma is as good as a point.
base::Result<std::optional<double>> read_number(const QLineEdit& field, base::Unit unit) {
    QString words = field.text().trimmed();
    if (words.isEmpty()) return std::optional<double>();
    const auto value = base::parse_number(words.replace(QLatin1Char(','), QLatin1Char('.')).toStdString());
    if (!value) return not_a_number(field.accessibleName());
    return std::optional(base::to_si(*value, unit));
}

// "0.92 ±0.05": a figure with one standard deviation.
QString known_text(const std::optional<car::KnownFigure>& figure, base::Unit unit, int decimals) {
    if (!figure) return {};
    return number(figure->value, unit, decimals) + QStringLiteral(" ±") + number(figure->sd, unit, decimals + 1);
}

base::Result<std::optional<car::KnownFigure>> read_known(const QLineEdit& field, base::Unit unit) {
    const QStringList parts = field.text().split(QChar(0x00b1));
    std::vector<double> numbers;
    for (const QString& part : parts) {
        QString words = part.trimmed();
        if (words.isEmpty() && parts.size() == 1) return std::optional<car::KnownFigure>();
        const auto value = base::parse_number(words.replace(QLatin1Char(','), QLatin1Char('.')).toStdString());
        if (!value || parts.size() > 2) return not_a_number(field.accessibleName());
        numbers.push_back(base::to_si(*value, unit));
    }
    return std::optional(car::known_figure(numbers[0], numbers.size() == 2 ? std::optional(numbers[1]) : std::nullopt));
}

QString items_text(const std::vector<car::SetupItem>& items) {
    QStringList lines;
    for (const car::SetupItem& item : items)
        lines << text(item.name) + QStringLiteral(": ") + text(item.value);
    return lines.join(QLatin1Char('\n'));
}

std::vector<car::SetupItem> items_of(const QString& lines) {
    std::vector<car::SetupItem> items;
    const auto all = lines.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (const QString& line : all) {
        const auto colon = line.indexOf(QLatin1Char(':'));
        const QString name = colon < 0 ? line.trimmed() : line.left(colon).trimmed();
        if (name.isEmpty()) continue;
        items.push_back({name.toStdString(), colon < 0 ? std::string() : line.mid(colon + 1).trimmed().toStdString()});
    }
    return items;
}

QString with_unit(const QString& words, base::Unit unit) {
    return words + QStringLiteral(", ") + text(base::symbol(unit));
}

} // namespace

SetupForm::SetupForm(const car::SetupSheet& a, const car::SetupSheet& b, base::UnitSystem units, QWidget* parent)
    : QDialog(parent), units_(units), sheets_{a, b}, complaint_(new QLabel(this)) {
    setWindowTitle(tr("Setup of both cars"));
    auto* grid = new QGridLayout;
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);
    const base::Unit mass = base::shown_unit(Quantity::mass, units);
    const QStringList names{with_unit(tr("Mass with driver and fuel"), mass),
                            with_unit(tr("How sure (one standard deviation)"), mass),
                            tr("Tyre"),
                            with_unit(tr("Air temperature"), base::shown_unit(Quantity::temperature, units)),
                            with_unit(tr("Air pressure at the track"), base::Unit::hectopascal),
                            with_unit(tr("Humidity"), base::Unit::percent),
                            with_unit(tr("Altitude"), base::shown_unit(Quantity::length, units)),
                            tr("Front spring rate at the wheel, N/mm"),
                            tr("Rear spring rate at the wheel, N/mm"),
                            tr("Downforce area if known (0.5 ±0.1), m²"),
                            tr("Drag area if known (0.92 ±0.05), m²"),
                            with_unit(tr("Power at the wheels if known"), base::shown_unit(Quantity::power, units)),
                            tr("Further items,\none a line: name: value")};
    for (int row = 0; row < names.size(); ++row)
        grid->addWidget(new QLabel(names[row], this), row + 1, 0, Qt::AlignTop);
    for (int side = 0; side < 2; ++side) {
        add_fields(*grid, side);
        fill(side, sheets_[static_cast<std::size_t>(side)]);
    }
    complaint_->setTextFormat(Qt::PlainText);
    complaint_->setWordWrap(true);
    complaint_->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &SetupForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(grid);
    column->addWidget(complaint_);
    column->addWidget(buttons);
    fields_[0].mass->setFocus();
    resize(680, 620);
}

void SetupForm::add_fields(QGridLayout& grid, int side) {
    Fields& f = fields_[static_cast<std::size_t>(side)];
    const QString letter = side == 0 ? QStringLiteral("A") : QStringLiteral("B");
    const int column = first_column + side;
    auto* load_button = new QPushButton(tr("%1: from a file…").arg(letter), this);
    load_button->setAutoDefault(false);
    connect(load_button, &QPushButton::clicked, this, [this, side] { load(side); });
    grid.addWidget(load_button, 0, column);
    int row = 1;
    const auto line = [&](const QString& what) {
        auto* field = new QLineEdit(this);
        field->setObjectName(what + letter);
        field->setAccessibleName(tr("%1 of %2").arg(what, letter));
        grid.addWidget(field, row++, column);
        return field;
    };
    f.mass = line(tr("mass"));
    f.mass_margin = line(tr("uncertainty of the mass"));
    f.tyre = line(tr("tyre"));
    f.temperature = line(tr("air temperature"));
    f.pressure = line(tr("air pressure"));
    f.humidity = line(tr("humidity"));
    f.altitude = line(tr("altitude"));
    f.front_spring = line(tr("front spring rate"));
    f.rear_spring = line(tr("rear spring rate"));
    f.downforce_area = line(tr("downforce area"));
    f.drag_area = line(tr("drag area"));
    f.power = line(tr("power"));
    f.items = new QPlainTextEdit(this);
    f.items->setAccessibleName(tr("Further items of %1").arg(letter));
    f.items->setTabChangesFocus(true);
    grid.addWidget(f.items, row, column);
}

void SetupForm::fill(int side, const car::SetupSheet& sheet) {
    Fields& f = fields_[static_cast<std::size_t>(side)];
    sheets_[static_cast<std::size_t>(side)] = sheet;
    const base::Unit mass = base::shown_unit(Quantity::mass, units_);
    f.mass->setText(sheet.mass ? number(sheet.mass->value_kg, mass, 0) : QString());
    f.mass_margin->setText(number(sheet.mass ? sheet.mass->sd_kg : car::Mass{}.sd_kg, mass, 0));
    f.tyre->setText(text(sheet.tyre));
    f.temperature->setText(number(sheet.conditions.temperature_k, base::shown_unit(Quantity::temperature, units_), 1));
    f.pressure->setText(number(sheet.conditions.pressure_pa, base::Unit::hectopascal, 0));
    f.humidity->setText(number(sheet.conditions.humidity, base::Unit::percent, 0));
    f.altitude->setText(number(sheet.conditions.altitude_m, base::shown_unit(Quantity::length, units_), 0));
    const auto rate = [](double n_per_m) { return text(base::shown_text(n_per_m / 1000.0, 1)); };
    f.front_spring->setText(sheet.springs ? rate(sheet.springs->front_n_per_m) : QString());
    f.rear_spring->setText(sheet.springs ? rate(sheet.springs->rear_n_per_m) : QString());
    f.downforce_area->setText(known_text(sheet.known.downforce_area_m2, base::Unit::none, 2));
    f.drag_area->setText(known_text(sheet.known.drag_area_m2, base::Unit::none, 2));
    f.power->setText(known_text(sheet.known.power_w, base::shown_unit(Quantity::power, units_), 0));
    f.items->setPlainText(items_text(sheet.items));
}

// Fields to a sheet; its ranges are those of the file format, so the sheet is written and read once.
base::Result<car::SetupSheet> SetupForm::read(int side) const {
    const Fields& f = fields_[static_cast<std::size_t>(side)];
    car::SetupSheet sheet = sheets_[static_cast<std::size_t>(side)];
    const base::Unit mass_unit = base::shown_unit(Quantity::mass, units_);
    const auto mass = read_number(*f.mass, mass_unit);
    if (!mass) return mass.error();
    const auto margin = read_number(*f.mass_margin, mass_unit);
    if (!margin) return margin.error();
    sheet.mass.reset();
    if (mass.value()) sheet.mass = car::Mass{*mass.value(), margin.value().value_or(car::Mass{}.sd_kg)};
    auto& air = sheet.conditions;
    for (const auto& [field, unit, target] :
         {std::tuple(f.temperature, base::shown_unit(Quantity::temperature, units_), &air.temperature_k),
          std::tuple(f.pressure, base::Unit::hectopascal, &air.pressure_pa),
          std::tuple(f.humidity, base::Unit::percent, &air.humidity),
          std::tuple(f.altitude, base::shown_unit(Quantity::length, units_), &air.altitude_m)}) {
        const auto value = read_number(*field, unit);
        if (!value) return value.error();
        *target = value.value();
    }
    const auto front = read_number(*f.front_spring, base::Unit::none);
    if (!front) return front.error();
    const auto rear = read_number(*f.rear_spring, base::Unit::none);
    if (!rear) return rear.error();
    const double spring_sd = sheet.springs.value_or(car::Springs{}).relative_sd;
    sheet.springs.reset();
    if (front.value() && rear.value())
        sheet.springs = car::Springs{1000.0 * *front.value(), 1000.0 * *rear.value(), spring_sd};
    else if (front.value() || rear.value())
        return base::Error{base::ErrorCode::setup_not_readable,
                           {},
                           "only one of the two spring rates is given",
                           "give both or neither"};
    for (const auto& [field, unit, target] :
         {std::tuple(f.downforce_area, base::Unit::none, &sheet.known.downforce_area_m2),
          std::tuple(f.drag_area, base::Unit::none, &sheet.known.drag_area_m2),
          std::tuple(f.power, base::shown_unit(Quantity::power, units_), &sheet.known.power_w)}) {
        const auto figure = read_known(*field, unit);
        if (!figure) return figure.error();
        *target = figure.value();
    }
    sheet.tyre = f.tyre->text().trimmed().toStdString();
    sheet.items = items_of(f.items->toPlainText());
    return car::parse_setup_sheet(car::setup_sheet_text(sheet), side == 0 ? "A" : "B");
}

void SetupForm::load(int side) {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a setup sheet"), {},
                                                      tr("Setup sheets (*.setup.json *.json);;All files (*)"));
    if (path.isEmpty()) return;
    const auto sheet = car::read_setup_sheet(models::file_name(path));
    if (!sheet) {
        complain(text(base::one_line(sheet.error())));
        return;
    }
    fill(side, sheet.value());
}

void SetupForm::complain(const QString& sentence) {
    complaint_->setText(sentence);
    complaint_->show();
}

void SetupForm::accept() {
    std::array<car::SetupSheet, 2> read_sheets;
    for (int side = 0; side < 2; ++side) {
        const auto sheet = read(side);
        if (!sheet) {
            complain(text(base::one_line(sheet.error())));
            return;
        }
        read_sheets[static_cast<std::size_t>(side)] = sheet.value();
    }
    sheets_ = read_sheets;
    QDialog::accept();
}

} // namespace lapwright::pages
