// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/kept_notes.h"

#include <QCryptographicHash>
#include <QSettings>
#include <QVariant>

namespace lapwright::window {
namespace {

const QString lap_key = QStringLiteral("lap");
const QString segment_key = QStringLiteral("segment");
const QString place_key = QStringLiteral("at_m");
const QString text_key = QStringLiteral("text");

QString key_of(const QString& session) {
    const QByteArray digest = QCryptographicHash::hash(session.toUtf8(), QCryptographicHash::Sha256).toHex();
    return QStringLiteral("session_notes/") + QString::fromLatin1(digest.left(24));
}

} // namespace

std::vector<models::Note> notes_in_settings(const QSettings& settings, const QString& session) {
    std::vector<models::Note> notes;
    const QVariantList kept = settings.value(key_of(session)).toList();
    for (const QVariant& one : kept) {
        const QVariantMap values = one.toMap();
        models::Note note{{session, {}, values.value(segment_key).toString(), {}}, values.value(text_key).toString()};
        if (values.contains(lap_key)) note.about.lap = values.value(lap_key).toInt();
        if (values.contains(place_key)) note.about.at_m = values.value(place_key).toDouble();
        if (!note.text.isEmpty()) notes.push_back(std::move(note));
    }
    return notes;
}

void keep_in_settings(QSettings& settings, const QString& session, const std::vector<models::Note>& notes) {
    QVariantList kept;
    for (const models::Note& note : notes) {
        QVariantMap values{{text_key, note.text}};
        if (note.about.lap) values[lap_key] = *note.about.lap;
        if (!note.about.segment.isEmpty()) values[segment_key] = note.about.segment;
        if (note.about.at_m) values[place_key] = *note.about.at_m;
        kept << values;
    }
    if (kept.isEmpty())
        settings.remove(key_of(session));
    else
        settings.setValue(key_of(session), kept);
}

} // namespace lapwright::window
