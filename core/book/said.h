// SPDX-License-Identifier: GPL-3.0-or-later
// What people said of sessions, tracks and notes, kept so that books can be made one in any order with the same
// outcome. A field holds a set of values, each with its moment and whether it was replaced.  Saying a value replaces
// all that this book knows; two books are made one by uniting their sets, where replaced counts over not replaced.  In
// use is the latest that nobody replaced (the greater of two of one moment); several different ones are a conflict,
// none is lost. Such a set with replacement is a "multi-value register" (Shapiro, Preguiça, Baquero, Zawirski: "A
// comprehensive study of convergent and commutative replicated data types", INRIA RR-7506, 2011, 3.2.2).
//
// Functions work within an edit of the caller.
#pragma once

#include "core/book/database.h"
#include "core/book/entries.h"

#include <string>

namespace lapwright::book {

// After an edit of a session's or track's row: what differs from what is in use is said now.
void say_session(Database& database, SessionId id);
// A name ("driver", "car", "track") that is written otherwise and is the same: say_session() passes it over.
void say_spelling(Database& database, SessionId id, const std::string& table, const std::string& name);
void say_track(Database& database, std::int64_t track);
// All rows, where a program of other habits or a salvage may have written them.
void say_all(Database& database);
// Moments: as put_note() and remove_note() have them; one that is not later than what is known becomes so.
[[nodiscard]] double say_note(Database& database, const Note& note);

// The other way: a row takes over what is in use.  A field of which nothing was ever said stays.
void settle_session(Database& database, std::int64_t session);
void settle_track(Database& database, std::int64_t track);

// Names of tracks and notes as subjects.
[[nodiscard]] std::string track_subject(const std::string& name);
[[nodiscard]] std::string note_subject(const std::string& uid);

// Replaces all values of the field.
void say(Database& database, const std::string& subject, const std::string& field, const Given& value,
         double at_least_unix_s);

// Removes it for all books that are united with this one.
void put_gone(Database& database, const std::string& subject, double changed_unix_s);
// The moment of something that shall live though it was removed: later than that.
[[nodiscard]] double after_gone(Database& database, const std::string& subject, double changed_unix_s);

} // namespace lapwright::book
