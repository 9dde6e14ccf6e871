// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/noting.h"

#include "core/base/number_text.h"
#include "core/workspace/pairing_notes.h"
#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/edit.h"

#include <QUndoStack>

namespace lapwright::window {

using models::text;
using workspace::NoteAbout;

Noting::Noting(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    connect(&parts_.sessions, &pages::SessionsPage::note_kept, this,
            [this](const NoteAbout& about, const QString& note) {
                enter({about}, note,
                      about.lap ? tr("note on lap %1").arg(text(base::integer_text(*about.lap)))
                                : tr("note on the session"));
            });
    connect(&parts_.compare, &pages::ComparePage::note_kept, this, &Noting::enter_on_segment);
    connect(&parts_.notes, &models::Notes::changed, this, &Noting::follow_pairing);
}

void Noting::end_typing() {
    parts_.sessions.keep_notes();
    parts_.compare.keep_notes();
}

void Noting::take_typed(const NoteAbout& about, const QString& note) {
    if (parts_.notes.text(about) != note) enter({about}, note, tr("note that was being typed"));
}

QStringList Noting::lines() const {
    QStringList lines;
    if (const auto& compared = parts_.pairing.compared())
        for (const std::string& line :
             workspace::note_lines(parts_.notes.now(), compared->pairing->comparison.segments, parts_.pairing.laps()))
            lines << text(line);
    return lines;
}

// The first gets the words; further notes about the same thing go into it.
void Noting::enter(const std::vector<NoteAbout>& about, const QString& note, const QString& name) {
    std::vector<QString> before;
    for (const NoteAbout& one : about)
        before.push_back(parts_.notes.text(one));
    const auto put = [&notes = parts_.notes, about](const std::vector<QString>& words) {
        for (std::size_t i = 0; i < about.size(); ++i)
            notes.put(about[i], words[i]);
    };
    std::vector<QString> after(about.size());
    after.front() = note;
    parts_.edits.push(new Edit(name, [put, after] { put(after); }, [put, before] { put(before); }));
}

void Noting::enter_on_segment(workspace::Side side, std::size_t segment, const QString& note) {
    const auto& segments = parts_.pairing.compared()->pairing->comparison.segments;
    const workspace::TwoLaps& laps = parts_.pairing.laps();
    const auto& session = side == workspace::Side::a ? laps.session_a : laps.session_b;
    enter(workspace::notes_about(parts_.notes.now(), segments, segment, session), note,
          tr("note on %1").arg(text(segments[segment].segment.name)));
}

void Noting::follow_pairing() {
    const auto& compared = parts_.pairing.compared();
    if (!compared) return;
    const workspace::TwoLaps& laps = parts_.pairing.laps();
    parts_.compare.set_notes(workspace::segment_notes(parts_.notes.now(), compared->pairing->comparison.segments,
                                                      laps.session_a, laps.session_b));
    Q_EMIT lines_changed();
}

} // namespace lapwright::window
