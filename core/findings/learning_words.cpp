// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/learning_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

namespace lapwright::findings {
namespace {

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
    return base::fixed_text(value, decimals_of(estimate)) + " " +
           base::plus_minus_text(half_of(estimate), most_decimals);
}

// "0.00 ±0.05": no digit of the figure itself.
bool shows_nothing(const std::string& text) {
    return text.substr(0, text.find(' ')).find_first_not_of("0.") == std::string::npos;
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) text += i + 1 == names.size() ? " and " : ", ";
        text += names[i];
    }
    return text;
}

std::string pace_words(const LearningCourse& lap) {
    const base::Estimate& change = lap.change_s_per_lap;
    const std::string pace = change.told() ? with_margin(change, std::abs(change.value)) + " s a lap" : std::string();
    switch (lap.state) {
    case Learning::quicker:
        return "Getting quicker by " + pace + ".";
    case Learning::stopped:
        return "Quicker by " + pace + " over all laps, but no more in the later half of them.";
    case Learning::slower:
        return "Getting slower by " + pace + ".";
    case Learning::level:
        return "Lap times stay level.";
    case Learning::cannot_tell:
        break;
    }
    if (!change.told()) return "Whether the lap times fall cannot be told from " + change.untold + ".";
    return "Whether the lap times fall cannot be told: " + pace + ".";
}

std::string to_win_words(const comparison::LearningCurve& curve, const std::vector<std::string>& names) {
    std::vector<std::size_t> order(curve.segments.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::erase_if(order, [&](std::size_t i) { return !curve.segments[i].to_win_is_told; });
    std::ranges::stable_sort(order, std::greater{}, [&](std::size_t i) { return curve.segments[i].to_win_s.value; });
    if (order.size() > most_named) order.resize(most_named);
    std::vector<std::string> told;
    for (const std::size_t i : order)
        told.push_back(names[i] + " (" + to_win_text(curve.segments[i]) + " s off its best)");
    return told.empty() ? std::string() : " Most is still to be won in " + listed(told) + ".";
}

std::string stopped_words(const comparison::LearningCurve& curve, const std::vector<std::string>& names) {
    std::vector<std::string> stopped;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (curve.segments[i].state == Learning::stopped) stopped.push_back(names[i]);
    return stopped.empty() ? std::string() : " Learning has stopped in " + listed(stopped) + ".";
}

} // namespace

std::string learning_sentence(const comparison::LearningCurve& curve, const std::vector<std::string>& names) {
    return pace_words(curve.lap) + to_win_words(curve, names) + stopped_words(curve, names);
}

std::string learning_text(Learning learning) {
    switch (learning) {
    case Learning::quicker:
        return "getting quicker";
    case Learning::stopped:
        return "learning has stopped";
    case Learning::level:
        return "level";
    case Learning::slower:
        return "getting slower";
    case Learning::cannot_tell:
        break;
    }
    return "cannot be told";
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
    return course.to_win_is_told ? text : text + ", or chance";
}

std::string best_text(const LearningCourse& course) {
    return course.best_s ? base::lap_time_text(*course.best_s, course.now_s.told() ? decimals_of(course.now_s) : 2)
                         : dash;
}

} // namespace lapwright::findings
