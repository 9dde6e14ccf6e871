// SPDX-License-Identifier: GPL-3.0-or-later
// Imports the files on the command line and prints every value of every channel, one a line, exactly:
// file, channel, line in the file, time, value, parted by tabs.
#include "core/base/number_text.h"
#include "core/import/formats/import.h"

#include <iostream>

int main(int count, char** words) {
    using namespace lapwright;
    for (int i = 1; i < count; ++i) {
        const auto recording = import::import_file(words[i]);
        if (!recording) {
            std::cerr << base::one_line(recording.error()) << "\n";
            return 1;
        }
        for (const auto& channel : recording->channels)
            for (std::size_t k = 0; k < channel.size(); ++k)
                std::cout << words[i] << '\t' << channel.name << '\t' << (*channel.source_lines)[k] << '\t'
                          << base::exact_text((*channel.time_s)[k]) << '\t' << base::exact_text(channel.values[k])
                          << '\n';
    }
    return 0;
}
