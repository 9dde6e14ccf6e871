// SPDX-License-Identifier: GPL-3.0-or-later
// The program is killed (kill -9) at a random moment of importing and editing, 200 times.  A child process says on a
// pipe what it is about to do and what is done; afterwards everything that was said to be done is there, the one thing
// that was under way is there whole or not at all, and SQLite finds no fault in the file.
#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/notes.h"
#include "core/book/search.h"

#include <gtest/gtest.h>

#include <chrono>
#include <csignal>
#include <set>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace lapwright::book {
namespace {

constexpr int kills = 200;
constexpr int kills_a_book = 20; // so that beginning a book is killed too, and a book stays small enough to check often
constexpr int longest_life = 2;  // in times that beginning a book and keeping a first session take

// "+" about to, "." done; then S a session, N a note put in (with its text), R a note removed.
void say(int pipe, const std::string& line) {
    const std::string whole = line + "\n";
    if (::write(pipe, whole.data(), whole.size()) != static_cast<ssize_t>(whole.size())) ::_exit(3);
}

// Imports and edits until it is killed.
[[noreturn]] void live(const std::string& path, int pipe, int life) {
    auto opened = Book::open(path);
    if (!opened) {
        say(pipe, "!" + opened.error().what);
        ::_exit(1);
    }
    Book book = std::move(opened).value();
    for (int i = 0;; ++i) {
        const std::string name = base::integer_text(life) + "-" + base::integer_text(i);
        say(pipe, "+S" + name);
        const auto recording = small_recording(static_cast<std::uint64_t>(i), 200);
        const auto added = add_session(book, source_named(name), recording, details_of(recording), some_laps());
        if (!added) ::_exit(2);
        say(pipe, ".S" + name);
        for (const char* const part : {"a", "b"}) {
            const std::string uid = name + part;
            say(pipe, "+N" + uid);
            if (!put_note(book, {uid, {.session = added->id}, "text of " + uid, 1.0})) ::_exit(2);
            say(pipe, ".N" + uid);
        }
        say(pipe, "+R" + name + "a");
        if (!remove_note(book, name + "a")) ::_exit(2);
        say(pipe, ".R" + name + "a");
    }
}

// What the book must hold; what was under way at a kill may be there or not.
struct Expected {
    std::set<std::string> sessions;
    std::set<std::string> notes;
    std::set<std::string> open;

    void hear(const std::string& line) {
        ASSERT_NE(line[0], '!') << line;
        const std::string name = line.substr(2);
        if (line[0] == '+') {
            open.insert(name);
            sessions.erase(name);
            notes.erase(name);
            return;
        }
        open.erase(name);
        if (line[1] == 'S') {
            sessions.insert(name);
        } else if (line[1] == 'N') {
            notes.insert(name);
        }
    }
};

std::string read_all(int pipe) {
    std::string text;
    std::array<char, 4096> piece{};
    for (ssize_t size = 0; (size = ::read(pipe, piece.data(), piece.size())) > 0;)
        text.append(piece.data(), static_cast<std::size_t>(size));
    return text;
}

struct Child {
    pid_t id = -1;
    int pipe = -1; // what it says
};

Child bear(const std::string& path, int life) {
    std::array<int, 2> pipe{};
    if (::pipe(pipe.data()) != 0) return {};
    const pid_t id = ::fork();
    if (id == 0) {
        ::close(pipe[0]);
        live(path, pipe[1], life);
    }
    ::close(pipe[1]);
    return {id, pipe[0]};
}

void kill_child(const Child& child) {
    ::kill(child.id, SIGKILL);
    int status = 0;
    ASSERT_EQ(::waitpid(child.id, &status, 0), child.id);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the child ended by itself: " << status;
}

// On this machine, as busy as it is now.
std::chrono::microseconds time_to_first_session() {
    const Folder folder;
    const auto begin = std::chrono::steady_clock::now();
    const Child child = bear(folder.file("book"), 0);
    std::string heard;
    std::array<char, 64> piece{};
    for (ssize_t size = 1; size > 0 && heard.find(".S") == std::string::npos;) {
        size = ::read(child.pipe, piece.data(), piece.size());
        heard.append(piece.data(), static_cast<std::size_t>(std::max<ssize_t>(size, 0)));
    }
    const auto end = std::chrono::steady_clock::now();
    kill_child(child);
    ::close(child.pipe);
    return std::chrono::duration_cast<std::chrono::microseconds>(end - begin);
}

void live_and_die(const std::string& path, int life, std::chrono::microseconds age, Expected& expected) {
    const Child child = bear(path, life);
    ASSERT_GE(child.id, 0);
    std::this_thread::sleep_for(age);
    kill_child(child);
    std::string line;
    for (const char c : read_all(child.pipe)) {
        if (c == '\n') expected.hear(line);
        line = c == '\n' ? "" : line + c;
    }
    ::close(child.pipe);
}

void expect_all(const std::set<std::string>& must, const std::set<std::string>& actual,
                const std::set<std::string>& open) {
    for (const std::string& name : must)
        EXPECT_TRUE(actual.contains(name)) << name << " was done and is lost";
    for (const std::string& name : actual)
        EXPECT_TRUE(must.contains(name) || open.contains(name)) << name << " is there and should not be";
}

void expect_book(const std::string& path, const Expected& expected) {
    Book book = open_book(path);
    const auto health = book.check();
    ASSERT_TRUE(health.ok());
    EXPECT_TRUE(health->whole()) << health->complaints.front();
    std::set<std::string> sessions;
    std::set<std::string> notes;
    const auto found = search(book);
    ASSERT_TRUE(found.ok());
    for (const SessionSummary& session : *found) {
        sessions.insert(session.source.file_name.substr(0, session.source.file_name.size() - 4));
        EXPECT_EQ(session.laps, 5);
    }
    Rows rows(book.database(), "SELECT uid, text FROM note", {});
    while (rows.next()) {
        notes.insert(rows.text(0));
        EXPECT_EQ(rows.text(1), "text of " + rows.text(0));
    }
    expect_all(expected.sessions, sessions, expected.open);
    expect_all(expected.notes, notes, expected.open);
    if (found->empty()) return;
    // The newest of all: its samples are whole.
    const auto recording = read_recording(book, found->front().id);
    ASSERT_TRUE(recording.ok());
    EXPECT_EQ(recording->channels.size(), 5U);
}

TEST(Kill, TwoHundredKillsLoseNothingThatWasDone) {
    std::mt19937_64 engine(20261125);
    std::size_t done = 0;
    for (int first = 0; first < kills; first += kills_a_book) {
        const Folder folder;
        Expected expected;
        const auto longest_us = static_cast<std::uint64_t>(longest_life * time_to_first_session().count());
        for (int life = first; life < first + kills_a_book; ++life) {
            const std::chrono::microseconds age(engine() % longest_us);
            live_and_die(folder.file("book"), life, age, expected);
            if (HasFatalFailure()) return;
            expect_book(folder.file("book"), expected);
            if (HasFailure()) return;
        }
        done += expected.sessions.size();
    }
    EXPECT_GT(done, 50U); // or the kills came before anything was done
    RecordProperty("sessions_kept", static_cast<int>(done));
}

} // namespace
} // namespace lapwright::book
