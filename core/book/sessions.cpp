// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/sessions.h"

#include "core/base/translation.h"
#include "core/book/names.h"
#include "core/book/said.h"
#include "core/book/samples.h"
#include "core/book/session_rows.h"
#include "core/book/sha256.h"

#include <filesystem>
#include <fstream>
#include <vector>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;

constexpr std::size_t piece_bytes = std::size_t{1} << 20U;

std::optional<std::int64_t> id_of_source(Database& database, const Checksum& checksum) {
    return database.one_whole("SELECT id FROM session WHERE checksum = ?", {Blob{as_bytes(checksum)}});
}

// Importing a file again is the remedy for samples that were damaged in the book.
bool mend_samples(Database& database, SessionId id, const recording::Recording& recording,
                  const PackedSamples& samples) {
    if (!has_damaged_samples(database, id)) return false;
    clear_recording(database, id);
    write_recording(database, id, recording, samples);
    return true;
}

} // namespace

Result<Source> source_of_file(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    Sha256 sum;
    std::uint64_t size = 0;
    std::vector<char> piece(piece_bytes);
    while (file.good()) {
        file.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        const auto read = static_cast<std::size_t>(file.gcount());
        sum.add({piece.data(), read});
        size += read;
    }
    if (!file.eof())
        return Error{ErrorCode::file_not_readable,
                     {path, {}, {}},
                     said("the file cannot be read"),
                     said("check the name and that it may be read")};
    return Source{std::filesystem::path(path).filename().string(), size, sum.finish()};
}

SessionDetails details_of(const recording::Recording& recording) {
    return {recording.driver, recording.car, recording.track, recording.start_unix_s, {}, {}};
}

Result<Added> add_session(Book& book, const Source& source, const recording::Recording& recording,
                          const SessionDetails& details, std::span<const lap::Lap> laps) {
    const PackedSamples samples = pack_samples(recording);
    return edit(book.database(), [&](Database& database) {
        Added added;
        if (const auto known = id_of_source(database, source.checksum)) {
            Rows rows(database, "SELECT removed_unix_s FROM session WHERE id = ?", {*known});
            added.id = SessionId{*known};
            added.was_there = true;
            added.removed_unix_s = rows.next() ? rows.maybe_real(0) : std::nullopt;
            added.mended = mend_samples(database, added.id, recording, samples);
            return added;
        }
        added.id = insert_session(database, source, recording);
        write_recording(database, added.id, recording, samples);
        write_details(database, added.id, details);
        write_laps(database, added.id, laps);
        index_words(database, added.id);
        return added;
    });
}

Result<std::optional<SessionId>> find_session(Book& book, const Checksum& source) {
    return look(book.database(), [&](Database& database) {
        const auto id = database.one_whole("SELECT id FROM session WHERE checksum = ? AND removed_unix_s IS NULL",
                                           {Blob{as_bytes(source)}});
        return id ? std::optional(SessionId{*id}) : std::nullopt;
    });
}

Result<recording::Recording> read_recording(Book& book, SessionId id) {
    return look(book.database(), [&](Database& database) { return recording_rows(database, id); });
}

Result<void> replace_recording(Book& book, SessionId id, const recording::Recording& recording) {
    const PackedSamples samples = pack_samples(recording);
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        clear_recording(database, id);
        write_recording(database, id, recording, samples);
        index_words(database, id);
    });
}

Result<SessionDetails> read_details(Book& book, SessionId id) {
    return look(book.database(), [&](Database& database) { return detail_row(database, id); });
}

Result<void> change_details(Book& book, SessionId id, const SessionDetails& details) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        write_details(database, id, details);
        index_words(database, id);
        forget_unused_names(database);
    });
}

Result<void> change_start(Book& book, SessionId id, std::optional<double> start_unix_s) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        database.run("UPDATE session SET start_unix_s = ? WHERE id = ?", {start_unix_s, static_cast<std::int64_t>(id)});
        say_session(database, id);
    });
}

Result<std::vector<lap::Lap>> read_laps(Book& book, SessionId id) {
    return look(book.database(), [&](Database& database) {
        require_session(database, id);
        return lap_rows(database, id);
    });
}

Result<void> change_laps(Book& book, SessionId id, std::span<const lap::Lap> laps) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        database.run("DELETE FROM lap WHERE session_id = ?", {static_cast<std::int64_t>(id)});
        write_laps(database, id, laps);
        clear_corners(database, id);
    });
}

Result<void> remove_session(Book& book, SessionId id) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        database.run("UPDATE session SET removed_unix_s = ? WHERE id = ?",
                     {now_unix_s(), static_cast<std::int64_t>(id)});
        say_session(database, id);
    });
}

Result<void> restore_session(Book& book, SessionId id) {
    return edit(book.database(), [&](Database& database) {
        database.run("UPDATE session SET removed_unix_s = NULL WHERE id = ?", {static_cast<std::int64_t>(id)});
        require_session(database, id);
        say_session(database, id);
    });
}

Result<int> forget_removed(Book& book) {
    const auto forgotten = edit(book.database(), [&](Database& database) {
        database.run("DELETE FROM words WHERE rowid IN (SELECT id FROM session WHERE removed_unix_s IS NOT NULL)");
        database.run("DELETE FROM session WHERE removed_unix_s IS NOT NULL");
        const auto rows = static_cast<int>(database.changed_rows());
        forget_unused_names(database);
        return rows;
    });
    if (!forgotten) return forgotten;
    book.database().run("VACUUM");
    if (const auto vacated = book.database().take_outcome(); !vacated) return vacated.error();
    return forgotten;
}

Result<std::vector<RemovedSession>> removed_sessions(Book& book) {
    return look(book.database(), [](Database& database) { return removed_rows(database); });
}

} // namespace lapwright::book
