// SPDX-License-Identifier: GPL-3.0-or-later
// Laps that a person sets aside or counts on a session's card: at once on the card and in what is compared next, in the
// book where there is one, undone like any other edit.
#pragma once

#include "core/lap/judged_by_hand.h"
#include "core/workspace/session_key.h"

#include <QObject>
#include <optional>
#include <vector>

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

class Comparing;

class Judging : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        bridge::BookQueue& book;
        const models::OpenSessions& sessions;
        pages::SessionsPage& page;
        Comparing& comparing;
        QUndoStack& edits;
    };

    // All outlive it.
    explicit Judging(const Parts& parts, QObject* parent = nullptr);

  private:
    void take(const workspace::SessionKey& key, int lap, const std::optional<lap::JudgedByHand>& word);
    void put(const workspace::SessionKey& key, const std::vector<lap::JudgedByHand>& words);

    Parts parts_;
};

} // namespace lapwright::window
