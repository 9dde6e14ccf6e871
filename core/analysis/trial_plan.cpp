// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/trial_plan.h"

#include "core/car/setup_change.h"

#include <algorithm>
#include <cctype>
#include <numeric>

namespace lapwright::analysis {
namespace {

constexpr double overlap_s = 2.0; // clocks of two files may differ so much

std::string plain(std::string_view name) {
    const auto first = name.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    std::string text(name.substr(first, name.find_last_not_of(" \t") - first + 1));
    std::ranges::transform(text, text.begin(), [](unsigned char c) {
        return c < 128 ? static_cast<char>(std::tolower(c)) : static_cast<char>(c);
    });
    return text;
}

base::Error no_trial(std::string what, const char* remedy) {
    return {base::ErrorCode::cannot_be_computed, {}, std::move(what), remedy};
}

std::string name_of(const PlannedRun& run, std::string recording::Recording::* member,
                    std::string car::SetupSheet::* in_setup) {
    const std::string& name = run.recording->*member;
    return name.empty() && in_setup != nullptr ? run.setup.*in_setup : name;
}

// The first two runs whose names are known and differ.
std::optional<base::Error> differing(const std::vector<PlannedRun>& runs, const char* what,
                                     std::string recording::Recording::* member,
                                     std::string car::SetupSheet::* in_setup) {
    const PlannedRun* first = nullptr;
    for (const PlannedRun& run : runs) {
        const std::string name = name_of(run, member, in_setup);
        if (plain(name).empty()) continue;
        if (first == nullptr) {
            first = &run;
            continue;
        }
        const std::string other = name_of(*first, member, in_setup);
        if (plain(other) != plain(name))
            return no_trial(std::string("these are two ") + what + ", \"" + other + "\" and \"" + name + "\"",
                            "a trial tells of a change of one car with one driver on one track: leave one of them out");
    }
    return std::nullopt;
}

std::optional<base::Error> at_one_time(const std::vector<PlannedRun>& runs) {
    for (std::size_t i = 0; i < runs.size(); ++i)
        for (std::size_t k = i + 1; k < runs.size(); ++k) {
            const recording::Recording& a = *runs[i].recording;
            const recording::Recording& b = *runs[k].recording;
            if (&a == &b) return no_trial(runs[i].title + " is there twice", "leave one of the two out");
            if (!a.start_unix_s || !b.start_unix_s) continue;
            const double together = std::min(*a.start_unix_s + a.duration_s, *b.start_unix_s + b.duration_s) -
                                    std::max(*a.start_unix_s, *b.start_unix_s);
            if (together > overlap_s)
                return no_trial(runs[i].title + " and " + runs[k].title +
                                    " were driven at the same time, so not with one car",
                                "leave one of the two out");
        }
    return std::nullopt;
}

} // namespace

std::optional<base::Error> why_no_trial(const std::vector<PlannedRun>& runs) {
    using recording::Recording;
    if (auto error = differing(runs, "cars", &Recording::car, &car::SetupSheet::car)) return error;
    if (auto error = differing(runs, "drivers", &Recording::driver, &car::SetupSheet::driver)) return error;
    if (auto error = differing(runs, "tracks", &Recording::track, nullptr)) return error;
    return at_one_time(runs);
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
                return "the setup sheets show no change from " + one.title + " to " + other.title;
            if (!other.changed && !changes.empty())
                return "the setup sheets of the baseline differ: " + car::one_line(changes);
        }
    return {};
}

} // namespace lapwright::analysis
