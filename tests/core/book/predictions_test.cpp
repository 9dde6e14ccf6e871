// SPDX-License-Identifier: GPL-3.0-or-later
// Predictions stay as they were said, are kept once, go and come with their sessions, and two books of them are one
// whichever is put into which.
#include "core/book/predictions.h"

#include "core/book/book_content.h"
#include "core/book/table.h"

#include <cmath>
#include <random>

using namespace lapwright;
using namespace lapwright::book;

namespace {

constexpr double before_s = 1.7e9;

Prediction drawn(SessionId session, std::mt19937& draw) {
    std::uniform_real_distribution<double> value(-1.0, 1.0);
    Prediction p;
    p.session = p.there = session;
    p.source = draw() % 2 == 0 ? PredictedBy::wing : PredictedBy::what_if;
    p.asked = {value(draw), value(draw),     value(draw),       value(draw),
               value(draw), draw() % 2 == 0, 1e4 * value(draw), 50.0 * value(draw)};
    p.expected = wing(static_cast<int>(draw() % 9));
    if (draw() % 2 == 0) p.lap_s = 90.0 + value(draw);
    const double change = value(draw);
    p.change = {change, change - 0.1, change + 0.2, {}};
    p.program = "0.1.0";
    p.kept_unix_s = before_s + static_cast<double>(draw() % 1000);
    return p;
}

class Predictions : public testing::Test {
  protected:
    [[nodiscard]] std::vector<KeptPrediction> now() { return predictions(own).value(); }
    std::string keep(const Prediction& p) {
        const auto kept = keep_prediction(own, p);
        EXPECT_TRUE(kept.ok());
        return kept ? *kept : "";
    }

