// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/hostile/answers.h"

#include <array>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <sstream>
#include <sys/resource.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/commands/commands.h"

namespace hostile {
namespace {

#if defined(__SANITIZE_ADDRESS__)
constexpr bool sanitized = true;
#else
constexpr bool sanitized = false;
#endif
// Of the processor, all threads together, so that a busy machine is no fault; and by the clock, for what only waits.
constexpr unsigned longest_s = sanitized ? 60 : 5;
constexpr unsigned longest_by_the_clock_s = 20 * longest_s;
constexpr double max_bytes_a_byte = 12.0;
constexpr double max_bytes_besides = 300e6;

bool has_controls(const std::string& text) {
    for (const char c : text)
        if ((static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7f) return true;
    return false;
}

// CSV ends its lines with CR LF (RFC 4180).
std::string without_line_ends(std::string csv) {
    for (std::size_t at = csv.find("\r\n"); at != std::string::npos; at = csv.find("\r\n", at))
        csv.erase(at, 1);
    return csv;
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
    if (has_controls(err.str()) ||
        (!json && has_controls(words.front() == "traces" ? without_line_ends(out.str()) : out.str())))
        return "a control character is printed";
    if (status == 0 && json && !nlohmann::json::accept(out.str())) return "JSON that no parser takes";
    if (!json && (out.str().find("nan") != std::string::npos || out.str().find("±inf") != std::string::npos))
        return words.front() == "recipe" ? "" : "a number that is none: " + out.str().substr(0, 400);
    return {};
}

} // namespace

std::string fault_of(const Question& question) {
    std::array<int, 2> ends{};
    if (pipe(ends.data()) != 0) return "no pipe";
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        const itimerval limit{{0, 0}, {longest_s, 0}};
        setitimer(ITIMER_PROF, &limit, nullptr);
        alarm(longest_by_the_clock_s);
        const std::string words = verdict(question.words);
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
    if (WIFSIGNALED(status)) {
        const bool too_long = WTERMSIG(status) == SIGALRM || WTERMSIG(status) == SIGPROF;
        return "signal " + std::to_string(WTERMSIG(status)) + (too_long ? " (too long)" : "");
    }
    const double most = max_bytes_a_byte * question.file_bytes + max_bytes_besides;
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

} // namespace hostile
