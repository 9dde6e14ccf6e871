// SPDX-License-Identifier: GPL-3.0-or-later
// The book of the season: one SQLite file that keeps all of it.  Every edit is one transaction on the disk before the
// call returns: whoever was told "done" finds it again after a crash, and a failed edit has changed nothing.
//
// One Book is used by one thread at a time; another thread, window or program opens the same file as a Book of its own
// and waits for the other's edit (at most some seconds).  Every call answers book_not_usable with a sentence when the
// file is damaged or cannot be written.
#pragma once

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/book/migration.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::book {

class Database;

// The person's own book, in the folder where programs keep a person's data.
inline constexpr const char* const usual_file = "lapwright/book.sqlite";

struct OpenOptions {
    // How the schema came to be, in order, numbered from 1; a test may know more or fewer.
    std::span<const Migration> migrations = known_migrations();
    double wait_s = 5.0; // for another window's edit
    // Off: a file that is not there, or is empty, is an error and stays so.
    bool may_begin = true;
    // As if the file could not be written.
    bool read_only = false;
};

// What a check of the whole file found; whole() when nothing is wrong.
struct Health {
    std::vector<std::string> complaints; // in words, at most 100

    [[nodiscard]] bool whole() const { return complaints.empty(); }
};

class Book {
  public:
    // Opens the file, or begins a book there.  An older schema is brought up to date after a copy was laid beside the
    // book.  The lists' tables are checked, samples are not (each bears its own checksum, see sessions.h).  A file that
    // cannot be written, or lies in a folder that cannot, is opened for reading.  Error book_not_usable: damaged (see
    // salvage.h), no book, written by a newer version, not readable, or read-only with an older schema.
    [[nodiscard]] static base::Result<Book> open(const std::string& path, const OpenOptions& options = {});

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    [[nodiscard]] const std::string& path() const;
    // Every edit is an error file_not_writable.
    [[nodiscard]] bool read_only() const;
    // Reads the whole file, the samples with their checksums too: seconds for a large book.
    [[nodiscard]] base::Result<Health> check(const base::Progress& progress = {});

    // For this folder's own functions.
    [[nodiscard]] Database& database() { return *database_; }

  private:
    explicit Book(std::unique_ptr<Database> database);
    std::unique_ptr<Database> database_;
};

// The edit was refused by the disk, the rights to the file or another window's work, and not by what it wants: done
// again later it may succeed.
[[nodiscard]] bool may_succeed_later(const base::Error& refusal);

// Refused where the file is the book: whoever reads it beside SQLite, and closes it again, gives back the locks by
// which another program knows that the book is in use.  Asked before a file is imported.
[[nodiscard]] base::Result<void> refuse_as_file(const std::string& book_file, const std::string& file);

} // namespace lapwright::book
