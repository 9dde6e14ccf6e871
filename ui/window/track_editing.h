// SPDX-License-Identifier: GPL-3.0-or-later
// The compared laps' track, edited by hand: segments named, moved by their ends, split and joined, the timing line put
// elsewhere.  Each is an edit that can be undone; the book keeps the track, and without a book it holds for this run.
#pragma once

#include "core/workspace/edited_track.h"
#include "core/workspace/present_pairing.h"

#include <QObject>
#include <QString>
#include <map>
#include <optional>

class QUndoStack;

namespace lapwright::bridge {
class BookQueue;
}
namespace lapwright::models {
class OpenSessions;
}

namespace lapwright::window {

struct Actions;
class Comparing;
class GivenFiles;
class Notices;
class PageStack;

class TrackEditing : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        bridge::BookQueue& book;
        const models::OpenSessions& sessions;
        const workspace::PresentPairing& pairing;
        PageStack& pages;
        Comparing& comparing;
        GivenFiles& given;
        QUndoStack& edits;
        Notices& notices;
    };

    // All outlive it.
    explicit TrackEditing(const Parts& parts, QObject* parent = nullptr);

  private:
    using Records = std::map<workspace::SessionKey, std::optional<track::TrackRecord>>;

    void connect_actions();
    void edit(const QString& name, const workspace::SegmentEdit& change);
    void move_boundary(double from_m, double to_m);
    void put_gate(double place_m);
    void push(const QString& name, const base::Result<workspace::EditedTrack>& edited);
    void use(const Records& records);
    [[nodiscard]] QString chosen_name() const;
    [[nodiscard]] std::pair<std::size_t, std::size_t> chosen() const;
    [[nodiscard]] double cursor_m() const;

    Parts parts_;
    int number_ = 1'000'000; // of the last edit that the book has to remember; apart from those of its list
};

} // namespace lapwright::window
