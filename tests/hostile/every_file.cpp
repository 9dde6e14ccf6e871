// SPDX-License-Identifier: GPL-3.0-or-later
// every_file GOOD FOLDER...: each file of these folders through every subcommand,
// as table and as JSON, each in a process of its own (answers.h); GOOD is the
// session beside it for what needs two.  Ends with 1 when an answer is wrong.
#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>
#include <unistd.h>
#include <vector>

#include "tests/hostile/answers.h"
#include "tests/hostile/good_files.h"

namespace {

namespace fs = std::filesystem;

// A file's expectations and setup sheets are no recordings, but whatever lies there may be named.
std::vector<std::string> files_in(const std::string& folder) {
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.is_regular_file()) files.push_back(entry.path().string());
    std::ranges::sort(files);
    return files;
}

std::vector<std::vector<std::string>> questions(const std::string& file, const std::string& good,
                                                const std::string& scratch) {
    const std::vector<std::vector<std::string>> with_json{{"laps", file},
                                                          {"compare", file, file},
                                                          {"compare", good, file},
                                                          {"wing", file, good},
                                                          {"causes", file, good},
                                                          {"trial", file, good, file, "--changed", "2"},
                                                          {"traces", file},
                                                          {"book", "--book", scratch + "/book", "add", file},
                                                          {"book", "--book", scratch + "/book", "sessions"}};
    std::vector<std::vector<std::string>> all{
        {"recipe", file}, {"sheet", file, good, "--out", scratch + "/sheet.html"}, {"compare", file, good, "--csv"}};
    if (file.ends_with(".json")) {
        all.push_back({"laps", good, "--track", file});
        all.push_back({"causes", good, good, "--lap-b", "2", "--setup-a", file});
    }
    for (std::vector<std::string> words : with_json) {
        all.push_back(words);
        words.emplace_back("--json");
        all.push_back(std::move(words));
    }
    return all;
}

} // namespace

int main(int count, char** words) {
    if (count < 2) return 2;
    const std::string scratch = (fs::temp_directory_path() / ("every-file-" + std::to_string(getpid()))).string();
    fs::create_directories(scratch);
    const std::string good = scratch + "/good.csv";
    std::ofstream(good, std::ios::binary) << hostile::good_files().front().text;
    std::size_t asked = 0;
    std::size_t bad = 0;
    for (int i = 1; i < count; ++i)
        for (const std::string& file : files_in(words[i]))
            for (const auto& question : questions(file, good, scratch)) {
                ++asked;
                const std::string wrong = hostile::fault_of({question, static_cast<double>(fs::file_size(file))});
                if (wrong.empty()) continue;
                ++bad;
                std::cout << hostile::line_of(question) << "\n    " << wrong << "\n";
            }
    fs::remove_all(scratch);
    std::cout << asked - bad << " of " << asked << " answers were as they should\n";
    return bad == 0 ? 0 : 1;
}
