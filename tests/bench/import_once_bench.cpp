// SPDX-License-Identifier: GPL-3.0-or-later
// Times single imports of one file by two threads in the program's memory, and what of it they take at most:
//   import_once_bench FILE [TIMES]     prints: seconds of the first, the best and the median, peak MiB, MiB of columns
#include "core/base/number_text.h"
#include "core/import/formats/import.h"
#include "core/platform/program.h"

#include <algorithm>
#include <chrono>
#include <iostream>
#include <vector>

#include <sys/resource.h>

int main(int count, char** words) {
    using namespace lapwright;
    platform::prepare_large_heap();
    if (count < 2) {
        std::cerr << "usage: import_once_bench FILE [TIMES]\n";
        return 2;
    }
    const auto times = count > 2 ? base::parse_integer(words[2]).value_or(9) : 9;
    import::Options options;
    options.threads = 2;
    std::vector<double> seconds;
    std::size_t column_bytes = 0;
    for (std::int64_t i = 0; i < times; ++i) {
        const auto from = std::chrono::steady_clock::now();
        const auto recording = import::import_file(words[1], options);
        seconds.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count());
        if (!recording) {
            std::cerr << base::one_line(recording.error()) << "\n";
            return 1;
        }
        column_bytes = 0;
        for (const auto& channel : recording->channels)
            column_bytes += channel.values.size() * sizeof(double);
    }
    const double first = seconds.front();
    std::ranges::sort(seconds);
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::cout << base::fixed_text(first, 4) << " " << base::fixed_text(seconds.front(), 4) << " "
              << base::fixed_text(seconds[seconds.size() / 2], 4) << " "
              << base::fixed_text(static_cast<double>(usage.ru_maxrss) / 1024.0, 1) << " "
              << base::fixed_text(static_cast<double>(column_bytes) / 1048576.0, 1) << "\n";
    return 0;
}
