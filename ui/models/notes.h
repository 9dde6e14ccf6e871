// SPDX-License-Identifier: GPL-3.0-or-later
// What people wrote on the open sessions: one note for each thing that can have one, the whole session, a lap of it, or
// a corner as its driver took it.  Plain text, never interpreted.
#pragma once

#include <QObject>
#include <QString>
#include <map>
#include <optional>
#include <vector>

namespace lapwright::models {

// `segment` empty: the lap or the session.  The place finds the segment again when it has got another name.
struct NoteAbout {
    QString session; // path of its file, as the shelf has it
    std::optional<int> lap = {};
    QString segment = {};
    std::optional<double> at_m = {}; // middle of the segment, along the reference line

    [[nodiscard]] bool same_thing(const NoteAbout& other) const {
        return session == other.session && lap == other.lap && segment == other.segment;
    }
};

struct Note {
    NoteAbout about;
    QString text; // never empty
};

class NoteShelf : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

    [[nodiscard]] QString text(const NoteAbout& about) const; // empty: none
    [[nodiscard]] const std::vector<Note>& of_session(const QString& session) const;

    // Blanks around it are cut off; an empty text removes the note.
    void put(const NoteAbout& about, const QString& text);
    // Notes that were kept; what was written meanwhile about the same thing stays.
    void take_in(const QString& session, const std::vector<Note>& kept);

  Q_SIGNALS:
    void edited(const lapwright::models::NoteAbout& about);
    void changed(); // edited or taken in

  private:
    std::map<QString, std::vector<Note>> notes_;
};

} // namespace lapwright::models
