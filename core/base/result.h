// SPDX-License-Identifier: GPL-3.0-or-later
// A value or the Error that says why there is none.
#pragma once

#include "core/base/check.h"
#include "core/base/error.h"

#include <optional>
#include <utility>
#include <variant>

namespace lapwright::base {

template <typename T>
class [[nodiscard]] Result {
  public:
    Result(T value) : content_(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : content_(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return content_.index() == 0; }
    explicit operator bool() const { return ok(); }

    // Only after ok(): asking a failed result for its value is a mistake of the program.
    [[nodiscard]] const T& value() const& {
        check(ok(), "value of a failed result");
        return *std::get_if<0>(&content_);
    }
    [[nodiscard]] T&& value() && {
        check(ok(), "value of a failed result");
        return std::move(*std::get_if<0>(&content_));
    }
    [[nodiscard]] const Error& error() const {
        check(!ok(), "error of a good result");
        return *std::get_if<1>(&content_);
    }
    const T* operator->() const { return &value(); }
    const T& operator*() const& { return value(); }

  private:
    std::variant<T, Error> content_;
};

// Done, or the Error that says why not: `return {};` is success.
template <>
class [[nodiscard]] Result<void> {
  public:
    Result() = default;
    Result(Error error) : error_(std::move(error)) {}

    [[nodiscard]] bool ok() const { return !error_; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const Error& error() const {
        check(!ok(), "error of a good result");
        return *error_;
    }

  private:
    std::optional<Error> error_;
};

} // namespace lapwright::base
