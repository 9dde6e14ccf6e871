// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/samples.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <algorithm>

namespace lapwright::window {

QStringList sample_sessions() {
    const QString program = QCoreApplication::applicationDirPath();
    for (const char* const folder : {"/../share/lapwright/sample-sessions", "/../../../sample-sessions"}) {
        const QDir dir(program + QLatin1String(folder));
        QStringList files;
        for (const char* const name : {"dunlin-saturday-2.txt", "plover-saturday-2.csv"})
            files << QDir::cleanPath(dir.filePath(QLatin1String(name)));
        if (std::ranges::all_of(files, [](const QString& file) { return QFileInfo::exists(file); })) return files;
    }
    return {};
}

} // namespace lapwright::window
