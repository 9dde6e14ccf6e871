// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/deflate.h"

#include "core/base/check.h"

#include <algorithm>
#include <limits>

#include <zlib.h>

namespace lapwright::book {
namespace {

// Beyond this the ratio hardly grows and the time does.
constexpr int effort = 6;

Bytef* as_bytes(char* text) {
    return reinterpret_cast<Bytef*>(text);
}

// zlib promises not to write to its input.
Bytef* as_input(std::string_view text) {
    return reinterpret_cast<Bytef*>(const_cast<char*>(text.data()));
}

} // namespace

std::string deflated(std::string_view bytes) {
    std::string out(compressBound(static_cast<uLong>(bytes.size())), '\0');
    auto size = static_cast<uLongf>(out.size());
    const int state = compress2(as_bytes(out.data()), &size, as_input(bytes), static_cast<uLong>(bytes.size()), effort);
    base::check(state == Z_OK, "zlib has no memory to compress with");
    out.resize(size);
    return out;
}

std::optional<std::string> inflated(std::string_view bytes, std::size_t max_bytes) {
    z_stream stream{};
    if (bytes.size() > std::numeric_limits<uInt>::max() || inflateInit(&stream) != Z_OK) return std::nullopt;
    stream.next_in = as_input(bytes);
    stream.avail_in = static_cast<uInt>(bytes.size());
    std::string out;
    int state = Z_OK;
    while (state == Z_OK && out.size() <= max_bytes) {
        const std::size_t before = out.size();
        const std::size_t step = std::max<std::size_t>(4 * bytes.size() + 64, before);
        out.resize(before + std::min<std::size_t>(step, std::size_t{1} << 28U));
        stream.next_out = as_bytes(out.data() + before);
        stream.avail_out = static_cast<uInt>(out.size() - before);
        state = inflate(&stream, Z_NO_FLUSH);
        out.resize(out.size() - stream.avail_out);
        if (out.size() == before && state == Z_OK) break;
    }
    inflateEnd(&stream);
    if (state != Z_STREAM_END || stream.avail_in != 0 || out.size() > max_bytes) return std::nullopt;
    return out;
}

std::uint32_t crc32_of(std::string_view bytes) {
    return static_cast<std::uint32_t>(crc32_z(crc32_z(0, nullptr, 0), as_input(bytes), bytes.size()));
}

} // namespace lapwright::book
