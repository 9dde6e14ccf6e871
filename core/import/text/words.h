// SPDX-License-Identifier: GPL-3.0-or-later
// Header text to plain words that can be compared: lower case, accents and umlauts folded to plain letters, everything
// but letters and digits a blank, joined words parted where the case changes ("EngineSpeed" -> "engine speed").
#pragma once

#include <string>
#include <string_view>

namespace lapwright::import {

// Lower case with Latin accents folded; other bytes stay.  UTF-8 in and out.
[[nodiscard]] std::string folded(std::string_view utf8);

[[nodiscard]] std::string plain_words(std::string_view utf8);

} // namespace lapwright::import
