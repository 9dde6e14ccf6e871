// SPDX-License-Identifier: GPL-3.0-or-later
// What a person changes in the book's list: a session is taken out of it, a driver, a car or a track gets another name,
// a session its date.
// Asked for first, and undone like any other edit.
#pragma once

#include "core/book/pairings.h"
#include "ui/bridge/book_queue.h"

#include <QObject>
#include <vector>

class QUndoStack;

namespace lapwright::pages {
class RenameForm;
class SessionsPage;
} // namespace lapwright::pages

namespace lapwright::window {

class BookEditing : public QObject {
    Q_OBJECT

  public:
    // All outlive it.
    BookEditing(bridge::BookQueue& book, pages::SessionsPage& page, QUndoStack& edits, QObject* parent = nullptr);

    // The book's gate and corners of the track.
    void forget_track(const std::string& name);
    // In all sessions of the book; where another track has the name already the two become one.
    void rename_track(const std::string& from, const std::string& to);
    // Those that were taken out, to be brought back.
    void show_removed();

  private:
    using How = void (bridge::BookQueue::*)(bridge::BookQueue::Work);

    void push(const QString& name, How how, const bridge::BookQueue::Work& redo, const bridge::BookQueue::Work& undo);
    void date(const book::SessionSummary& session, std::optional<double> start_unix_s);
    void ask_for_name(const book::SessionSummary& session);
    void rename(const pages::RenameForm& form);
    void remove(const book::SessionSummary& session);

    bridge::BookQueue& book_;
    pages::SessionsPage& page_;
    QUndoStack& edits_;
    std::vector<book::PairingSummary> pairings_;
    int number_ = 0; // of the last edit that the book has to remember
};

} // namespace lapwright::window
