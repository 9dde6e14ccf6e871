// SPDX-License-Identifier: GPL-3.0-or-later
// The season in a sentence: who was quickest on the track, how a car's figure went; or why there is nothing to see.
#pragma once

#include "core/book/season.h"
#include "core/book/season_figures.h"
#include "ui/models/season_list.h"

#include <QString>
#include <vector>

namespace lapwright::pages {

// `figure`: the one that is shown of a car, may be null.  An empty name: the book has no track or car at all.
[[nodiscard]] QString season_sentence(models::SeasonOf of, const QString& name,
                                      const std::vector<book::SeasonSession>& season, const book::FigureCourse* figure);

} // namespace lapwright::pages
