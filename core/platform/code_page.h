// SPDX-License-Identifier: GPL-3.0-or-later
// Text in the code pages that the operating system knows, as UTF-8.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::platform {

enum class CodePage { shift_jis, euc_jp, windows_1250, dos_850, macintosh };

// Nothing where the bytes are no text of that code page, or the system does not have it.
[[nodiscard]] std::optional<std::string> utf8_of(std::string_view bytes, CodePage page);

} // namespace lapwright::platform
