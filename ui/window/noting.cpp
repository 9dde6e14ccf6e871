// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/noting.h"

#include "core/base/number_text.h"
#include "ui/models/note_lines.h"
#include "ui/models/segment_notes.h"
#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QUndoCommand>
#include <QUndoStack>
#include <utility>

namespace lapwright::window {
namespace {

using models::text;

class NoteEdit : public QUndoCommand {
  public:
    // The first gets the words; further notes about the same thing go into it.
    NoteEdit(models::NoteShelf& notes, const std::vector<models::NoteAbout>& about, const QString& words,
             const QString& name)
        : QUndoCommand(name), notes_(notes) {
        for (const models::NoteAbout& one : about)
            changes_.push_back({one, notes.text(one), changes_.empty() ? words : QString()});
    }
    void redo() override {
        for (const Change& change : changes_)
            notes_.put(change.about, change.after);
    }
    void undo() override {
        for (const Change& change : changes_)
            notes_.put(change.about, change.before);
    }

  private:
    struct Change {
        models::NoteAbout about;
        QString before;
        QString after;
    };

    models::NoteShelf& notes_;
    std::vector<Change> changes_;
};

} // namespace

Noting::Noting(models::NoteShelf& notes, pages::SessionsPage& sessions, pages::ComparePage& compare, QUndoStack& edits,
               QObject* parent)
    : QObject(parent), notes_(notes), sessions_(sessions), compare_(compare), edits_(edits) {
    connect(&sessions_, &pages::SessionsPage::note_kept, this,
            [this](const models::NoteAbout& about, const QString& note) {
                enter({about}, note,
                      about.lap ? tr("note on lap %1").arg(text(base::integer_text(*about.lap)))
                                : tr("note on the session"));
            });
    connect(&compare_, &pages::ComparePage::note_kept, this, &Noting::enter_on_segment);
    connect(&notes_, &models::NoteShelf::changed, this, &Noting::show);
}

void Noting::set_pairing(const models::ComparedPointer& compared, const QString& session_a, const QString& session_b) {
    compared_ = compared;
    session_a_ = session_a;
    session_b_ = session_b;
    show();
}

void Noting::end_typing() {
    sessions_.keep_notes();
    compare_.keep_notes();
}

QStringList Noting::lines() const {
    return compared_ ? models::note_lines(notes_, *compared_->pairing, session_a_, session_b_) : QStringList();
}

void Noting::enter(const std::vector<models::NoteAbout>& about, const QString& note, const QString& name) {
    edits_.push(new NoteEdit(notes_, about, note, name));
}

void Noting::enter_on_segment(models::Side side, std::size_t segment, const QString& note) {
    const auto& segments = compared_->pairing->comparison.segments;
    const QString& session = side == models::Side::a ? session_a_ : session_b_;
    enter(models::notes_about(notes_, segments, segment, session), note,
          tr("note on %1").arg(text(segments[segment].segment.name)));
}

void Noting::show() {
    if (!compared_) return;
    compare_.set_notes(models::segment_notes(notes_, compared_->pairing->comparison.segments, session_a_, session_b_));
    Q_EMIT lines_changed();
}

} // namespace lapwright::window
