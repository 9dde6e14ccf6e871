// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/book_path.h"

namespace lapwright::bridge {
namespace {

const QString scheme = QStringLiteral("book:");

} // namespace

QString book_path(book::SessionId id, const std::string& file_name) {
    return scheme + QString::number(static_cast<qlonglong>(id)) + QLatin1Char('/') + QString::fromStdString(file_name);
}

std::optional<book::SessionId> session_of_book_path(const QString& path) {
    if (!path.startsWith(scheme)) return std::nullopt;
    bool number = false;
    const auto id = path.mid(scheme.size()).section(QLatin1Char('/'), 0, 0).toLongLong(&number);
    return number ? std::optional(book::SessionId{id}) : std::nullopt;
}

} // namespace lapwright::bridge
