// SPDX-License-Identifier: GPL-3.0-or-later
// What goes from the window into its book and back: sessions that are opened, notes, setups, pairings with their notes.
// Without a book, notes live in the settings, and move into the book when there is one again.
#pragma once

#include "core/workspace/present_pairing.h"
#include "ui/bridge/book_queue.h"
#include "ui/models/notes.h"

#include <QObject>
#include <QString>
#include <optional>
#include <set>

class QSettings;

namespace lapwright::window {

class Debriefing;
class Explaining;
class Notices;

class Keeping : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        models::Notes& notes;
        Explaining& explaining;
        Debriefing& debriefing;
        Notices& notices;
        QSettings& settings;
    };

    // All outlive it.
    Keeping(bridge::BookQueue& book, const Parts& parts, QObject* parent = nullptr);

    // The next session from there replaces the samples that the book has of it.
    void expect_anew(const workspace::Origin& origin) { anew_.insert(origin); }
    // `track`: of the track file, where one was given.
    void session_opened(const workspace::Origin& origin, const workspace::SessionPointer& session,
                        const std::optional<track::TrackRecord>& track);
    void set_pairing(const workspace::PresentPairing& pairing, const std::optional<track::TrackRecord>& track);

  Q_SIGNALS:
    // As the book has it.
    void kept_there(const lapwright::workspace::SessionKey& key, const lapwright::workspace::KeptSession& session);

  private:
    void keep_line(const analysis::Pairing& pairing, const std::optional<track::TrackRecord>& track);
    void note_edited(const workspace::NoteAbout& about);
    void session_kept(const workspace::SessionKey& key, const workspace::KeptSession& kept);
    void keep_notes_in_settings(const workspace::SessionKey& session);
    void keep_all_notes_in_settings();
    void go_on_without(const base::Error& error);

    bridge::BookQueue& book_;
    Parts parts_;
    std::set<workspace::Origin> anew_;
    QString without_book_;                     // the sentence that says so
    std::set<workspace::SessionKey> sessions_; // that were opened in this run
};

} // namespace lapwright::window
