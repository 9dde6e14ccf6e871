// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/frozen.h"

#include <algorithm>
#include <cmath>

namespace lapwright::motion {
namespace {

// Slower than this a car may well stand; receivers show some tenths of a metre a second at rest.
constexpr double standing_mps = 1.0;
constexpr double shown_at_rest_mps = 2.0;
constexpr double hardest_mps2 = 12.0; // a tyre's best with some downforce: nothing starts or stops faster
constexpr double neighbourhood_s = 1.0;
constexpr double steps_moved = 2.0; // of the resolution: rounding alone may hide less
constexpr double unlikely = 1e-5;   // a run so improbable is no chance
constexpr double times_its_moves = 2.0;

// Samples first … last are alike.
struct Run {
    std::size_t first;
    std::size_t last;
};

template <typename Same>
std::vector<Run> runs(std::size_t count, const Same& same) {
    std::vector<Run> found;
    for (std::size_t i = 1; i < count; ++i) {
        if (!same(i - 1, i)) continue;
        if (found.empty() || found.back().last + 1 != i) found.push_back({i - 1, i});
        found.back().last = i;
    }
    return found;
}

double apart(const Vec2& a, const Vec2& b) {
    return std::hypot(a.east - b.east, a.north - b.north);
}

double mean_within(const Series& series, double from_s, double to_s) {
    const auto first = std::ranges::lower_bound(series.time_s, from_s) - series.time_s.begin();
    const auto end = std::ranges::upper_bound(series.time_s, to_s) - series.time_s.begin();
    double sum = 0.0;
    for (auto i = first; i < end; ++i)
        sum += series.values[static_cast<std::size_t>(i)];
    return end > first ? sum / static_cast<double>(end - first) : 0.0;
}

class FrozenRuns {
  public:
    FrozenRuns(const Fixes& fixes, const Series& speed, std::span<const double> splits_s)
        : fixes_(fixes), speed_(speed), splits_s_(splits_s) {}

    // The fix of a run that tells where the car was: its first, but the last of one that fills the rows before the
    // first fix of all, after which the car goes on at its pace.
    [[nodiscard]] std::size_t fresh(const Run& run) const {
        const std::size_t next = run.last + 1;
        const bool begins = run.first == 0 || !joined(run.first - 1, run.first);
        if (!begins || next + 1 >= fixes_.time_s.size() || !joined(run.last, next + 1)) return run.first;
        const double pace = apart(fixes_.position_m[next], fixes_.position_m[next + 1]) / (time(next + 1) - time(next));
        const double way = apart(fixes_.position_m[run.last], fixes_.position_m[next]);
        const double from_last = way / (time(next) - time(run.last));
        const double from_first = way / (time(next) - time(run.first));
        return std::fabs(from_last - pace) < std::fabs(from_first - pace) ? run.last : run.first;
    }

    [[nodiscard]] bool frozen(const Run& run) const {
        const double speed = slowest_possible(run);
        const double lasted_s = time(run.last) - time(run.first);
        return speed > standing_mps && speed * lasted_s > steps_moved * fixes_.quantisation_m;
    }

  private:
    [[nodiscard]] double time(std::size_t i) const { return fixes_.time_s[i]; }

    [[nodiscard]] bool joined(std::size_t i, std::size_t next) const {
        const auto split = std::ranges::upper_bound(splits_s_, time(i));
        return split == splits_s_.end() || *split > time(next);
    }

    // What the car did at least, by all that is known of it.
    [[nodiscard]] double slowest_possible(const Run& run) const {
        const double shown = mean_within(speed_, time(run.first), time(run.last));
        const double by_sensor = shown > shown_at_rest_mps ? shown : 0.0;
        return std::max({by_sensor, by_jump(run), behind(run.last), before(run.first)});
    }

    [[nodiscard]] double by_jump(const Run& run) const {
        const std::size_t next = run.last + 1;
        if (next >= fixes_.time_s.size() || !joined(run.last, next)) return 0.0;
        return apart(fixes_.position_m[run.last], fixes_.position_m[next]) / (time(next) - time(run.first));
    }

    // D metres in T seconds were not begun slower than D/T - aT/2.
    [[nodiscard]] double begun_at(std::size_t from, std::size_t to) const {
        const double lasted_s = std::fabs(time(to) - time(from));
        if (from == to || lasted_s > 2.0 * neighbourhood_s || !joined(std::min(from, to), std::max(from, to)))
            return 0.0;
        return apart(fixes_.position_m[from], fixes_.position_m[to]) / lasted_s - 0.5 * hardest_mps2 * lasted_s;
    }

