// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/comparing.h"

#include "core/base/error.h"
#include "core/car/names.h"
#include "core/workspace/session_names.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/window/edit.h"
#include "ui/window/explaining.h"
#include "ui/window/given_files.h"
#include "ui/window/importing.h"
#include "ui/window/keeping.h"
#include "ui/window/notices.h"

#include <QUndoStack>
#include <algorithm>

namespace lapwright::window {

using models::text;

Comparing::Comparing(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    using bridge::Worker;
    connect(&parts_.worker, &Worker::session_ready, this, &Comparing::session_read);
    connect(&parts_.worker, &Worker::file_refused, this,
            [this](const workspace::Origin& origin, const base::Error& error) {
                parts_.notices.add(text(base::one_line(error)));
                if (const auto* file = std::get_if<std::string>(&origin))
                    parts_.importing.note_refusal(models::path(*file), error);
                came(origin);
            });
    connect(&parts_.worker, &Worker::pairing_ready, this, &Comparing::take);
    connect(&parts_.worker, &Worker::comparison_refused, this, [this](const base::Error& error) {
        parts_.pairing.refuse();
        parts_.notices.add(text(base::one_line(error)));
        Q_EMIT refused();
    });
    connect(&parts_.importing, &Importing::read_again, this, &Comparing::read_again);
    connect(&parts_.importing, &Importing::answered, this, &Comparing::go_on_with_plan);
    connect(&parts_.explaining, &Explaining::setup_changed, this, &Comparing::name_by_setup);
    connect(
        &parts_.keeping, &Keeping::kept_there, this,
        [this](const workspace::SessionKey& key, const workspace::KeptSession& kept) { rename(key, kept.details); });
}

void Comparing::load(const std::vector<workspace::Origin>& origins, const Plan& plan) {
    parts_.pairing.read(origins, plan);
    parts_.sessions.edit([&](workspace::OpenSessions& open) { open.expect(origins); });
    parts_.worker.load(origins, parts_.given.track());
}

void Comparing::session_read(const workspace::Origin& origin, const workspace::SessionPointer& session) {
    const workspace::SessionKey key = workspace::key_of(*session);
    const auto* file = std::get_if<std::string>(&origin);
    parts_.sessions.edit([&](workspace::OpenSessions& open) { open.add(origin, session); });
    parts_.explaining.session_opened(key);
    parts_.keeping.session_opened(origin, session, parts_.given.track());
    name_by_setup(key);
    if (file) {
        parts_.notices.withdraw(models::path(*file));
        parts_.importing.note_session(models::path(*file), *session);
    }
    came(origin);
}

void Comparing::came(const workspace::Origin& origin) {
    parts_.pairing.came(origin);
    go_on_with_plan();
}

void Comparing::take(const workspace::ComparedPointer& pairing) {
    parts_.sessions.edit([&](workspace::OpenSessions& open) { parts_.pairing.take(pairing, open); });
    Q_EMIT compared(pairing);
}

// Files that ask are answered for before their laps are compared.
void Comparing::go_on_with_plan() {
    if (parts_.pairing.reading()) return;
    parts_.given.give_setups();
    if (parts_.importing.ask_next()) return;
    bool compares = false;
    parts_.sessions.edit([&](workspace::OpenSessions& open) { compares = parts_.pairing.fulfil(open); });
    if (compares) compare();
}

// Its columns mean something else now; a comparison that shows it is made anew when it is looked at.
void Comparing::read_again(const QString& path) {
    const workspace::Origin origin = models::file_name(path);
    if (const auto* open = parts_.sessions.now().find(origin)) parts_.pairing.outdate(open->key);
    parts_.pairing.await(origin);
    parts_.keeping.expect_anew(origin);
    parts_.sessions.edit([&](workspace::OpenSessions& open) { open.expect({origin}); });
    parts_.worker.load({origin}, parts_.given.track());
}

void Comparing::compare() {
    if (!picks().complete()) return;
    const workspace::Picks wanted = picks();
    const bool only_swapped = parts_.pairing.shows_swapped(wanted);
    parts_.pairing.compare(wanted);
    if (only_swapped) {
        parts_.worker.cancel_comparison();
        take(workspace::swapped(*parts_.pairing.compared()));
        return;
    }
    const auto number = [](const workspace::LapPick& pick) {
        return pick.fastest ? std::nullopt : std::optional(pick.lap);
    };
    const workspace::OpenSessions& open = parts_.sessions.now();
    parts_.worker.compare({open.session(wanted.a->session), open.session(wanted.b->session), number(*wanted.a),
                           number(*wanted.b), parts_.given.track()});
}

std::optional<Comparing::WantedLap> Comparing::wanted_again(const std::optional<workspace::LapPick>& pick) const {
    const auto* open = pick ? parts_.sessions.now().find(pick->session) : nullptr;
    if (!open) return std::nullopt;
    return WantedLap{open->origin(), pick->lap};
}

void Comparing::rename(const workspace::SessionKey& key, const book::SessionDetails& details) {
    const auto session = parts_.sessions.now().session(key);
    if (!session) return;
    if (const auto renamed_session = workspace::named(session, details); renamed_session != session)
        replace({renamed_session});
}

void Comparing::give_names(const workspace::SessionKey& key, const workspace::SessionNames& names) {
    const auto session = parts_.sessions.now().session(key);
    if (!session) return;
    if (const auto named_session = workspace::with_names(session, names); named_session != session)
        replace({named_session});
}

void Comparing::put_on_track(const std::vector<workspace::SessionPointer>& sessions) {
    replace(sessions);
}

void Comparing::judge(const workspace::SessionKey& key, const std::vector<lap::JudgedByHand>& words) {
    parts_.sessions.edit([&](workspace::OpenSessions& open) { open.judge(key, words); });
    show_anew({key});
}

void Comparing::replace(const std::vector<workspace::SessionPointer>& sessions) {
    std::vector<workspace::SessionKey> keys;
    parts_.sessions.edit([&](workspace::OpenSessions& open) {
        for (const auto& session : sessions) {
            keys.push_back(workspace::key_of(*session));
            open.rename(keys.back(), session);
        }
    });
    show_anew(keys);
}

// What shows them is made anew when it is looked at.
void Comparing::show_anew(const std::vector<workspace::SessionKey>& sessions) {
    bool comes = false;
    for (const workspace::SessionKey& key : sessions) {
        parts_.pairing.outdate(key);
        comes = comes || parts_.pairing.comes_with(key);
    }
    if (comes)
        compare();
    else
        Q_EMIT renamed();
}

void Comparing::name_by_setup(const workspace::SessionKey& key) {
    const workspace::SessionPointer session = parts_.sessions.now().session(key);
    if (!session) return;
    const car::Names names = car::names_of(*session->recording, parts_.explaining.known_setup(key));
    rename(key, {names.driver, names.car, {}, session->recording->start_unix_s, {}, {}});
}

void Comparing::edit_picks(const QString& name, const std::function<void(workspace::OpenSessions&)>& change) {
    const workspace::Picks before = picks();
    parts_.sessions.edit(change);
    const workspace::Picks after = picks();
    if (after == before) return;
    const auto put = [sessions = &parts_.sessions](const workspace::Picks& laps) {
        sessions->edit([&](workspace::OpenSessions& open) { open.put_picks(laps); });
    };
    parts_.edits.push(new Edit(name, [put, after] { put(after); }, [put, before] { put(before); }));
}

void Comparing::reload_all(bool compare) {
    std::vector<workspace::Origin> origins;
    for (const auto& entry : parts_.sessions.now().entries())
        origins.push_back(entry.origin());
    if (origins.empty()) return;
    Plan plan{{wanted_again(picks().a), wanted_again(picks().b)}, compare};
    for (auto& wanted : plan.laps)
        if (wanted) wanted->lap.reset();
    load(origins, plan);
}

// Where it is open, or else the book.
workspace::Origin Comparing::origin_of(const book::SessionSummary& session) const {
    const auto* open = parts_.sessions.now().find(workspace::SessionKey{session.source.checksum});
    return open ? open->origin() : workspace::Origin(session.id);
}

void Comparing::open_pairing(const book::PairingSummary& pairing) {
    reopen({WantedLap{origin_of(pairing.a), pairing.kept.pairing.lap_a},
            WantedLap{origin_of(pairing.b), pairing.kept.pairing.lap_b}});
}

void Comparing::reopen(const WantedLaps& laps) {
    std::vector<workspace::Origin> missing;
    for (const auto& wanted : laps)
        if (!parts_.sessions.now().find(wanted->origin) && std::ranges::find(missing, wanted->origin) == missing.end())
            missing.push_back(wanted->origin);
    load(missing, {laps, true});
    if (missing.empty()) go_on_with_plan();
}

} // namespace lapwright::window
