// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/further_row.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/presentation/figures.h"
#include "ui/models/open_sessions.h"
#include "ui/models/text.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QHBoxLayout>

namespace lapwright::pages {
namespace {

using models::text;

// The name stands last: it is what gives way where there is no room.
QString further_words(const analysis::FurtherLap& lap, std::size_t place) {
    const comparison::Figure& gap = lap.gap_at_end_s;
    return FurtherRow::tr("%1  lap %2 · %3 · %4 s to A · %5")
        .arg(models::further_letter(place), text(base::integer_text(lap.lap.number)),
             text(base::lap_time_with_margin(lap.trace.lap_time_s(), lap.lap.time_sd_s)),
             text(presentation::signed_with_margin(gap.value, gap.sd, 3)), text(lap.wanted.session->title()));
}

} // namespace

FurtherRow::FurtherRow(QWidget* parent) : QWidget(parent), row_(new QHBoxLayout(this)), palette_(theme::paper()) {
    row_->setContentsMargins(0, 0, 0, 2);
    row_->setSpacing(18);
    hide();
}

void FurtherRow::show_laps(const std::shared_ptr<const std::vector<analysis::FurtherLap>>& laps) {
    for (const auto& [place, label] : labels_)
        delete label;
    labels_.clear();
    for (std::size_t i = 0; laps && i < laps->size(); ++i) {
        if ((*laps)[i].refused) continue;
        auto* label = new theme::ElidedLabel(this);
        label->setFont(theme::small());
        label->set_text(further_words((*laps)[i], i));
        row_->addWidget(label, 1);
        labels_.emplace_back(static_cast<int>(i), label);
    }
    colour();
    setVisible(!labels_.empty());
}

void FurtherRow::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    colour();
}

void FurtherRow::colour() {
    for (const auto& [place, label] : labels_)
        theme::set_ink(label, theme::further_colour(palette_, place));
}

QStringList FurtherRow::words() const {
    QStringList all;
    for (const auto& [place, label] : labels_)
        all << label->text();
    return all;
}

} // namespace lapwright::pages
