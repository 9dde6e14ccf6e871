// SPDX-License-Identifier: GPL-3.0-or-later
// Names of files between the window and the core, whose strings are UTF-8 on every system. What Qt calls the local
// encoding would lose letters on Windows.
#pragma once

#include "core/workspace/session_key.h"

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

namespace lapwright::models {

[[nodiscard]] inline std::string file_name(const QString& path) {
    return path.toStdString();
}

[[nodiscard]] inline QString path(const std::string& file_name) {
    return QString::fromStdString(file_name);
}

// Each once.
[[nodiscard]] inline std::vector<workspace::Origin> origins_of(QStringList paths) {
    paths.removeDuplicates();
    std::vector<workspace::Origin> origins;
    for (const QString& one : paths)
        origins.emplace_back(file_name(one));
    return origins;
}

} // namespace lapwright::models
