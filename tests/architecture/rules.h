// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that the compiler does not enforce, each a pure function from source files to findings.
#pragma once

#include "tests/architecture/layer_table.h"
#include "tests/architecture/source_text.h"

#include <cstddef>
#include <span>

namespace lapwright::architecture {

inline constexpr std::size_t longest_file_lines = 400;

// Quoted includes: from the project's root, and only of the file's own layer or one of its row.  A file right under
// app/ is the program's start and may include app/commands, core/platform and ui/window.
[[nodiscard]] Findings check_includes(const LayerTable& table, std::span<const SourceFile> files);

// Qt anywhere in core or app/commands; the plotting library's header outside ui/plots.
[[nodiscard]] Findings check_foreign_includes(std::span<const SourceFile> files);

// The simulator gives the tests their truth, so it may include its
// own headers alone; the tests of it (…_test.cpp) may include more.
[[nodiscard]] Findings check_simulator(std::span<const SourceFile> files);

// Calls whose answer depends on the locale, `using namespace std`, random numbers without a seed, and Qt's conversions
// in which names lose letters on Windows.  Locale-bound calls are allowed in ui, where Qt has set the locale for the
// person's sake.
[[nodiscard]] Findings check_calls(std::span<const SourceFile> files);

// The licence line first, what a header is for after it, no file longer than longest_file_lines, no notes to self.
[[nodiscard]] Findings check_form(std::span<const SourceFile> files);

// A class is implemented in one file: one that outgrows it has a second purpose, which is another class or a function.
[[nodiscard]] Findings check_classes(std::span<const SourceFile> files);

} // namespace lapwright::architecture
