// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/track_editing.h"

#include "ui/bridge/book_queue.h"
#include "ui/models/open_sessions.h"
#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/comparing.h"
#include "ui/window/edit.h"
#include "ui/window/given_files.h"
#include "ui/window/notices.h"
#include "ui/window/page_stack.h"

#include <QUndoStack>
#include <algorithm>
#include <cmath>

namespace lapwright::window {

using bridge::BookQueue;
using models::text;
using track::Segments;

TrackEditing::TrackEditing(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    connect_actions();
    pages::ComparePage& page = parts_.pages.compare();
    connect(&page, &pages::ComparePage::boundary_moved, this, &TrackEditing::move_boundary);
    connect(&page, &pages::ComparePage::name_typed, this, [this](std::size_t segment, const QString& name) {
        edit(tr("name %1").arg(name), [segment, words = name.toStdString()](Segments segments) {
            return track::with_name(std::move(segments), segment, words);
        });
    });
}

void TrackEditing::connect_actions() {
    const Actions& a = parts_.actions;
    const auto on = [this](QAction* action, auto work) { connect(action, &QAction::triggered, this, work); };
    on(a.rename_segment, [this] {
        if (parts_.pages.compare().summed())
            parts_.notices.add(tr("Corners are shown with their straights: J shows them apart, to be named."));
        else
            parts_.pages.compare().begin_name();
    });
    on(a.start_here, [this] {
        const std::size_t first = chosen().first;
        if (first > 0)
            edit(tr("start of %1").arg(chosen_name()), [first, place_m = cursor_m()](Segments segments) {
                return track::with_end(std::move(segments), first - 1, place_m);
            });
        else
            put_gate(cursor_m());
    });
    on(a.end_here, [this] {
        edit(tr("end of %1").arg(chosen_name()), [last = chosen().second, place_m = cursor_m()](Segments segments) {
            return track::with_end(std::move(segments), last - 1, place_m);
        });
    });
    on(a.split_here, [this] {
        edit(tr("split of %1").arg(chosen_name()),
             [place_m = cursor_m()](Segments segments) { return track::split_at(std::move(segments), place_m); });
    });
    on(a.join_next, [this] {
        edit(tr("join of %1").arg(chosen_name()), [last = chosen().second](Segments segments) {
            return track::joined_with_next(std::move(segments), last - 1);
        });
    });
    on(a.other_kind, [this] {
        edit(tr("kind of %1").arg(chosen_name()),
             [first = chosen().first](Segments segments) { return track::of_other_kind(std::move(segments), first); });
    });
    on(a.gate_here, [this] { put_gate(cursor_m()); });
}

double TrackEditing::cursor_m() const {
    return parts_.pages.compare().stack().cursor_m();
}

std::pair<std::size_t, std::size_t> TrackEditing::chosen() const {
    return parts_.pages.compare().chosen_segments();
}

QString TrackEditing::chosen_name() const {
    const auto& segments = parts_.pairing.compared()->pairing->track.segments;
    return chosen().first < segments.size() ? text(segments[chosen().first].name) : QString();
}

void TrackEditing::move_boundary(double from_m, double to_m) {
    const track::Track& track = parts_.pairing.compared()->pairing->track;
    const auto found = std::ranges::find_if(track.segments, [from_m](const track::Segment& one) {
        return std::abs(one.end_m - from_m) < 0.5 * track::shortest_segment_m;
    });
    if (found == track.segments.end() || found + 1 == track.segments.end()) {
        put_gate(to_m);
        return;
    }
    edit(tr("end of %1").arg(text(found->name)),
         [segment = static_cast<std::size_t>(found - track.segments.begin()), to_m](Segments segments) {
             return track::with_end(std::move(segments), segment, to_m);
         });
}

void TrackEditing::edit(const QString& name, const workspace::SegmentEdit& change) {
    if (chosen().second == 0) return;
    push(name, workspace::edited(parts_.pairing.compared()->pairing->track, change));
}

void TrackEditing::put_gate(double place_m) {
    if (!parts_.pairing.compared()) return;
    push(tr("timing line"), workspace::with_gate_at(parts_.pairing.compared()->pairing->track, place_m));
}

void TrackEditing::use(const Records& records) {
    std::vector<workspace::SessionPointer> sessions;
    for (const auto& [key, record] : records)
        if (const auto session = parts_.sessions.now().session(key))
            sessions.push_back(workspace::on_track(session, record));
    parts_.comparing.put_on_track(sessions);
}

void TrackEditing::push(const QString& name, const base::Result<workspace::EditedTrack>& edited) {
    if (!edited) {
        parts_.notices.add(text(base::one_line(edited.error())));
        return;
    }
    const track::TrackRecord& record = edited->record;
    const bool other_gate = edited->other_gate;
    const bool in_book = parts_.book.takes_edits();
    const int number = ++number_;
    const auto compared = parts_.pairing.laps();
    Records before;
    Records after;
    for (const auto& session :
         workspace::on_track(parts_.sessions.now(), record, {compared.session_a, compared.session_b})) {
        const workspace::SessionKey key = workspace::key_of(*session);
        before[key] = parts_.sessions.now().session(key)->known_track;
        after[key] = record;
    }
    const auto given_before = parts_.given.track();
    const auto given_after = given_before || !in_book ? std::optional(record) : std::nullopt;
    const auto work = [=, this](const std::optional<track::TrackRecord>& given, const Records& records,
                                const BookQueue::Work& in_the_book) {
        if (given_after) parts_.given.put_track(given);
        if (in_book) {
            if (other_gate)
                parts_.book.edit_tracks(in_the_book); // then all is read again
            else
                parts_.book.edit(in_the_book);
        }
        if (!other_gate)
            use(records);
        else if (!in_book)
            parts_.comparing.reload_all(true);
    };
    const BookQueue::Work change = [number, record](BookQueue::Book& own) { return own.change_track(number, record); };
    const BookQueue::Work change_back = [number, track = record.name](BookQueue::Book& own) {
        return own.bring_back_track(number, track);
    };
    parts_.edits.push(
        new Edit(name, [=] { work(given_after, after, change); }, [=] { work(given_before, before, change_back); }));
    parts_.pages.follow_edit();
}

} // namespace lapwright::window
