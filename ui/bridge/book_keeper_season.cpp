// SPDX-License-Identifier: GPL-3.0-or-later
// What the keeper does for the book's list, its season and its pairings.
#include "ui/bridge/book_keeper.h"

#include "core/book/sessions.h"
#include "ui/bridge/book_desk.h"

#include <utility>

namespace lapwright::bridge {
namespace {

// What every edit tells when it was tried.
auto told(BookKeeper& keeper, const std::optional<base::Error>& refusal) {
    return [&keeper, refusal] {
        if (refusal) Q_EMIT keeper.refused(*refusal);
        Q_EMIT keeper.changed();
    };
}

} // namespace

void BookKeeper::edit_plainly(std::function<std::optional<base::Error>(BookDesk&)> work) {
    edit([this, work = std::move(work)](BookDesk& desk) -> Done {
        const auto problem = work(desk);
        return {problem, told(*this, problem)};
    });
}

void BookKeeper::edit_names(std::function<std::optional<base::Error>(BookDesk&)> work) {
    edit([this, work = std::move(work)](BookDesk& desk) -> Done {
        const auto problem = work(desk);
        auto details = desk.details();
        return {problem, [this, tell = told(*this, problem), details = std::move(details), mine = desk.my_car()] {
                    if (mine.ok()) Q_EMIT my_car_found(mine.value());
                    tell();
                    if (!details.ok()) return;
                    for (const auto& [path, own] : details.value())
                        Q_EMIT details_changed(path, own);
                }};
    });
}

void BookKeeper::edit_unasked(std::function<std::optional<base::Error>(BookDesk&)> work) {
    edit_plainly([work = std::move(work)](BookDesk& desk) { return desk.read_only() ? std::nullopt : work(desk); });
}

void BookKeeper::put_track(const track::TrackRecord& record, const std::optional<book::KeptLine>& line) {
    edit_unasked([record, line](BookDesk& desk) { return desk.put_track(record, line); });
}

void BookKeeper::put_missing_line(const std::string& track, const book::KeptLine& line) {
    edit_unasked([track, line](BookDesk& desk) { return desk.put_missing_line(track, line); });
}

void BookKeeper::put_figures(const QString& path, const std::vector<book::KeptFigure>& figures) {
    edit_unasked([path, figures](BookDesk& desk) { return desk.put_figures(path, figures); });
}

void BookKeeper::rename(const Renaming& wanted) {
    edit_names([wanted](BookDesk& desk) { return desk.rename(wanted); });
}

void BookKeeper::undo_rename(int number) {
    edit_names([number](BookDesk& desk) { return desk.undo_rename(number); });
}

void BookKeeper::forget_track(int number, const std::string& name) {
    edit([this, number, name](BookDesk& desk) -> Done {
        const auto problem = desk.forget_track(number, name);
        return {problem, [this, tell = told(*this, problem)] {
                    tell();
                    Q_EMIT tracks_changed();
                }};
    });
}

void BookKeeper::bring_back_track(int number, const std::string& name) {
    edit([this, number, name](BookDesk& desk) -> Done {
        const auto problem = desk.bring_back_track(number, name);
        return {problem, [this, tell = told(*this, problem)] {
                    tell();
                    Q_EMIT tracks_changed();
                }};
    });
}

void BookKeeper::put_my_car(const std::optional<car::Names>& mine) {
    edit_names([mine](BookDesk& desk) { return desk.put_my_car(mine); });
}

void BookKeeper::find_my_car() {
    edit([this](BookDesk& desk) -> Done {
        return {{}, [this, mine = desk.my_car()] { tell(mine, &BookKeeper::my_car_found); }};
    });
}

void BookKeeper::put_start(book::SessionId id, std::optional<double> start_unix_s) {
    edit_names([id, start_unix_s](BookDesk& desk) { return book::change_start(*desk.book(), id, start_unix_s); });
}

void BookKeeper::remove_session(book::SessionId id) {
    edit_plainly([id](BookDesk& desk) { return book::remove_session(*desk.book(), id); });
}

void BookKeeper::restore_session(book::SessionId id) {
    edit_plainly([id](BookDesk& desk) { return book::restore_session(*desk.book(), id); });
}

void BookKeeper::take_pairing(int number, book::PairingId id) {
    edit_plainly([number, id](BookDesk& desk) { return desk.take_pairing(number, id); });
}

void BookKeeper::bring_back_pairing(int number) {
    edit_plainly([number](BookDesk& desk) { return desk.bring_back_pairing(number); });
}

void BookKeeper::open_again() {
    usable_ = true;
    edit([this](BookDesk&) { return Done{{}, [this] { Q_EMIT opened_again(); }}; });
}

void BookKeeper::find_removed() {
    ask([this](BookDesk& desk) -> Answer {
        return [this, removed = book::removed_sessions(*desk.book())] { tell(removed, &BookKeeper::removed_found); };
    });
}

void BookKeeper::find_season(models::SeasonOf of, const QString& name) {
    const int number = ++*newest_season_;
    ask([this, of, name = name.toStdString(), number, newest = newest_season_](BookDesk& desk) -> Answer {
        if (*newest != number) return {};
        auto season = of == models::SeasonOf::track ? book::season_of_track(*desk.book(), name)
                                                    : book::season_of_car(*desk.book(), name);
        return [this, number, newest, season = std::move(season)] {
            if (*newest == number) tell(season, &BookKeeper::season_found);
        };
    });
}

void BookKeeper::find_names() {
    ask([this](BookDesk& desk) -> Answer {
        return [this, names = book::names(*desk.book())] { tell(names, &BookKeeper::names_found); };
    });
}

void BookKeeper::find_pairings() {
    ask([this](BookDesk& desk) -> Answer {
        return [this, pairings = book::pairing_list(*desk.book())] { tell(pairings, &BookKeeper::pairings_found); };
    });
}

} // namespace lapwright::bridge
