// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings that come in and the two laps that are compared: the present pairing (core/workspace/present_pairing.h),
// moved on by what a person asks for and by what the worker answers.
#pragma once

#include "core/book/pairings.h"
#include "core/workspace/present_pairing.h"
#include "core/workspace/session_names.h"
#include "ui/bridge/worker.h"
#include "ui/models/open_sessions.h"

#include <QObject>
#include <QString>
#include <array>
#include <functional>
#include <optional>
#include <vector>

class QUndoStack;

namespace lapwright::window {

class Explaining;
class GivenFiles;
class Importing;
class Keeping;
class Notices;

class Comparing : public QObject {
    Q_OBJECT

  public:
    using Plan = workspace::PresentPairing::Plan;
    using WantedLap = workspace::PresentPairing::WantedLap;
    using WantedLaps = std::array<std::optional<WantedLap>, 2>;

    struct Parts {
        bridge::Worker& worker;
        models::OpenSessions& sessions;
        workspace::PresentPairing& pairing;
        QUndoStack& edits;
        Importing& importing;
        GivenFiles& given;
        Explaining& explaining;
        Keeping& keeping;
        Notices& notices;
    };

    // All outlive it.
    explicit Comparing(const Parts& parts, QObject* parent = nullptr);

    void load(const std::vector<workspace::Origin>& origins, const Plan& plan);
    // Both sessions, out of the book where they are not open, and straight to the comparison of their laps.
    void reopen(const WantedLaps& laps);
    void open_pairing(const book::PairingSummary& pairing);
    // Another gate times other laps: every open session is understood again, and the pairing compared again if asked.
    void reload_all(bool compare);
    void compare();
    // What the book calls a session now, on every page that shows it.
    void rename(const workspace::SessionKey& key, const book::SessionDetails& details);
    void give_names(const workspace::SessionKey& key, const workspace::SessionNames& names);   // as a person says
    void judge(const workspace::SessionKey& key, const std::vector<lap::JudgedByHand>& words); // its laps, by hand
    // The same sessions on a track that was edited.
    void put_on_track(const std::vector<workspace::SessionPointer>& sessions);
    // Done at once; an edit that changes nothing is not one.
    void edit_picks(const QString& name, const std::function<void(workspace::OpenSessions&)>& change);

    [[nodiscard]] const workspace::Picks& picks() const { return parts_.sessions.now().picks(); }
    // Where a picked lap would be read again.
    [[nodiscard]] std::optional<WantedLap> wanted_again(const std::optional<workspace::LapPick>& pick) const;

  Q_SIGNALS:
    void compared(const lapwright::workspace::ComparedPointer& compared);
    void refused();
    void renamed(); // what is shown is to be made anew

  private:
    void session_read(const workspace::Origin& origin, const workspace::SessionPointer& session);
    void came(const workspace::Origin& origin);
    void take(const workspace::ComparedPointer& pairing);
    void go_on_with_plan();
    void read_again(const QString& path);
    void replace(const std::vector<workspace::SessionPointer>& sessions);
    void show_anew(const std::vector<workspace::SessionKey>& sessions);
    void name_by_setup(const workspace::SessionKey& key); // driver and car of the session
    [[nodiscard]] workspace::Origin origin_of(const book::SessionSummary& session) const;

    Parts parts_;
};

} // namespace lapwright::window
