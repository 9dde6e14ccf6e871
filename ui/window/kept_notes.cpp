// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/kept_notes.h"

#include "core/book/sha256.h"
#include "ui/models/text.h"

#include <QSettings>
#include <QVariant>

namespace lapwright::window {
namespace {

using models::text;

constexpr qsizetype digits = 24; // of the checksum: enough to tell files apart

const QString lap_key = QStringLiteral("lap");
const QString segment_key = QStringLiteral("segment");
const QString place_key = QStringLiteral("at_m");
const QString text_key = QStringLiteral("text");

QString key_of(const workspace::SessionKey& session) {
    return QStringLiteral("session_notes/") + settings_name(session);
}

} // namespace

QString settings_name(const workspace::SessionKey& session) {
    return text(book::hex_text(session.checksum)).left(digits);
}

QString settings_name(const workspace::TwoLaps& laps) {
    return QStringLiteral("%1-%2-%3-%4")
        .arg(settings_name(laps.session_a), QString::number(laps.lap_a), settings_name(laps.session_b),
             QString::number(laps.lap_b));
}

std::vector<workspace::Note> notes_in_settings(const QSettings& settings, const workspace::SessionKey& session) {
    std::vector<workspace::Note> notes;
    const QVariantList kept = settings.value(key_of(session)).toList();
    for (const QVariant& one : kept) {
        const QVariantMap values = one.toMap();
        workspace::Note note{{session, {}, values.value(segment_key).toString().toStdString(), {}},
                             values.value(text_key).toString().toStdString()};
        if (values.contains(lap_key)) note.about.lap = values.value(lap_key).toInt();
        if (values.contains(place_key)) note.about.at_m = values.value(place_key).toDouble();
        if (!note.text.empty()) notes.push_back(std::move(note));
    }
    return notes;
}

void keep_in_settings(QSettings& settings, const workspace::SessionKey& session,
                      const std::vector<workspace::Note>& notes) {
    QVariantList kept;
    for (const workspace::Note& note : notes) {
        QVariantMap values{{text_key, text(note.text)}};
        if (note.about.lap) values[lap_key] = *note.about.lap;
        if (!note.about.segment.empty()) values[segment_key] = text(note.about.segment);
        if (note.about.at_m) values[place_key] = *note.about.at_m;
        kept << values;
    }
    if (kept.isEmpty())
        settings.remove(key_of(session));
    else
        settings.setValue(key_of(session), kept);
}

} // namespace lapwright::window
