// SPDX-License-Identifier: GPL-3.0-or-later
// random_worlds [--first SEED] [--count N] [--worst N] [--keep FOLDER] [--rules-alone yes] [--only KIND]: N worlds
// from a seed through the program, each scored against its truth; those that err most and those that broke a rule are
// listed, and their files kept.  Ends with 1 when a rule was broken, or (but for --rules-alone) when so many stated
// intervals miss that chance does not explain it.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <unistd.h>

#include "tests/worlds/score_world.h"

namespace {

using worlds::Interval;
using worlds::Score;

struct Arguments {
    std::uint64_t first = 1;
    std::uint64_t count = 40;
    std::size_t worst = 10;
    std::string keep; // folder in which the worst worlds' files are left
    std::string only; // worlds in which a session is of this kind, such as "no positions"
    bool rules_alone = false;
};

Arguments parse(int count, char** words) {
    Arguments arguments;
    for (int i = 1; i + 1 < count; i += 2) {
        const std::string name = words[i];
        const std::string value = words[i + 1];
        if (name == "--first") arguments.first = std::stoull(value);
        if (name == "--count") arguments.count = std::stoull(value);
        if (name == "--worst") arguments.worst = std::stoull(value);
        if (name == "--keep") arguments.keep = value;
        if (name == "--only") arguments.only = value;
        if (name == "--rules-alone") arguments.rules_alone = value == "yes";
    }
    return arguments;
}

struct Kind {
    std::size_t count = 0;
    std::size_t inside = 0;
    double errors = 0.0;
    double squares = 0.0;
    double half_widths = 0.0;
    std::map<std::uint64_t, std::pair<std::size_t, std::size_t>> worlds; // count and inside of each

