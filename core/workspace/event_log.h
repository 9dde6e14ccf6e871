// SPDX-License-Identifier: GPL-3.0-or-later
// A log that a bug report can carry: a line an event, of words that stand in the program's source and of numbers.  No
// text that is only known while the program runs can become a part of it, by its types: no path, no name, no place, no
// sentence about a file.  Numbers are counts, durations and sizes.  The file is started anew before it grows beyond its
// size; the ones before it keep their content under the next numbers, up to `kept_files`.
#pragma once

#include <cstdint>
#include <fstream>
#include <initializer_list>
#include <mutex>
#include <optional>
#include <string>

namespace lapwright::workspace {

// A text of the source itself.
class FixedWords {
  public:
    consteval FixedWords(const char* words) : words_(words) {}
    [[nodiscard]] constexpr const char* text() const { return words_; }

  private:
    const char* words_;
};

struct LogDetail {
    FixedWords name;
    std::optional<double> value = {}; // none: the words say it all
};

class EventLog {
  public:
    static constexpr std::uintmax_t usual_bytes = 256 * 1024;
    static constexpr int kept_files = 3; // besides the one that is written
    static constexpr const char* file_name = "lapwright.log";

    // An empty folder: nothing is written.  The folder is made where it is not there; one that cannot be written is
    // passed over.
    explicit EventLog(const std::string& folder, std::uintmax_t most_bytes = usual_bytes);

    // From any thread.
    void add(FixedWords event, std::initializer_list<LogDetail> details = {});

    [[nodiscard]] const std::string& folder() const { return folder_; }

  private:
    void rotate();

    std::string folder_;
    std::uintmax_t most_bytes_;
    std::uintmax_t bytes_ = 0;
    std::ofstream file_;
    std::mutex mutex_;
};

} // namespace lapwright::workspace
