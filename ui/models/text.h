// SPDX-License-Identifier: GPL-3.0-or-later
// UTF-8 of the core to the window's strings.
#pragma once

#include <QString>
#include <string_view>

namespace lapwright::models {

[[nodiscard]] inline QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

// What stands for a thing that is not known.
inline const QString dash = QStringLiteral("—");

[[nodiscard]] inline QString text_or_dash(std::string_view utf8) {
    return utf8.empty() ? dash : text(utf8);
}

} // namespace lapwright::models
