// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/sessions.h"

#include "core/book/names.h"
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
    std::ifstream file(path, std::ios::binary);
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
                     "the file cannot be read",
                     "check the name and that it may be read"};
    return Source{std::filesystem::path(path).filename().string(), size, sum.finish()};
}

SessionDetails details_of(const recording::Recording& recording) {
    return {recording.driver, recording.car, recording.track, recording.start_unix_s, {}, {}};
}

Result<Added> add_session(Book& book, const Source& source, const recording::Recording& recording,
                          const SessionDetails& details, std::span<const lap::Lap> laps) {
    Added added;
    const PackedSamples samples = pack_samples(recording);
    const auto problem = edit(book.database(), [&](Database& database) {
        if (const auto known = id_of_source(database, source.checksum)) {
            Rows rows(database, "SELECT removed_unix_s FROM session WHERE id = ?", {*known});
            added.id = SessionId{*known};
            added.was_there = true;
            added.removed_unix_s = rows.next() ? rows.maybe_real(0) : std::nullopt;
            added.mended = mend_samples(database, added.id, recording, samples);
            return;
        }
        added.id = insert_session(database, source, recording);
        write_details(database, added.id, details);
        write_laps(database, added.id, laps);
        write_recording(database, added.id, recording, samples);
        index_words(database, added.id);
    });
    if (problem) return *problem;
    return added;
}

Result<std::optional<SessionId>> find_session(Book& book, const Checksum& source) {
    const auto id = book.database().one_whole("SELECT id FROM session WHERE checksum = ? AND removed_unix_s IS NULL",
                                              {Blob{as_bytes(source)}});
    if (auto problem = book.database().take_problem()) return *problem;
    return id ? std::optional(SessionId{*id}) : std::nullopt;
}

Result<recording::Recording> read_recording(Book& book, SessionId id) {
    recording::Recording recording;
    const auto problem = look(book.database(), [&](Database& database) { recording = recording_rows(database, id); });
    if (problem) return *problem;
    return recording;
}

std::optional<Error> replace_recording(Book& book, SessionId id, const recording::Recording& recording) {
    const PackedSamples samples = pack_samples(recording);
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        clear_recording(database, id);
        write_recording(database, id, recording, samples);
        index_words(database, id);
    });
}

Result<SessionDetails> read_details(Book& book, SessionId id) {
    SessionDetails details;
    const auto problem = look(book.database(), [&](Database& database) { details = detail_row(database, id); });
    if (problem) return *problem;
    return details;
}

std::optional<Error> change_details(Book& book, SessionId id, const SessionDetails& details) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        write_details(database, id, details);
        index_words(database, id);
        forget_unused_names(database);
    });
}

std::optional<Error> change_start(Book& book, SessionId id, std::optional<double> start_unix_s) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        database.run("UPDATE session SET start_unix_s = ? WHERE id = ?", {start_unix_s, static_cast<std::int64_t>(id)});
    });
}

Result<std::vector<lap::Lap>> read_laps(Book& book, SessionId id) {
    std::vector<lap::Lap> laps;
    const auto problem = look(book.database(), [&](Database& database) {
        require_session(database, id);
        laps = lap_rows(database, id);
    });
    if (problem) return *problem;
    return laps;
}

std::optional<Error> change_laps(Book& book, SessionId id, std::span<const lap::Lap> laps) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        database.run("DELETE FROM lap WHERE session_id = ?", {static_cast<std::int64_t>(id)});
        write_laps(database, id, laps);
    });
}

std::optional<Error> remove_session(Book& book, SessionId id) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        database.run("UPDATE session SET removed_unix_s = ? WHERE id = ?",
                     {now_unix_s(), static_cast<std::int64_t>(id)});
    });
}

std::optional<Error> restore_session(Book& book, SessionId id) {
    return edit(book.database(), [&](Database& database) {
        database.run("UPDATE session SET removed_unix_s = NULL WHERE id = ?", {static_cast<std::int64_t>(id)});
        require_session(database, id);
    });
}

Result<int> forget_removed(Book& book) {
    int forgotten = 0;
    const auto problem = edit(book.database(), [&](Database& database) {
        database.run("DELETE FROM words WHERE rowid IN (SELECT id FROM session WHERE removed_unix_s IS NOT NULL)");
        database.run("DELETE FROM session WHERE removed_unix_s IS NOT NULL");
        forgotten = static_cast<int>(database.changed_rows());
        forget_unused_names(database);
    });
    if (problem) return *problem;
    book.database().run("VACUUM");
    if (const auto full = book.database().take_problem()) return *full;
    return forgotten;
}

} // namespace lapwright::book
