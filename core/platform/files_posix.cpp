// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/files.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lapwright::platform {
namespace {

constexpr mode_t as_the_umask_says = 0666;

std::error_code last_problem() {
    return {errno, std::generic_category()};
}

std::error_code write_all(int file, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(file, content.data(), content.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return last_problem();
        content.remove_prefix(static_cast<std::size_t>(written));
    }
    return ::fsync(file) == 0 ? std::error_code() : last_problem();
}

std::error_code flushed(const std::string& path, int flags) {
    const int file = ::open(path.c_str(), flags | O_CLOEXEC);
    if (file < 0) return last_problem();
    const std::error_code problem = ::fsync(file) == 0 ? std::error_code() : last_problem();
    return ::close(file) != 0 && !problem ? last_problem() : problem;
}

} // namespace

ReadableFile::ReadableFile(const std::string& path)
    : handle_(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)) { // a pipe would let it wait
    struct stat about{};
    if (handle_ < 0 || ::fstat(static_cast<int>(handle_), &about) != 0) return;
    outcome_ = S_ISREG(about.st_mode) ? Outcome::good : Outcome::no_file_of_data;
    size_ = static_cast<std::uint64_t>(about.st_size);
}

ReadableFile::~ReadableFile() {
    if (handle_ >= 0) ::close(static_cast<int>(handle_));
}

bool ReadableFile::read(std::uint64_t offset, char* into, std::size_t count) const {
    while (count > 0) {
        const ssize_t got = ::pread(static_cast<int>(handle_), into, count, static_cast<off_t>(offset));
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) return false;
        into += got;
        count -= static_cast<std::size_t>(got);
        offset += static_cast<std::uint64_t>(got);
    }
    return true;
}

std::error_code write_new(const std::string& path, std::string_view content) {
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, as_the_umask_says);
    if (file < 0) return last_problem();
    std::error_code problem = write_all(file, content);
    if (::close(file) != 0 && !problem) problem = last_problem();
    if (problem) ::unlink(path.c_str());
    return problem;
}

std::error_code flush(const std::string& path) {
    return flushed(path, O_RDWR);
}

std::error_code replace(const std::string& from, const std::string& to) {
    return std::rename(from.c_str(), to.c_str()) == 0 ? std::error_code() : last_problem();
}

std::error_code flush_folder(const std::string& path) {
    return flushed(path.empty() ? "." : path, O_RDONLY | O_DIRECTORY);
}

bool may_write(const std::string& path) {
    return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0;
}

std::optional<FileStamp> stamp_of(const std::string& path) {
    struct stat file{};
    if (::stat(path.c_str(), &file) != 0) return std::nullopt;
    return FileStamp{file.st_size, std::int64_t{file.st_mtim.tv_sec} * 1'000'000'000 + file.st_mtim.tv_nsec};
}

bool is_locked(const std::string& path, std::uint64_t begin, std::uint64_t count) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return false;
    struct flock lock{};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    lock.l_start = static_cast<off_t>(begin);
    lock.l_len = static_cast<off_t>(count);
    const bool locked = ::fcntl(file, F_GETLK, &lock) == 0 && lock.l_type != F_UNLCK;
    ::close(file);
    return locked;
}

std::int64_t process_id() {
    return ::getpid();
}

} // namespace lapwright::platform
