// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/keys_help.h"

#include "ui/theme/fonts.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace lapwright::dialogs {
namespace {

QLabel* plain_label(const QString& text, const QFont& font) {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setFont(font);
    return label;
}

void add_group(QGridLayout& grid, const KeyGroup& group) {
    int row = grid.rowCount();
    grid.addWidget(plain_label(group.title, theme::strong(theme::body())), row++, 0, 1, 2);
    for (const KeyLine& line : group.lines) {
        grid.addWidget(plain_label(line.first, theme::body()), row, 0);
        grid.addWidget(plain_label(line.second, theme::body()), row, 1);
        ++row;
    }
    grid.setRowMinimumHeight(row, 8);
}

} // namespace

KeysHelp::KeysHelp(const std::vector<KeyGroup>& groups, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Keys and mouse"));
    auto* content = new QWidget;
    auto* columns = new QHBoxLayout(content);
    columns->setSpacing(36);
    QGridLayout* grids[2] = {new QGridLayout, new QGridLayout};
    std::size_t heights[2] = {0, 0};
    for (const KeyGroup& group : groups) {
        const std::size_t shorter = heights[0] <= heights[1] ? 0 : 1;
        add_group(*grids[shorter], group);
        heights[shorter] += group.lines.size() + 2;
    }
    for (QGridLayout* grid : grids) {
        grid->setHorizontalSpacing(18);
        grid->setVerticalSpacing(2);
        auto* half = new QVBoxLayout;
        half->addLayout(grid);
        half->addStretch(1);
        columns->addLayout(half);
    }
    auto* scroll = new QScrollArea;
    scroll->setWidget(content);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(scroll, 1);
    column->addWidget(buttons);
    resize(content->sizeHint().width() + 60, qMin(content->sizeHint().height() + 90, 680));
}

} // namespace lapwright::dialogs
