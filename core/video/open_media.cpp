// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/open_media.h"

#include "core/base/translation.h"
#include "core/platform/modules.h"

namespace lapwright::video {
namespace {

using base::said;

OpenMedia find_decoder() {
    const void* const entry = platform::own_module_variable(module_stem, module_entry);
    return entry == nullptr ? nullptr : *static_cast<const OpenMedia*>(entry);
}

OpenMedia decoder() {
    static const OpenMedia found = find_decoder();
    return found;
}

} // namespace

bool decoder_is_installed() {
    return decoder() != nullptr;
}

base::Result<std::unique_ptr<MediaFile>> open_media(const std::string& path) {
    const OpenMedia open = decoder();
    if (open == nullptr)
        return base::Error{base::ErrorCode::file_not_readable,
                           {path, {}, ""},
                           said("this installation has no video decoder"),
                           said("install the whole package of Lapwright")};
    return open(path);
}

} // namespace lapwright::video
