// SPDX-License-Identifier: GPL-3.0-or-later
// What a session's file and the program made: recording, laps, figures.  Of the two sets of two books the one made
// later stays as a whole, of two made at one moment the one whose content is the greater text.  Within an edit of
// unite().
#pragma once

#include "core/book/database.h"

namespace lapwright::book {

// From the attached book "other", for the sessions of the temporary table "coming", which learns the ids here.
void bring_sessions(Database& database);

} // namespace lapwright::book
