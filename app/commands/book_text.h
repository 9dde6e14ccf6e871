// SPDX-License-Identifier: GPL-3.0-or-later
// What the book answers, as JSON (SI units, null for what is not known) and as tables for people.
#pragma once

#include "core/book/exchange.h"
#include "core/book/pairings.h"
#include "core/book/rename.h"
#include "core/book/salvage.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/sessions.h"
#include "core/book/table.h"

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace lapwright::commands {

struct AddedFile {
    std::string file;
    book::Added added;
    std::size_t laps = 0;
    std::string without_laps;         // why none were found, empty where there are some
    std::vector<std::string> renewed; // "setup": of a session that was there, what it got now
};

// What "book corners" did.
struct MeasuredCorners {
    std::size_t sessions = 0;
    std::size_t corners = 0; // of all their laps
};

// A dash for what is not known.
[[nodiscard]] std::string known(const std::string& text);

[[nodiscard]] std::string corners_json(const MeasuredCorners& measured);
[[nodiscard]] std::string corners_table(const MeasuredCorners& measured);
[[nodiscard]] std::string list_json(const std::vector<book::SessionSummary>& sessions);
[[nodiscard]] std::string removed_json(const std::vector<book::RemovedSession>& sessions);
[[nodiscard]] std::string removed_table(const std::vector<book::RemovedSession>& sessions);
[[nodiscard]] std::string list_table(const std::vector<book::SessionSummary>& sessions);
[[nodiscard]] std::string season_json(const std::vector<book::SeasonSession>& season);
[[nodiscard]] std::string season_table(const std::vector<book::SeasonSession>& season);
// Sessions with their figures, an array.
[[nodiscard]] nlohmann::ordered_json figure_rows_json(const std::vector<book::SeasonSession>& season);
[[nodiscard]] std::string figures_json(const std::vector<book::SeasonSession>& season);
[[nodiscard]] std::string figures_table(const std::vector<book::SeasonSession>& season);
[[nodiscard]] std::string pairings_json(const std::vector<book::PairingSummary>& pairings);
[[nodiscard]] std::string pairings_table(const std::vector<book::PairingSummary>& pairings);
[[nodiscard]] std::string renamed_json(const book::Renamed& renamed);
[[nodiscard]] std::string renamed_table(const book::Renamed& renamed);
[[nodiscard]] std::string added_json(const std::vector<AddedFile>& added);
[[nodiscard]] std::string added_table(const std::vector<AddedFile>& added);
[[nodiscard]] std::string merged_json(const book::Merged& merged);
[[nodiscard]] std::string merged_table(const book::Merged& merged);
[[nodiscard]] std::string table_csv(const book::BookTable& table);
[[nodiscard]] std::string health_json(const book::Health& health);
[[nodiscard]] std::string health_table(const book::Health& health);
[[nodiscard]] std::string salvaged_json(const book::Salvaged& salvaged);
[[nodiscard]] std::string salvaged_table(const book::Salvaged& salvaged);

} // namespace lapwright::commands
