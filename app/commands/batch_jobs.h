// SPDX-License-Identifier: GPL-3.0-or-later
// The jobs of a batch as values: what is asked for, in which order, cut into which pieces.  The same list makes the
// same jobs on every machine, so that workers need to agree on nothing.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::commands {

// One recording (b empty), or two that are compared; paths, or "book:ID" for a session of the book.
struct Job {
    std::string a;
    std::string b;
    std::optional<int> lap_a; // nothing: the fastest clean lap
    std::optional<int> lap_b;

    bool operator==(const Job&) const = default;
};

// A line a job: a path, or two with a tab between, behind them, if wished, the two laps' numbers.  Lines that are empty
// or begin with # are passed over; a job that stands there twice is one.  Error value_not_readable names the line.
[[nodiscard]] base::Result<std::vector<Job>> jobs_of_list(std::string_view text, const std::string& file);

// Each recording of the list with each other: those of a block with all behind them, one after the other.  Whoever
// keeps the sessions used last, two more than a block has, reads one for every `block` pairs.
[[nodiscard]] std::vector<Job> all_pairs(const std::vector<std::string>& recordings, std::size_t block);

// The i-th of n pieces, i from 1.
struct Shard {
    std::size_t i = 1;
    std::size_t n = 1;
};
// "3/16"; nothing where it is no such thing.
[[nodiscard]] std::optional<Shard> parse_shard(std::string_view text);

// Neighbours stay together; every job is in one piece, and pieces differ by one job at most.
[[nodiscard]] std::vector<Job> piece_of(const std::vector<Job>& jobs, const Shard& shard);

// The result's file name without its ending: readable, another for every job and set of options.
[[nodiscard]] std::string result_name(const Job& job, std::string_view options);

} // namespace lapwright::commands
