// SPDX-License-Identifier: GPL-3.0-or-later
// One command line in a process of its own, which may die, and what is wrong with how the program answered.
#pragma once

#include <string>
#include <vector>

namespace hostile {

// Words of a command line, the file that it is about and how large that is, for the bound of memory.
struct Question {
    std::vector<std::string> words;
    double file_bytes = 0.0;
};

// Empty where nothing is wrong: no signal, an end within the time, exit status 0, 1 or 2, a sentence where it is
// refused, JSON that a strict parser takes, no control character in text for people, memory within its bound.
std::string fault_of(const Question& question);

std::string line_of(const std::vector<std::string>& words);

} // namespace hostile
