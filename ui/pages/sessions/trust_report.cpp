// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/trust_report.h"

#include "core/import/channels/trust_words.h"
#include "core/recording/warning_words.h"
#include "ui/models/text.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <array>

namespace lapwright::pages {
namespace {

using models::text;
using recording::Remark;

constexpr int max_channels = 200;                                          // a file may have thousands
constexpr auto told_by_itself = recording::WarningKind::wheel_speed_scale; // wheel_words say it, also where they agree
constexpr std::array remarks{Remark::recipe, Remark::guessed, Remark::left_out, Remark::mended, Remark::seen};

// A cell of the table: what is too long for its column is cut and shown as its tool tip.
theme::ElidedLabel* cell(const QString& words, bool heading, QWidget* parent) {
    auto* label = new theme::ElidedLabel(parent);
    label->setFont(heading ? theme::strong(theme::small()) : theme::small());
    label->set_text(words);
    return label;
}

void add_row(QGridLayout& grid, int row, const QStringList& words, bool heading, QWidget* parent) {
    for (int column = 0; column < words.size(); ++column)
        grid.addWidget(cell(words[column], heading, parent), row, column);
}

} // namespace

TrustReport::TrustReport(const analysis::Session& session, base::UnitSystem units, QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 4);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(1);
    for (const auto& [section, share] :
         {std::pair(0, 5), std::pair(1, 5), std::pair(2, 2), std::pair(3, 5), std::pair(4, 5)})
        grid->setColumnStretch(section, share);
    add_row(*grid, 0, {tr("Channel"), tr("Taken for"), tr("Rate"), tr("Range"), tr("Gaps")}, true, this);
    int row = 1;
    const auto channels = import::channel_words(*session.recording, session.trust, units);
    for (const import::ChannelWords& words : channels) {
        if (row > max_channels) break;
        QString name = text(words.name).simplified();
        if (!words.written.empty()) name += QStringLiteral(", ") + text(words.written).simplified();
        add_row(*grid, row++, {name, text(words.meaning), text(words.rate), text(words.range), text(words.gaps)}, false,
                this);
    }
    column->addLayout(grid);
    if (channels.size() > static_cast<std::size_t>(max_channels))
        column->addWidget(theme::wrapped_label(tr("and %1 further channels").arg(channels.size() - max_channels), this,
                                               theme::small()));
    const QString wheels = text(import::wheel_words(session.trust));
    if (!wheels.isEmpty()) column->addWidget(theme::wrapped_label(wheels, this, theme::small()));
    std::vector<recording::Warning> all = session.recording->warnings;
    all.insert(all.end(), session.warnings.begin(), session.warnings.end());
    for (const Remark remark : remarks) {
        QStringList sentences;
        for (const recording::Warning& warning : all)
            if (recording::remark_of(warning.kind) == remark && warning.kind != told_by_itself)
                sentences << text(recording::sentence(warning));
        if (sentences.isEmpty()) continue;
        column->addWidget(theme::wrapped_label(
            models::labelled(text(recording::words(remark)), sentences.join(QLatin1Char(' '))), this, theme::small()));
    }
    if (all.empty())
        column->addWidget(theme::wrapped_label(tr("Nothing was guessed, left out or mended."), this, theme::small()));
}

} // namespace lapwright::pages
