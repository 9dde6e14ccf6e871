// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/book_keeper.h"

#include "ui/bridge/book_desk.h"
#include "ui/models/text.h"

#include <QMetaObject>
#include <utility>

namespace lapwright::bridge {

BookKeeper::BookKeeper(std::string file, QObject* parent)
    : QObject(parent), usable_(!file.empty()), edits_(std::make_unique<BookDesk>(file)),
      questions_(std::make_unique<BookDesk>(file)), newest_find_(std::make_shared<std::atomic<int>>(0)),
      newest_season_(std::make_shared<std::atomic<int>>(0)) {
    edit_pool_.setMaxThreadCount(1);
    question_pool_.setMaxThreadCount(1);
    if (usable_) edit([](BookDesk&) { return Done{}; }); // what is wrong with it is told at once
}

BookKeeper::~BookKeeper() {
    ++*newest_find_;
    ++*newest_season_;
    question_pool_.clear();
    question_pool_.waitForDone();
    edit_pool_.waitForDone();
}

void BookKeeper::tell(Answer answer) {
    if (answer) QMetaObject::invokeMethod(this, std::move(answer), Qt::QueuedConnection);
}

bool BookKeeper::open_for_edits() {
    if (const auto problem = edits_->open()) {
        tell([this, error = *problem] {
            if (std::exchange(usable_, false)) Q_EMIT unusable(error);
        });
        return false;
    }
    if (edits_->read_only() && !std::exchange(told_read_only_, true)) {
        tell([this] {
            read_only_ = true;
            Q_EMIT opened_read_only(models::text(edits_->file()));
        });
    }
    return true;
}

void BookKeeper::edit(Edit work) {
    if (!usable_) return;
    edit_pool_.start([this, work = std::move(work)]() mutable {
        if (!open_for_edits()) return;
        waiting_.push_back(std::move(work));
        take_up();
    });
}

// In their order: what comes later may build on what waits.
void BookKeeper::take_up() {
    while (!waiting_.empty()) {
        Done done = waiting_.front()(*edits_);
        if (done.refusal && !edits_->read_only() && book::may_succeed_later(*done.refusal)) {
            told_waiting_ = true;
            tell([this, edits = static_cast<int>(waiting_.size()), reason = *done.refusal] {
                Q_EMIT waits(edits, reason);
            });
            return;
        }
        waiting_.pop_front();
        tell(std::move(done.answer));
    }
    if (std::exchange(told_waiting_, false)) tell([this] { Q_EMIT caught_up(); });
}

void BookKeeper::try_again() {
    edit_pool_.start([this] { take_up(); });
}

std::size_t BookKeeper::finish() {
    edit_pool_.waitForDone();
    return waiting_.size();
}

void BookKeeper::ask(std::function<Answer(BookDesk&)> work) {
    if (!usable_) return;
    question_pool_.start([this, work = std::move(work)] {
        if (questions_->open()) return; // the edits' thread says so
        tell(work(*questions_));
    });
}

void BookKeeper::keep(const SessionToKeep& wanted) {
    edit([this, wanted](BookDesk& desk) -> Done {
        base::Result<std::optional<KeptSession>> kept = std::optional<KeptSession>();
        if (desk.read_only()) {
            kept = desk.look_up(wanted);
        } else if (auto put = desk.keep(wanted); put.ok()) {
            kept = std::optional(std::move(put).value());
        } else {
            kept = put.error();
        }
        const auto refusal = kept.ok() ? std::nullopt : std::optional(kept.error());
        return {refusal, [this, path = wanted.path, kept = std::move(kept)] {
                    if (!kept.ok()) {
                        Q_EMIT refused(kept.error());
                    } else if (kept.value()) {
                        Q_EMIT session_kept(path, **kept);
                        Q_EMIT changed();
                    }
                }};
    });
}

void BookKeeper::put_note(const models::Note& note) {
    edit([this, note](BookDesk& desk) -> Done {
        const auto problem = desk.put_note(note);
        return {problem, [this, session = note.about.session, problem] {
                    if (problem) {
                        Q_EMIT refused(*problem);
                        Q_EMIT note_refused(session);
                    }
                    Q_EMIT changed();
                }};
    });
}

void BookKeeper::put_setup(const QString& path, const car::SetupSheet& sheet) {
    edit_names([path, sheet](BookDesk& desk) { return desk.put_setup(path, sheet); });
}

void BookKeeper::keep_pairing(const PairingToKeep& wanted) {
    edit([this, wanted](BookDesk& desk) -> Done {
        if (desk.read_only()) return {};
        auto note = desk.keep_pairing(wanted);
        const auto refusal = note.ok() ? std::nullopt : std::optional(note.error());
        return {refusal, [this, name = wanted.name, note = std::move(note)] {
                    if (note.ok())
                        Q_EMIT pairing_kept(name, note.value());
                    else
                        Q_EMIT refused(note.error());
                }};
    });
}

void BookKeeper::put_pairing_note(const QString& name, const QString& note) {
    edit_plainly([name, note](BookDesk& desk) { return desk.put_pairing_note(name, note); });
}

void BookKeeper::find(const book::Filter& filter) {
    const int number = ++*newest_find_;
    ask([this, filter, number, newest = newest_find_](BookDesk& desk) -> Answer {
        if (*newest != number) return {};
        auto sessions = book::search(*desk.book(), filter);
        return [this, number, newest, sessions = std::move(sessions)] {
            if (*newest == number) tell(sessions, &BookKeeper::found);
        };
    });
}

} // namespace lapwright::bridge
