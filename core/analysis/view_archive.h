// SPDX-License-Identifier: GPL-3.0-or-later
// Values as bytes and back, to the last bit, by their fields (view_fields.h).  Numbers are gathered apart from the
// rest, because each kind is packed in its own way (core/book/packed_values.h); a column that is there already, such as
// a grid that two laps share, is not written again.
//
// Layout: whole numbers, flags and texts, deflated; single numbers, packed; then the columns, each packed, or the place
// of an earlier one that is equal.  Every part bears its length.
#pragma once

#include "core/analysis/view_fields.h"
#include "core/book/varint.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace lapwright::analysis {

struct Gathered {
    std::string plain; // varints, and texts with their lengths
    std::vector<double> numbers;
    std::vector<std::vector<double>> columns;
};

// Bit for bit.
[[nodiscard]] bool same(const Gathered& one, const Gathered& other);

[[nodiscard]] std::string bytes_of(const Gathered& gathered);
// Nothing where the bytes are no such thing.
[[nodiscard]] std::optional<Gathered> gathered_of(std::string_view bytes);

class Gather {
  public:
    template <typename... Value>
    void operator()(const Value&... value) {
        (add(value), ...);
    }
    [[nodiscard]] const Gathered& gathered() const { return gathered_; }

  private:
    void add(double value) { gathered_.numbers.push_back(value); }
    void add(const std::vector<double>& values) { gathered_.columns.push_back(values); }
    void add(const std::string& text);
    void add(const std::vector<motion::Vec2>& points);
    template <typename Value>
    void add(const std::optional<Value>& value) {
        put(value ? 1 : 0);
        if (value) add(*value);
    }
    template <typename Value>
    void add(const std::vector<Value>& values) {
        put(values.size());
        for (const Value& value : values)
            add(value);
    }
    template <typename Value>
    void add(const Value& value) {
        if constexpr (std::is_integral_v<Value> || std::is_enum_v<Value>)
            put(static_cast<std::uint64_t>(value));
        else
            fields(*this, value);
    }
    void put(std::uint64_t value) { book::put_varint(gathered_.plain, value); }

    Gathered gathered_;
};

// Reads in the order of writing.  What does not fit leaves values as they are and well() false.
class Restore {
  public:
    explicit Restore(Gathered gathered) : gathered_(std::move(gathered)), plain_(gathered_.plain) {}
    Restore(const Restore&) = delete; // looks into itself
    Restore& operator=(const Restore&) = delete;

    template <typename... Value>
    void operator()(Value&... value) {
        (take(value), ...);
    }
    [[nodiscard]] bool well() const { return well_; }
    [[nodiscard]] bool finished() const; // nothing is left over

  private:
    void take(double& value);
    void take(std::vector<double>& values);
    void take(std::string& text);
    void take(std::vector<motion::Vec2>& points);
    template <typename Value>
    void take(std::optional<Value>& value) {
        if (const std::uint64_t there = whole(1); there == 1 && well_) take(value.emplace());
    }
    // Each value has at least one byte in `plain`.
    template <typename Value>
    void take(std::vector<Value>& values) {
        const std::uint64_t count = whole(plain_.size());
        for (std::uint64_t i = 0; i < count && well_; ++i)
            take(values.emplace_back());
    }
    template <typename Value>
    void take(Value& value) {
        if constexpr (std::is_same_v<Value, bool>)
            value = whole(1) == 1;
        else if constexpr (std::is_enum_v<Value>)
            value = static_cast<Value>(whole(static_cast<std::uint64_t>(last_of(Value{}))));
        else if constexpr (std::is_integral_v<Value>)
            value = static_cast<Value>(whole(~std::uint64_t{0}));
        else
            fields(*this, value);
    }
    [[nodiscard]] std::uint64_t whole(std::uint64_t most); // 0 where it is more

    Gathered gathered_;
    std::string_view plain_;
    std::size_t numbers_taken_ = 0;
    std::size_t columns_taken_ = 0;
    bool well_ = true;
};

} // namespace lapwright::analysis
