// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/note_lines.h"

#include "core/base/number_text.h"
#include "ui/models/segment_notes.h"
#include "ui/models/text.h"

#include <QCoreApplication>

namespace lapwright::models {
namespace {

void add(QStringList& lines, QStringList place, const QString& note) {
    if (note.isEmpty()) return;
    place.removeAll(QString());
    lines << place.join(QStringLiteral(", ")) + QStringLiteral(": ") + note.simplified();
}

QString lap_words(int number) {
    return QCoreApplication::translate("note_lines", "lap %1").arg(text(base::integer_text(number)));
}

} // namespace

QStringList note_lines(const NoteShelf& notes, const analysis::Pairing& pairing, const QString& session_a,
                       const QString& session_b) {
    const bool one = session_a == session_b;
    const QString a = one ? QString() : QStringLiteral("A");
    const QString b = one ? QString() : QStringLiteral("B");
    QStringList lines;
    add(lines, {one ? QCoreApplication::translate("note_lines", "session") : a}, notes.text({session_a}));
    if (!one) add(lines, {b}, notes.text({session_b}));
    add(lines, {a, lap_words(pairing.a.lap.number)}, notes.text({session_a, pairing.a.lap.number}));
    if (!one || pairing.a.lap.number != pairing.b.lap.number)
        add(lines, {b, lap_words(pairing.b.lap.number)}, notes.text({session_b, pairing.b.lap.number}));
    const auto& segments = pairing.comparison.segments;
    const auto on_segments = segment_notes(notes, segments, session_a, session_b);
    for (std::size_t i = 0; i < segments.size(); ++i) {
        add(lines, {text(segments[i].segment.name), a}, on_segments[i].a);
        add(lines, {text(segments[i].segment.name), b}, on_segments[i].b);
    }
    return lines;
}

} // namespace lapwright::models
