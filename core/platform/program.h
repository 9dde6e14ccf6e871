// SPDX-License-Identifier: GPL-3.0-or-later
// What a whole program prepares, first in main(), and what it was given.
#pragma once

#include <string>
#include <vector>

namespace lapwright::platform {

// Ensembles and columns come and go in blocks of megabytes: page by page, and given back to the system at every
// release, they cost a fifth of the time of a comparison and half the time of an import.  The heap becomes one stretch
// of 512 MiB that asks for large pages (mallopt(3), madvise(2)) and keeps what is released.  Only what is used of it is
// taken; beyond it the heap grows as ever.  On Windows the heap stays as it is.
void prepare_large_heap();

// A display to open a window on is named by the environment, or there is none.
#ifdef _WIN32
inline constexpr bool display_is_named = false;
#else
inline constexpr bool display_is_named = true;
#endif

// What is printed has the same bytes on every system: Windows would write each line break as two.
void print_bytes_as_they_are();

// Whether somebody can see it: a program that Windows opens from the desktop or a menu has nowhere to print to.
[[nodiscard]] bool printing_is_seen();

// The words of the command line behind the program's name, in UTF-8.
[[nodiscard]] std::vector<std::string> words_of(int count, char** words);

// A variable of the environment, in UTF-8; empty where it is not set.
[[nodiscard]] std::string variable(const char* name);

} // namespace lapwright::platform
