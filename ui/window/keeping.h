// SPDX-License-Identifier: GPL-3.0-or-later
// What goes from the window into its book and back: sessions that are opened, notes, setups, pairings with their notes.
// Without a book, notes live in the settings, and move into the book when there is one again.
#pragma once

#include "ui/bridge/book_keeper.h"
#include "ui/models/compared.h"
#include "ui/models/notes.h"
#include "ui/models/session_shelf.h"

#include <QObject>
#include <QSet>
#include <QString>
#include <string>

class QSettings;

namespace lapwright::window {

class Debriefing;
class Explaining;
class Notices;

class Keeping : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        models::NoteShelf& notes;
        Explaining& explaining;
        Debriefing& debriefing;
        Notices& notices;
        QSettings& settings;
    };

    // All outlive it.
    Keeping(bridge::BookKeeper& book, const Parts& parts, QObject* parent = nullptr);

    // The next session of this path replaces the samples that the book has of it.
    void expect_anew(const QString& path) { anew_.insert(path); }
    void session_opened(const QString& path, const bridge::SessionPointer& session, const std::string& track);
    // `name`: of the two laps, as the debriefing has it.
    void set_pairing(const models::ComparedPointer& compared, const models::LapPick& a, const models::LapPick& b,
                     const QString& name);

  private:
    void note_edited(const models::NoteAbout& about);
    void session_kept(const QString& path, const bridge::KeptSession& kept);
    void keep_notes_in_settings(const QString& session);
    void go_on_without(const base::Error& error);

    bridge::BookKeeper& book_;
    Parts parts_;
    QSet<QString> anew_;
    QSet<QString> sessions_; // that were opened in this run
};

} // namespace lapwright::window
