// SPDX-License-Identifier: GPL-3.0-or-later
// All numbers of the line in a row: on earth or not, origin, step, length, then five a node.
#include "core/book/line_bytes.h"

#include "core/book/deflate.h"
#include "core/book/packed_values.h"
#include "core/book/varint.h"

#include <vector>

namespace lapwright::book {
namespace {

constexpr std::size_t of_the_line = 6;
constexpr std::size_t of_a_node = 5;

} // namespace

std::string line_bytes(const KeptLine& kept) {
    const track::ReferenceLine& line = kept.line;
    std::vector<double> numbers{kept.frame.on_earth ? 1.0 : 0.0,
                                kept.frame.origin.latitude_rad,
                                kept.frame.origin.longitude_rad,
                                kept.frame.origin.height_m,
                                line.step_m,
                                line.length_m};
    for (std::size_t i = 0; i < line.size(); ++i)
        numbers.insert(numbers.end(), {line.position_m[i].east, line.position_m[i].north, line.tangent[i].east,
                                       line.tangent[i].north, line.curvature_per_m[i]});
    const std::string packed_numbers = packed(numbers);
    std::string bytes;
    put_varint(bytes, numbers.size());
    put_varint(bytes, crc32_of(packed_numbers));
    return bytes + packed_numbers;
}

std::optional<KeptLine> line_of_bytes(std::string_view bytes) {
    const auto count = take_varint(bytes);
    const auto crc = take_varint(bytes);
    if (!count || !crc || crc32_of(bytes) != *crc || *count < of_the_line || (*count - of_the_line) % of_a_node != 0)
        return std::nullopt;
    const auto numbers = unpacked_values(bytes, *count);
    if (!numbers) return std::nullopt;
    const std::vector<double>& n = *numbers;
    KeptLine kept{{{n[1], n[2], n[3]}, n[0] != 0.0}, {}};
    kept.line.step_m = n[4];
    kept.line.length_m = n[5];
    for (std::size_t i = of_the_line; i < n.size(); i += of_a_node) {
        kept.line.position_m.push_back({n[i], n[i + 1]});
        kept.line.tangent.push_back({n[i + 2], n[i + 3]});
        kept.line.curvature_per_m.push_back(n[i + 4]);
    }
    return kept;
}

} // namespace lapwright::book
