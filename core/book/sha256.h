// SPDX-License-Identifier: GPL-3.0-or-later
// SHA-256 (FIPS 180-4): what tells whether two source files are the same.
#pragma once

#include "core/book/entries.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::book {

class Sha256 {
  public:
    void add(std::string_view bytes);
    // Once, at the end.
    [[nodiscard]] Checksum finish();

  private:
    void take_block(const unsigned char* block);

    std::array<std::uint32_t, 8> state_{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                        0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
    std::string pending_; // less than a block
    std::uint64_t size_ = 0;
};

[[nodiscard]] Checksum sha256_of(std::string_view bytes);

// 64 hexadecimal digits in small letters.
[[nodiscard]] std::string hex_text(const Checksum& checksum);

} // namespace lapwright::book
