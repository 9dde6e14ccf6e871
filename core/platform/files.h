// SPDX-License-Identifier: GPL-3.0-or-later
// What this program wants of an operating system's files beyond the standard library: the only place, with program.h,
// that knows which system it is.  The build takes files_posix.cpp or files_windows.cpp.  Paths are UTF-8.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <system_error>

namespace lapwright::platform {

// A file that is open for reading at any place of it, from any thread.
class ReadableFile {
  public:
    enum class Outcome { good, not_readable, no_file_of_data }; // the last: a folder, a pipe, a device

    explicit ReadableFile(const std::string& path);
    ReadableFile(const ReadableFile&) = delete;
    ReadableFile& operator=(const ReadableFile&) = delete;
    ~ReadableFile();

    [[nodiscard]] Outcome outcome() const { return outcome_; }
    [[nodiscard]] std::uint64_t size() const { return size_; }
    // All of the bytes, or false.
    [[nodiscard]] bool read(std::uint64_t offset, char* into, std::size_t count) const;

  private:
    std::intptr_t handle_ = -1;
    std::uint64_t size_ = 0;
    Outcome outcome_ = Outcome::not_readable;
};

// A file that was not there (else std::errc::file_exists), with its content on the disk.  Removed again when that
// fails.
[[nodiscard]] std::error_code write_new(const std::string& path, std::string_view content);
// What was written to the file is on the disk.
[[nodiscard]] std::error_code flush(const std::string& path);
// `from` gets the name `to` in one step, and takes the place of a file of that name (IEEE Std 1003.1-2017, rename();
// Windows: MoveFileEx).
[[nodiscard]] std::error_code replace(const std::string& from, const std::string& to);
// The names in the folder are on the disk; an empty path is the present one.
[[nodiscard]] std::error_code flush_folder(const std::string& path);

[[nodiscard]] bool may_write(const std::string& path); // a file or a folder that is there

struct FileStamp {
    std::int64_t size = 0;
    std::int64_t changed_ns = 0;
};
[[nodiscard]] std::optional<FileStamp> stamp_of(const std::string& path);

// Another process has a lock on some byte of the range.
[[nodiscard]] bool is_locked(const std::string& path, std::uint64_t begin, std::uint64_t count);

[[nodiscard]] std::int64_t process_id();

} // namespace lapwright::platform
