// SPDX-License-Identifier: GPL-3.0-or-later
// Which setup belongs to which session, by one rule: what was entered for it, in the book where the session is there,
// else what the book has, else the sheet that lies beside its file (run.csv: run.setup.json).
#pragma once

#include "core/base/translation.h"
#include "core/car/setup_sheet.h"
#include "core/workspace/open_sessions.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::workspace {

struct KnownSetup {
    car::SetupSheet sheet;
    std::string words = base::said("not given"); // where it comes from
};

class Setups {
  public:
    // Entered in an earlier run and kept outside of the book.
    void take_kept(const SessionKey& key, const car::SetupSheet& sheet) { entered_.insert({key, {sheet, false}}); }
    // Nothing: what was entered before is taken back.
    void enter(const SessionKey& key, const std::optional<car::SetupSheet>& sheet);
    // The session is in the book, with this setup.  One that was entered while it was on its way there goes into the
    // book in its place and is given back.
    [[nodiscard]] std::optional<car::SetupSheet> take_from_book(const SessionKey& key, const car::SetupSheet& sheet);
    [[nodiscard]] bool in_book(const SessionKey& key) const { return in_book_.contains(key); }
    [[nodiscard]] std::optional<car::SetupSheet> entered(const SessionKey& key) const;
    // A sheet that names driver or car says from now on what the person says.
    void rename(const SessionKey& key, const std::string& driver, const std::string& car);
    // `sessions`: of which one may have a file with a sheet beside it.
    [[nodiscard]] KnownSetup known(const SessionKey& key, const OpenSessions& sessions) const;

  private:
    struct Entered {
        car::SetupSheet sheet;
        bool in_this_run = false;
    };
    std::map<SessionKey, car::SetupSheet> in_book_;
    std::map<SessionKey, Entered> entered_; // for sessions that are not in the book
};

[[nodiscard]] bool same_setup(const car::SetupSheet& one, const car::SetupSheet& other);

// A sheet that was opened or dropped like any file.
struct GivenSetup {
    std::string file;
    car::SetupSheet sheet;
    std::vector<Origin> together; // that came with it
};

// Nothing where the file is no setup sheet that says anything.
[[nodiscard]] std::optional<GivenSetup> read_given_setup(const std::string& file, std::vector<Origin> together);

// The session that it is of (core/analysis/setup_owner.h): among those that came with it, else among all that are open.
[[nodiscard]] const OpenSessions::Entry* owner_of(const GivenSetup& given, const OpenSessions& sessions);

} // namespace lapwright::workspace
