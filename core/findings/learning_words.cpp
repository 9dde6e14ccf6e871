// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/learning_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

namespace lapwright::findings {
namespace {

using base::said;
using comparison::Learning;
using comparison::LearningCourse;

constexpr int most_decimals = 3;
constexpr std::size_t most_named = 3;
const std::string dash = "—";

// Half the wider side: a robust interval need not lie evenly about its value.
double half_of(const base::Estimate& estimate) {
    return std::max(estimate.high - estimate.value, estimate.value - estimate.low);
}

int decimals_of(const base::Estimate& estimate) {
    return std::max(1, base::decimals_for(half_of(estimate), most_decimals));
}

std::string with_margin(const base::Estimate& estimate, double value) {
    return base::shown_text(value, decimals_of(estimate)) + " " +
           base::plus_minus_text(half_of(estimate), most_decimals);
}

// "0.00 ±0.05": no digit of the figure itself.
bool shows_nothing(const std::string& text) {
    return base::shows_zero(text.substr(0, text.find(' ')));
}

std::string pace_words(const LearningCourse& lap) {
    const base::Estimate& change = lap.change_s_per_lap;
    const std::string pace =
        change.told() ? said("%1 s a lap", {with_margin(change, std::abs(change.value))}) : std::string();
    switch (lap.state) {
    case Learning::quicker:
        return said("Getting quicker by %1.", {pace});
    case Learning::stopped:
        return said("Quicker by %1 over all laps, but no more in the later half of them.", {pace});
    case Learning::slower:
        return said("Getting slower by %1.", {pace});
    case Learning::level:
        return said("Lap times stay level.");
    case Learning::cannot_tell:
        break;
    }
    if (!change.told()) return said("Whether the lap times fall cannot be told from %1.", {change.untold});
    return said("Whether the lap times fall cannot be told: %1.", {pace});
}

std::string to_win_words(const comparison::LearningCurve& curve, const std::vector<std::string>& names) {
    std::vector<std::size_t> order(curve.segments.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::erase_if(order, [&](std::size_t i) { return !curve.segments[i].to_win_is_told; });
    std::ranges::stable_sort(order, std::greater{}, [&](std::size_t i) { return curve.segments[i].to_win_s.value; });
    if (order.size() > most_named) order.resize(most_named);
    std::vector<std::string> told;
    for (const std::size_t i : order)
        told.push_back(said("%1 (%2 s off its best)", {names[i], to_win_text(curve.segments[i])}));
    return told.empty() ? std::string() : " " + said("Most is still to be won in %1.", {base::listed(told)});
}

std::string stopped_words(const comparison::LearningCurve& curve, const std::vector<std::string>& names) {
    std::vector<std::string> stopped;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (curve.segments[i].state == Learning::stopped) stopped.push_back(names[i]);
    return stopped.empty() ? std::string() : " " + said("Learning has stopped in %1.", {base::listed(stopped)});
}

} // namespace

std::string learning_sentence(const comparison::LearningCurve& curve, const std::vector<std::string>& names) {
    return pace_words(curve.lap) + to_win_words(curve, names) + stopped_words(curve, names);
}

std::string learning_text(Learning learning) {
    switch (learning) {
    case Learning::quicker:
        return said("getting quicker");
    case Learning::stopped:
        return said("learning has stopped");
    case Learning::level:
        return said("level");
    case Learning::slower:
        return said("getting slower");
    case Learning::cannot_tell:
        break;
    }
    return said("cannot be told");
}

std::string change_per_lap_text(const LearningCourse& course) {
    const base::Estimate& change = course.change_s_per_lap;
    if (!change.told()) return dash;
    std::string text = with_margin(change, std::abs(change.value));
    if (!shows_nothing(text)) text.insert(0, change.value > 0.0 ? "+" : "−");
    return text;
}

std::string now_text(const LearningCourse& course) {
    const base::Estimate& now = course.now_s;
    if (!now.told()) return dash;
    return base::lap_time_text(now.value, decimals_of(now)) + " " + base::plus_minus_text(half_of(now), most_decimals);
}

std::string to_win_text(const LearningCourse& course) {
    if (!course.to_win_s.told()) return dash;
    const double value = course.to_win_s.value;
    std::string text = with_margin(course.to_win_s, std::abs(value));
    if (value < 0.0 && !shows_nothing(text)) text.insert(0, "−");
    return course.to_win_is_told ? text : said("%1, or chance", {text});
}

std::string best_text(const LearningCourse& course) {
    return course.best_s ? base::lap_time_text(*course.best_s, course.now_s.told() ? decimals_of(course.now_s) : 2)
                         : dash;
}

} // namespace lapwright::findings
