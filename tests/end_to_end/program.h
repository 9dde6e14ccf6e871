// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the built program as a person's shell would: words in, exit status and both outputs out.  No display is given,
// so a run that wanted a window would fail.
#pragma once

#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace lapwright::end_to_end {

struct Outcome {
    int status = -1; // exit status; 128 + the signal's number if one ended the program
    std::string out;
    std::string err;
};

// What differs from an environment of PATH, HOME and LC_ALL=C alone.
using Environment = std::map<std::string, std::string>;

[[nodiscard]] Outcome run(const std::vector<std::string>& words, const Environment& environment = {},
                          const std::string& out_file = {});

// The one document on standard output; fails the test if the status is not 0 or anything else stands there.
[[nodiscard]] nlohmann::json document(const std::vector<std::string>& words, const Environment& environment = {});

[[nodiscard]] std::string sample(const std::string& name); // path of a sample session
[[nodiscard]] std::string read(const std::filesystem::path& path);

// A folder of its own for one test, gone afterwards.
class Scratch {
  public:
    Scratch();
    ~Scratch();
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    // Writes a file and gives its path.
    [[nodiscard]] std::string file(const std::string& name, const std::string& content) const;
    // A copy of a sample session without the setup sheet that lies beside it.
    [[nodiscard]] std::string sample_alone(const std::string& name) const { return file(name, read(sample(name))); }

  private:
    std::filesystem::path folder_;
};

} // namespace lapwright::end_to_end
