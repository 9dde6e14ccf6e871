// SPDX-License-Identifier: GPL-3.0-or-later
// mutants [--first SEED] [--count N]: N bad files, each given to a drawn subcommand as table
// or JSON in a process of its own.  However bad the file: no signal, an end within the time,
// exit status 0, 1 or 2, one sentence where it is refused, JSON that a strict parser takes,
// no control character in text for people.  Ends with 1 when one of these was broken.
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>
#include <unistd.h>
#include <vector>

#include "tests/hostile/answers.h"
#include "tests/hostile/good_files.h"
#include "tests/hostile/mutate.h"
#include "tests/worlds/draws.h"

namespace {

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
        const std::string wrong = hostile::fault_of({one.words, one.file_bytes});
        if (wrong.empty()) continue;
        ++bad;
        std::cout << "mutant " << seed << " (" << one.what << "):" << hostile::line_of(one.words) << "\n    " << wrong
                  << "\n";
    }
    std::filesystem::remove_all(folder);
    std::cout << number - bad << " of " << number << " mutants answered as they should\n";
    return bad == 0 ? 0 : 1;
}