    std::mt19937 draw{11};
    const Folder folder;
    Book own = open_book(folder.file("book"));
    SessionId a = add_named(own, "a");
    SessionId b = add_named(own, "b");
};

TEST_F(Predictions, ComeBackAsTheyWereSaid) {
    for (int i = 0; i < 30; ++i) {
        const Prediction p = drawn(i % 2 == 0 ? a : b, draw);
        const std::string uid = keep(p);
        const auto all = now();
        const auto found =
            std::ranges::find_if(all, [&](const KeptPrediction& one) { return one.prediction.uid == uid; });
        ASSERT_NE(found, all.end());
        const Prediction& back = found->prediction;
        EXPECT_EQ(back.asked, p.asked);
        EXPECT_EQ(back.source, p.source);
        EXPECT_EQ(back.session, p.session);
        EXPECT_EQ(back.lap_s, p.lap_s);
        EXPECT_EQ(back.change.value, p.change.value);
        EXPECT_EQ(back.change.low, p.change.low);
        EXPECT_EQ(back.change.high, p.change.high);
        EXPECT_EQ(back.kept_unix_s, p.kept_unix_s);
        EXPECT_EQ(back.program, p.program);
        EXPECT_EQ(back.expected.tyre, p.expected.tyre);
        EXPECT_EQ(back.expected.items.front().value, p.expected.items.front().value);
        EXPECT_FALSE(back.observed);
        EXPECT_EQ(found->whose.id, p.session);
    }
    EXPECT_EQ(read_table(own, "predictions")->rows.size(), 30U);
    EXPECT_TRUE(own.check()->whole());
}

// What was said first counts: nobody keeps a better one afterwards in its place.
TEST_F(Predictions, AreKeptOnce) {
    Prediction p = drawn(a, draw);
    keep(p);
    p.change.value += 0.1;
    p.expected = wing(1);
    const auto again = keep_prediction(own, p);
    ASSERT_FALSE(again.ok());
    EXPECT_EQ(again.error().code, base::ErrorCode::cannot_be_computed);
    EXPECT_EQ(now().size(), 1U);
    p.session = b;
    keep(p);
    p.there = b;
    keep(p);
    p.asked.mass_kg += 1.0;
    p.change = base::untold("no drag");
    EXPECT_FALSE(keep_prediction(own, p).ok());
    p.change = {std::nan(""), 0.0, 0.0, {}};
    EXPECT_FALSE(keep_prediction(own, p).ok());
    EXPECT_EQ(now().size(), 3U);
}

TEST_F(Predictions, AreTakenBackAndPutBack) {
    Prediction p = drawn(a, draw);
    p.uid = keep(p);
    ASSERT_TRUE(take_back_prediction(own, p.uid));
    EXPECT_TRUE(now().empty());
    ASSERT_TRUE(take_back_prediction(own, p.uid));
    EXPECT_EQ(keep(p), p.uid);
    EXPECT_EQ(now().size(), 1U);
    // It lives in a book that is united with one that saw it go.
    ASSERT_TRUE(export_book(own, folder.file("out")));
    merge_well(own, folder.file("out"));
    EXPECT_EQ(now().size(), 1U);
}

TEST_F(Predictions, RememberWhatWasDrivenAndObserved) {
    const std::string uid = keep(drawn(a, draw));
    ASSERT_TRUE(put_observed(own, uid, base::Estimate{-0.2, -0.3, -0.1, {}}));
    EXPECT_EQ(now()[0].prediction.observed->low, -0.3);
    ASSERT_TRUE(say_driven(own, uid, {source_named("b").checksum}));
    EXPECT_FALSE(now()[0].prediction.observed) << "it was of other sessions";
    EXPECT_EQ(now()[0].prediction.driven, std::vector{source_named("b").checksum});
    EXPECT_EQ(prediction(own, now()[0].id)->prediction.uid, uid);
    EXPECT_FALSE(prediction(own, PredictionId{99}).ok());
    EXPECT_FALSE(say_driven(own, "of another book", {}).ok());
    ASSERT_TRUE(say_driven(own, uid, {source_named("c").checksum}));
    EXPECT_TRUE(now()[0].prediction.driven.empty()) << "a session that this book does not have";
    EXPECT_FALSE(put_observed(own, "of another book", {}).ok());
}

TEST_F(Predictions, GoAndComeWithTheirSessions) {
    Prediction p = drawn(a, draw);
    p.there = b;
    keep(p);
    ASSERT_TRUE(remove_session(own, b));
    EXPECT_TRUE(now().empty());
    EXPECT_TRUE(read_table(own, "predictions")->rows.empty());
    ASSERT_TRUE(restore_session(own, b));
    EXPECT_EQ(now().size(), 1U);
    ASSERT_TRUE(remove_session(own, b));
    ASSERT_TRUE(forget_removed(own));
    EXPECT_EQ(own.database().one_whole("SELECT count(*) FROM prediction"), 0);
}

TEST_F(Predictions, OfAPartAreThoseOfItsSessions) {
    keep(drawn(a, draw));
    keep(drawn(b, draw));
    ASSERT_TRUE(export_sessions(own, std::vector{a}, folder.file("part")));
    Book part = open_book(folder.file("part"));
    ASSERT_EQ(predictions(part)->size(), 1U);
    EXPECT_EQ(predictions(part)->front().whose.source.checksum, source_named("a").checksum);
}

// Two people go on from one book, each as chance has it; either way round it becomes the same.
TEST_F(Predictions, OfTwoBooksAreTheSameEitherWayRound) {
    for (int round = 0; round < 12; ++round) {
        const std::string mine = folder.file("mine" + base::integer_text(round));
        const std::string theirs = folder.file("theirs" + base::integer_text(round));
        keep(drawn(a, draw));
        keep(drawn(b, draw));
        ASSERT_TRUE(export_book(own, mine));
        ASSERT_TRUE(export_book(own, theirs));
        for (const std::string& file : {mine, theirs}) {
            Book book = open_book(file);
            for (int i = 0; i < 6; ++i) {
                const auto all = predictions(book).value();
                const auto& some = all[draw() % all.size()].prediction;
                const double value = 0.01 * static_cast<double>(draw() % 100);
                switch (draw() % 4) {
                case 0:
                    ASSERT_TRUE(put_observed(book, some.uid, base::Estimate{value, value - 0.1, value + 0.1, {}}));
                    break;
                case 1:
                    ASSERT_TRUE(say_driven(book, some.uid, {all.front().whose.source.checksum}));
                    break;
                case 2:
                    ASSERT_TRUE(all.size() < 3 || take_back_prediction(book, some.uid));
                    break;
                default:
                    ASSERT_TRUE(keep_prediction(book, drawn(some.session, draw)).ok());
                }
            }
        }
        Book one = open_book(folder.file("one" + base::integer_text(round)));
        merge_well(one, mine);
        merge_well(one, theirs);
        Book other = open_book(folder.file("other" + base::integer_text(round)));
        merge_well(other, theirs);
        merge_well(other, mine);
        expect_same_content(one, other);
        EXPECT_FALSE(predictions(one)->empty());
        merge_well(one, theirs);
        expect_same_content(one, other);
    }
}

// As the last release made it, without the table.
TEST_F(Predictions, FindRoomInAnOlderBook) {
    const std::string path = folder.file("old");
    {
        const auto steps = known_migrations();
        auto old = Book::open(path, {.migrations = steps.first(11)});
        ASSERT_TRUE(old.ok());
        Book book = std::move(old).value();
        EXPECT_EQ(book.database().one_whole("SELECT count(*) FROM sqlite_schema WHERE name LIKE 'prediction%'"), 0);
        static_cast<void>(add_named(book, "a"));
    }
    Book book = open_book(path);
    EXPECT_TRUE(predictions(book)->empty());
    EXPECT_TRUE(keep_prediction(book, drawn(SessionId{1}, draw)).ok());
    EXPECT_EQ(predictions(book)->size(), 1U);
    EXPECT_TRUE(book.check()->whole());
}

} // namespace
