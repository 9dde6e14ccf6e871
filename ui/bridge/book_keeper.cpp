// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/book_keeper.h"

#include "ui/bridge/book_desk.h"

#include <QMetaObject>
#include <utility>

namespace lapwright::bridge {

BookKeeper::BookKeeper(std::string file, QObject* parent)
    : QObject(parent), usable_(!file.empty()), edits_(std::make_unique<BookDesk>(file)),
      questions_(std::make_unique<BookDesk>(file)), newest_find_(std::make_shared<std::atomic<int>>(0)),
      newest_season_(std::make_shared<std::atomic<int>>(0)) {
    edit_pool_.setMaxThreadCount(1);
    question_pool_.setMaxThreadCount(1);
    if (usable_) edit([](BookDesk&) -> Answer { return {}; }); // what is wrong with it is told at once
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

void BookKeeper::edit(std::function<Answer(BookDesk&)> work) {
    if (!usable_) return;
    edit_pool_.start([this, work = std::move(work)] {
        if (const auto problem = edits_->open()) {
            tell([this, error = *problem] {
                if (std::exchange(usable_, false)) Q_EMIT unusable(error);
            });
            return;
        }
        tell(work(*edits_));
    });
}

void BookKeeper::ask(std::function<Answer(BookDesk&)> work) {
    if (!usable_) return;
    question_pool_.start([this, work = std::move(work)] {
        if (questions_->open()) return; // the edits' thread says so
        tell(work(*questions_));
    });
}

void BookKeeper::keep(const SessionToKeep& wanted) {
    edit([this, wanted](BookDesk& desk) -> Answer {
        auto kept = desk.keep(wanted);
        return [this, path = wanted.path, kept = std::move(kept)] {
            if (!kept.ok()) {
                Q_EMIT refused(kept.error());
                return;
            }
            Q_EMIT session_kept(path, kept.value());
            Q_EMIT changed();
        };
    });
}

void BookKeeper::put_note(const models::Note& note) {
    edit([this, note](BookDesk& desk) -> Answer {
        const auto problem = desk.put_note(note);
        return [this, session = note.about.session, problem] {
            if (problem) {
                Q_EMIT refused(*problem);
                Q_EMIT note_refused(session);
            }
            Q_EMIT changed();
        };
    });
}

void BookKeeper::put_setup(const QString& path, const car::SetupSheet& sheet) {
    edit([this, path, sheet](BookDesk& desk) -> Answer {
        const auto problem = desk.put_setup(path, sheet);
        return [this, problem] {
            if (problem) Q_EMIT refused(*problem);
            Q_EMIT changed();
        };
    });
}

void BookKeeper::keep_pairing(const PairingToKeep& wanted) {
    edit([this, wanted](BookDesk& desk) -> Answer {
        auto note = desk.keep_pairing(wanted);
        return [this, name = wanted.name, note = std::move(note)] {
            if (note.ok())
                Q_EMIT pairing_kept(name, note.value());
            else
                Q_EMIT refused(note.error());
        };
    });
}

void BookKeeper::put_pairing_note(const QString& name, const QString& note) {
    edit([this, name, note](BookDesk& desk) -> Answer {
        const auto problem = desk.put_pairing_note(name, note);
        return [this, problem] {
            if (problem) Q_EMIT refused(*problem);
            Q_EMIT changed();
        };
    });
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
