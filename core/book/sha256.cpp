// SPDX-License-Identifier: GPL-3.0-or-later
// Names a … h, w, k as in FIPS 180-4, section 6.2.
#include "core/book/sha256.h"

#include <bit>

namespace lapwright::book {
namespace {

constexpr std::size_t block_bytes = 64;

constexpr std::array<std::uint32_t, 64> k{
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

std::uint32_t big_endian(const unsigned char* bytes) {
    return static_cast<std::uint32_t>(bytes[0]) << 24U | static_cast<std::uint32_t>(bytes[1]) << 16U |
           static_cast<std::uint32_t>(bytes[2]) << 8U | static_cast<std::uint32_t>(bytes[3]);
}

} // namespace

void Sha256::take_block(const unsigned char* block) {
    std::array<std::uint32_t, 64> w{};
    for (std::size_t t = 0; t < 16; ++t)
        w[t] = big_endian(block + 4 * t);
    for (std::size_t t = 16; t < 64; ++t) {
        const std::uint32_t s0 = std::rotr(w[t - 15], 7) ^ std::rotr(w[t - 15], 18) ^ (w[t - 15] >> 3U);
        const std::uint32_t s1 = std::rotr(w[t - 2], 17) ^ std::rotr(w[t - 2], 19) ^ (w[t - 2] >> 10U);
        w[t] = s1 + w[t - 7] + s0 + w[t - 16];
    }
    auto [a, b, c, d, e, f, g, h] = state_;
    for (std::size_t t = 0; t < 64; ++t) {
        const std::uint32_t sum1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
        const std::uint32_t t1 = h + sum1 + ((e & f) ^ (~e & g)) + k[t] + w[t];
        const std::uint32_t sum0 = std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22);
        const std::uint32_t t2 = sum0 + ((a & b) ^ (a & c) ^ (b & c));
        h = g;
        g = f;
        f = e;
        e = d + t1;
        d = c;
        c = b;
        b = a;
        a = t1 + t2;
    }
    const std::array<std::uint32_t, 8> turned{a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < state_.size(); ++i)
        state_[i] += turned[i];
}

void Sha256::add(std::string_view bytes) {
    size_ += bytes.size();
    if (!pending_.empty()) {
        const std::size_t missing = std::min(block_bytes - pending_.size(), bytes.size());
        pending_.append(bytes.substr(0, missing));
        bytes.remove_prefix(missing);
        if (pending_.size() < block_bytes) return;
        take_block(reinterpret_cast<const unsigned char*>(pending_.data()));
        pending_.clear();
    }
    for (; bytes.size() >= block_bytes; bytes.remove_prefix(block_bytes))
        take_block(reinterpret_cast<const unsigned char*>(bytes.data()));
    pending_ = bytes;
}

Checksum Sha256::finish() {
    const std::uint64_t bits = size_ * 8;
    std::string end(1, static_cast<char>(0x80));
    while ((size_ + end.size()) % block_bytes != block_bytes - 8)
        end.push_back('\0');
    for (int shift = 56; shift >= 0; shift -= 8)
        end.push_back(static_cast<char>(static_cast<unsigned char>(bits >> static_cast<unsigned>(shift))));
    add(end);
    Checksum checksum{};
    for (std::size_t i = 0; i < checksum.size(); ++i)
        checksum[i] = static_cast<std::uint8_t>(state_[i / 4] >> (24 - 8 * (i % 4)));
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
