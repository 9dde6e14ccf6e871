// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are dropped on the window or named on its command line.
#pragma once

#include <QFileInfo>
#include <QMimeData>
#include <QStringList>
#include <QUrl>

namespace lapwright::window {

[[nodiscard]] inline QStringList files_in(const QMimeData& data) {
    QStringList files;
    for (const QUrl& url : data.urls())
        if (url.isLocalFile()) files << url.toLocalFile();
    return files;
}

[[nodiscard]] inline QStringList absolute(const QStringList& files) {
    QStringList paths;
    for (const QString& file : files)
        paths << QFileInfo(file).absoluteFilePath();
    return paths;
}

} // namespace lapwright::window
