// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/open_media.h"

#include "core/platform/modules.h"

#include <filesystem>
#include <system_error>

namespace lapwright::video {
namespace {

namespace fs = std::filesystem;

// lib/lapwright/modules in the folder of the program, or beside it, as installed, or a little further up, as built.
fs::path module_path() {
    constexpr int levels = 5;
    std::error_code none;
    fs::path folder = fs::path(platform::program_path()).parent_path();
    for (int level = 0; level < levels && folder.has_relative_path(); ++level) {
        fs::path module = folder / "lib" / "lapwright" / "modules" / platform::module_name(module_stem);
        if (fs::exists(module, none)) return module;
        folder = folder.parent_path();
    }
    return {};
}

OpenMedia find_decoder() {
    const fs::path path = module_path();
    if (path.empty()) return nullptr;
    const void* const entry = platform::module_variable(path.string(), module_entry);
    return entry == nullptr ? nullptr : *static_cast<const OpenMedia*>(entry);
}

} // namespace

base::Result<std::unique_ptr<MediaFile>> open_media(const std::string& path) {
    static const OpenMedia open = find_decoder();
    if (open == nullptr)
        return base::Error{base::ErrorCode::file_not_readable,
                           {path, {}, ""},
                           "this installation has no video decoder",
                           "install the whole package of Lapwright"};
    return open(path);
}

} // namespace lapwright::video
