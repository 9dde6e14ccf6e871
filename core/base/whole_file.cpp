// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_file.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/platform/files.h"

#include <filesystem>
#include <system_error>

namespace lapwright::base {
namespace {

namespace fs = std::filesystem;

constexpr int max_names = 100;

std::error_code write_and_rename(const std::string& target, std::string_view content) {
    std::string partial;
    std::error_code problem = std::make_error_code(std::errc::file_exists);
    // Another run may be writing under the first name.
    for (int i = 0; i < max_names && problem == std::errc::file_exists; ++i) {
        partial = target + ".part" + integer_text(platform::process_id()) + "-" + integer_text(i);
        problem = platform::write_new(partial, content);
    }
    if (problem) return problem;
    problem = platform::replace(partial, target);
    std::error_code ignored;
    if (problem) fs::remove(partial, ignored);
    return problem;
}

} // namespace

Result<void> write_whole_file(const std::string& path, std::string_view content, const std::string& what) {
    const auto refused = [&](const std::string& why) {
        return Error{ErrorCode::file_not_writable,
                     {path, {}, {}},
                     said("%1 cannot be written: %2", {what, why}),
                     said("choose another folder or file name")};
    };
    std::error_code unknown;
    const fs::file_status status = fs::status(path, unknown);
    if (fs::exists(status) && !fs::is_regular_file(status)) return refused(said("this is a folder or a device"));
    std::error_code unresolved;
    const fs::path target = fs::exists(status) ? fs::canonical(path, unresolved) : fs::path(path);
    if (unresolved) return refused(unresolved.message());
    const std::error_code problem = write_and_rename(target.string(), content);
    if (problem) return refused(problem.message());
    return {};
}

} // namespace lapwright::base
