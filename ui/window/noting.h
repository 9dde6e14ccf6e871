// SPDX-License-Identifier: GPL-3.0-or-later
// Notes of the window: what pages were told becomes an edit
// that can be undone, and goes back to every page that shows it.
#pragma once

#include "core/workspace/present_pairing.h"
#include "ui/models/notes.h"

#include <QObject>
#include <QStringList>

class QUndoStack;

namespace lapwright::pages {
class ComparePage;
class SessionsPage;
} // namespace lapwright::pages

namespace lapwright::window {

class Noting : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        models::Notes& notes;
        pages::SessionsPage& sessions;
        pages::ComparePage& compare;
        QUndoStack& edits;
        const workspace::PresentPairing& pairing;
    };

    // All outlive it.
    explicit Noting(const Parts& parts, QObject* parent = nullptr);

    void follow_pairing();                                                   // which the compare page shows already
    void end_typing();                                                       // what is being typed is kept
    void take_typed(const workspace::NoteAbout& about, const QString& note); // in a run that ended before it was kept
    [[nodiscard]] QStringList lines() const;                                 // for the sheet

  Q_SIGNALS:
    void lines_changed();

  private:
    void enter(const std::vector<workspace::NoteAbout>& about, const QString& note, const QString& name);
    void enter_on_segment(workspace::Side side, std::size_t segment, const QString& note);

    Parts parts_;
};

} // namespace lapwright::window
