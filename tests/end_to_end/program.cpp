// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/end_to_end/program.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <spawn.h>
#include <sys/wait.h>

namespace lapwright::end_to_end {
namespace {

namespace fs = std::filesystem;

std::vector<char*> pointers(std::vector<std::string>& words) {
    std::vector<char*> result;
    for (std::string& word : words) {
        result.push_back(word.data());
    }
    result.push_back(nullptr);
    return result;
}

std::vector<std::string> environment_words(const Environment& changes, const fs::path& home) {
    const char* path = std::getenv("PATH");
    Environment all{{"PATH", path == nullptr ? "/usr/bin:/bin" : path}, {"HOME", home.string()}, {"LC_ALL", "C"}};
    for (const auto& [name, value] : changes) {
        all[name] = value;
    }
    std::vector<std::string> words;
    for (const auto& [name, value] : all) {
        words.push_back(name + "=" + value);
    }
    return words;
}

} // namespace

Outcome run(const std::vector<std::string>& words, const Environment& environment, const std::string& out_file) {
    const Scratch scratch;
    const std::string out = out_file.empty() ? (scratch.folder() / "out").string() : out_file;
    const std::string err = (scratch.folder() / "err").string();

    posix_spawn_file_actions_t files;
    posix_spawn_file_actions_init(&files);
    posix_spawn_file_actions_addopen(&files, 0, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&files, 1, out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    posix_spawn_file_actions_addopen(&files, 2, err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);

    std::vector<std::string> command{PROGRAM};
    command.insert(command.end(), words.begin(), words.end());
    std::vector<std::string> variables = environment_words(environment, scratch.folder());
    pid_t child = 0;
    const int failure =
        posix_spawn(&child, PROGRAM, &files, nullptr, pointers(command).data(), pointers(variables).data());
    posix_spawn_file_actions_destroy(&files);
    if (failure != 0) {
        ADD_FAILURE() << PROGRAM << " could not be started";
        return {};
    }
    int status = 0;
    waitpid(child, &status, 0);
    Outcome result;
    result.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    result.out = out_file.empty() ? read(out) : std::string();
    result.err = read(err);
    return result;
}

nlohmann::json document(const std::vector<std::string>& words, const Environment& environment) {
    const Outcome result = run(words, environment);
    EXPECT_EQ(result.status, 0) << result.err;
    nlohmann::json parsed = nlohmann::json::parse(result.out, nullptr, false);
    EXPECT_TRUE(parsed.is_object()) << "standard output is not one JSON document: " << result.out.substr(0, 200);
    return parsed;
}

std::string sample(const std::string& name) {
    return std::string(SAMPLE_SESSIONS) + "/" + name;
}

std::string read(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

Scratch::Scratch() {
    std::string pattern = (fs::temp_directory_path() / "lapwright-test-").string() + std::string(6, 'X');
    folder_ = ::mkdtemp(pattern.data());
}

Scratch::~Scratch() {
    fs::remove_all(folder_);
}

std::string Scratch::file(const std::string& name, const std::string& content) const {
    std::ofstream(folder_ / name, std::ios::binary) << content;
    return (folder_ / name).string();
}

} // namespace lapwright::end_to_end
