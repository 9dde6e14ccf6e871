// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/keys_help.h"

#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace lapwright::dialogs {
namespace {

// Two columns of what is done and its key stand side by side on the smallest screen; longer words take a second line.
constexpr int most_px = 300;

QLabel* line_label(const QString& words) {
    QLabel* label = theme::plain_label(words, nullptr, theme::body());
    if (label->sizeHint().width() <= most_px) return label;
    label->setWordWrap(true);
    label->setFixedWidth(most_px);
    return label;
}

void add_group(QGridLayout& grid, const KeyGroup& group) {
    int row = grid.rowCount();
    grid.addWidget(theme::plain_label(group.title, nullptr, theme::strong(theme::body())), row++, 0, 1, 2);
    for (const KeyLine& line : group.lines) {
        grid.addWidget(line_label(line.first), row, 0);
        grid.addWidget(line_label(line.second), row, 1, Qt::AlignTop);
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
    scroll->setAccessibleName(windowTitle());
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(scroll, 1);
    column->addWidget(buttons);
    resize(content->sizeHint().width() + 60, qMin(content->sizeHint().height() + 90, 680));
}

} // namespace lapwright::dialogs
