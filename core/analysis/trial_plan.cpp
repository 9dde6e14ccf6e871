// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/trial_plan.h"

#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/car/names.h"
#include "core/car/setup_change.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace lapwright::analysis {
namespace {

using base::said;
using base::word;

constexpr double overlap_s = 2.0; // clocks of two files may differ so much

base::Error no_trial(std::string what, const std::string& remedy) {
    return {base::ErrorCode::cannot_be_computed, {}, std::move(what), remedy};
}

using NameOf = std::string (*)(const PlannedRun&);

// Refused by the first two runs whose names are known and differ.
base::Result<void> all_the_same(const std::vector<PlannedRun>& runs, const char* two_of_them, NameOf name_of) {
    std::string first;
    for (const PlannedRun& run : runs) {
        const std::string name = name_of(run);
        if (first.empty())
            first = name;
        else if (!name.empty() && !base::same_name(name, first))
            return no_trial(
                said(two_of_them, {first, name}),
                said("a trial tells of a change of one car with one driver on one track: leave one of them out"));
    }
    return {};
}

// The same file once more, or a copy of it under another name.
bool same_samples(const recording::Recording& a, const recording::Recording& b) {
    if (&a == &b) return true;
    const auto same = [](const recording::Channel& x, const recording::Channel& y) { return x.values == y.values; };
    return !a.channels.empty() && a.duration_s == b.duration_s && std::ranges::equal(a.channels, b.channels, same);
}

base::Result<void> one_after_another(const std::vector<PlannedRun>& runs) {
    for (std::size_t i = 0; i < runs.size(); ++i)
        for (std::size_t k = i + 1; k < runs.size(); ++k) {
            const recording::Recording& a = *runs[i].recording;
            const recording::Recording& b = *runs[k].recording;
            if (same_samples(a, b))
                return no_trial(said("%1 is there twice", {runs[i].title}), said("leave one of the two out"));
            if (!a.start_unix_s || !b.start_unix_s) continue;
            const double together = std::min(*a.start_unix_s + a.duration_s, *b.start_unix_s + b.duration_s) -
                                    std::max(*a.start_unix_s, *b.start_unix_s);
            if (together > overlap_s)
                return no_trial(
                    said("%1 and %2 were driven at the same time, so not with one car", {runs[i].title, runs[k].title}),
                    said("leave one of the two out"));
        }
    return {};
}

} // namespace

base::Result<void> check_trial(const std::vector<PlannedRun>& runs) {
    const auto car = [](const PlannedRun& run) { return car::names_of(*run.recording, run.setup).car; };
    const auto driver = [](const PlannedRun& run) { return car::names_of(*run.recording, run.setup).driver; };
    const auto track = [](const PlannedRun& run) { return base::plain_name(run.recording->track); };
    for (const auto& [two_of_them, name_of] :
         {std::pair<const char*, NameOf>{word("these are two cars, \"%1\" and \"%2\""), car},
          {word("these are two drivers, \"%1\" and \"%2\""), driver},
          {word("these are two tracks, \"%1\" and \"%2\""), track}})
        if (auto same = all_the_same(runs, two_of_them, name_of); !same) return same;
    return one_after_another(runs);
}

std::optional<std::vector<std::size_t>> driven_order(const std::vector<PlannedRun>& runs) {
    const auto timed = [](const PlannedRun& run) { return run.recording->start_unix_s.has_value(); };
    if (!std::ranges::all_of(runs, timed)) return std::nullopt;
    std::vector<std::size_t> order(runs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return *runs[i].recording->start_unix_s; });
    return order;
}

std::string change_not_shown(const std::vector<PlannedRun>& runs) {
    const auto units = base::UnitSystem::metric;
    for (const PlannedRun& one : runs)
        for (const PlannedRun& other : runs) {
            if (one.changed || car::says_nothing(one.setup) || car::says_nothing(other.setup)) continue;
            const auto changes = car::setup_changes(one.setup, other.setup, units);
            if (other.changed && changes.empty())
                return said("the setup sheets show no change from %1 to %2", {one.title, other.title});
            if (!other.changed && !changes.empty())
                return said("the setup sheets of the baseline differ: %1", {car::one_line(changes)});
        }
    return {};
}

} // namespace lapwright::analysis
