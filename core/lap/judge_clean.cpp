// SPDX-License-Identifier: GPL-3.0-or-later
// Clean or not, against the session's own median: a lap in traffic loses much in few places, a lap with a mistake too.
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/lap/find_laps.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::lap {
namespace {

using base::said;

struct Middle {
    double median;
    double spread; // robust standard deviation
};

Middle middle(const std::vector<double>& values) {
    return {math::median(values), math::robust_sd(values)};
}

std::vector<double> section_times(const LapTrace& trace, std::size_t sections) {
    std::vector<double> times(sections);
    const double length = trace.distance_m.back();
    double before = 0.0;
    for (std::size_t i = 0; i < sections; ++i) {
        const double here = trace.time_at(length * static_cast<double>(i + 1) / static_cast<double>(sections));
        times[i] = here - before;
        before = here;
    }
    return times;
}

struct Loss {
    double lost_s = 0.0; // 0: every section is within the limits
    double from_m = 0.0;
};

Loss worst_section(const std::vector<double>& times, const std::vector<Middle>& usual, double length_m,
                   const CleanLimits& limits) {
    Loss worst;
    for (std::size_t i = 0; i < times.size(); ++i) {
        const double lost = times[i] - usual[i].median;
        const double limit = std::max(limits.min_loss_in_section_s, limits.section_spreads * usual[i].spread);
        if (lost > limit && lost > worst.lost_s)
            worst = {lost, length_m * static_cast<double>(i) / static_cast<double>(times.size())};
    }
    return worst;
}

// Empty for a clean lap.  The place is named that explains the lap: one that was slow all round has none.
std::string why_not_clean(const Loss& worst, double slower_s, const Middle& usual_lap, const CleanLimits& limits) {
    constexpr double explains = 0.5;
    if (worst.lost_s > 0.0 && worst.lost_s > explains * slower_s)
        return said("%1 s lost near %2 m", {base::shown_text(worst.lost_s, 1), base::shown_text(worst.from_m, 0)});
    const double most_s = std::max(limits.lap_share * usual_lap.median, limits.lap_spreads * usual_lap.spread);
    if (!(worst.lost_s > 0.0 || slower_s > most_s)) return {};
    return said("%1 s slower than the usual lap", {base::shown_text(slower_s, 1)});
}

void judge_few(std::vector<Lap>& laps, const std::vector<std::size_t>& flying, const CleanLimits& limits) {
    double fastest = laps[flying.front()].time_s();
    for (const std::size_t i : flying)
        fastest = std::min(fastest, laps[i].time_s());
    for (const std::size_t i : flying) {
        laps[i].clean = laps[i].time_s() <= fastest * (1.0 + limits.alone_share);
        if (!laps[i].clean) laps[i].why_not_clean = said("much slower than the session's other lap");
    }
}

} // namespace

std::vector<Lap> judged(std::vector<Lap> laps, const std::vector<LapTrace>& traces, const CleanLimits& limits) {
    std::vector<std::size_t> flying;
    for (std::size_t i = 0; i < laps.size(); ++i) {
        if (laps[i].kind != LapKind::flying) continue;
        if (traces[i].size() > 1)
            flying.push_back(i);
        else
            laps[i].why_not_clean = said("does not follow the track all the way");
    }
    if (flying.empty()) return laps;
    if (flying.size() < 3) {
        judge_few(laps, flying, limits);
        return laps;
    }
    std::vector<double> lap_times;
    std::vector<double> lengths;
    std::vector<std::vector<double>> by_section(limits.sections);
    for (const std::size_t i : flying) {
        lap_times.push_back(traces[i].lap_time_s());
        lengths.push_back(traces[i].driven_length_m);
        const auto times = section_times(traces[i], limits.sections);
        for (std::size_t k = 0; k < times.size(); ++k)
            by_section[k].push_back(times[k]);
    }
    const Middle usual_lap = middle(lap_times);
    const double usual_length = math::median(lengths);
    std::vector<Middle> usual;
    for (const auto& times : by_section)
        usual.push_back(middle(times));
    for (const std::size_t i : flying) {
        const double slower = traces[i].lap_time_s() - usual_lap.median;
        const Loss worst =
            worst_section(section_times(traces[i], limits.sections), usual, traces[i].distance_m.back(), limits);
        std::string why = why_not_clean(worst, slower, usual_lap, limits);
        if (why.empty() && std::abs(traces[i].driven_length_m / usual_length - 1.0) > limits.length_share)
            why = said("another length than the other laps");
        laps[i].clean = why.empty();
        laps[i].why_not_clean = why;
    }
    return laps;
}

} // namespace lapwright::lap
