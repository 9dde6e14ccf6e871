// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/copy_file.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/book/database.h"
#include "core/platform/files.h"

#include <filesystem>
#include <system_error>

#include <sqlite3.h>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;

constexpr double wait_s = 10.0;
constexpr int all_pages = -1;

void backup(Database& from, Database& to) {
    sqlite3_backup* const work = sqlite3_backup_init(to.handle(), "main", from.handle(), "main");
    if (!work) return to.fail_as_sqlite_says();
    const int code = sqlite3_backup_step(work, all_pages);
    const int end = sqlite3_backup_finish(work);
    if (code != SQLITE_DONE) return to.fail(error_of(end != SQLITE_OK ? end : code, to.handle(), to.path()));
    // The copy is one file: no log beside it.
    to.run("PRAGMA journal_mode = DELETE");
}

Result<void> write_copy(const std::string& from, const std::string& partial) {
    const auto source = Database::open(from, Access::read, wait_s);
    if (!source) return source.error();
    const auto target = Database::open(partial, Access::edit_or_begin, wait_s);
    if (!target) return target.error();
    backup(**source, **target);
    return (*target)->take_outcome();
}

} // namespace

std::string partial_name(const std::string& target) {
    return target + ".part" + base::integer_text(platform::process_id());
}

Result<void> appear(const std::string& partial, const std::string& target) {
    const std::string folder = std::filesystem::path(target).parent_path().string();
    if (!platform::flush(partial) && !platform::replace(partial, target) && !platform::flush_folder(folder)) return {};
    return Error{ErrorCode::file_not_writable,
                 {target, {}, {}},
                 said("the file cannot be written"),
                 said("check the folder, your rights to it and the room on the disk")};
}

Error told_of(Error error, const std::string& file) {
    error.place.file = file;
    return error;
}

void remove_book_file(const std::string& path) {
    std::error_code ignored;
    for (const char* const ending : {"", "-wal", "-shm", "-journal"})
        std::filesystem::remove(path + ending, ignored);
}

Result<void> copy_book(const std::string& from, const std::string& to) {
    const std::string partial = partial_name(to);
    remove_book_file(partial);
    auto done = write_copy(from, partial);
    if (done) done = appear(partial, to);
    if (done) return done;
    remove_book_file(partial);
    return told_of(done.error(), to);
}

} // namespace lapwright::book
