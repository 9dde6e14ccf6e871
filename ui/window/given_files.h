// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are opened or dropped beside recordings: a track file, whose gate and segments are used from then on, and
// setup sheets, which wait for the session that they are of.
#pragma once

#include "core/workspace/present_pairing.h"
#include "core/workspace/setups.h"
#include "ui/models/open_sessions.h"

#include <QObject>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::pages {
class SessionsPage;
}

namespace lapwright::window {

class Explaining;
class Notices;
struct Preferences;

class GivenFiles : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const models::OpenSessions& sessions;
        const workspace::PresentPairing& pairing;
        pages::SessionsPage& page;
        Explaining& explaining;
        Notices& notices;
        Preferences& preferences;
    };

    // All outlive it.
    explicit GivenFiles(const Parts& parts, QObject* parent = nullptr);

    // Takes them (*.json) out of `files` and uses the last track; true when the track changed.
    bool take(QStringList& files);
    bool use_track(const QString& path);
    void put_track(const std::optional<track::TrackRecord>& record); // in the place of the file's, or nothing
    void forget_track();
    void give_setups(); // the waiting ones to their sessions

    [[nodiscard]] const std::optional<track::TrackRecord>& track() const { return track_; }
    [[nodiscard]] std::string track_name() const; // else what the book knew of an open session

  Q_SIGNALS:
    void track_changed();

  private:
    // Whether it was a setup sheet; `together`: session files that came with it.
    bool take_setup(const QString& path, const QStringList& together);

    Parts parts_;
    std::optional<track::TrackRecord> track_;
    std::vector<workspace::GivenSetup> setups_; // until the files that are being read have come
};

} // namespace lapwright::window
