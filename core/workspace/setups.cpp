// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/setups.h"

#include "core/analysis/setup_owner.h"
#include "core/base/error.h"
#include "core/base/translation.h"
#include "core/car/setup_beside.h"
#include "core/car/setup_change.h"
#include "core/car/write_setup_sheet.h"
#include "core/track/track_record.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace lapwright::workspace {
namespace {

using base::said;

std::string place_name(const std::string& file) {
    return std::filesystem::path(car::setup_path_beside(file)).filename().string();
}

KnownSetup known_beside(const std::optional<car::SetupSheet>& in_book, const std::string& file) {
    const auto beside = car::setup_beside(file);
    if (!beside)
        return in_book ? KnownSetup{*in_book, said("from the book")} : KnownSetup{{}, base::one_line(beside.error())};
    if (!*beside) return in_book ? KnownSetup{*in_book, said("from the book")} : KnownSetup{};
    if (!in_book) return {**beside, said("from %1, which lies beside it", {place_name(file)})};
    return {*in_book, same_setup(**beside, *in_book)
                          ? said("from the book, as %1 beside the file has it", {place_name(file)})
                          : said("from the book; %1 beside the file says otherwise", {place_name(file)})};
}

} // namespace

bool same_setup(const car::SetupSheet& one, const car::SetupSheet& other) {
    return car::setup_sheet_text(one) == car::setup_sheet_text(other);
}

void Setups::enter(const SessionKey& key, const std::optional<car::SetupSheet>& sheet) {
    if (const auto kept = in_book_.find(key); kept != in_book_.end())
        kept->second = sheet.value_or(car::SetupSheet{});
    else if (sheet)
        entered_[key] = {*sheet, true};
    else
        entered_.erase(key);
}

std::optional<car::SetupSheet> Setups::take_from_book(const SessionKey& key, const car::SetupSheet& sheet) {
    const auto given = entered_.extract(key);
    const bool newer = !given.empty() && given.mapped().in_this_run;
    in_book_[key] = newer ? given.mapped().sheet : sheet;
    return newer ? std::optional(given.mapped().sheet) : std::nullopt;
}

void Setups::rename(const SessionKey& key, const std::string& driver, const std::string& car) {
    const auto give = [&](car::SetupSheet& sheet) {
        if (!sheet.driver.empty()) sheet.driver = driver;
        if (!sheet.car.empty()) sheet.car = car;
    };
    if (const auto kept = in_book_.find(key); kept != in_book_.end()) give(kept->second);
    if (const auto found = entered_.find(key); found != entered_.end()) give(found->second.sheet);
}

std::optional<car::SetupSheet> Setups::entered(const SessionKey& key) const {
    if (const auto kept = in_book_.find(key); kept != in_book_.end())
        return same_setup(kept->second, {}) ? std::nullopt : std::optional(kept->second);
    const auto found = entered_.find(key);
    return found == entered_.end() ? std::nullopt : std::optional(found->second.sheet);
}

KnownSetup Setups::known(const SessionKey& key, const OpenSessions& sessions) const {
    const auto sheet = entered(key);
    if (sheet && !in_book(key)) return {*sheet, said("as entered here")};
    const OpenSessions::Entry* open = sessions.find(key);
    if (open && open->file()) return known_beside(sheet, *open->file());
    return sheet ? KnownSetup{*sheet, said("from the book")} : KnownSetup{};
}

std::optional<GivenSetup> read_given_setup(const std::string& file, std::vector<Origin> together) {
    if (track::read_track_record(file)) return std::nullopt;
    const auto sheet = car::read_setup_sheet(file);
    if (!sheet || (car::says_nothing(*sheet) && sheet->driver.empty() && sheet->car.empty())) return std::nullopt;
    return GivenSetup{file, *sheet, std::move(together)};
}

const OpenSessions::Entry* owner_of(const GivenSetup& given, const OpenSessions& sessions) {
    for (const bool together : {true, false}) {
        std::vector<analysis::SetupCandidate> candidates;
        std::vector<const OpenSessions::Entry*> entries;
        for (const OpenSessions::Entry& entry : sessions.entries()) {
            const auto came = [&](const Origin& origin) { return entry.came_from(origin); };
            if (together && std::ranges::none_of(given.together, came)) continue;
            candidates.push_back({entry.file() ? *entry.file() : entry.file_name(), entry.session->recording.get()});
            entries.push_back(&entry);
        }
        if (const auto owner = analysis::setup_owner(given.file, given.sheet, candidates, together))
            return entries[*owner];
    }
    return nullptr;
}

} // namespace lapwright::workspace
