// SPDX-License-Identifier: GPL-3.0-or-later
// make_sample_videos OUTDIR: the demo's two videos, of the laps that are compared.  Unlike the sessions they are not
// the same to the byte on every machine, since that rests on the encoder; tests hold them against the simulator's
// truth.
#include <filesystem>
#include <iostream>

#include "tests/truth/sample_videos.h"

int main(const int argc, const char* const* const argv) {
    if (argc != 2) {
        std::cerr << "usage: make_sample_videos OUTDIR\n";
        return 2;
    }
    std::filesystem::create_directories(argv[1]);
    for (const truth::SampleVideo& video : truth::sample_videos()) {
        const std::string path = std::string(argv[1]) + "/" + video.file;
        if (!truth::film(video.session, video.film, path)) {
            std::cerr << path << " could not be made: is ffmpeg installed?\n";
            return 1;
        }
    }
    return 0;
}
