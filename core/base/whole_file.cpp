// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_file.h"

#include "core/base/number_text.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace lapwright::base {
namespace {

namespace fs = std::filesystem;

constexpr int max_names = 100;
constexpr mode_t as_the_umask_says = 0666;

// 0, or the error number of the system.
int write_all(int file, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(file, content.data(), content.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return errno;
        content.remove_prefix(static_cast<std::size_t>(written));
    }
    return ::fsync(file) == 0 ? 0 : errno;
}

// Another run may be writing under the first name; the file is open for writing, or -1.
int open_beside(const std::string& target, std::string& partial) {
    for (int i = 0; i < max_names; ++i) {
        partial = target + ".part" + integer_text(::getpid()) + "-" + integer_text(i);
        const int file = ::open(partial.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, as_the_umask_says);
        if (file >= 0 || errno != EEXIST) return file;
    }
    return -1;
}

int write_and_rename(const std::string& target, std::string_view content) {
    std::string partial;
    const int file = open_beside(target, partial);
    if (file < 0) return errno;
    int problem = write_all(file, content);
    if (::close(file) != 0 && problem == 0) problem = errno;
    if (problem == 0 && std::rename(partial.c_str(), target.c_str()) != 0) problem = errno;
    if (problem != 0) ::unlink(partial.c_str());
    return problem;
}

} // namespace

Result<void> write_whole_file(const std::string& path, std::string_view content, const std::string& what) {
    const auto refused = [&](const std::string& why) {
        return Error{ErrorCode::file_not_writable,
                     {path, {}, {}},
                     what + " cannot be written: " + why,
                     "choose another folder or file name"};
    };
    std::error_code unknown;
    const fs::file_status status = fs::status(path, unknown);
    if (fs::exists(status) && !fs::is_regular_file(status)) return refused("this is a folder or a device");
    std::error_code unresolved;
    const fs::path target = fs::exists(status) ? fs::canonical(path, unresolved) : fs::path(path);
    if (unresolved) return refused(unresolved.message());
    const int problem = write_and_rename(target.string(), content);
    if (problem != 0) return refused(std::error_code(problem, std::generic_category()).message());
    return {};
}

} // namespace lapwright::base
