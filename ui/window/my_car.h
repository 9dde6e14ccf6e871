// SPDX-License-Identifier: GPL-3.0-or-later
// Which car is the person's own: what the book remembers, or was chosen on the Causes page, told to the pages of the
// present pairing.  Without a book that takes edits it is remembered for this run.
#pragma once

#include "core/car/names.h"
#include "core/causes/explanation.h"
#include "core/workspace/compared.h"

#include <QObject>
#include <optional>

class QUndoStack;

namespace lapwright::bridge {
class BookQueue;
}

namespace lapwright::pages {
class CausesPage;
}

namespace lapwright::window {

class Debriefing;

class MyCar : public QObject {
    Q_OBJECT

  public:
    // All outlive it.
    MyCar(bridge::BookQueue& book, pages::CausesPage& page, Debriefing& debriefing, QUndoStack& edits,
          QObject* parent = nullptr);

    void set_pairing(const workspace::ComparedPointer& compared);
    [[nodiscard]] const std::optional<car::Names>& names() const { return mine_; }

  private:
    void put(const std::optional<car::Names>& mine);
    void choose(std::optional<causes::Side> side);
    void take(const std::optional<car::Names>& mine);
    void tell();

    bridge::BookQueue& book_;
    pages::CausesPage& page_;
    Debriefing& debriefing_;
    QUndoStack& edits_;
    workspace::ComparedPointer compared_;
    std::optional<car::Names> mine_;
};

} // namespace lapwright::window
