// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/channel_build.h"

#include <cmath>

namespace lapwright::import {

SharedRows::SharedRows(std::vector<double> time_s, std::vector<std::uint32_t> lines)
    : all_(std::make_shared<const std::vector<double>>(std::move(time_s)),
           std::make_shared<const std::vector<std::uint32_t>>(std::move(lines))) {}

void SharedRows::attach(recording::Channel& channel, std::vector<double> values, bool has_blanks) {
    Part part = all_;
    if (has_blanks) {
        std::vector<bool> filled(values.size());
        for (std::size_t i = 0; i < values.size(); ++i)
            filled[i] = std::isfinite(values[i]);
        std::erase_if(values, [](double value) { return !std::isfinite(value); });
        values.shrink_to_fit();
        Part& known = parts_[filled];
        if (!known.first) known = select(filled);
        part = known;
    }
    channel.values = std::move(values);
    channel.time_s = part.first;
    channel.source_lines = part.second;
}

SharedRows::Part SharedRows::select(const std::vector<bool>& filled) const {
    std::vector<double> time_s;
    std::vector<std::uint32_t> lines;
    for (std::size_t i = 0; i < filled.size(); ++i) {
        if (!filled[i]) continue;
        time_s.push_back((*all_.first)[i]);
        lines.push_back((*all_.second)[i]);
    }
    return {std::make_shared<const std::vector<double>>(std::move(time_s)),
            std::make_shared<const std::vector<std::uint32_t>>(std::move(lines))};
}

} // namespace lapwright::import
