// SPDX-License-Identifier: GPL-3.0-or-later
// The whole book as evidence on one car: its sessions read, placed, and put together.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/book/season.h"
#include "core/season/car_over_outings.h"

#include <string>
#include <vector>

namespace lapwright::analysis {

struct LeftOut {
    book::SessionSummary session;
    std::string why;
};

struct CarSeason {
    // That count, the oldest first, those without a date last, each with its figures as all sessions together have
    // them.
    std::vector<book::SeasonSession> sessions;
    // The same sessions, each with its figures as it and those before it have them: how the knowledge grew.
    std::vector<book::SeasonSession> so_far;
    std::vector<season::ItemEffect> effects;
    std::vector<LeftOut> left_out;
    std::vector<std::string> notes; // in words: what the figures rest on, and what would tell more
};

// Errors: cannot_be_computed where no session of the car tells anything, cancelled.  Progress from 0 to 1; called off
// it ends between two sessions at the latest.
[[nodiscard]] base::Result<CarSeason> car_season(book::Book& book, const std::string& car,
                                                 const base::Progress& progress = {});

} // namespace lapwright::analysis
