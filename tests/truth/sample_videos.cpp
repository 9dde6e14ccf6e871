// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/truth/sample_videos.h"

#include <cmath>
#include <filesystem>

#include "tests/truth/sample_sessions.h"
#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

SampleVideo of(const std::shared_ptr<const TrackShape>& track, const DemoEntry& entry) {
    constexpr double before_s = 5.37; // of the lap
    constexpr double behind_s = 3.0;
    const std::string file = std::filesystem::path(entry.file).stem().string() + ".mp4";
    SampleVideo video{file, entry.file, drive_entry(track, entry), {}};
    const LapTruth& lap = video.session.lap(video.session.fastest_lap());
    video.film.camera.from_s = lap.start_s - before_s;
    video.film.length_s = lap.time_s() + before_s + behind_s;
    video.film.words = "-c:v libx264 -preset slow -crf 30 -g 100 -c:a aac -b:a 32k -movflags +faststart "
                       "-metadata title='Invented: no real car, driver or track'";
    return video;
}

} // namespace

std::vector<SampleVideo> sample_videos() {
    const auto track = std::make_shared<const TrackShape>(ternbank());
    const std::vector<DemoEntry> entries = demo_entries();
    std::vector<SampleVideo> videos{of(track, entries[0]), of(track, entries[1])};
    FilmRecipe& hatch = videos[0].film; // four cylinders
    hatch.firing_order = 2.0;
    hatch.camera.seed = 41;
    FilmRecipe& coupe = videos[1].film; // six cylinders, another camera
    coupe.firing_order = 3.0;
    coupe.camera.seed = 41; // the same hills
    coupe.camera.rate_hz = 30.0;
    coupe.camera.field_rad = 1.45;
    coupe.camera.eye_height_m = 1.05;
    coupe.camera.bonnet[0] = 120;
    coupe.camera.bonnet[1] = 22;
    coupe.camera.bonnet[2] = 26;
    return videos;
}

} // namespace truth
