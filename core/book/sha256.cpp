// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/sha256.h"

namespace lapwright::book {

Sha256::Sha256() : state_{} {
    sha256_init(&state_);
}

void Sha256::add(std::string_view bytes) {
    sha256_update(&state_, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
}

Checksum Sha256::finish() {
    Checksum checksum{};
    static_assert(sizeof checksum == SHA256_DIGEST_SIZE);
    sha256_digest(&state_, checksum.size(), checksum.data());
    return checksum;
}

Checksum sha256_of(std::string_view bytes) {
    Sha256 sum;
    sum.add(bytes);
    return sum.finish();
}

std::string hex_text(const Checksum& checksum) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    for (const std::uint8_t byte : checksum) {
        text += digits[byte >> 4U];
        text += digits[byte & 15U];
    }
    return text;
}

} // namespace lapwright::book
