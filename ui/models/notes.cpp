// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/notes.h"

#include <algorithm>

namespace lapwright::models {
namespace {

auto find(auto& notes, const NoteAbout& about) {
    return std::ranges::find_if(notes, [&](const Note& note) { return note.about.same_thing(about); });
}

} // namespace

const std::vector<Note>& NoteShelf::of_session(const QString& session) const {
    static const std::vector<Note> none;
    const auto found = notes_.find(session);
    return found == notes_.end() ? none : found->second;
}

QString NoteShelf::text(const NoteAbout& about) const {
    const auto& notes = of_session(about.session);
    const auto found = find(notes, about);
    return found == notes.end() ? QString() : found->text;
}

void NoteShelf::put(const NoteAbout& about, const QString& text) {
    const QString words = text.trimmed();
    if (words == this->text(about)) return;
    auto& notes = notes_[about.session];
    const auto found = find(notes, about);
    if (found == notes.end())
        notes.push_back({about, words});
    else if (words.isEmpty())
        notes.erase(found);
    else
        *found = {about, words};
    Q_EMIT edited(about);
    Q_EMIT changed();
}

void NoteShelf::take_in(const QString& session, const std::vector<Note>& kept) {
    auto& notes = notes_[session];
    const auto before = notes.size();
    for (const Note& note : kept) {
        if (find(notes, note.about) == notes.end() && !note.text.isEmpty()) notes.push_back(note);
    }
    if (notes.size() != before) Q_EMIT changed();
}

} // namespace lapwright::models
