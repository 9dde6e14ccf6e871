// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/recording.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace lapwright::recording {
namespace {

constexpr double latest_unix_s = 2.5e11; // the year 9892: four digits go no further

std::string two_digits(std::int64_t value, std::size_t width = 2) {
    std::string text = base::integer_text(value);
    return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

} // namespace

double Channel::rate_hz() const {
    if (!time_s || time_s->size() < 2) return 0.0;
    std::vector<double> steps(time_s->size() - 1);
    for (std::size_t i = 0; i < steps.size(); ++i)
        steps[i] = (*time_s)[i + 1] - (*time_s)[i];
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::ranges::nth_element(steps, middle);
    return *middle > 0.0 ? 1.0 / *middle : 0.0;
}

const Channel* Recording::find(Meaning meaning) const {
    const Channel* best = nullptr;
    for (const Channel& channel : channels)
        if (channel.meaning == meaning && channel.size() > 0 && (!best || channel.size() > best->size()))
            best = &channel;
    return best;
}

std::string utc_text(double unix_s) {
    using namespace std::chrono;
    if (!(std::abs(unix_s) < latest_unix_s)) return "";
    const auto total_ms = static_cast<std::int64_t>(std::llround(unix_s * 1000.0));
    const sys_time<milliseconds> moment{milliseconds{total_ms}};
    const auto day = floor<days>(moment);
    const year_month_day date{day};
    const hh_mm_ss<milliseconds> clock{moment - day};
    std::string text = two_digits(static_cast<int>(date.year()), 4) + "-" +
                       two_digits(static_cast<unsigned>(date.month())) + "-" +
                       two_digits(static_cast<unsigned>(date.day())) + "T" + two_digits(clock.hours().count()) + ":" +
                       two_digits(clock.minutes().count()) + ":" + two_digits(clock.seconds().count());
    if (clock.subseconds().count() != 0) text += "." + two_digits(clock.subseconds().count(), 3);
    return text + "Z";
}

} // namespace lapwright::recording
