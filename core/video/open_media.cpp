// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/open_media.h"

#include <filesystem>
#include <system_error>

#ifndef _WIN32
#include <dlfcn.h>
#endif

namespace lapwright::video {
namespace {

namespace fs = std::filesystem;

#ifdef _WIN32
OpenMedia find_decoder() {
    return nullptr;
}
#else
// lib/lapwright/modules beside the folder of the program, as installed, or a little further up, as built.
fs::path module_path() {
    constexpr int levels = 4;
    std::error_code none;
    fs::path folder = fs::read_symlink("/proc/self/exe", none).parent_path();
    for (int level = 0; level < levels && folder.has_relative_path(); ++level) {
        folder = folder.parent_path();
        const fs::path module = folder / "lib" / "lapwright" / "modules" / module_file;
        if (fs::exists(module, none)) return module;
    }
    return {};
}

OpenMedia find_decoder() {
    const fs::path path = module_path();
    if (path.empty()) return nullptr;
    void* const module = dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL); // stays for the life of the program
    const void* const entry = module == nullptr ? nullptr : dlsym(module, module_entry);
    return entry == nullptr ? nullptr : *static_cast<const OpenMedia*>(entry);
}
#endif

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
