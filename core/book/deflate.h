// SPDX-License-Identifier: GPL-3.0-or-later
// zlib's compressor and its checksum (RFC 1950; CRC-32 as in ISO-HDLC, RFC 1952).
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::book {

[[nodiscard]] std::string deflated(std::string_view bytes);
// Nothing when this is no such text or more than `max_bytes` would come out.
[[nodiscard]] std::optional<std::string> inflated(std::string_view bytes, std::size_t max_bytes);

[[nodiscard]] std::uint32_t crc32_of(std::string_view bytes);

} // namespace lapwright::book
