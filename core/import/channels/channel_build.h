// SPDX-License-Identifier: GPL-3.0-or-later
// Columns with blanks to channels on their own stamps; columns that are blank in the same rows share them.
#pragma once

#include "core/recording/recording.h"

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace lapwright::import {

// Keeps the given rows, ascending; all of them where the list is empty.
template <typename T>
void keep_rows(std::vector<T>& values, const std::vector<std::uint32_t>& rows) {
    if (rows.empty() || values.empty()) return;
    for (std::size_t i = 0; i < rows.size(); ++i)
        values[i] = values[rows[i]];
    values.resize(rows.size());
}

class SharedRows {
  public:
    // As many lines as stamps.
    SharedRows(std::vector<double> time_s, std::vector<std::uint32_t> lines);

    // Gives the channel the values that are finite, their stamps and lines.
    void attach(recording::Channel& channel, std::vector<double> values, bool has_blanks);

  private:
    using Part = std::pair<recording::Stamps, recording::SourceLines>;

    [[nodiscard]] Part select(const std::vector<bool>& filled) const;

    Part all_;
    std::map<std::vector<bool>, Part> parts_;
};

} // namespace lapwright::import
