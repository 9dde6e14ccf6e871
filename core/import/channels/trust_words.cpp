// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/trust_words.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/import/columns/recipe_edit.h"

#include <array>
#include <cmath>

namespace lapwright::import {
namespace {

using base::said;
using base::word;
using recording::Channel;

std::string gap_words(const ChannelTrust& trust) {
    if (trust.gaps == 0) return said("none");
    return said("%1, longest %2 s at %3 s",
                {base::integer_text(static_cast<std::int64_t>(trust.gaps)), base::shown_text(trust.longest_gap_s, 2),
                 base::shown_text(trust.longest_gap_at_s, 1)});
}

std::string written_words(const Channel& channel) {
    if (channel.source_unit == base::Unit::none) return channel.source_unit_text;
    return unit_words(channel.source_unit);
}

} // namespace

std::vector<ChannelWords> channel_words(const recording::Recording& recording, const Trust& trust,
                                        base::UnitSystem system) {
    std::vector<ChannelWords> all;
    const bool known = trust.channels.size() == recording.channels.size();
    for (std::size_t i = 0; i < recording.channels.size(); ++i) {
        const Channel& channel = recording.channels[i];
        ChannelWords words;
        words.name = channel.name;
        words.meaning = import::words(ColumnUse{Role::channel, channel.meaning});
        words.written = written_words(channel);
        if (known) {
            const ChannelTrust& of = trust.channels[i];
            const RecipeColumn column{channel.name, Role::channel, channel.meaning, channel.source_unit};
            words.rate = base::rate_text(of.rate_hz);
            words.range = channel.size() > 0 ? range_words(std::array{of.least, of.most}, column, system) : "";
            words.gaps = gap_words(of);
        }
        all.push_back(std::move(words));
    }
    return all;
}

std::string wheel_words(const Trust& trust) {
    if (!trust.wheel_speed_scale) return "";
    const double percent = 100.0 * (*trust.wheel_speed_scale - 1.0);
    const std::string figure = base::shown_text(std::abs(percent), 1);
    if (base::shows_zero(figure))
        return said("Wheel speed and satellite speed agree within %1 %.", {base::shown_text(0.05, 2)});
    return said(percent > 0.0 ? word("Wheel speed reads %1 % high against satellite speed.")
                              : word("Wheel speed reads %1 % low against satellite speed."),
                {figure});
}

} // namespace lapwright::import
