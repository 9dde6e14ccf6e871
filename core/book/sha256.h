// SPDX-License-Identifier: GPL-3.0-or-later
// SHA-256 (FIPS 180-4), by the library nettle: what tells whether two source files are the same.
#pragma once

#include "core/book/entries.h"

#include <nettle/sha2.h>
#include <string>
#include <string_view>

namespace lapwright::book {

class Sha256 {
  public:
    Sha256();
    void add(std::string_view bytes);
    // Once, at the end.
    [[nodiscard]] Checksum finish();

  private:
    sha256_ctx state_;
};

[[nodiscard]] Checksum sha256_of(std::string_view bytes);

// 64 hexadecimal digits in small letters.
[[nodiscard]] std::string hex_text(const Checksum& checksum);

} // namespace lapwright::book
