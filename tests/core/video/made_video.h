// SPDX-License-Identifier: GPL-3.0-or-later
// Videos for tests, encoded by the ffmpeg program while the test runs.  Each frame bears its number as sixteen squares,
// black or white, so that a test reads which one it was shown.
#pragma once

#include "core/video/media_file.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::video::tests {

struct MadeVideo {
    std::string path;
    std::vector<double> frame_times_s; // as it was encoded
};

struct Recipe {
    std::string name;                    // of the file, with its ending
    std::string codec = "libx264";       // as ffmpeg calls it
    std::string codec_options = "-bf 3"; // words for its command line
    int group = 25;                      // frames
    int frames = 500;
    bool variable_rate = false; // else 25 a second
    int first_number = 0;
    std::string before_input{}; // words before the pictures' input, a sound for instance
    std::string at_end{};       // words before the file's name
};

class Workshop {
  public:
    Workshop();
    ~Workshop();
    Workshop(const Workshop&) = delete;
    Workshop& operator=(const Workshop&) = delete;

    [[nodiscard]] std::string path(const std::string& name) const { return folder_ + "/" + name; }
    [[nodiscard]] MadeVideo make(const Recipe& recipe) const;
    // ffmpeg with these words, in the folder.
    void run(const std::string& words) const;

  private:
    std::string folder_;
};

// The number in a picture of any size; nothing where a square is neither black nor white.
[[nodiscard]] std::optional<int> number_in(const Picture& picture);

} // namespace lapwright::video::tests
