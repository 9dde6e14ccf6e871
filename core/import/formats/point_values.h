// SPDX-License-Identifier: GPL-3.0-or-later
// What a track point says in elements of its own beside those of GPX 1.1 (in "extensions"): each name is a column, and
// is taken for what a column of a table of that name would be.
#pragma once

#include "core/import/channels/fix_track.h"

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

class PointValues {
  public:
    // Of the point that will be the fix of this index; numbers alone, and no more than max_names names.
    void add(std::string_view name, double value, std::size_t fix);

    // The columns beside these fixes.
    [[nodiscard]] std::vector<FixColumn> columns(const std::vector<Fix>& fixes) &&;

    static constexpr std::size_t max_names = 64;

  private:
    struct Value {
        std::uint32_t fix = 0;
        double value = 0.0;
    };
    std::map<std::string, std::vector<Value>, std::less<>> values_; // in the order of the fixes
};

} // namespace lapwright::import
