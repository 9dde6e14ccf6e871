// SPDX-License-Identifier: GPL-3.0-or-later
// Names of files between the window and the core, whose strings have the bytes that the system knows.
#pragma once

#include "core/workspace/session_key.h"

#include <QFile>
#include <QString>
#include <QStringList>
#include <string>
#include <vector>

namespace lapwright::models {

[[nodiscard]] inline std::string file_name(const QString& path) {
    return QFile::encodeName(path).toStdString();
}

[[nodiscard]] inline QString path(const std::string& file_name) {
    return QFile::decodeName(file_name.c_str());
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
