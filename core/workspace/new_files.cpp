// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/new_files.h"

#include "core/import/formats/gpx.h"
#include "core/import/formats/import.h"
#include "core/platform/files.h"

#include <algorithm>
#include <filesystem>
#include <string_view>

namespace lapwright::workspace {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t head_bytes = 64 * 1024;
constexpr std::uint64_t smallest_bytes = 200; // a header and a few rows
constexpr std::size_t most_entries = 5000;    // of a folder with what lies in it
constexpr std::size_t most_looked_into = 60;

// Up to the end of a row, so that no half of one is read.
std::string whole_rows(std::string head) {
    const std::string_view text = head;
    const bool two_byte_letters = text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
    if (two_byte_letters)
        head.resize(head.size() - head.size() % 2);
    else if (const auto end = head.rfind('\n'); end != std::string::npos)
        head.resize(end + 1);
    return head;
}

bool is_hidden(const fs::path& path) {
    const std::string name = path.filename().string();
    return !name.empty() && name.front() == '.';
}

void collect(const SearchedFolder& folder, const base::Progress& progress, std::vector<NewFile>& files) {
    std::error_code error;
    fs::recursive_directory_iterator at(folder.path, fs::directory_options::skip_permission_denied, error);
    for (std::size_t seen = 0; !error && at != fs::recursive_directory_iterator() && seen < most_entries;
         at.increment(error), ++seen) {
        if (progress && !progress("", 0.0)) return;
        std::error_code ignored;
        const bool hidden = is_hidden(at->path());
        if (at->is_directory(ignored)) {
            if (hidden || at.depth() >= folder.depth) at.disable_recursion_pending();
            continue;
        }
        if (hidden || !at->is_regular_file(ignored)) continue;
        const std::string path = at->path().string();
        const auto stamp = platform::stamp_of(path);
        if (!stamp || stamp->size < static_cast<std::int64_t>(smallest_bytes)) continue;
        const double changed_unix_s = static_cast<double>(stamp->changed_ns) * 1e-9;
        if (folder.not_older_unix_s && changed_unix_s < *folder.not_older_unix_s) continue;
        files.push_back({path, static_cast<std::uint64_t>(stamp->size), changed_unix_s});
    }
}

} // namespace

bool looks_like_recording(const std::string& path) {
    const platform::ReadableFile file(path);
    if (file.outcome() != platform::ReadableFile::Outcome::good) return false;
    std::string head(std::min(file.size(), head_bytes), '\0');
    if (!file.read(0, head.data(), head.size())) return false;
    if (import::looks_like_gpx(head)) return true;
    import::Options options;
    options.threads = 1;
    return import::import_bytes(file.size() > head_bytes ? whole_rows(std::move(head)) : head, path, options).ok();
}

std::vector<NewFile> new_recordings(const std::vector<SearchedFolder>& folders, const std::set<KnownFile>& known,
                                    std::size_t most, const base::Progress& progress) {
    std::vector<NewFile> files;
    for (const SearchedFolder& folder : folders)
        collect(folder, progress, files);
    std::ranges::sort(files, [](const NewFile& one, const NewFile& other) {
        return one.changed_unix_s != other.changed_unix_s ? one.changed_unix_s > other.changed_unix_s
                                                          : one.path < other.path;
    });
    const auto twice = std::ranges::unique(files);
    files.erase(twice.begin(), twice.end());
    std::vector<NewFile> found;
    std::size_t looked_into = 0;
    for (NewFile& file : files) {
        if (found.size() >= most || looked_into >= most_looked_into) break;
        if (progress && !progress("", 0.0)) return {};
        if (known.contains({fs::path(file.path).filename().string(), file.size_bytes})) continue;
        ++looked_into;
        if (looks_like_recording(file.path)) found.push_back(std::move(file));
    }
    return found;
}

} // namespace lapwright::workspace
