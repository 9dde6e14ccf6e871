// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/videos.h"

#include "core/base/translation.h"
#include "core/book/database.h"
#include "core/book/session_rows.h"
#include "core/book/sha256.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <system_error>

namespace lapwright::book {
namespace {

using base::said;

namespace fs = std::filesystem;

constexpr const char* id_of_session = "SELECT id FROM session WHERE checksum = ?";

std::optional<std::int64_t> session_id(Database& database, const Checksum& session) {
    Rows rows(database, id_of_session, {Blob{as_bytes(session)}});
    return rows.next() ? std::optional(rows.whole(0)) : std::nullopt;
}

std::vector<std::string> other_places(Database& database, const VideoFile& file) {
    std::vector<std::string> paths;
    Rows rows(database,
              "SELECT path FROM video_place WHERE ends_checksum = ? AND size_bytes = ? AND path <> ? ORDER BY path",
              {Blob{as_bytes(file.ends)}, static_cast<std::int64_t>(file.size_bytes), file.path});
    while (rows.next())
        paths.push_back(rows.text(0));
    return paths;
}

std::vector<VideoFile> files_of(Database& database, std::int64_t session) {
    std::vector<VideoFile> files;
    Rows rows(database, "SELECT path, size_bytes, ends_checksum FROM video_file WHERE session_id = ? ORDER BY part",
              {session});
    while (rows.next()) {
        VideoFile file{rows.text(0), static_cast<std::uint64_t>(rows.whole(1)), {}, {}};
        const std::string_view ends = rows.blob(2);
        std::copy_n(ends.begin(), std::min(ends.size(), file.ends.size()), file.ends.begin());
        file.also_at = other_places(database, file);
        files.push_back(std::move(file));
    }
    return files;
}

std::optional<KeptStep> step_of(Database& database, std::int64_t session) {
    Rows rows(database,
              "SELECT offset_s, offset_low_s, offset_high_s, drift, around_s, method FROM video_step "
              "WHERE session_id = ?",
              {session});
    if (!rows.next()) return {};
    return KeptStep{rows.real(0), rows.real(1), rows.real(2), rows.real(3), rows.real(4), rows.text(5)};
}

bool is_same(const std::string& path, const VideoFile& wanted) {
    std::error_code not_there;
    if (fs::file_size(path, not_there) != wanted.size_bytes || not_there) return false;
    const auto found = video_file(path);
    return found && found->ends == wanted.ends;
}

std::optional<std::string> find_in(const fs::path& folder, const VideoFile& wanted) {
    if (const std::string path = (folder / fs::path(wanted.path).filename()).string(); is_same(path, wanted))
        return path;
    std::error_code problem;
    for (fs::directory_iterator entry(folder, problem), end; !problem && entry != end; entry.increment(problem))
        if (is_same(entry->path().string(), wanted)) return entry->path().string();
    return {};
}

} // namespace

base::Result<VideoFile> video_file(const std::string& path) {
    constexpr std::uint64_t end_bytes = 64U << 10U;
    std::error_code problem;
    const std::uint64_t size = fs::file_size(path, problem);
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    Sha256 sum;
    std::string head(static_cast<std::size_t>(problem ? 0 : std::min(size, end_bytes)), '\0');
    std::string tail(head.size(), '\0');
    file.read(head.data(), static_cast<std::streamsize>(head.size()));
    file.seekg(static_cast<std::streamoff>(size - tail.size()));
    file.read(tail.data(), static_cast<std::streamsize>(tail.size()));
    if (problem || !file)
        return base::Error{base::ErrorCode::file_not_readable,
                           {path, {}, {}},
                           said("the video cannot be read"),
                           said("check that it is there and may be read")};
    sum.add(head);
    sum.add(tail);
    return VideoFile{path, size, sum.finish(), {}};
}

base::Result<std::optional<KeptVideo>> video_of(Book& book, const Checksum& session) {
    return look(book.database(), [&](Database& database) -> std::optional<KeptVideo> {
        const auto id = session_id(database, session);
        if (!id) return {};
        KeptVideo video{files_of(database, *id), step_of(database, *id)};
        return video.files.empty() ? std::nullopt : std::optional(std::move(video));
    });
}

base::Result<void> put_video(Book& book, const Checksum& session, const std::optional<KeptVideo>& video) {
    return edit(book.database(), [&](Database& database) {
        const auto id = session_id(database, session);
        if (!id) return;
        database.run("DELETE FROM video_file WHERE session_id = ?", {*id});
        database.run("DELETE FROM video_step WHERE session_id = ?", {*id});
        put_moment(database, SessionId{*id}, "video_unix_s");
        if (!video) return;
        for (std::size_t part = 0; part < video->files.size(); ++part) {
            const VideoFile& file = video->files[part];
            database.run("INSERT INTO video_file VALUES (?, ?, ?, ?, ?)",
                         {*id, static_cast<std::int64_t>(part), file.path, static_cast<std::int64_t>(file.size_bytes),
                          Blob{as_bytes(file.ends)}});
            database.run("INSERT OR IGNORE INTO video_place (ends_checksum, size_bytes, path) VALUES (?, ?, ?)",
                         {Blob{as_bytes(file.ends)}, static_cast<std::int64_t>(file.size_bytes), file.path});
        }
        if (const auto& step = video->step)
            database.run("INSERT INTO video_step VALUES (?, ?, ?, ?, ?, ?, ?)",
                         {*id, step->offset_s, step->offset_low_s, step->offset_high_s, step->drift, step->around_s,
                          step->method});
    });
}

base::Result<std::vector<std::string>> locate(const KeptVideo& video, const std::vector<std::string>& folders) {
    std::vector<std::string> paths;
    for (const VideoFile& file : video.files) {
        std::optional<std::string> found = is_same(file.path, file) ? std::optional(file.path) : std::nullopt;
        for (std::size_t i = 0; !found && i < file.also_at.size(); ++i)
            if (is_same(file.also_at[i], file)) found = file.also_at[i];
        for (std::size_t i = 0; !found && i < folders.size(); ++i)
            found = find_in(folders[i], file);
        if (!found)
            return base::Error{base::ErrorCode::file_not_readable,
                               {file.path, {}, {}},
                               said("the video is no longer there, nor beside the recording"),
                               said("choose it again where it lies now")};
        paths.push_back(*found);
    }
    return paths;
}

} // namespace lapwright::book
