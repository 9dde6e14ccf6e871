// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/driver_strip.h"

#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::pages {
namespace {

using models::text;

constexpr int rows = 4;

} // namespace

DriverStrip::DriverStrip(QWidget* parent)
    : QFrame(parent), title_(theme::plain_label(this, theme::strong(theme::body()))), grid_(new QGridLayout),
      palette_(theme::paper()) {
    setAccessibleName(tr("What both drivers do"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(title_);
    grid_->setHorizontalSpacing(10);
    grid_->setVerticalSpacing(0);
    column->addLayout(grid_);
    setToolTip(text(findings::driver_figures_note()));
    show_nothing();
}

void DriverStrip::show_explanation(std::shared_ptr<const causes::Explanation> explanation, base::UnitSystem units) {
    explanation_ = std::move(explanation);
    units_ = units;
    segment_.reset();
    fill();
}

void DriverStrip::show_nothing() {
    explanation_.reset();
    segment_.reset();
    fill();
}

void DriverStrip::choose(std::optional<std::size_t> segment) {
    if (!explanation_ || segment == segment_) return;
    segment_ = segment;
    fill();
}

void DriverStrip::fill() {
    for (auto& column : columns_)
        for (QLabel* label : column)
            delete label;
    columns_.clear();
    figures_.clear();
    setVisible(explanation_ != nullptr);
    if (!explanation_) return;
    if (segment_) {
        const causes::SegmentRow& row = explanation_->segments[*segment_];
        title_->setText(tr("Drivers, %1").arg(text(row.segment.name)));
        figures_ = findings::driver_figures(row, units_);
    } else {
        title_->setText(tr("Drivers, whole lap"));
        figures_ = findings::driver_figures(*explanation_);
    }
    add({"", "A", "B", "", findings::Favours::neither}, 0);
    for (std::size_t i = 0; i < figures_.size(); ++i)
        add(figures_[i], static_cast<int>(i) + 1);
    colour();
}

void DriverStrip::add(const findings::DriverFigure& figure, int column) {
    const QString words[rows] = {text(figure.name), text(figure.a), text(figure.b), text(figure.says)};
    std::vector<QLabel*> labels;
    for (int row = 0; row < rows; ++row) {
        auto* label = theme::plain_label(words[row], this, theme::small());
        // A unit does not stand alone on a line.
        if (row == 0) label->setText(QString(words[row]).replace(QStringLiteral(", "), QStringLiteral(",\u00a0")));
        if (column > 0) label->setAccessibleName(models::labelled(words[0], words[row]));
        if (row == 0) {
            label->setWordWrap(true);
            label->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
            grid_->addWidget(label, row, column); // as wide as its column, by which its height goes
        } else {
            grid_->addWidget(label, row, column, Qt::AlignLeft);
        }
        label->show();
        labels.push_back(label);
    }
    grid_->setColumnStretch(column, column == 0 ? 0 : 1);
    columns_.push_back(std::move(labels));
}

QString DriverStrip::title() const {
    return title_->text();
}

QString DriverStrip::cell(int row, int column) const {
    const auto at = static_cast<std::size_t>(column);
    return at < columns_.size() ? columns_[at][static_cast<std::size_t>(row)]->text() : QString();
}

void DriverStrip::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    colour();
}

void DriverStrip::colour() {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const findings::Favours favours = i == 0 ? findings::Favours::neither : figures_[i - 1].favours;
        const QColor owner = favours == findings::Favours::a   ? palette_.a
                             : favours == findings::Favours::b ? palette_.b
                                                               : palette_.quiet;
        const QColor inks[rows] = {palette_.quiet, i == 0 ? palette_.a : palette_.ink,
                                   i == 0 ? palette_.b : palette_.ink, owner};
        for (std::size_t row = 0; row < rows; ++row)
            theme::set_ink(columns_[i][row], inks[row]);
    }
}

} // namespace lapwright::pages
