// SPDX-License-Identifier: GPL-3.0-or-later
// mutants [--first SEED] [--count N]: N bad files, each given to a drawn subcommand as table or JSON in a process of
// its own.  However bad the file: no signal, an end within the time, exit status 0, 1 or 2, one sentence where it is
// refused, JSON that a strict parser takes, no control character in text for people.  Ends with 1 when one of these was
// broken.
#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

#include "app/commands/commands.h"
#include "tests/hostile/good_files.h"
#include "tests/hostile/mutate.h"
#include "tests/worlds/draws.h"

namespace {

#if defined(__SANITIZE_ADDRESS__)
constexpr bool sanitized = true;
#else
constexpr bool sanitized = false;
#endif
constexpr unsigned longest_s = sanitized ? 60 : 5;
constexpr double most_bytes_a_byte = 12.0;
constexpr double most_bytes_besides = 300e6;

struct Case {
    std::vector<std::string> words;
    std::string what;
    double file_bytes = 0.0;
};

void write(const std::string& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

// The files of a case lie in `folder`: bad.*, and good.csv beside it for what needs two.
class Cases {
  public:
    explicit Cases(std::string folder) : folder_(std::move(folder)), good_(hostile::good_files()) {
        write(folder_ + "/good.csv", good_.front().text);
    }

    Case draw(std::uint64_t seed) const {
        truth::Random random(seed, 83);
        return worlds::chance(random, 0.15) ? bad_document(random, seed) : bad_recording(random, seed);
    }

  private:
    [[nodiscard]] Case bad_recording(truth::Random& random, std::uint64_t seed) const {
        const hostile::GoodFile& good = worlds::one_of(random, good_);
        const hostile::Mutant mutant = good.form == hostile::Form::table
                                           ? hostile::mutate_table(good.text, good.delimiter, seed)
                                           : hostile::mutate_lines(good.text, seed);
        const std::string bad = folder_ + "/bad-" + good.name;
        write(bad, mutant.text);
        Case one{words(random, bad), good.name + ": " + mutant.what, static_cast<double>(mutant.text.size())};
        return one;
    }

    [[nodiscard]] Case bad_document(truth::Random& random, std::uint64_t seed) const {
        const bool track = worlds::chance(random, 0.5);
        const hostile::Mutant mutant =
            hostile::mutate_json(track ? hostile::good_track_file() : hostile::good_setup_file(), seed);
        const std::string bad = folder_ + "/bad.json";
        write(bad, mutant.text);
        const std::string good = folder_ + "/good.csv";
        std::vector<std::string> words =
            track ? std::vector<std::string>{"laps", good, "--track", bad}
                  : std::vector<std::string>{"causes", good, good, "--lap-b", "2", "--setup-a", bad};
        if (worlds::chance(random, 0.5)) words.emplace_back("--json");
        return {words, (track ? "track file: " : "setup: ") + mutant.what, static_cast<double>(mutant.text.size())};
    }

    [[nodiscard]] std::vector<std::string> words(truth::Random& random, const std::string& bad) const {
        const std::string good = folder_ + "/good.csv";
        const std::string book = folder_ + "/book";
        const std::vector<std::vector<std::string>> all{{"laps", bad},
                                                        {"laps", bad, good},
                                                        {"compare", bad, bad},
                                                        {"compare", bad, good},
                                                        {"compare", good, bad},
                                                        {"causes", bad, good},
                                                        {"sheet", good, bad, "--out", folder_ + "/sheet.html"},
                                                        {"trial", good, bad, good, "--changed", "2"},
                                                        {"recipe", bad},
                                                        {"traces", bad, "--json"},
                                                        {"book", "--book", book, "add", bad}};
        std::vector<std::string> words = worlds::one_of(random, all);
        const bool knows_json = words.front() != "sheet" && words.front() != "recipe" && words.front() != "traces";
        if (knows_json && worlds::chance(random, 0.5)) words.emplace_back("--json");
        return words;
    }

    std::string folder_;
    std::vector<hostile::GoodFile> good_;
};

bool has_controls(const std::string& text) {
    for (const char c : text)
        if ((static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7f) return true;
    return false;
}

// What is wrong with how the program answered; empty: nothing.
std::string verdict(const std::vector<std::string>& words) {
    std::ostringstream out;
    std::ostringstream err;
    const int status = lapwright::commands::run(words, out, err);
    const bool json = words.back() == "--json";
    if (status < 0 || status > 2) return "exit status " + std::to_string(status);
    if (status != 0 && err.str().empty()) return "refused without a word";
    if (err.str().find("a mistake of the program") != std::string::npos) return err.str();
    if (has_controls(err.str()) || (!json && has_controls(out.str()))) return "a control character is printed";
    if (status == 0 && json && !nlohmann::json::accept(out.str())) return "JSON that no parser takes";
    if (!json && (out.str().find("nan") != std::string::npos || out.str().find("±inf") != std::string::npos))
        return words.front() == "recipe" ? "" : "a number that is none: " + out.str().substr(0, 400);
    return {};
}

// The same in a process of its own, which may die.
std::string tried(const Case& one) {
    std::array<int, 2> ends{};
    if (pipe(ends.data()) != 0) return "no pipe";
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        alarm(longest_s);
        const std::string words = verdict(one.words);
        const bool told = ::write(ends[1], words.data(), words.size()) == static_cast<ssize_t>(words.size());
        std::_Exit(words.empty() && told ? 0 : 1);
    }
    close(ends[1]);
    std::string said;
    std::array<char, 512> buffer{};
    for (ssize_t n = 0; (n = ::read(ends[0], buffer.data(), buffer.size())) > 0;)
        said.append(buffer.data(), static_cast<std::size_t>(n));
    close(ends[0]);
    int status = 0;
    rusage used{};
    wait4(child, &status, 0, &used);
    if (WIFSIGNALED(status))
        return "signal " + std::to_string(WTERMSIG(status)) + (WTERMSIG(status) == SIGALRM ? " (too long)" : "");
    const double most = most_bytes_a_byte * one.file_bytes + most_bytes_besides;
    const double bytes = 1024.0 * static_cast<double>(used.ru_maxrss);
    if (said.empty() && !sanitized && bytes > most) return "took " + std::to_string(bytes / 1e6) + " MB";
    if (said.empty() && WEXITSTATUS(status) != 0) return "ended with " + std::to_string(WEXITSTATUS(status));
    return said;
}

std::string line_of(const std::vector<std::string>& words) {
    std::string line;
    for (const std::string& word : words)
        line += " " + word;
    return line;
}

} // namespace

int main(int count, char** words) {
    std::uint64_t first = 1;
    std::uint64_t number = 200;
    for (int i = 1; i + 1 < count; i += 2) {
        if (std::string(words[i]) == "--first") first = std::stoull(words[i + 1]);
        if (std::string(words[i]) == "--count") number = std::stoull(words[i + 1]);
    }
    const std::string folder =
        (std::filesystem::temp_directory_path() / ("mutants-" + std::to_string(getpid()))).string();
    std::filesystem::create_directories(folder);
    const Cases cases(folder);
    std::uint64_t bad = 0;
    for (std::uint64_t seed = first; seed < first + number; ++seed) {
        const Case one = cases.draw(seed);
        const std::string wrong = tried(one);
        if (wrong.empty()) continue;
        ++bad;
        std::cout << "mutant " << seed << " (" << one.what << "):" << line_of(one.words) << "\n    " << wrong << "\n";
    }
    std::filesystem::remove_all(folder);
    std::cout << number - bad << " of " << number << " mutants answered as they should\n";
    return bad == 0 ? 0 : 1;
}
