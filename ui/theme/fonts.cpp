// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/fonts.h"

#include <QDir>
#include <QFontDatabase>
#include <QStringList>

namespace lapwright::theme {
namespace {

// Free faces whose figures all have one width; the first is a dependency of the package.
QFont face(double points) {
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Noto Sans"), QStringLiteral("Liberation Sans")});
    font.setPointSizeF(points);
    return font;
}

} // namespace

void add_faces(const QString& folder) {
    const QDir faces(folder);
    for (const QString& name : faces.entryList({QStringLiteral("*.ttf")}, QDir::Files))
        QFontDatabase::addApplicationFont(faces.filePath(name));
}

QFont body() {
    return face(9.5);
}

QFont small() {
    return face(8.25);
}

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

QFont verdict() {
    return strong(face(19.0));
}

} // namespace lapwright::theme
