// SPDX-License-Identifier: GPL-3.0-or-later
// Books of several people made one: whatever they did, and in whatever order their books are put together, the outcome
// is the same book, and nothing that was said is lost.
#include "core/book/book_content.h"
#include "core/book/book_fixture.h"
#include "core/book/conflicts.h"
#include "core/book/corners.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/judged_by_hand.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/rename.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/tracks.h"
#include "core/book/videos.h"

#include <gtest/gtest.h>

#include <array>
#include <utility>

namespace lapwright::book {
namespace {

track::TrackRecord record_of(const std::string& name, double heading_rad) {
    track::TrackRecord record;
    record.name = name;
    record.gate = {{0.95, 0.04, 12.0}, heading_rad, 18.0};
    return record;
}

KeptLine short_line(double step_m) {
    KeptLine kept{{{0.95, 0.04, 12.0}, true}, {}};
    kept.line.step_m = step_m;
    kept.line.length_m = 2.0 * step_m;
    kept.line.position_m = {{0.0, 0.0}, {step_m, 0.0}};
    kept.line.tangent = {{1.0, 0.0}, {1.0, 0.0}};
    kept.line.curvature_per_m = {0.0, 0.001};
    return kept;
}

constexpr std::array drivers{"Wren Alder", "WREN ALDER", "W. Alder", "Åsa Lönn", ""};
constexpr std::array cars{"Plover", "Dunlin", "plover", ""};
constexpr std::array tracks_named{"Ternbank", "Gull Head", "TERNBANK", ""};

// One person with a book, who does anything at all.
class Person {
  public:
    Person(const std::string& path, std::uint64_t seed) : book_(open_book(path)), engine_(seed) {}

    Book& book() { return book_; }

    void do_something() {
        const std::array doings{&Person::add,     &Person::add,       &Person::tell,         &Person::tell,
                                &Person::tell,    &Person::date,      &Person::rename_one,   &Person::note,
                                &Person::note,    &Person::edit_note, &Person::unnote,       &Person::pair,
                                &Person::pair,    &Person::unpair,    &Person::note_pairing, &Person::track,
                                &Person::untrack, &Person::figures,   &Person::laps,         &Person::judge,
                                &Person::remove,  &Person::restore,   &Person::read_again,   &Person::forget,
                                &Person::settle,  &Person::video,     &Person::video,        &Person::corner};
        (this->*doings[draw(doings.size())])();
    }

  private:
    std::size_t draw(std::size_t count) { return engine_() % count; }
    const char* any(auto& names) { return names[draw(names.size())]; }

    // Not an outcome, which may be a refusal: nobody looks whether what he wants can be done.
    void tried(const auto& result) { static_cast<void>(result.ok()); }

    std::optional<SessionId> session() {
        const auto all = search(book_);
        return all->empty() ? std::nullopt : std::optional(all->at(draw(all->size())).id);
    }
    std::optional<Note> known_note() {
        const auto id = session();
        if (!id) return std::nullopt;
        const auto notes = notes_of_session(book_, *id);
        return notes->empty() ? std::nullopt : std::optional(notes->at(draw(notes->size())));
    }

