// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/book_queue.h"

#include "core/book/known_files.h"
#include "core/video/open_media.h"
#include "core/video/video.h"
#include "ui/models/text.h"

#include <QMetaObject>
#include <filesystem>
#include <utility>

namespace lapwright::bridge {
namespace {

template <typename Value>
base::Result<void> outcome(const base::Result<Value>& result) {
    return result ? base::Result<void>() : result.error();
}

} // namespace

BookQueue::BookQueue(std::string file, QObject* parent)
    : QObject(parent), usable_(!file.empty()), edits_(file), questions_(file), season_questions_(file),
      edit_jobs_(*this, 1), question_jobs_(*this, 1), season_jobs_(*this, 1) {
    if (usable_) add([](Book&) { return Done{}; }); // what is wrong with it is told at once
}

BookQueue::~BookQueue() {
    edit_jobs_.finish();
}

void BookQueue::tell(Answer answer) {
    if (answer) QMetaObject::invokeMethod(this, std::move(answer), Qt::QueuedConnection);
}

bool BookQueue::open_for_edits() {
    if (const auto opened = edits_.open(); !opened) {
        tell([this, error = opened.error()] {
            if (std::exchange(usable_, false)) Q_EMIT unusable(error);
        });
        return false;
    }
    if (edits_.read_only() && !std::exchange(told_read_only_, true)) {
        tell([this] {
            read_only_ = true;
            Q_EMIT opened_read_only(models::text(edits_.file()));
        });
    }
    return true;
}

void BookQueue::add(Edit edit) {
    if (!usable_) return;
    edit_jobs_.add({}, [this, edit = std::move(edit)](const base::Progress&) -> Answer {
        if (!open_for_edits()) return {};
        waiting_.push_back(edit);
        take_up();
        return {};
    });
}

// In their order: what comes later may build on what waits.
void BookQueue::take_up() {
    while (!waiting_.empty()) {
        Done done = waiting_.front()(edits_);
        if (!done.result && !edits_.read_only() && book::may_succeed_later(done.result.error())) {
            told_waiting_ = true;
            tell([this, edits = static_cast<int>(waiting_.size()), reason = done.result.error()] {
                Q_EMIT waits(edits, reason);
            });
            return;
        }
        waiting_.pop_front();
        tell(std::move(done.answer));
    }
    if (std::exchange(told_waiting_, false)) tell([this] { Q_EMIT caught_up(); });
}

void BookQueue::try_again() {
    edit_jobs_.add({}, [this](const base::Progress&) -> Answer {
        take_up();
        return {};
    });
}

std::size_t BookQueue::finish() {
    edit_jobs_.finish();
    return waiting_.size();
}

void BookQueue::keep(const workspace::SessionToKeep& wanted) {
    add([this, wanted](Book& book) -> Done {
        const auto keep = [&]() -> base::Result<std::optional<workspace::KeptSession>> {
            if (book.read_only()) return book.look_up(wanted);
            auto kept = book.keep(wanted);
            if (!kept) return kept.error();
            return std::optional(std::move(kept).value());
        };
        auto kept = keep();
        const auto result = outcome(kept);
        return {result, [this, key = workspace::key_of(*wanted.session), kept = std::move(kept)] {
                    if (!kept) {
                        Q_EMIT refused(kept.error());
                    } else if (*kept) {
                        Q_EMIT session_kept(key, **kept);
                        Q_EMIT changed();
                    }
                }};
    });
}

void BookQueue::keep_pairing(const workspace::PairingToKeep& wanted) {
    add([this, wanted](Book& book) -> Done {
        if (book.read_only()) return {};
        auto note = book.keep_pairing(wanted);
        const auto result = outcome(note);
        return {result, [this, laps = wanted.laps, note = std::move(note)] {
                    if (note)
                        Q_EMIT pairing_kept(laps, models::text(*note));
                    else
                        Q_EMIT refused(note.error());
                }};
    });
}

void BookQueue::tell_edit(const base::Result<void>& result) {
    if (!result) Q_EMIT refused(result.error());
    Q_EMIT changed();
}

void BookQueue::put_note(const workspace::Note& note) {
    add([this, note](Book& book) -> Done {
        const auto result = book.put_note(note);
        return {result, [this, session = note.about.session, result] {
                    tell_edit(result);
                    if (!result) Q_EMIT note_refused(session);
                }};
    });
}

void BookQueue::edit(Work work) {
    add([this, work = std::move(work)](Book& book) -> Done {
        const auto result = work(book);
        return {result, [this, result] { tell_edit(result); }};
    });
}

void BookQueue::edit_names(Work work) {
    add([this, number = ++name_edits_, work = std::move(work)](Book& book) -> Done {
        const auto result = work(book);
        return {result, [this, number, result, details = book.details(), mine = book::my_car(book.book())] {
                    if (mine) Q_EMIT my_car_found(*mine);
                    tell_edit(result);
                    if (number != name_edits_) return; // names have changed since: they are not to go back
                    for (const auto& [key, own] : details)
                        Q_EMIT details_changed(key, own);
                }};
    });
}

void BookQueue::edit_tracks(Work work) {
    add([this, work = std::move(work)](Book& book) -> Done {
        const auto result = work(book);
        return {result, [this, result] {
                    tell_edit(result);
                    Q_EMIT tracks_changed();
                }};
    });
}

void BookQueue::edit_unasked(Work work) {
    edit([work = std::move(work)](Book& book) { return book.read_only() ? base::Result<void>() : work(book); });
}

void BookQueue::find_my_car() {
    add([this](Book& book) -> Done {
        return {{}, [this, mine = book::my_car(book.book())] { tell(mine, &BookQueue::my_car_found); }};
    });
}

void BookQueue::find_video(const workspace::SessionKey& session, const std::string& recording_file) {
    const auto tell_beside = [this, session, recording_file] {
        const std::string path = video::video_beside(recording_file);
        // What nobody asked for is not told to be impossible.
        if (!path.empty() && video::decoder_is_installed()) Q_EMIT video_found(session, {path}, {});
    };
    if (!usable_) tell(tell_beside);
    add([this, session, recording_file, tell_beside](Book& book) -> Done {
        const auto kept = book::video_of(book.book(), session.checksum);
        if (!kept) return {};
        if (!*kept) return {{}, tell_beside};
        const std::string folder = std::filesystem::path(recording_file).parent_path().string();
        auto paths = book::locate(**kept, folder.empty() ? std::vector<std::string>() : std::vector{folder});
        return {{}, [this, session, paths = std::move(paths), step = (*kept)->step] {
                    if (paths)
                        Q_EMIT video_found(session, *paths, step);
                    else
                        Q_EMIT video_missing(session, paths.error());
                }};
    });
}

void BookQueue::open_again() {
    usable_ = true;
    add([this](Book&) { return Done{{}, [this] { Q_EMIT opened_again(); }}; });
}

void BookQueue::find(const book::Filter& filter) {
    finding_.cancel();
    ask(finding_, [filter](book::Book& book) { return book::search(book, filter); }, &BookQueue::found);
}

void BookQueue::find_season(models::SeasonOf of, const QString& name) {
    finding_season_.cancel();
    if (of == models::SeasonOf::car_together) {
        find_car_season(name);
        return;
    }
    const auto season = [of, name = name.toStdString()](book::Book& book) {
        return of == models::SeasonOf::track ? book::season_of_track(book, name) : book::season_of_car(book, name);
    };
    ask(finding_season_, season, &BookQueue::season_found);
}

void BookQueue::find_car_season(const QString& car) {
    finding_season_.cancel();
    if (!usable_) return;
    season_jobs_.add(
        finding_season_,
        [this, car = car.toStdString()](const base::Progress& progress) -> Answer {
            if (!season_questions_.open()) return {};
            return [this, season = analysis::car_season(season_questions_.book(), car, progress)] {
                if (season)
                    Q_EMIT car_season_found(*season);
                else
                    Q_EMIT car_season_refused(season.error());
            };
        },
        [this](const QString& stage, double part) { Q_EMIT car_season_told(stage, part); });
}

void BookQueue::find_predictions() {
    holding_.cancel();
    if (!usable_) return;
    const auto as_kept = [](book::Book& book) -> base::Result<analysis::HeldPredictions> {
        auto kept = book::predictions(book);
        if (!kept) return kept.error();
        return analysis::held_as_kept(std::move(kept).value());
    };
    ask(holding_, as_kept, &BookQueue::predictions_found);
    season_jobs_.add(holding_, [this](const base::Progress& progress) -> Answer {
        if (!season_questions_.open()) return {};
        return [this, held = analysis::hold_predictions(season_questions_.book(), progress)] {
            tell(held, &BookQueue::predictions_held);
        };
    });
}

void BookQueue::find_files() {
    ask({}, book::known_files, &BookQueue::files_found);
}

void BookQueue::find_pictures(const std::vector<book::PairingId>& pairings,
                              const std::vector<book::SessionId>& sessions) {
    ask(
        {}, [pairings, sessions](book::Book& book) { return book::pictures(book, pairings, sessions); },
        &BookQueue::pictures_found);
}

void BookQueue::find_removed() {
    ask({}, book::removed_sessions, &BookQueue::removed_found);
}

void BookQueue::find_names() {
    ask({}, book::names, &BookQueue::names_found);
}

void BookQueue::find_pairings() {
    ask({}, book::pairing_list, &BookQueue::pairings_found);
}

} // namespace lapwright::bridge
