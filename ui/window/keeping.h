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
#include <QStringList>
#include <map>
#include <optional>
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
    // `track`: of the track file, where one was given.
    void session_opened(const QString& path, const bridge::SessionPointer& session,
                        const std::optional<track::TrackRecord>& track);
    // The paths under which this session of the book was opened in this run.
    [[nodiscard]] QStringList paths_of(book::SessionId id) const;
    // `name`: of the two laps, as the debriefing has it.
    void set_pairing(const models::ComparedPointer& compared, const models::LapPick& a, const models::LapPick& b,
                     const QString& name, const std::optional<track::TrackRecord>& track);

  Q_SIGNALS:
    void kept_there(const QString& path, const lapwright::bridge::KeptSession& session); // as the book has it

  private:
    void keep_line(const analysis::Pairing& pairing, const std::optional<track::TrackRecord>& track);
    void note_edited(const models::NoteAbout& about);
    void session_kept(const QString& path, const bridge::KeptSession& kept);
    void keep_notes_in_settings(const QString& session);
    void keep_all_notes_in_settings();
    void go_on_without(const base::Error& error);

    bridge::BookKeeper& book_;
    Parts parts_;
    QSet<QString> anew_;
    std::map<QString, book::SessionId> ids_;
    QString without_book_;   // the sentence that says so
    QSet<QString> sessions_; // that were opened in this run
};

} // namespace lapwright::window