    [[nodiscard]] double share() const { return static_cast<double>(inside) / static_cast<double>(count); }
    // Intervals of one world err together: the spread of the share comes from the worlds.
    [[nodiscard]] double share_sd() const {
        double sum = 0.0;
        for (const auto& [seed, w] : worlds) {
            const double off = static_cast<double>(w.second) - share() * static_cast<double>(w.first);
            sum += off * off;
        }
        return std::sqrt(sum) / static_cast<double>(count);
    }
};

std::map<std::string, Kind> by_kind(const std::vector<Score>& scores) {
    std::map<std::string, Kind> kinds;
    for (const Score& score : scores) {
        for (const Interval& interval : score.intervals) {
            Kind& kind = kinds[interval.kind + (interval.of.empty() ? "" : ", " + interval.of)];
            ++kind.count;
            kind.inside += interval.inside ? 1 : 0;
            kind.errors += interval.error;
            kind.squares += interval.error * interval.error;
            kind.half_widths += interval.half_width;
            auto& [all, inside] = kind.worlds[score.seed];
            ++all;
            inside += interval.inside ? 1 : 0;
        }
    }
    return kinds;
}

// Whether the share of intervals that hold the truth is outside 90 to 98 % by more than chance.
bool print_coverage(const std::vector<Score>& scores) {
    bool bad = false;
    std::printf("%-40s %7s %7s %12s %16s %8s\n", "stated interval", "worlds", "count", "RMS error", "mean half-width",
                "inside");
    for (const auto& [name, kind] : by_kind(scores)) {
        const double n = static_cast<double>(kind.count);
        const double slack =
            3.0 * std::max(kind.share_sd(), 0.5 / std::sqrt(static_cast<double>(kind.worlds.size())) * 0.2);
        const bool wrong = kind.share() < 0.90 - slack || (kind.share() > 0.98 + slack && kind.worlds.size() > 100);
        std::printf("%-40s %7zu %7zu %12.5f %12.5f %16.5f %7.1f%% ±%.1f%s\n", name.c_str(), kind.worlds.size(),
                    kind.count, kind.errors / n, std::sqrt(kind.squares / n), kind.half_widths / n,
                    100.0 * kind.share(), 200.0 * kind.share_sd(), wrong ? "  OUT OF BOUNDS" : "");
        bad = bad || wrong;
    }
    std::map<std::string, std::size_t> untold;
    for (const Score& score : scores)
        for (const auto& [kind, count] : score.untold)
            untold[kind] += count;
    for (const auto& [kind, count] : untold)
        std::printf("%5zu times the program says that it cannot tell: %s\n", count, kind.c_str());
    return bad;
}

struct Miss {
    const Score* score = nullptr;
    std::string kind;
    double half_widths = 0.0; // RMS error of that kind over its half-width
};

std::vector<Miss> misses_of(const Score& score) {
    std::map<std::string, std::pair<double, double>> sums; // squares, count
    for (const Interval& interval : score.intervals) {
        if (!(interval.half_width > 0.0)) continue;
        auto& [squares, count] = sums[interval.kind + (interval.of.empty() ? "" : ", " + interval.of)];
        squares += std::pow(interval.error / interval.half_width, 2);
        count += 1.0;
    }
    std::vector<Miss> misses;
    for (const auto& [kind, sum] : sums)
        misses.push_back({&score, kind, std::sqrt(sum.first / sum.second)});
    return misses;
}

// The worlds whose stated intervals miss by most: the seeds.
std::vector<std::uint64_t> print_furthest(const std::vector<Score>& scores, std::size_t worst) {
    std::vector<Miss> all;
    for (const Score& score : scores)
        for (Miss& miss : misses_of(score))
            all.push_back(std::move(miss));
    std::ranges::sort(all, std::greater<>{}, &Miss::half_widths);
    if (all.size() > worst) all.resize(worst);
    std::vector<std::uint64_t> seeds;
    for (const Miss& miss : all) {
        std::printf("world %llu, %s: errs by %.1f half-widths; %s\n", static_cast<unsigned long long>(miss.score->seed),
                    miss.kind.c_str(), miss.half_widths, miss.score->in_words.c_str());
        seeds.push_back(miss.score->seed);
    }
    return seeds;
}

bool print_breaches(const std::vector<Score>& scores, std::size_t worst) {
    std::map<std::string, std::size_t> rules;
    for (const Score& score : scores)
        for (const worlds::Breach& breach : score.breaches)
            ++rules[breach.rule];
    for (const auto& [rule, count] : rules)
        std::printf("%5zu times: %s\n", count, rule.c_str());
    std::vector<const Score*> order;
    for (const Score& score : scores)
        if (!score.breaches.empty()) order.push_back(&score);
    std::ranges::sort(order, std::greater<>{}, [](const Score* s) { return s->breaches.size(); });
    if (order.size() > worst) order.resize(worst);
    for (const Score* score : order) {
        std::printf("world %llu: %s\n   says: %s\n", static_cast<unsigned long long>(score->seed),
                    score->in_words.c_str(), score->headline.c_str());
        for (std::size_t i = 0; i < std::min<std::size_t>(score->breaches.size(), 6); ++i)
            std::printf("   %s: %s\n", score->breaches[i].rule.c_str(), score->breaches[i].words.c_str());
    }
    return !rules.empty();
}

void keep_files(const worlds::World& world, const std::string& folder) {
    const std::string own = folder + "/" + std::to_string(world.seed);
    std::filesystem::create_directories(own);
    for (const worlds::Entry* entry : {&world.a, &world.b})
        std::ofstream(own + "/" + entry->file_name, std::ios::binary) << entry->text;
}

} // namespace

int main(int count, char** words) {
    const Arguments arguments = parse(count, words);
    const std::string folder =
        (std::filesystem::temp_directory_path() / ("random-worlds-" + std::to_string(getpid()))).string();
    std::filesystem::create_directories(folder);
    std::vector<Score> scores;
    for (std::uint64_t seed = arguments.first; seed < arguments.first + arguments.count; ++seed) {
        const worlds::World world = worlds::draw_world(seed);
        const bool asked_for = arguments.only.empty() || worlds::kind_of(world.a.logger) == arguments.only ||
                               worlds::kind_of(world.b.logger) == arguments.only;
        if (!asked_for) continue;
        scores.push_back(worlds::score_world(world, worlds::run_world(world, folder)));
        if (!scores.back().breaches.empty() && !arguments.keep.empty()) keep_files(world, arguments.keep);
    }
    std::filesystem::remove_all(folder);
    const auto compared = std::ranges::count_if(scores, [](const Score& score) { return score.compared; });
    std::printf("%zu worlds from seed %llu, %td compared\n", scores.size(),
                static_cast<unsigned long long>(arguments.first), compared);
    const bool out_of_bounds = print_coverage(scores);
    const auto furthest = print_furthest(scores, arguments.worst);
    if (!arguments.keep.empty())
        for (const std::uint64_t seed : furthest)
            keep_files(worlds::draw_world(seed), arguments.keep);
    const bool broken = print_breaches(scores, arguments.worst);
    return broken || (out_of_bounds && !arguments.rules_alone) ? 1 : 0;
}
