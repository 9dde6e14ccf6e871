// SPDX-License-Identifier: GPL-3.0-or-later
// Warnings in words, the same in window, command line and sheet.
#pragma once

#include "core/recording/warning.h"

namespace lapwright::recording {

// What happened, no full stop: "3 rows repeat the time of the row before and were left out".
[[nodiscard]] std::string words(const Warning& warning);

// The same as a sentence, with its line where it does not name lines itself.
[[nodiscard]] std::string sentence(const Warning& warning);

// "Read by", "Guessed", "Left out", "Mended", "Seen".
[[nodiscard]] std::string words(Remark remark);

} // namespace lapwright::recording
