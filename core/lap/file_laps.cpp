// SPDX-License-Identifier: GPL-3.0-or-later
// The line lies at some phase of the file's laps.  Half a lap away from it these are cut, and passings are counted
// between the cuts: near a mark one would fall now before and now behind it.
#include "core/lap/file_laps.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lapwright::lap {
namespace {

using base::said;

constexpr double usual_share = 0.3; // out laps, and laps with a stop, are no witnesses

struct Marked {
    double start_s;
    double end_s;
    bool usual;
    [[nodiscard]] double at(double phase) const { return start_s + phase * (end_s - start_s); }
};

std::vector<Marked> marked_laps(const std::vector<double>& marks_s) {
    std::vector<double> lasted;
    for (std::size_t i = 1; i < marks_s.size(); ++i)
        lasted.push_back(marks_s[i] - marks_s[i - 1]);
    std::vector<Marked> laps;
    if (lasted.empty()) return laps;
    const double middle = math::median(lasted);
    for (std::size_t i = 0; i < lasted.size(); ++i)
        laps.push_back({marks_s[i], marks_s[i + 1], std::abs(lasted[i] / middle - 1.0) < usual_share});
    return laps;
}

// Circular mean of the passings' phases in the usual laps, 0..1.
double phase_of(std::span<const double> passings_s, const std::vector<Marked>& laps) {
    double c = 0.0;
    double s = 0.0;
    for (const Marked& lap : laps) {
        if (!lap.usual) continue;
        for (const double t : passings_s) {
            if (t < lap.start_s || t >= lap.end_s) continue;
            const double angle = 2.0 * base::pi * (t - lap.start_s) / (lap.end_s - lap.start_s);
            c += std::cos(angle);
            s += std::sin(angle);
        }
    }
    const double turns = std::atan2(s, c) / (2.0 * base::pi);
    return turns - std::floor(turns);
}

std::string count_text(std::size_t count) {
    return base::integer_text(static_cast<std::int64_t>(count));
}

} // namespace

std::optional<std::string> against_file(std::span<const double> passings_s, const track::RecordedPassings& marks) {
    const std::vector<Marked> laps = marked_laps(marks.time_s);
    const double opposite = phase_of(passings_s, laps) + 0.5;
    const double cut = opposite - std::floor(opposite);
    std::size_t looked_at = 0;
    std::size_t without = 0;
    std::size_t with_more = 0;
    for (std::size_t i = 0; i + 1 < laps.size(); ++i) {
        if (!laps[i].usual || !laps[i + 1].usual) continue;
        const auto first = std::ranges::lower_bound(passings_s, laps[i].at(cut));
        const auto end = std::ranges::lower_bound(passings_s, laps[i + 1].at(cut));
        ++looked_at;
        without += first == end ? 1 : 0;
        with_more += end - first > 1 ? 1 : 0;
    }
    if (looked_at < 2 || without + with_more == 0) return std::nullopt;
    const std::string all = count_text(laps.size());
    if (with_more == 0)
        return said(
            "the %1 marks %2 laps, but %3 of them do not pass the timing line: these laps are merged or cut here",
            {marks.origin, all, count_text(without)});
    if (without == 0)
        return said("the %1 marks %2 laps, but %3 pass it more than once: these laps are merged or cut here",
                    {marks.origin, all, count_text(with_more)});
    return said("the %1 marks %2 laps, but %3 of them do not pass the timing line and %4 pass it more than once: these "
                "laps are merged or cut here",
                {marks.origin, all, count_text(without), count_text(with_more)});
}

} // namespace lapwright::lap
