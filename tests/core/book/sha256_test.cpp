// SPDX-License-Identifier: GPL-3.0-or-later
// The examples of FIPS 180-4's predecessor FIPS 180-2, appendix
// B (from memory), and pieces of every length against the whole.
#include "core/book/sha256.h"

#include <gtest/gtest.h>

#include <string>

namespace lapwright::book {
namespace {

TEST(Sha256, PublishedExamples) {
    EXPECT_EQ(hex_text(sha256_of("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(hex_text(sha256_of("")), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(hex_text(sha256_of("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(hex_text(sha256_of(std::string(1'000'000, 'a'))),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Sha256, InPiecesAsInOne) {
    std::string text;
    for (int i = 0; i < 300; ++i)
        text.push_back(static_cast<char>(i * 7));
    for (std::size_t piece = 1; piece < 150; ++piece) {
        Sha256 sum;
        for (std::size_t at = 0; at < text.size(); at += piece)
            sum.add(std::string_view(text).substr(at, piece));
        EXPECT_EQ(sum.finish(), sha256_of(text)) << piece;
    }
}

} // namespace
} // namespace lapwright::book
