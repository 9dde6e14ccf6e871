// SPDX-License-Identifier: GPL-3.0-or-later
// Laps judged by hand: in the open session, in the book, in the comparison, and there the next time.
#include "core/analysis/run.h"
#include "core/analysis/with_words.h"
#include "core/book/book_fixture.h"
#include "core/book/exchange.h"
#include "core/book/judged_by_hand.h"
#include "core/book/search.h"
#include "core/workspace/book_connection.h"
#include "core/workspace/invented.h"
#include "core/workspace/lap_scale.h"
#include "core/workspace/open_sessions.h"
#include "core/workspace/reading.h"

#include <filesystem>
#include <gmock/gmock.h>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

const Origin one = "/data/one.csv";
const std::string sample = TEST_SOURCE_DIR "/../sample-sessions/plover-saturday-2.csv";

std::vector<lap::JudgedByHand> aside(const analysis::Session& session, int lap) {
    return lap::with_word(session.by_hand, *session.lap(lap), lap::JudgedByHand{0.0, false, "traffic"});
}

} // namespace

TEST(Judging, TheFastestThatNobodyChoseGivesWayAndComesBack) {
    OpenSessions open;
    open.add(one, invented("one.csv", "first"));
    open.add(Origin("/data/two.csv"), invented("two.csv", "second"));
    open.pick_defaults();
    const SessionKey key = key_of_bytes("first");
    open.pick(Side::b, {key_of_bytes("second"), 5});
    ASSERT_EQ(open.picks().a->lap, fastest_lap);
    open.judge(key, aside(*open.session(key), fastest_lap));
    EXPECT_EQ(open.picks().a->lap, open.session(key)->fastest()->number);
    EXPECT_NE(open.picks().a->lap, fastest_lap);
    EXPECT_EQ(open.picks().b->lap, 5) << "a lap that was chosen stays";
    open.add(one, invented("one.csv", "first"));
    EXPECT_FALSE(open.session(key)->lap(fastest_lap)->clean) << "read again";
    open.judge(key, {});
    EXPECT_EQ(open.picks().a->lap, fastest_lap);
    EXPECT_TRUE(open.session(key)->lap(fastest_lap)->clean);
}

TEST(Judging, IsInTheBookAndThereWhenTheSessionIsReadAgain) {
    const book::Folder folder;
    ReadingOptions options;
    options.book_file = folder.file("book.sqlite");
    BookConnection book(options.book_file);
    ASSERT_TRUE(book.open());
    const auto read = read_session(sample, options);
    ASSERT_TRUE(read);
    ASSERT_TRUE(book.keep({sample, *read}));
    const int fastest = (*read)->fastest()->number;
    const auto judged = analysis::with_words(*read, aside(**read, fastest));
    ASSERT_TRUE(book.judge_laps(*judged));
    const auto summary = book::search(book.book())->front();
    EXPECT_GT(*summary.best_clean_s, (*read)->fastest()->time_s());
    for (const Origin& origin : {Origin(sample), Origin(summary.id)}) {
        const auto again = read_session(origin, options);
        ASSERT_TRUE(again);
        EXPECT_EQ((*again)->lap(fastest)->why_not_clean, "set aside by hand: traffic");
        EXPECT_NE((*again)->fastest()->number, fastest);
        ASSERT_TRUE(book.keep({origin, *again}));
        EXPECT_EQ(book::search(book.book())->front().clean_laps, summary.clean_laps) << "as the lists count";
    }
    const auto friends = folder.file("friend.sqlite");
    ASSERT_TRUE(book::export_book(book.book(), friends));
    auto other = book::open_book(folder.file("other.sqlite"));
    ASSERT_TRUE(book::merge_from(other, friends));
    EXPECT_EQ(*book::judged_by_hand(other, book::search(other)->front().id), judged->by_hand);
}

// What is compared of its own accord is another lap, and the spread of the session's laps is without it.
TEST(Judging, CountsInAComparison) {
    const auto session = read_session(sample, {});
    ASSERT_TRUE(session);
    const auto plain = analysis::compare(*session, *session);
    ASSERT_TRUE(plain);
    const int fastest = (*plain)->a.lap.number;
    const auto judged = analysis::with_words(*session, aside(**session, fastest));
    const auto compared = analysis::compare(judged, judged);
    ASSERT_TRUE(compared);
    EXPECT_NE((*compared)->a.lap.number, fastest);
    EXPECT_EQ((*compared)->a.clean_laps.size() + 1, (*plain)->a.clean_laps.size());
}

TEST(Judging, OneScaleForLapsOfOneTrackAndEachAnotherTracksOwn) {
    OpenSessions open;
    open.add(one, invented("one.csv", "first"));
    open.add(Origin("/data/two.csv"), invented("two.csv", "second"));
    const LapScale scale = lap_scale(open.entries());
    EXPECT_DOUBLE_EQ(scale.fastest_s.at(key_of_bytes("first")), scale.fastest_s.at(key_of_bytes("second")));
    EXPECT_NEAR(scale.full_s, 0.5, 1e-9) << "clean laps lie within 0.4 s";
    auto longer = std::make_shared<analysis::Session>(*invented("three.csv", "third"));
    for (lap::Lap& lap : longer->laps)
        lap.end_s = lap.start_s + 2.0 * lap.time_s();
    open.add(Origin("/data/three.csv"), longer);
    EXPECT_DOUBLE_EQ(lap_scale(open.entries()).fastest_s.at(key_of_bytes("third")), longer->fastest()->time_s());
}

TEST(Judging, LapsByTimeAreTheFlyingOnesThenTheOthers) {
    const auto session = invented("one.csv", "first");
    std::vector<int> numbers;
    for (const lap::Lap* lap : in_order(*session, LapOrder::time))
        numbers.push_back(lap->number);
    EXPECT_THAT(numbers, testing::ElementsAre(4, 3, 5, 1, 2, 0, 6));
    EXPECT_EQ(in_order(*session, LapOrder::driven).front()->number, 0);
}
