// SPDX-License-Identifier: GPL-3.0-or-later
// A track's reference line as bytes with a checksum, to the last bit.
#pragma once

#include "core/book/tracks.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::book {

[[nodiscard]] std::string line_bytes(const KeptLine& line);
// Nothing where the bytes are damaged.
[[nodiscard]] std::optional<KeptLine> line_of_bytes(std::string_view bytes);

} // namespace lapwright::book