    void add() {
        const std::uint64_t number = 1 + draw(4);
        const auto recording = small_recording(number, 12);
        SessionDetails details = details_of(recording);
        if (draw(2) == 0) details.driver = any(drivers);
        const Source source = source_named("run-" + base::integer_text(static_cast<std::int64_t>(number)));
        tried(add_session(book_, source, recording, details, some_laps(90.0 + static_cast<double>(draw(2)))));
    }
    void tell() {
        const auto id = session();
        if (!id) return;
        SessionDetails details = *read_details(book_, *id);
        switch (draw(5)) {
        case 0:
            details.driver = any(drivers);
            break;
        case 1:
            details.car = any(cars);
            break;
        case 2:
            details.track = any(tracks_named);
            break;
        case 3:
            details.conditions = draw(3) == 0 ? "" : "dry " + base::integer_text(static_cast<std::int64_t>(draw(9)));
            break;
        default:
            details.setup = draw(4) == 0 ? car::SetupSheet{} : wing(static_cast<int>(draw(5)));
        }
        tried(change_details(book_, *id, details));
    }
    void date() {
        if (const auto id = session()) tried(change_start(book_, *id, 1.7e9 + 0.125 * static_cast<double>(draw(1000))));
    }
    void rename_one() {
        switch (draw(3)) {
        case 0:
            tried(rename(book_, NameTable::driver, any(drivers), any(drivers), Unite::yes));
            break;
        case 1:
            tried(rename(book_, NameTable::car, any(cars), any(cars), Unite::yes));
            break;
        default:
            tried(rename(book_, NameTable::track, any(tracks_named), any(tracks_named), Unite::yes));
        }
    }
    void note() {
        if (const auto id = session())
            tried(put_note(book_, {"",
                                   {.session = *id, .lap = 1},
                                   "n" + base::integer_text(static_cast<std::int64_t>(engine_() % 1000)),
                                   0.0}));
    }
    void edit_note() {
        auto known = known_note();
        if (!known) return;
        known->text += "+" + base::integer_text(static_cast<std::int64_t>(draw(10)));
        known->changed_unix_s = draw(2) == 0 ? 0.0 : 10.0; // as a clock that is wrong
        tried(put_note(book_, *known));
    }
    void unnote() {
        if (const auto known = known_note()) tried(remove_note(book_, known->uid));
    }
    void pair() {
        const auto a = session();
        const auto b = session();
        if (a && b)
            tried(put_pairing(book_, {*a, 1 + static_cast<int>(draw(2)), *b, 1, "",
                                      "A ahead " + base::integer_text(static_cast<std::int64_t>(draw(99))), 0.0}));
    }
    std::optional<PairingId> pairing() {
        const auto all = pairings(book_);
        return all->empty() ? std::nullopt : std::optional(all->at(draw(all->size())).id);
    }
    void unpair() {
        if (const auto id = pairing()) tried(remove_pairing(book_, *id));
    }
    void note_pairing() {
        if (const auto id = pairing()) tried(put_note(book_, {"", {.pairing = *id, .segment = "Sweep"}, "later", 0.0}));
    }
    void track() {
        const std::string name = any(tracks_named);
        if (name.empty()) return;
        const auto record = record_of(name, static_cast<double>(draw(3)));
        if (draw(2) == 0)
            tried(put_track(book_, record, short_line(1.0 + static_cast<double>(draw(3)))));
        else
            tried(change_track(book_, record));
    }
    void untrack() { tried(forget_track(book_, any(tracks_named))); }
    void figures() {
        if (const auto id = session())
            tried(put_figures(book_, *id, {{"grip", 1.0 + 0.01 * static_cast<double>(draw(9)), 0.9, 1.3, "data"}}));
    }
    void laps() {
        if (const auto id = session()) tried(change_laps(book_, *id, some_laps(80.0 + static_cast<double>(draw(5)))));
    }
    void judge() {
        const auto id = session();
        if (!id) return;
        const auto laps = *read_laps(book_, *id);
        auto words = *judged_by_hand(book_, *id);
        words = lap::with_word(words, laps[1 + draw(3)], lap::JudgedByHand{0.0, draw(2) == 0, "traffic"});
        tried(judge_by_hand(book_, *id, words, lap::judged_by_hand(laps, words)));
    }
    // A few videos, each person's in a folder of their own, in step or not, or taken away.
    void video() {
        const std::uint64_t number = 1 + draw(4);
        const Checksum session = source_named("run-" + base::integer_text(static_cast<std::int64_t>(number))).checksum;
        if (draw(6) == 0) return tried(put_video(book_, session, std::nullopt));
        KeptVideo kept;
        for (std::size_t part = draw(2) + 1; part > 0; --part) {
            const std::uint64_t which = draw(3);
            const std::string name = "video-" + base::integer_text(static_cast<std::int64_t>(which)) + ".mp4";
            kept.files.push_back({book_.path() + "/" + name, 1000 + which, sha256_of(name)});
        }
        if (draw(2) == 0)
            kept.step = KeptStep{static_cast<double>(draw(9)), 0.0, 9.0, 1e-5, 300.0, "sound_and_engine_speed"};
        tried(put_video(book_, session, kept));
    }
    void corner() {
        const auto id = session();
        if (!id) return;
        KeptCorner one;
        one.lap = static_cast<int>(1 + draw(2));
        one.segment = "Sweep";
        one.entry_speed_mps = 30.0 + static_cast<double>(draw(5));
        tried(put_corners(book_, *id, {one}));
    }
    void remove() {
        if (const auto id = session()) tried(remove_session(book_, *id));
    }
    void restore() {
        const auto removed = removed_sessions(book_);
        if (!removed->empty()) tried(restore_session(book_, removed->front().id));
    }
    void read_again() {
        if (const auto id = session()) tried(replace_recording(book_, *id, small_recording(1 + draw(3), 15)));
    }
    void forget() {
        if (draw(3) == 0) tried(forget_removed(book_));
    }
    void settle() {
        const auto all = conflicts(book_);
        ASSERT_TRUE(all.ok());
        if (all->empty()) return;
        EXPECT_TRUE(settle_conflict(book_, all->front().values.back().key).ok());
    }

