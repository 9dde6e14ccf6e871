// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/byte_source.h"

#include "core/import/text/limits.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;

Error not_readable(const std::string& path) {
    return {ErrorCode::file_not_readable,
            {path, {}, ""},
            "the file cannot be read",
            "check its name and your rights to it"};
}

} // namespace

struct ByteSource::OpenFile {
    explicit OpenFile(int descriptor) : fd(descriptor) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() {
        if (fd >= 0) ::close(fd);
    }

    int fd;
};

base::Result<ByteSource> ByteSource::open(const std::string& path) {
    const auto file = std::make_shared<const OpenFile>(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat about{};
    if (file->fd < 0 || ::fstat(file->fd, &about) != 0) return not_readable(path);
    if (!S_ISREG(about.st_mode))
        return Error{ErrorCode::file_not_readable, {path, {}, ""}, "this is no file of data", "name a single file"};
    const auto size = static_cast<std::size_t>(about.st_size);
    if (size > largest_file_bytes)
        return Error{
            ErrorCode::file_too_large, {path, {}, ""}, "the file is larger than 4 GiB", "export one session alone"};
    return ByteSource(file, size);
}

std::optional<std::string_view> ByteSource::piece(std::size_t begin, std::size_t end, std::string& buffer) const {
    if (!file_) return memory_.substr(begin, end - begin);
    buffer.resize(end - begin);
    std::size_t got = 0;
    while (got < buffer.size()) {
        const ssize_t count =
            ::pread(file_->fd, buffer.data() + got, buffer.size() - got, static_cast<off_t>(begin + got));
        if (count < 0 && errno == EINTR) continue;
        if (count <= 0) return std::nullopt;
        got += static_cast<std::size_t>(count);
    }
    return std::string_view(buffer);
}

} // namespace lapwright::import
