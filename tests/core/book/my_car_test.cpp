// SPDX-License-Identifier: GPL-3.0-or-later
// The person's own car: kept, renamed with its driver and car, and no friend's business.
#include "core/book/my_car.h"

#include "core/book/book_fixture.h"
#include "core/book/exchange.h"
#include "core/book/rename.h"

#include <gtest/gtest.h>

namespace lapwright::book {
namespace {

using Mine = std::optional<car::Names>;

TEST(MyCar, IsKeptUntilAnotherIsNamedOrNone) {
    const Folder folder;
    {
        Book book = open_book(folder.file("book"));
        EXPECT_EQ(my_car(book).value(), Mine());
        ASSERT_TRUE(put_my_car(book, car::Names{" Wren Alder", "Plo\nver "}));
    }
    Book book = open_book(folder.file("book"));
    EXPECT_EQ(my_car(book).value(), Mine(car::Names{"Wren Alder", "Plo ver"}));
    ASSERT_TRUE(put_my_car(book, car::Names{"", "Dunlin"}));
    EXPECT_EQ(my_car(book).value(), Mine(car::Names{"", "Dunlin"}));
    ASSERT_TRUE(put_my_car(book, car::Names{" ", ""}));
    EXPECT_EQ(my_car(book).value(), Mine()) << "two empty names are none";
    ASSERT_TRUE(put_my_car(book, std::nullopt));
    EXPECT_TRUE(book.check()->whole());
}

TEST(MyCar, FollowsARenamingAndItsUndoing) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    add_named(book, "first", {"Wren Alder", "Plover", "Ternbank", 1.77e9, "dry", {}});
    add_named(book, "second", {"W. Alder", "Dunlin", "Ternbank", 1.78e9, "dry", {}});
    ASSERT_TRUE(put_my_car(book, car::Names{"wren alder", "plover"}));
    for (const auto& [table, from, to] :
         {std::tuple(NameTable::car, "Plover", "Plover II"), std::tuple(NameTable::driver, "Wren Alder", "W. Alder")}) {
        const auto renamed = rename(book, table, from, to, Unite::yes);
        ASSERT_TRUE(renamed.ok());
        const auto mine = my_car(book).value();
        EXPECT_EQ(table == NameTable::car ? mine->car : mine->driver, to);
        ASSERT_TRUE(undo_rename(book, *renamed));
        EXPECT_EQ(my_car(book).value(),
                  Mine(car::Names{table == NameTable::car ? "wren alder" : "Wren Alder", "Plover"}));
    }
    // One that was not mine does not become so when it gets the name of mine, nor is mine lost when it is taken back.
    const auto other = rename(book, NameTable::car, "Dunlin", "Plover", Unite::yes);
    ASSERT_TRUE(other.ok());
    ASSERT_TRUE(undo_rename(book, *other));
    EXPECT_EQ(my_car(book).value()->car, "Plover");
}

TEST(MyCar, IsNeitherMergedNorExported) {
    const Folder folder;
    Book friends = open_book(folder.file("friends"));
    add_named(friends, "first", {"Odran Pell", "Dunlin", "Ternbank", 1.77e9, "dry", {}});
    ASSERT_TRUE(put_my_car(friends, car::Names{"Odran Pell", "Dunlin"}));
    ASSERT_TRUE(export_book(friends, folder.file("sent")));
    Book sent = open_book(folder.file("sent"));
    EXPECT_EQ(my_car(sent).value(), Mine());
    Book book = open_book(folder.file("book"));
    ASSERT_TRUE(merge_from(book, folder.file("friends")).ok());
    EXPECT_EQ(my_car(book).value(), Mine());
    ASSERT_TRUE(put_my_car(book, car::Names{"Wren Alder", "Plover"}));
    ASSERT_TRUE(merge_from(book, folder.file("friends")).ok());
    EXPECT_EQ(my_car(book).value(), Mine(car::Names{"Wren Alder", "Plover"}));
}

// What is renamed in the book is renamed in the setup sheet too, which names driver and car before the file does.
TEST(MyCar, ARenamingCountsForTheNamesOfASetupSheet) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    car::SetupSheet sheet;
    sheet.driver = "Wren Alder";
    const SessionId id = add_named(book, "first", {"Wren Alder", "Plover", "Ternbank", 1.77e9, "dry", sheet});
    ASSERT_TRUE(rename(book, NameTable::driver, "Wren Alder", "W. Alder", Unite::no).ok());
    EXPECT_EQ(read_details(book, id)->setup.driver, "W. Alder");
    EXPECT_EQ(read_details(book, id)->setup.car, "") << "the sheet named no car";
}

} // namespace
} // namespace lapwright::book
