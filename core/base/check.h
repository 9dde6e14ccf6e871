// SPDX-License-Identifier: GPL-3.0-or-later
// A broken invariant ends the program with a sentence, in release builds too: a wrong number is worse than none.
#pragma once

namespace lapwright::base {

[[noreturn]] void invariant_broken(const char* sentence);

inline void check(bool holds, const char* sentence) {
    if (!holds) invariant_broken(sentence);
}

} // namespace lapwright::base
