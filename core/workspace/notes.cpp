// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/notes.h"

#include "core/base/plain_text.h"

#include <algorithm>

namespace lapwright::workspace {
namespace {

auto find(auto& notes, const NoteAbout& about) {
    return std::ranges::find_if(notes, [&](const Note& note) { return note.about.same_thing(about); });
}

} // namespace

const std::vector<Note>& Notes::of_session(const SessionKey& session) const {
    static const std::vector<Note> none;
    const auto found = notes_.find(session);
    return found == notes_.end() ? none : found->second;
}

std::string Notes::text(const NoteAbout& about) const {
    const auto& notes = of_session(about.session);
    const auto found = find(notes, about);
    return found == notes.end() ? std::string() : found->text;
}

bool Notes::put(const NoteAbout& about, const std::string& text) {
    const std::string words(base::trimmed(text));
    if (words == this->text(about)) return false;
    auto& notes = notes_[about.session];
    const auto found = find(notes, about);
    if (found == notes.end())
        notes.push_back({about, words});
    else if (words.empty())
        notes.erase(found);
    else
        *found = {about, words};
    return true;
}

bool Notes::take_in(const SessionKey& session, const std::vector<Note>& kept) {
    auto& notes = notes_[session];
    const auto before = notes.size();
    for (const Note& note : kept)
        if (find(notes, note.about) == notes.end() && !note.text.empty()) notes.push_back(note);
    return notes.size() != before;
}

} // namespace lapwright::workspace
