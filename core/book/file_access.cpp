// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/file_access.h"

#include "core/base/error.h"
#include "core/base/translation.h"
#include "core/platform/files.h"

#include <filesystem>
#include <string_view>
#include <system_error>

namespace lapwright::book {
namespace {

using base::said;

bool may_be_written(const std::string& path) {
    const std::string folder = std::filesystem::path(path).parent_path().string();
    return platform::may_write(path) && platform::may_write(folder.empty() ? "." : folder);
}

bool holds_something(const std::string& path) {
    std::error_code none;
    return std::filesystem::file_size(path, none) > 0 && !none;
}

// RFC 3986: what is not unreserved, and no slash, is written as its byte's number.
std::string uri_of(const std::string& path) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    constexpr std::string_view plain = "-._~/";
    std::string uri = "file:";
    // Two slashes at the beginning would begin an authority.
    if (path.starts_with("//")) uri += "//";
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
            plain.find(c) != std::string_view::npos)
            uri += c;
        else
            (uri += '%').append({digits[byte >> 4U], digits[byte & 15U]});
    }
    return uri + "?immutable=1";
}

} // namespace

std::string sqlite_name(const std::string& path) {
    return path.starts_with("file:") ? "./" + path : path;
}

base::Result<FileAccess> access_to(const std::string& path, bool read_only) {
    std::error_code unknown;
    const bool there = std::filesystem::is_regular_file(path, unknown);
    if (!there || (!read_only && may_be_written(path))) return FileAccess{sqlite_name(path), true, false};
    const bool in_use = std::filesystem::exists(path + "-shm", unknown);
    if (in_use) return FileAccess{sqlite_name(path), false, false}; // with the locks of whoever writes it
    if (holds_something(path + "-wal") || holds_something(path + "-journal"))
        return base::Error{
            base::ErrorCode::book_not_usable,
            {path, {}, {}},
            said("the book's last edits lie in a log beside it, which cannot be read where nothing can be "
                 "written"),
            said("copy the book with all files that begin with its name to a folder that you may write")};
    return FileAccess{uri_of(path), false, true};
}

FileState state_of(const std::string& path) {
    FileState state;
    state.has_log = holds_something(path + "-wal") || holds_something(path + "-journal");
    if (const auto stamp = platform::stamp_of(path)) {
        state.size = stamp->size;
        state.changed_ns = stamp->changed_ns;
    }
    return state;
}

} // namespace lapwright::book
