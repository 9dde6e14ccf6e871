// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/setup_levels.h"

#include "core/base/plain_text.h"
#include "core/car/setup_change.h"

#include <algorithm>
#include <array>

namespace lapwright::season {
namespace {

// Parts of words in the languages of the setup form's names, in lower case.
constexpr std::array aero_words{
    "wing",         "splitter",  "flap",   "gurney",        "diffus",       "ride height", "rake",
    "underbody",    "undertray", "canard", "dive plane",    "aero",         "spoiler",     "air dam",
    "skirt",        "end plate", "flügel", "bodenfreiheit", "unterboden",   "aileron",     "becquet",
    "garde au sol", "alerón",    "altura", "ウイング",      "スプリッター", "車高",        "ディフューザー"};
constexpr std::array drive_words{"engine", "boost", "ignition",  "exhaust", "intake",      "restrictor",
                                 "motor",  "turbo", "ladedruck", "auspuff", "échappement", "エンジン"};
constexpr std::array tyre_words{"tyre", "tire", "compound", "reifen", "pneu", "neumático", "gomm", "タイヤ"};

template <std::size_t Count>
bool has_one(std::string_view text, const std::array<const char*, Count>& words) {
    return std::ranges::any_of(words, [&](const char* word) { return text.find(word) != std::string_view::npos; });
}

std::vector<car::SetupItem> tyre_and_items(const car::SetupSheet& sheet) {
    std::vector<car::SetupItem> all{{"tyre", sheet.tyre}};
    all.insert(all.end(), sheet.items.begin(), sheet.items.end());
    return all;
}

std::string value_of(const car::SetupSheet& sheet, const std::string& name) {
    for (const car::SetupItem& item : tyre_and_items(sheet))
        if (item.name == name) return item.value;
    return {};
}

} // namespace

ItemKind kind_of(std::string_view item_name) {
    const std::string name = base::lower_case(item_name);
    if (has_one(name, tyre_words)) return ItemKind::tyre;
    if (has_one(name, aero_words)) return ItemKind::aero;
    if (has_one(name, drive_words)) return ItemKind::drive;
    return ItemKind::other;
}

UsualEffect usual_effect(ItemKind kind) {
    switch (kind) {
    case ItemKind::aero:
        return {0.005, 0.7, 0.08, 0.003};
    case ItemKind::drive:
        return {0.002, 0.02, 0.01, 0.08};
    case ItemKind::tyre:
        return {0.05, 0.05, 0.01, 0.003};
    case ItemKind::other:
        break;
    }
    return {0.02, 0.15, 0.02, 0.005};
}

std::vector<SetupLevels> setup_levels(const std::vector<car::SetupSheet>& setups) {
    std::vector<std::string> names;
    for (const car::SetupSheet& sheet : setups)
        for (const car::SetupItem& item : tyre_and_items(sheet))
            if (std::ranges::find(names, item.name) == names.end()) names.push_back(item.name);
    const auto says = [](const car::SetupSheet& sheet) { return !car::says_nothing(sheet); };
    const auto first = std::ranges::find_if(setups, says);
    std::vector<SetupLevels> changed;
    for (const std::string& name : names) {
        SetupLevels levels{name, kind_of(name), {}, {}};
        const car::SetupSheet* known = first == setups.end() ? nullptr : &*first;
        for (const car::SetupSheet& sheet : setups) {
            if (says(sheet)) known = &sheet;
            const std::string value = known == nullptr ? std::string() : value_of(*known, name);
            const auto found = std::ranges::find(levels.values, value);
            levels.of_session.push_back(static_cast<std::size_t>(found - levels.values.begin()));
            if (found == levels.values.end()) levels.values.push_back(value);
        }
        if (levels.values.size() > 1) changed.push_back(std::move(levels));
    }
    return changed;
}

} // namespace lapwright::season
