// SPDX-License-Identifier: GPL-3.0-or-later
// Damaged files: samples are right or said to be damaged, never wrong in silence; what can be read is saved, and the
// damaged file is kept as it was.
#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/notes.h"
#include "core/book/salvage.h"
#include "core/book/search.h"
#include "core/book/tracks.h"

#include <gtest/gtest.h>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

namespace lapwright::book {
namespace {

namespace fs = std::filesystem;

constexpr int sessions = 8;
constexpr std::size_t session_rows = 3000; // most of a book is samples

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

std::string good_book(const Folder& folder) {
    const std::string path = folder.file("good");
    {
        Book book = open_book(path);
        for (int i = 0; i < sessions; ++i) {
            const auto recording = small_recording(static_cast<std::uint64_t>(i), session_rows);
            const auto added =
                add_session(book, source_named(base::integer_text(i)), recording, details_of(recording), some_laps());
            static_cast<void>(put_note(book, {"", {.session = added->id}, "note " + base::integer_text(i), 1.0}));
        }
    }
    return bytes_of(path);
}

// Every channel that is read has the values that were written, whichever session it came from.
void expect_true_samples(Book& book, int& read, int& said) {
    const auto found = search(book);
    if (!found.ok()) return;
    for (const SessionSummary& session : *found) {
        const auto recording = read_recording(book, session.id);
        if (!recording.ok()) continue;
        const int i = session.source.file_name[0] - '0';
        const auto written = small_recording(static_cast<std::uint64_t>(i), session_rows);
        for (const recording::Channel& channel : recording->channels) {
            EXPECT_TRUE(std::ranges::any_of(written.channels,
                                            [&](const recording::Channel& one) {
                                                return one.values == channel.values && *one.time_s == *channel.time_s;
                                            }))
                << "channel " << channel.name << " of session " << i << " is wrong and nobody says so";
            ++read;
        }
        for (const recording::Warning& warning : recording->warnings)
            said += warning.kind == recording::WarningKind::channel_damaged ? 1 : 0;
    }
}

TEST(Damage, FlippedBytesAreNeverReadAsSamplesAndWhatIsLeftIsSaved) {
    const Folder folder;
    const std::string good = good_book(folder);
    std::mt19937_64 engine(41);
    int refused = 0;
    int read = 0;
    int said = 0;
    int saved = 0;
    constexpr int tries = 40;
    for (int i = 0; i < tries; ++i) {
        const std::string path = folder.file("book-" + base::integer_text(i));
        std::string bad = good;
        for (int flips = 1 + static_cast<int>(engine() % 8); flips > 0; --flips)
            bad[engine() % bad.size()] ^= static_cast<char>(1U << (engine() % 8));
        write(path, bad);
        if (auto opened = Book::open(path)) {
            Book book = std::move(opened).value();
            expect_true_samples(book, read, said);
        } else {
            ++refused;
            EXPECT_EQ(opened.error().code, base::ErrorCode::book_not_usable) << base::one_line(opened.error());
        }
        fs::remove(path + "-wal");
        write(path, bad);
        const auto result = salvage(path);
        ASSERT_TRUE(result.ok()) << base::one_line(result.error());
        EXPECT_EQ(bytes_of(result->was_whole ? path : result->kept_as), bad); // a flip may hit what nothing is kept in
        Book book = open_book(path);
        EXPECT_TRUE(search(book).ok());
        const auto health = book.check();
        ASSERT_TRUE(health.ok());
        for (const std::string& complaint : health->complaints)
            EXPECT_NE(complaint.find("are damaged"), std::string::npos) << complaint; // of samples, which were said
        saved += result->was_whole ? sessions : result->sessions;
    }
    EXPECT_LT(refused, tries / 3);                              // a flip where the lists or the schema lie
    EXPECT_GT(read, (tries - refused) * sessions * 5 * 9 / 10); // channels of those that open
    EXPECT_GT(said, 0);
    EXPECT_GT(saved, tries * sessions * 9 / 10);
    RecordProperty("refused", refused);
    RecordProperty("saved", saved);
}

// A letter of a view or a table is another: no page is broken, and yet a list would fail.
TEST(Damage, AFlippedLetterOfTheSchemaIsFoundAndTheRestIsSaved) {
    const Folder folder;
    const std::string good = good_book(folder);
    int found = 0;
    for (const std::string name : {"car.name", "time_sd_s REAL", "tyre TEXT", "s.start_unix_s", "session_by_car"}) {
        const std::size_t at = good.find(name);
        if (at == std::string::npos) continue;
        std::string bad = good;
        bad[at + name.size() / 2] ^= 2;
        const std::string path = folder.file("book");
        write(path, bad);
        const auto opened = Book::open(path);
        ASSERT_FALSE(opened.ok()) << name;
        EXPECT_EQ(opened.error().what, damaged_book) << name;
        fs::remove(path + "-wal");
        const auto result = salvage(path);
        ASSERT_TRUE(result.ok()) << name << ": " << base::one_line(result.error());
        EXPECT_FALSE(result->was_whole) << name;
        EXPECT_EQ(result->sessions, sessions) << name;
        Book book = open_book(path);
        EXPECT_TRUE(search(book).ok()) << name;
        ++found;
    }
    EXPECT_GE(found, 2) << "other letters stand elsewhere";
}

TEST(Damage, AFileThatEndsEarlyIsSavedAsFarAsItGoes) {
    const Folder folder;
    const std::string good = good_book(folder);
    int most = 0;
    for (const double part : {0.3, 0.6, 0.9, 0.99}) {
        const std::string path = folder.file("book-" + base::fixed_text(part, 2));
        write(path, good.substr(0, static_cast<std::size_t>(part * static_cast<double>(good.size()))));
        const auto opened = Book::open(path);
        ASSERT_FALSE(opened.ok());
        EXPECT_EQ(opened.error().what, damaged_book);
        fs::remove(path + "-wal");
        const auto result = salvage(path);
        ASSERT_TRUE(result.ok()) << base::one_line(result.error());
        // The last pages may have been free ones.
        const bool all = result->sessions == sessions && result->notes == sessions && result->damaged_channels == 0;
        EXPECT_TRUE(all || !result->losses.empty()) << part;
        EXPECT_TRUE(part > 0.95 || !all);
        Book book = open_book(path);
        int read = 0;
        int said = 0;
        expect_true_samples(book, read, said);
        EXPECT_EQ(said, result->damaged_channels);
        EXPECT_GE(result->sessions, most); // the more there is of it, the more is saved
        most = result->sessions;
    }
    EXPECT_EQ(most, sessions);
}

TEST(Damage, AWipedBeginningCostsNothing) {
    const Folder folder;
    const std::string good = good_book(folder);
    for (const std::size_t wiped : {std::size_t{100}, std::size_t{4096}}) {
        const std::string path = folder.file("book-" + base::integer_text(static_cast<std::int64_t>(wiped)));
        write(path, std::string(wiped, '\0') + good.substr(wiped));
        EXPECT_FALSE(Book::open(path).ok());
        fs::remove(path + "-wal");
        write(path, std::string(wiped, '\0') + good.substr(wiped));
        const auto result = salvage(path);
        ASSERT_TRUE(result.ok()) << base::one_line(result.error());
        EXPECT_EQ(result->sessions, sessions);
        EXPECT_EQ(result->notes, sessions);
        EXPECT_EQ(result->damaged_channels, 0);
        Book book = open_book(path);
        EXPECT_EQ(search(book, {.words = "ternbank"})->size(), static_cast<std::size_t>(sessions));
        EXPECT_TRUE(book.check()->whole());
    }
}

TEST(Damage, AWholeBookStaysAsItIsAndADamagedOneIsSavedWithWhatIsInItsLog) {
    const Folder folder;
    const std::string path = folder.file("book");
    {
        Book open = open_book(folder.file("live"));
        add_named(open, "a");
        // As a power cut leaves it: the last edits are in the log only.
        fs::copy_file(folder.file("live"), path);
        fs::copy_file(folder.file("live-wal"), path + "-wal");
    }
    const std::string before = bytes_of(path) + bytes_of(path + "-wal");
    const auto whole = salvage(path);
    ASSERT_TRUE(whole.ok()) << base::one_line(whole.error());
    EXPECT_TRUE(whole->was_whole);
    EXPECT_EQ(bytes_of(path) + bytes_of(path + "-wal"), before);
    {
        Book book = open_book(path);
        book.database().run("UPDATE block SET crc = crc + 1 WHERE id = 1");
        fs::copy_file(path, folder.file("hurt"));
        fs::copy_file(path + "-wal", folder.file("hurt-wal"));
    }
    for (const char* const kept : {"hurt.damaged", "hurt.damaged-2"}) {
        const auto result = salvage(folder.file("hurt"));
        ASSERT_TRUE(result.ok());
        EXPECT_FALSE(result->was_whole);
        EXPECT_EQ(result->kept_as, folder.file(kept));
        EXPECT_EQ(result->sessions, 1);
        EXPECT_GT(result->damaged_channels, 0);
    }
    EXPECT_TRUE(fs::exists(folder.file("hurt.damaged-wal")));
    Book book = open_book(folder.file("hurt"));
    EXPECT_EQ(search(book)->size(), 1U);
    EXPECT_EQ(salvage(folder.file("none")).error().what, "there is no such file");
    for (const auto& entry : fs::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().string().find(".part"), std::string::npos) << entry.path();
}

// A copy of the bytes of a file that is being written is torn; the book is not.
TEST(Damage, AWholeBookIsWholeWhileAnotherProgramWritesToIt) {
    const Folder folder;
    const std::string path = folder.file("good");
    static_cast<void>(good_book(folder));
    const ::pid_t writer = ::fork();
    if (writer == 0) {
        Book book = open_book(path);
        for (int i = 0; i < 100'000; ++i)
            if (!add_session(book, source_named("w" + base::integer_text(i)), small_recording(7, 4000), {}, {})) break;
        ::_exit(0);
    }
    while (!fs::exists(path + "-shm"))
        ::usleep(1000);
    for (int i = 0; i < 5; ++i) {
        const auto result = salvage(path);
        ASSERT_TRUE(result.ok()) << base::one_line(result.error());
        EXPECT_TRUE(result->was_whole);
    }
    ::kill(writer, SIGKILL);
    ::waitpid(writer, nullptr, 0);
    EXPECT_FALSE(fs::exists(path + ".damaged"));
}

TEST(Damage, ADamagedBookThatIsOpenElsewhereStaysWhereItIs) {
    const Folder folder;
    const std::string path = folder.file("good");
    static_cast<void>(good_book(folder));
    const ::pid_t reader = ::fork();
    if (reader == 0) {
        const Book book = open_book(path);
        std::ofstream(folder.file("open")) << "";
        while (true)
            ::pause();
    }
    while (!fs::exists(folder.file("open")))
        ::usleep(1000);
    std::string bad = bytes_of(path);
    std::fill(bad.begin() + 4096, bad.end(), 'x');
    write(path, bad);
    const auto result = salvage(path);
    ::kill(reader, SIGKILL);
    ::waitpid(reader, nullptr, 0);
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().what, "the book is damaged, and open in another window or program");
    EXPECT_EQ(bytes_of(path), bad);
    EXPECT_FALSE(salvage(path)->was_whole); // after it was closed
}

TEST(Damage, WhatIsNoBookOrANewerOneIsNotSalvaged) {
    const Folder folder;
    static_cast<void>(good_book(folder));
    write(folder.file("text"), std::string(9000, 'x'));
    write(folder.file("nothing"), "");
    Database::open(folder.file("theirs"), Access::edit_or_begin, 0.0).value()->run("CREATE TABLE session (id)");
    Database::open(folder.file("good"), Access::edit, 0.0).value()->run("PRAGMA user_version = 999");
    for (const auto& [name, why] : {std::pair("text", "this file is no book"),
                                    {"nothing", "this file is no book"},
                                    {"theirs", "this file is no book"},
                                    {"good", "the book was written by a newer version of the program"}}) {
        const std::string before = bytes_of(folder.file(name));
        const auto result = salvage(folder.file(name));
        ASSERT_FALSE(result.ok()) << name;
        EXPECT_EQ(result.error().what, why);
        EXPECT_EQ(result.error().place.file, folder.file(name));
        EXPECT_EQ(bytes_of(folder.file(name)), before);
        EXPECT_FALSE(fs::exists(folder.file(name) + ".damaged"));
    }
    for (const auto& entry : fs::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().string().find(".part"), std::string::npos) << entry.path();
}

TEST(Damage, AFriendsDamagedFileIsTakenInOrRefusedAndHurtsNothing) {
    const Folder folder;
    const std::string good = good_book(folder);
    Book mine = open_book(folder.file("mine"));
    const SessionId own = add_named(mine, "own");
    std::mt19937_64 engine(43);
    int taken = 0;
    int refused = 0;
    for (int i = 0; i < 25; ++i) {
        std::string bad = good;
        for (int flips = 1 + static_cast<int>(engine() % 40); flips > 0; --flips)
            bad[engine() % (i % 2 == 0 ? 30'000 : bad.size())] ^= static_cast<char>(1U << (engine() % 8));
        write(folder.file("theirs"), bad);
        (merge_from(mine, folder.file("theirs")).ok() ? taken : refused) += 1;
        EXPECT_EQ(bytes_of(folder.file("theirs")), bad);
    }
    EXPECT_GT(taken, 0);
    EXPECT_GT(refused, 0);
    const auto health = mine.check();
    ASSERT_TRUE(health.ok());
    for (const std::string& complaint : health->complaints)
        EXPECT_NE(complaint.find("are damaged"), std::string::npos) << complaint; // samples, as they came
    expect_same(*read_recording(mine, own), small_recording(3, 40));
    EXPECT_TRUE(search(mine).ok());
    for (const auto& entry : fs::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().string().find(".part"), std::string::npos) << entry.path();
}

TEST(Damage, AThoroughCheckNamesTheSessionWhoseSamplesAreDamaged) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    add_named(book, "a");
    const SessionId b = add_named(book, "b");
    EXPECT_TRUE(book.check()->whole());
    book.database().run("UPDATE block SET bytes = zeroblob(length(bytes)) WHERE session_id = ? AND place = 1",
                        {static_cast<std::int64_t>(b)});
    const auto health = book.check();
    ASSERT_EQ(health->complaints.size(), 1U);
    EXPECT_EQ(health->complaints[0], "samples of b.csv are damaged");
    // What is told to do about it helps: import the file again.
    const auto add_again = [&] {
        return *add_session(book, source_named("b"), small_recording(1, 40), {}, some_laps());
    };
    const Added again = add_again();
    EXPECT_TRUE(again.was_there);
    EXPECT_TRUE(again.mended);
    EXPECT_TRUE(book.check()->whole());
    EXPECT_FALSE(add_again().mended);
    int asked = 0;
    EXPECT_EQ(book.check([&](std::string_view, double) { return ++asked < 2; }).error().code,
              base::ErrorCode::cancelled);
    EXPECT_TRUE(search(book).ok());
}

} // namespace
} // namespace lapwright::book
