// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/view_archive.h"

#include "core/book/deflate.h"
#include "core/book/packed_values.h"

#include <algorithm>
#include <bit>

namespace lapwright::analysis {
namespace {

constexpr std::size_t most_plain_bytes = std::size_t{1} << 24U;
constexpr std::uint64_t most_numbers = std::uint64_t{1} << 22U; // in one column, and of columns

bool same_bits(std::span<const double> one, std::span<const double> other) {
    return std::ranges::equal(one, other, [](double a, double b) {
        return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
    });
}

void put_part(std::string& bytes, std::string_view part) {
    book::put_varint(bytes, part.size());
    bytes += part;
}

void put_column(std::string& bytes, std::span<const double> values) {
    book::put_varint(bytes, values.size());
    put_part(bytes, book::packed(values));
}

std::optional<std::string_view> take_part(std::string_view& bytes) {
    const auto size = book::take_varint(bytes);
    if (!size || *size > bytes.size()) return std::nullopt;
    const std::string_view part = bytes.substr(0, *size);
    bytes.remove_prefix(*size);
    return part;
}

std::optional<std::vector<double>> take_column(std::string_view& bytes) {
    const auto count = book::take_varint(bytes);
    if (!count || *count > most_numbers) return std::nullopt;
    const auto part = take_part(bytes);
    return part ? book::unpacked_values(*part, *count) : std::nullopt;
}

} // namespace

bool same(const Gathered& one, const Gathered& other) {
    return one.plain == other.plain && same_bits(one.numbers, other.numbers) &&
           std::ranges::equal(one.columns, other.columns, same_bits);
}

std::string bytes_of(const Gathered& gathered) {
    std::string bytes;
    put_part(bytes, book::deflated(gathered.plain));
    put_column(bytes, gathered.numbers);
    book::put_varint(bytes, gathered.columns.size());
    for (auto column = gathered.columns.begin(); column != gathered.columns.end(); ++column) {
        const auto earlier = std::find_if(gathered.columns.begin(), column,
                                          [&](const auto& other) { return same_bits(other, *column); });
        book::put_varint(bytes, static_cast<std::uint64_t>(column - earlier)); // how far back; 0: it follows
        if (earlier == column) put_column(bytes, *column);
    }
    return bytes;
}

std::optional<Gathered> gathered_of(std::string_view bytes) {
    Gathered gathered;
    const auto plain = take_part(bytes);
    auto inflated = plain ? book::inflated(*plain, most_plain_bytes) : std::nullopt;
    if (!inflated) return std::nullopt;
    gathered.plain = std::move(*inflated);
    auto numbers = take_column(bytes);
    const auto columns = book::take_varint(bytes);
    if (!numbers || !columns || *columns > bytes.size()) return std::nullopt;
    gathered.numbers = std::move(*numbers);
    for (std::uint64_t i = 0; i < *columns; ++i) {
        const auto back = book::take_varint(bytes);
        if (!back || *back > i) return std::nullopt;
        auto column = *back == 0 ? take_column(bytes) : std::optional(gathered.columns[i - *back]);
        if (!column) return std::nullopt;
        gathered.columns.push_back(std::move(*column));
    }
    return bytes.empty() ? std::optional(std::move(gathered)) : std::nullopt;
}

void Gather::add(const std::string& text) {
    put(text.size());
    gathered_.plain += text;
}

void Gather::add(const std::vector<motion::Vec2>& points) {
    std::vector<double> east;
    std::vector<double> north;
    for (const motion::Vec2& point : points) {
        east.push_back(point.east);
        north.push_back(point.north);
    }
    gathered_.columns.push_back(std::move(east));
    gathered_.columns.push_back(std::move(north));
}

bool Restore::finished() const {
    return well_ && plain_.empty() && numbers_taken_ == gathered_.numbers.size() &&
           columns_taken_ == gathered_.columns.size();
}

std::uint64_t Restore::whole(std::uint64_t most) {
    const auto value = book::take_varint(plain_);
    well_ = well_ && value && *value <= most;
    return well_ ? *value : 0;
}

void Restore::take(double& value) {
    well_ = well_ && numbers_taken_ < gathered_.numbers.size();
    if (well_) value = gathered_.numbers[numbers_taken_++];
}

void Restore::take(std::vector<double>& values) {
    well_ = well_ && columns_taken_ < gathered_.columns.size();
    if (well_) values = std::move(gathered_.columns[columns_taken_++]);
}

void Restore::take(std::string& text) {
    const std::uint64_t size = whole(plain_.size());
    well_ = well_ && size <= plain_.size();
    if (!well_) return;
    text = std::string(plain_.substr(0, size));
    plain_.remove_prefix(size);
}

void Restore::take(std::vector<motion::Vec2>& points) {
    std::vector<double> east;
    std::vector<double> north;
    take(east);
    take(north);
    well_ = well_ && east.size() == north.size();
    if (!well_) return;
    points.resize(east.size());
    for (std::size_t i = 0; i < points.size(); ++i)
        points[i] = {east[i], north[i]};
}

} // namespace lapwright::analysis
