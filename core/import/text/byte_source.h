// SPDX-License-Identifier: GPL-3.0-or-later
// The bytes of an input, from memory or from a file that is read piece by piece.  A file is never mapped: a card that
// is pulled out while it is read must end in a sentence, not in a signal.  Pieces may be asked for from any thread.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::platform {
class ReadableFile;
}

namespace lapwright::import {

class ByteSource {
  public:
    // The bytes must outlive the source.
    explicit ByteSource(std::string_view bytes) : memory_(bytes), size_(bytes.size()) {}
    [[nodiscard]] static base::Result<ByteSource> open(const std::string& path);

    [[nodiscard]] std::size_t size() const { return size_; }
    // The same source, ending earlier.
    [[nodiscard]] ByteSource first(std::size_t size) const {
        ByteSource shorter = *this;
        shorter.memory_ = memory_.substr(0, size);
        shorter.size_ = size;
        return shorter;
    }

    // Bytes [begin, end) within the size; `buffer` holds them where they come from a file.  Nothing where the file
    // cannot be read there any more.
    [[nodiscard]] std::optional<std::string_view> piece(std::size_t begin, std::size_t end, std::string& buffer) const;

  private:
    ByteSource(std::shared_ptr<const platform::ReadableFile> file, std::size_t size)
        : file_(std::move(file)), size_(size) {}

    std::string_view memory_;
    std::shared_ptr<const platform::ReadableFile> file_;
    std::size_t size_ = 0;
};

} // namespace lapwright::import
