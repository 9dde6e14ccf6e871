// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/batch_jobs.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/book/sha256.h"

#include <algorithm>
#include <filesystem>
#include <set>
#include <utility>

namespace lapwright::commands {
namespace {

using base::Result;

constexpr std::size_t max_stem = 40;   // bytes of a file's name in a result's
constexpr std::size_t key_digits = 12; // 48 bits: of a million jobs two meet with a chance of some 2e-3

std::vector<std::string> cells_of(std::string_view line) {
    std::vector<std::string> cells;
    while (true) {
        const std::size_t tab = line.find('\t');
        cells.emplace_back(base::trimmed(line.substr(0, tab)));
        if (tab == std::string_view::npos) return cells;
        line.remove_prefix(tab + 1);
    }
}

std::optional<int> lap_of(const std::string& text) {
    const auto number = base::parse_integer(text);
    return number && *number >= 0 && *number < 100'000 ? std::optional(static_cast<int>(*number)) : std::nullopt;
}

// Nothing where the cells are no job.
std::optional<Job> job_of(const std::vector<std::string>& cells) {
    Job job;
    job.a = cells.front();
    if (cells.size() == 1) return job;
    if (cells.size() > 4 || cells[1].empty()) return std::nullopt;
    job.b = cells[1];
    for (std::size_t i = 2; i < cells.size(); ++i) {
        if (cells[i].empty()) continue;
        const auto lap = lap_of(cells[i]);
        if (!lap) return std::nullopt;
        (i == 2 ? job.lap_a : job.lap_b) = lap;
    }
    return job;
}

std::string lap_text(const std::optional<int>& lap) {
    return lap ? base::integer_text(*lap) : "";
}

std::string text_of(const Job& job) {
    return job.a + "\t" + job.b + "\t" + lap_text(job.lap_a) + "\t" + lap_text(job.lap_b);
}

// Letters, digits, - and _ of the file's name: what every file system takes.
std::string stem_of(const std::string& path) {
    std::string stem = std::filesystem::path(path).stem().string().substr(0, max_stem);
    for (char& c : stem)
        if (!((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_'))
            c = '_';
    return stem;
}

} // namespace

Result<std::vector<Job>> jobs_of_list(std::string_view text, const std::string& file) {
    std::vector<Job> jobs;
    std::set<std::string> known;
    for (std::uint32_t number = 1; !text.empty(); ++number) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view line = base::trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.empty() || line.front() == '#') continue;
        auto job = job_of(cells_of(line));
        if (!job)
            return base::Error{base::ErrorCode::value_not_readable,
                               {file, number, {}},
                               "this is no job",
                               "write a recording, or two with a tab between and, if wished, two lap numbers"};
        if (known.insert(text_of(*job)).second) jobs.push_back(*std::move(job));
    }
    return jobs;
}

std::vector<Job> all_pairs(const std::vector<std::string>& recordings, std::size_t block) {
    std::vector<Job> jobs;
    for (std::size_t from = 0; from < recordings.size(); from += block)
        for (std::size_t b = from + 1; b < recordings.size(); ++b)
            for (std::size_t a = from; a < std::min(from + block, b); ++a)
                jobs.push_back({recordings[a], recordings[b], {}, {}});
    return jobs;
}

std::optional<Shard> parse_shard(std::string_view text) {
    const std::size_t slash = text.find('/');
    if (slash == std::string_view::npos) return std::nullopt;
    const auto i = base::parse_integer(text.substr(0, slash));
    const auto n = base::parse_integer(text.substr(slash + 1));
    if (!i || !n || *i < 1 || *n < *i || *n > 1'000'000) return std::nullopt;
    return Shard{static_cast<std::size_t>(*i), static_cast<std::size_t>(*n)};
}

std::vector<Job> piece_of(const std::vector<Job>& jobs, const Shard& shard) {
    const auto bound = [&](std::size_t i) { return static_cast<std::ptrdiff_t>(jobs.size() * i / shard.n); };
    return {jobs.begin() + bound(shard.i - 1), jobs.begin() + bound(shard.i)};
}

std::string result_name(const Job& job, std::string_view options) {
    const std::string key = book::hex_text(book::sha256_of(text_of(job) + "\n" + std::string(options)));
    return stem_of(job.a) + (job.b.empty() ? "" : "--" + stem_of(job.b)) + "-" + key.substr(0, key_digits);
}

} // namespace lapwright::commands