    [[nodiscard]] double behind(std::size_t last) const {
        std::size_t to = last;
        while (to + 1 < fixes_.time_s.size() && time(to) - time(last) < neighbourhood_s)
            ++to;
        return begun_at(last, to);
    }

    [[nodiscard]] double before(std::size_t first) const {
        std::size_t to = first;
        while (to > 0 && time(first) - time(to) < neighbourhood_s)
            --to;
        return begun_at(first, to);
    }

    const Fixes& fixes_;
    const Series& speed_;
    std::span<const double> splits_s_;
};

// Runs of repeats, and how likely a fresh sample is to be followed by one.
template <typename Same>
std::vector<Run> runs_with_chance(std::size_t count, const Same& same, double& chance) {
    std::vector<Run> found = runs(count, same);
    std::size_t repeats = 0;
    for (const Run& run : found)
        repeats += run.last - run.first;
    const auto fresh = static_cast<double>(std::max<std::size_t>(1, count - repeats));
    chance = std::max(1.0, static_cast<double>(found.size())) / fresh;
    return found;
}

bool is_no_chance(const Run& run, double chance) {
    return static_cast<double>(run.last - run.first) * std::log(chance) < std::log(unlikely);
}

// A value that was constant in truth goes on smoothly; a frozen one jumps by more than it moves afterwards.
bool jumps_behind(const std::vector<double>& values, std::size_t last, double finest) {
    if (last + 1 == values.size()) return true;
    double moves = finest;
    for (std::size_t i = last + 2; i < std::min(values.size(), last + 4); ++i)
        moves = std::max(moves, std::fabs(values[i] - values[i - 1]));
    return std::fabs(values[last + 1] - values[last]) > times_its_moves * moves;
}

void mark(std::vector<std::uint8_t>& marks, std::size_t first, std::size_t last) {
    for (std::size_t i = first; i <= last; ++i)
        marks[i] = 1;
}

} // namespace

std::vector<std::uint8_t> frozen_fixes(const Fixes& fixes, const Series& speed, std::span<const double> splits_s) {
    std::vector<std::uint8_t> marks(fixes.time_s.size(), 0);
    const FrozenRuns judge(fixes, speed, splits_s);
    const auto same = [&](std::size_t i, std::size_t j) {
        const Vec2& a = fixes.position_m[i];
        const Vec2& b = fixes.position_m[j];
        return a.east == b.east && a.north == b.north;
    };
    for (const Run& run : runs(fixes.time_s.size(), same))
        if (judge.frozen(run)) {
            mark(marks, run.first, run.last);
            marks[judge.fresh(run)] = 0;
        }
    return marks;
}

std::vector<std::uint8_t> frozen_values(const Series& series, std::span<const double> frozen_fix_s) {
    const std::vector<double>& v = series.values;
    std::vector<std::uint8_t> marks(v.size(), 0);
    double chance = 0.0;
    const double finest = quantisation(v);
    const auto same = [&](std::size_t i, std::size_t j) { return v[i] == v[j] && v[i] != 0.0; };
    for (const Run& run : runs_with_chance(v.size(), same, chance)) {
        if (is_no_chance(run, chance) && jumps_behind(v, run.last, finest)) mark(marks, run.first + 1, run.last);
        for (std::size_t i = run.first; i <= run.last; ++i)
            if (std::ranges::binary_search(frozen_fix_s, series.time_s[i])) marks[i] = 1;
    }
    return marks;
}

std::vector<double> frozen_velocity_s(const Series& speed, const Series& course) {
    std::vector<double> moments;
    if (speed.time_s != course.time_s) return moments;
    const std::vector<double>& v = speed.values;
    const std::vector<double>& c = course.values;
    const auto same = [&](std::size_t i, std::size_t j) { return v[i] == v[j] && c[i] == c[j] && v[i] != 0.0; };
    double chance = 0.0;
    const double finest_speed = quantisation(v);
    const double finest_course = quantisation(c);
    for (const Run& run : runs_with_chance(v.size(), same, chance)) {
        if (!is_no_chance(run, chance)) continue;
        if (!jumps_behind(v, run.last, finest_speed) && !jumps_behind(c, run.last, finest_course)) continue;
        for (std::size_t i = run.first + 1; i <= run.last; ++i)
            moments.push_back(speed.time_s[i]);
    }
    return moments;
}

double quantisation(std::span<const double> values) {
    double least = 0.0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        const double step = std::fabs(values[i] - values[i - 1]);
        if (step > 0.0 && (least == 0.0 || step < least)) least = step;
    }
    return least;
}

} // namespace lapwright::motion
