// SPDX-License-Identifier: GPL-3.0-or-later
// What people wrote on sessions: one note for each thing that can have one, the whole session, a lap of it, or a corner
// as its driver took it.  Plain text, never interpreted.
#pragma once

#include "core/workspace/session_key.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::workspace {

// `segment` empty: the lap or the session.  The place finds the segment again when it has got another name.
struct NoteAbout {
    SessionKey session;
    std::optional<int> lap = {};
    std::string segment = {};
    std::optional<double> at_m = {}; // middle of the segment, along the reference line

    [[nodiscard]] bool same_thing(const NoteAbout& other) const {
        return session == other.session && lap == other.lap && segment == other.segment;
    }
};

struct Note {
    NoteAbout about;
    std::string text; // never empty
};

class Notes {
  public:
    [[nodiscard]] std::string text(const NoteAbout& about) const; // empty: none
    [[nodiscard]] const std::vector<Note>& of_session(const SessionKey& session) const;

    // Blanks around it are cut off; an empty text removes the note.  Whether it says something else now.
    bool put(const NoteAbout& about, const std::string& text);
    // Notes that were kept; what was written meanwhile about the same thing stays.  Whether one is new.
    bool take_in(const SessionKey& session, const std::vector<Note>& kept);

  private:
    std::map<SessionKey, std::vector<Note>> notes_;
};

} // namespace lapwright::workspace
