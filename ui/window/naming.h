// SPDX-License-Identifier: GPL-3.0-or-later
// Names that a person types on a session's card: at once on every page, in the book where there is one, undone like any
// other edit.  A track that the book knows by its gate gets the new name in all its sessions.
#pragma once

#include "core/workspace/session_names.h"

#include <QObject>

class QUndoStack;

namespace lapwright::bridge {
class BookQueue;
}
namespace lapwright::models {
class OpenSessions;
}
namespace lapwright::pages {
class SessionsPage;
}

namespace lapwright::window {

class BookEditing;
class Comparing;
class Explaining;

class Naming : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        bridge::BookQueue& book;
        const models::OpenSessions& sessions;
        pages::SessionsPage& page;
        Comparing& comparing;
        Explaining& explaining;
        BookEditing& book_editing;
        QUndoStack& edits;
    };

    // All outlive it.
    explicit Naming(const Parts& parts, QObject* parent = nullptr);

  private:
    void take(const workspace::SessionKey& key, workspace::SessionNames names);
    void put(const workspace::SessionKey& key, const workspace::SessionNames& names);

    Parts parts_;
};

} // namespace lapwright::window