    Book book_;
    std::mt19937_64 engine_;
};

// Each session, each value that was in use in a book and each note's text is in the united book: in use, or beside it.
std::vector<std::string> in_use(Book& book) {
    std::vector<std::string> all;
    Rows rows(
        book.database(),
        "SELECT 'session ' || lower(hex(checksum)) || '|' || field || '|' || lower(value) FROM session JOIN "
        "session_field USING (id) WHERE value <> '' UNION SELECT 'note ' || uid || '|text|' || lower(text) FROM note",
        {});
    while (rows.next())
        all.push_back(rows.text(0));
    return all;
}

void expect_kept(Book& united, const std::vector<std::string>& values) {
    for (const std::string& value : values) {
        EXPECT_EQ(
            united.database().one_whole(
                "SELECT count(*) > 0 FROM said WHERE subject || '|' || field || '|' || lower(value) = ?", {value}),
            1)
            << value;
        if (value.starts_with("session ")) {
            EXPECT_EQ(
                united.database().one_whole("SELECT count(*) FROM session WHERE 'session ' || lower(hex(checksum)) "
                                            "= ?",
                                            {value.substr(0, value.find('|'))}),
                1);
        }
    }
}

void live_and_unite(std::uint64_t seed) {
    SCOPED_TRACE("history " + base::integer_text(static_cast<std::int64_t>(seed)));
    const Folder folder;
    std::mt19937_64 engine(seed);
    std::vector<Person> people;
    for (const char* const name : {"a", "b", "c"})
        people.emplace_back(folder.file(name), engine());
    for (int i = 0; i < 36; ++i) {
        const std::size_t who = engine() % people.size();
        people[who].do_something();
        if (const std::size_t other = engine() % 12; other < people.size() && other != who)
            merge_well(people[who].book(), people[other].book().path());
    }
    std::vector<std::string> values;
    for (Person& person : people) {
        const auto of_one = in_use(person.book());
        values.insert(values.end(), of_one.begin(), of_one.end());
    }
    Book forwards = open_book(folder.file("forwards"));
    for (const char* const name : {"a", "b", "c", "b"})
        merge_well(forwards, folder.file(name));
    expect_kept(forwards, values);
    // c with b, that into a, against a with b with c: other groups, other order, other ids.
    merge_well(people[2].book(), folder.file("b"));
    merge_well(people[0].book(), folder.file("c"));
    expect_same_content(forwards, people[0].book());
    EXPECT_TRUE(people[0].book().check()->whole());
}

// Two hundred histories in four tests, so that they run side by side.
class Histories : public testing::TestWithParam<std::uint64_t> {};

TEST_P(Histories, EndInTheSameBookInAnyOrderAndLoseNothing) {
    for (std::uint64_t seed = 50 * GetParam(); seed < 50 * (GetParam() + 1) && !HasFailure(); ++seed)
        live_and_unite(seed);
}

INSTANTIATE_TEST_SUITE_P(FiftyEach, Histories, testing::Values(0U, 1U, 2U, 3U));

} // namespace
} // namespace lapwright::book
