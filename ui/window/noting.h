// SPDX-License-Identifier: GPL-3.0-or-later
// Notes of the window: what pages were told becomes an edit that can be undone, and goes back to every page that
// shows it.
#pragma once

#include "ui/models/compared.h"
#include "ui/models/notes.h"
#include "ui/models/session_shelf.h"

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
    // All outlive it.
    Noting(models::NoteShelf& notes, pages::SessionsPage& sessions, pages::ComparePage& compare, QUndoStack& edits,
           QObject* parent = nullptr);

    // The compare page shows it already.
    void set_pairing(const models::ComparedPointer& compared, const QString& session_a, const QString& session_b);
    void end_typing();                       // what is being typed is kept
    [[nodiscard]] QStringList lines() const; // for the sheet

  Q_SIGNALS:
    void lines_changed();

  private:
    void enter(const std::vector<models::NoteAbout>& about, const QString& note, const QString& name);
    void enter_on_segment(models::Side side, std::size_t segment, const QString& note);
    void show();

    models::NoteShelf& notes_;
    pages::SessionsPage& sessions_;
    pages::ComparePage& compare_;
    QUndoStack& edits_;
    models::ComparedPointer compared_;
    QString session_a_;
    QString session_b_;
};

} // namespace lapwright::window
