// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of pairings and sessions come back as they were put, go and come with what they show, and whatever else
// stands in their place is no picture.
#include "core/book/pictures.h"

#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/pairings.h"

#include <limits>

using namespace lapwright;
using namespace lapwright::book;

namespace {

class PicturesOf : public testing::Test {
  protected:
    PicturesOf() {
        a = add_named(own, "a");
        b = add_named(own, "b");
        pairing = put_pairing(own, {a, 1, b, 2, "", "A ahead", 0.0}).value();
    }
    [[nodiscard]] Pictures now() { return pictures(own, {pairing}, {a, b}).value(); }

    const Folder folder;
    Book own = open_book(folder.file("book"));
    SessionId a{};
    SessionId b{};
    PairingId pairing{};
    const ComparedLaps laps{source_named("a").checksum, 1, source_named("b").checksum, 2};
};

} // namespace

TEST_F(PicturesOf, DrawnAtRandomComeBackAsTheyWerePut) {
    EXPECT_TRUE(now().gaps.empty());
    EXPECT_FALSE(*has_outline(own, a));
    std::mt19937 draw(7);
    std::uniform_real_distribution<float> value(-1e4F, 1e4F);
    for (int i = 0; i < 30; ++i) {
        GapCurve gaps_s(2 + draw() % 200);
        for (float& gap_s : gaps_s)
            gap_s = value(draw);
        Outline places_m(3 + draw() % 200);
        for (auto& [east_m, north_m] : places_m)
            east_m = value(draw), north_m = value(draw);
        ASSERT_TRUE(put_gap_curve(own, laps, gaps_s));
        ASSERT_TRUE(put_outline(own, a, places_m));
        EXPECT_EQ(now().gaps.at(pairing), gaps_s);
        EXPECT_EQ(now().outlines.at(a), places_m);
    }
    EXPECT_FALSE(now().outlines.contains(b));
    EXPECT_TRUE(own.check()->whole());
}

TEST_F(PicturesOf, OfSessionsThatAreNotThereAreNotPut) {
    EXPECT_TRUE(put_gap_curve(own, {source_named("c").checksum, 1, source_named("b").checksum, 2}, {0.0F, 1.0F}));
    EXPECT_EQ(own.database().one_whole("SELECT count(*) FROM gap_curve"), 0);
    EXPECT_FALSE(put_outline(own, SessionId{99}, {{0.0F, 0.0F}, {1.0F, 0.0F}, {0.0F, 1.0F}}));
}

TEST_F(PicturesOf, ComeBackWithAPairingAndGoWithAForgottenSession) {
    ASSERT_TRUE(put_gap_curve(own, laps, {0.0F, 0.5F}));
    ASSERT_TRUE(put_outline(own, a, {{0.0F, 0.0F}, {1.0F, 0.0F}, {0.0F, 1.0F}}));
    const auto taken = take_pairing(own, pairing);
    ASSERT_TRUE(taken);
    EXPECT_TRUE(now().gaps.empty());
    pairing = bring_back_pairing(own, *taken).value();
    EXPECT_EQ(now().gaps.size(), 1U);
    ASSERT_TRUE(remove_session(own, a));
    ASSERT_TRUE(forget_removed(own));
    EXPECT_EQ(own.database().one_whole("SELECT (SELECT count(*) FROM gap_curve) + (SELECT count(*) FROM outline)"), 0);
}

TEST_F(PicturesOf, AreNoneWhereAnythingElseStands) {
    for (const char* bytes :
         {"x'01'", "x''", "x'0000C07F0000C07F0000C07F0000C07F0000C07F0000C07F'", "zeroblob(99996)", "'words'", "7"}) {
        own.database().run(std::string("INSERT OR REPLACE INTO outline VALUES (1, ") + bytes + ")");
        own.database().run(std::string("INSERT OR REPLACE INTO gap_curve VALUES (1, 1, 2, 2, ") + bytes + ")");
        ASSERT_TRUE(own.database().well());
        const auto found = pictures(own, {pairing}, {a});
        ASSERT_TRUE(found) << bytes;
        EXPECT_TRUE(found->gaps.empty() && found->outlines.empty()) << bytes;
    }
}

TEST_F(PicturesOf, TravelWithTheirBooksAndTheOrderDoesNotMatter) {
    Book theirs = open_book(folder.file("theirs"));
    const SessionId a_there = add_named(theirs, "a");
    const SessionId c_there = add_named(theirs, "c");
    ASSERT_TRUE(put_pairing(theirs, {a_there, 1, c_there, 2, "", "A ahead", 0.0}));
    const ComparedLaps with_c{source_named("a").checksum, 1, source_named("c").checksum, 2};
    ASSERT_TRUE(put_gap_curve(theirs, with_c, {0.0F, 0.25F}));
    ASSERT_TRUE(put_outline(theirs, a_there, {{0.0F, 0.0F}, {9.0F, 0.0F}, {0.0F, 9.0F}}));
    ASSERT_TRUE(put_outline(theirs, c_there, {{0.0F, 0.0F}, {5.0F, 0.0F}, {0.0F, 5.0F}}));
    ASSERT_TRUE(put_outline(own, a, {{0.0F, 0.0F}, {1.0F, 0.0F}, {0.0F, 1.0F}}));
    ASSERT_TRUE(put_gap_curve(own, laps, {0.0F, 0.5F}));
    const auto content = [](Book& book) {
        std::vector<std::string> rows;
        Rows outlines(book.database(),
                      "SELECT hex(checksum) || hex(places_m) FROM outline JOIN session ON id = session_id ORDER BY 1",
                      {});
        while (outlines.next())
            rows.push_back(outlines.text(0));
        Rows gaps(book.database(),
                  "SELECT hex(a.checksum) || hex(b.checksum) || lap_a || lap_b || hex(gaps_s) FROM gap_curve JOIN "
                  "session AS a ON a.id = session_a JOIN session AS b ON b.id = session_b ORDER BY 1",
                  {});
        while (gaps.next())
            rows.push_back(gaps.text(0));
        return rows;
    };
    Book copy_of_own = open_book(folder.file("copy of own"));
    ASSERT_TRUE(merge_from(copy_of_own, folder.file("book")));
    ASSERT_TRUE(merge_from(own, folder.file("theirs")));
    ASSERT_TRUE(merge_from(theirs, folder.file("copy of own")));
    EXPECT_EQ(content(own).size(), 4U) << "of a, which both have, one outline";
    EXPECT_EQ(content(own), content(theirs));
}
