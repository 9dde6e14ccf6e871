// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/byte_source.h"

#include "core/base/translation.h"
#include "core/import/text/limits.h"
#include "core/platform/files.h"

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

Error not_readable(const std::string& path) {
    return {ErrorCode::file_not_readable,
            {path, {}, ""},
            said("the file cannot be read"),
            said("check its name and your rights to it")};
}

} // namespace

base::Result<ByteSource> ByteSource::open(const std::string& path) {
    const auto file = std::make_shared<const platform::ReadableFile>(path);
    using Outcome = platform::ReadableFile::Outcome;
    if (file->outcome() == Outcome::not_readable) return not_readable(path);
    if (file->outcome() == Outcome::no_file_of_data)
        return Error{
            ErrorCode::file_not_readable, {path, {}, ""}, said("this is no file of data"), said("name a single file")};
    if (file->size() > largest_file_bytes)
        return Error{ErrorCode::file_too_large,
                     {path, {}, ""},
                     said("the file is larger than 4 GiB"),
                     said("export one session alone")};
    return ByteSource(file, static_cast<std::size_t>(file->size()));
}

std::optional<std::string_view> ByteSource::piece(std::size_t begin, std::size_t end, std::string& buffer) const {
    if (!file_) return memory_.substr(begin, end - begin);
    buffer.resize(end - begin);
    if (!file_->read(begin, buffer.data(), buffer.size())) return std::nullopt;
    return std::string_view(buffer);
}

} // namespace lapwright::import
