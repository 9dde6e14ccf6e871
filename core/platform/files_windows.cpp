// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/files.h"

#include <algorithm>
#include <filesystem>

#define WIN32_LEAN_AND_MEAN
#include <windows.h>

namespace lapwright::platform {
namespace {

constexpr DWORD shared = FILE_SHARE_READ | FILE_SHARE_WRITE | FILE_SHARE_DELETE;
constexpr std::size_t largest_piece = std::size_t{1} << 30U; // one call takes a 32-bit count

std::wstring wide(const std::string& path) {
    return std::filesystem::path(std::u8string(path.begin(), path.end())).wstring();
}

std::error_code last_problem() {
    return {static_cast<int>(GetLastError()), std::system_category()};
}

HANDLE handle_of(std::intptr_t handle) {
    return reinterpret_cast<HANDLE>(handle);
}

std::error_code closed(HANDLE file, std::error_code problem) {
    return CloseHandle(file) == 0 && !problem ? last_problem() : problem;
}

std::error_code write_all(HANDLE file, std::string_view content) {
    while (!content.empty()) {
        DWORD written = 0;
        const auto count = static_cast<DWORD>(std::min(content.size(), largest_piece));
        if (WriteFile(file, content.data(), count, &written, nullptr) == 0) return last_problem();
        content.remove_prefix(written);
    }
    return FlushFileBuffers(file) != 0 ? std::error_code() : last_problem();
}

} // namespace

ReadableFile::ReadableFile(const std::string& path)
    : handle_(reinterpret_cast<std::intptr_t>(CreateFileW(wide(path).c_str(), GENERIC_READ, shared, nullptr,
                                                          OPEN_EXISTING, FILE_FLAG_BACKUP_SEMANTICS, nullptr))) {
    if (handle_of(handle_) == INVALID_HANDLE_VALUE) return;
    BY_HANDLE_FILE_INFORMATION about{};
    const bool known = GetFileType(handle_of(handle_)) == FILE_TYPE_DISK &&
                       GetFileInformationByHandle(handle_of(handle_), &about) != 0;
    outcome_ =
        known && (about.dwFileAttributes & FILE_ATTRIBUTE_DIRECTORY) == 0 ? Outcome::good : Outcome::no_file_of_data;
    size_ = std::uint64_t{about.nFileSizeHigh} << 32U | about.nFileSizeLow;
}

ReadableFile::~ReadableFile() {
    if (handle_of(handle_) != INVALID_HANDLE_VALUE) CloseHandle(handle_of(handle_));
}

bool ReadableFile::read(std::uint64_t offset, char* into, std::size_t count) const {
    while (count > 0) {
        OVERLAPPED place{};
        place.Offset = static_cast<DWORD>(offset);
        place.OffsetHigh = static_cast<DWORD>(offset >> 32U);
        DWORD got = 0;
        const auto wanted = static_cast<DWORD>(std::min(count, largest_piece));
        if (ReadFile(handle_of(handle_), into, wanted, &got, &place) == 0 || got == 0) return false;
        into += got;
        count -= got;
        offset += got;
    }
    return true;
}

std::error_code write_new(const std::string& path, std::string_view content) {
    const std::wstring name = wide(path);
    const HANDLE file =
        CreateFileW(name.c_str(), GENERIC_WRITE, 0, nullptr, CREATE_NEW, FILE_ATTRIBUTE_NORMAL, nullptr);
    if (file == INVALID_HANDLE_VALUE) return last_problem();
    const std::error_code problem = closed(file, write_all(file, content));
    if (problem) DeleteFileW(name.c_str());
    return problem;
}

std::error_code flush(const std::string& path) {
    const HANDLE file =
        CreateFileW(wide(path).c_str(), GENERIC_WRITE, shared, nullptr, OPEN_EXISTING, FILE_ATTRIBUTE_NORMAL, nullptr);
    if (file == INVALID_HANDLE_VALUE) return last_problem();
    return closed(file, FlushFileBuffers(file) != 0 ? std::error_code() : last_problem());
}

std::error_code replace(const std::string& from, const std::string& to) {
    const DWORD how = MOVEFILE_REPLACE_EXISTING | MOVEFILE_WRITE_THROUGH;
    return MoveFileExW(wide(from).c_str(), wide(to).c_str(), how) != 0 ? std::error_code() : last_problem();
}

// A name is written through by replace().
std::error_code flush_folder(const std::string&) {
    return {};
}

// Rights of a folder are known by trying alone; a file says so.
bool may_write(const std::string& path) {
    const std::wstring name = wide(path);
    const DWORD attributes = GetFileAttributesW(name.c_str());
    if (attributes == INVALID_FILE_ATTRIBUTES) return false;
    const bool folder = (attributes & FILE_ATTRIBUTE_DIRECTORY) != 0;
    const HANDLE file = CreateFileW(name.c_str(), folder ? FILE_ADD_FILE : GENERIC_WRITE, shared, nullptr,
                                    OPEN_EXISTING, FILE_FLAG_BACKUP_SEMANTICS, nullptr);
    if (file == INVALID_HANDLE_VALUE) return false;
    CloseHandle(file);
    return true;
}

std::optional<FileStamp> stamp_of(const std::string& path) {
    WIN32_FILE_ATTRIBUTE_DATA about{};
    if (GetFileAttributesExW(wide(path).c_str(), GetFileExInfoStandard, &about) == 0) return std::nullopt;
    const auto whole = [](DWORD high, DWORD low) {
        return static_cast<std::int64_t>(std::uint64_t{high} << 32U | low);
    };
    return FileStamp{
        whole(about.nFileSizeHigh, about.nFileSizeLow),
        100 * whole(about.ftLastWriteTime.dwHighDateTime & 0x00ffffffU, about.ftLastWriteTime.dwLowDateTime)};
}

bool is_locked(const std::string& path, std::uint64_t begin, std::uint64_t count) {
    const HANDLE file = CreateFileW(wide(path).c_str(), GENERIC_READ | GENERIC_WRITE, shared, nullptr, OPEN_EXISTING,
                                    FILE_ATTRIBUTE_NORMAL, nullptr);
    if (file == INVALID_HANDLE_VALUE) return false;
    OVERLAPPED place{};
    place.Offset = static_cast<DWORD>(begin);
    place.OffsetHigh = static_cast<DWORD>(begin >> 32U);
    const auto low = static_cast<DWORD>(count);
    const auto high = static_cast<DWORD>(count >> 32U);
    const bool free = LockFileEx(file, LOCKFILE_EXCLUSIVE_LOCK | LOCKFILE_FAIL_IMMEDIATELY, 0, low, high, &place) != 0;
    if (free) UnlockFileEx(file, 0, low, high, &place);
    CloseHandle(file);
    return !free;
}

std::int64_t process_id() {
    return GetCurrentProcessId();
}

} // namespace lapwright::platform
