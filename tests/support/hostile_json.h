// SPDX-License-Identifier: GPL-3.0-or-later
// JSON that nobody wrote by hand: values out of all bounds, and texts with bytes changed, cut and put in at random.
#pragma once

#include <cstddef>
#include <cstdint>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::test {

inline const std::vector<std::string> nasty_values{"1e999",       "-1e999",
                                                   "1e308",       "-0.0",
                                                   "null",        "true",
                                                   "[]",          "{}",
                                                   "\"\"",        "99999999999999999999999999",
                                                   "1e-999",      "[[[[[[[[[[]]]]]]]]]]",
                                                   "\"\\ud800\"", "NaN",
                                                   "Infinity",    "\"\\u0000\"",
                                                   "0x10",        ".5",
                                                   "--1",         "\"\\u001b[2J\\r\\n\""};

// The text with one thing wrong.
inline std::string spoiled(std::string text, std::mt19937_64& random) {
    if (text.empty()) return text;
    const std::size_t place = random() % text.size();
    switch (random() % 4) {
    case 0:
        text[place] = static_cast<char>(random() % 256);
        break;
    case 1:
        text.erase(place, 1 + random() % 20);
        break;
    case 2:
        text.insert(place, nasty_values[random() % nasty_values.size()]);
        break;
    default:
        text.resize(place);
    }
    return text;
}

// The text with one to four things wrong, each time anew.
inline std::vector<std::string> spoiled_texts(const std::string& text, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::vector<std::string> all;
    for (int i = 0; i < 3000; ++i) {
        all.push_back(text);
        for (int k = 0; k <= i % 4; ++k)
            all.back() = spoiled(std::move(all.back()), random);
    }
    return all;
}

// The text with each value of it, what stands between a colon and the next comma or brace, made each nasty one.
inline std::vector<std::string> with_nasty_values(const std::string& text) {
    std::vector<std::string> all;
    for (std::size_t colon = text.find(':'); colon != std::string::npos; colon = text.find(':', colon + 1)) {
        const std::size_t end = text.find_first_of(",}", colon);
        if (end == std::string::npos) break;
        for (const std::string& value : nasty_values)
            all.push_back(text.substr(0, colon + 1) + value + text.substr(end));
    }
    return all;
}

} // namespace lapwright::test
