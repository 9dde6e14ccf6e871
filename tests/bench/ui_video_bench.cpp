// SPDX-License-Identifier: GPL-3.0-or-later
// Bars of the videos: from the cursor to both frames painted, two 1080p30 videos decoded in software on two cores,
// 50 ms inside the decoded group and 300 ms elsewhere, just opened and once the lap was read ahead; under 2 % of frames
// dropped while both play at 720p; a two-hour 4K file opened in half a second; 256 MB a video.  The videos are made by
// ffmpeg when it starts.  Prints a line a bar, with the machine's load beside it; takes some five minutes.
#include "core/math/random.h"
#include "core/video/frame_reader.h"
#include "tests/bench/offscreen.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/video_source.h"
#include "ui/pages/compare/video_view.h"

#include <QApplication>
#include <QEventLoop>
#include <QPixmap>
#include <QTimer>
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace lapwright;

namespace {

using Clock = std::chrono::steady_clock;

double ms_since(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

void made(const std::string& line) {
    if (std::system(("ffmpeg -nostdin -v error -y " + line).c_str()) != 0) std::exit(1);
}

// Moving shapes under noise, at a camera's data rate, in groups of so many seconds; ten seconds of them, repeated.
std::string encoded(const std::string& folder, const char* size, int megabits, int group_s) {
    constexpr int rate_hz = 30;
    const std::string path = folder + "/" + size + "_" + std::to_string(group_s) + ".mp4";
    made(std::string("-f lavfi -i testsrc2=s=") + size + ":r=30 -t 10 -vf noise=alls=6:allf=t -c:v libx264 " +
         "-preset superfast -bf 2 -sc_threshold 0 -g " + std::to_string(rate_hz * group_s) + " -b:v " +
         std::to_string(megabits) + "M " + folder + "/once.mp4");
    made("-stream_loop 2 -i " + folder + "/once.mp4 -c copy " + path);
    return path;
}

double load() {
    double average = 0.0;
    return ::getloadavg(&average, 1) == 1 ? average : 0.0;
}

double memory_mb(const char* name) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(name)) return std::atof(line.c_str() + std::string(name).size() + 1) / 1024.0;
    return 0.0;
}

// A panel of two, each frame painted as the screen would have it.
struct Panel {
    // Reads `ahead_s` of both ahead.
    explicit Panel(const std::string& path, double ahead_s = 0.0) {
        for (std::size_t i = 0; i < 2; ++i) {
            pictures[i].resize(640, 360);
            auto* picture = &pictures[i];
            QObject::connect(&sources[i], &bridge::VideoSource::shown, picture,
                             [this, picture, i](const video::Frame& frame) {
                                 picture->show_frame(frame);
                                 painted = picture->grab();
                                 seen[i].insert(frame.time_s);
                                 if (!first_ms[i]) first_ms[i] = ms_since(asked);
                             });
            QObject::connect(&sources[i], &bridge::VideoSource::passed, picture,
                             [this, picture, i](const video::Frame& frame, double earlier_s) {
                                 picture->show_passed(frame, earlier_s);
                                 painted = picture->grab();
                                 if (!first_ms[i]) first_ms[i] = ms_since(asked);
                             });
            sources[i].read_ahead(0.0, ahead_s);
            sources[i].fit({640, 360});
            sources[i].open({path}, nullptr);
        }
        (void)fixture::wait_for([this] { return sources[0].is_open() && sources[1].is_open(); }, 30'000);
    }
    [[nodiscard]] bool both_show(double time_s) const {
        return std::ranges::all_of(sources, [&](const bridge::VideoSource& source) {
            const auto& frame = source.frame();
            return frame && frame->time_s <= time_s && time_s < frame->until_s;
        });
    }
    double show(double time_s) {
        asked = Clock::now();
        first_ms = {};
        for (auto& source : sources)
            source.show(time_s);
        while (!both_show(time_s))
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
        return ms_since(asked);
    }
    [[nodiscard]] double first_picture_ms() const { return std::max(*first_ms[0], *first_ms[1]); }
    // The event loop sleeps meanwhile, as in the program.
    static void rest(double seconds) {
        QEventLoop loop;
        QTimer::singleShot(static_cast<int>(1e3 * seconds), Qt::PreciseTimer, &loop, &QEventLoop::quit);
        loop.exec();
    }

    std::array<pages::FramePicture, 2> pictures;
    std::array<bridge::VideoSource, 2> sources;
    std::array<std::set<double>, 2> seen;
    std::array<std::optional<double>, 2> first_ms; // the exact frame or one on the way
    Clock::time_point asked;
    QPixmap painted;
};

void say(const char* what, std::vector<double> values_ms, double bar_ms) {
    std::ranges::sort(values_ms);
    const auto at = [&](double share) {
        return values_ms[static_cast<std::size_t>(share * static_cast<double>(values_ms.size() - 1))];
    };
    std::printf("%-58s median %6.1f  95 %% %6.1f  most %6.1f ms   bar %g ms   load %.1f\n", what, at(0.5), at(0.95),
                at(1.0), bar_ms, load());
    std::fflush(stdout);
}

void latencies(const std::string& folder, int group_s, int jumps) {
    Panel panel(encoded(folder, "1920x1080", 12, group_s));
    math::Random random(1);
    std::vector<double> near_ms;
    std::vector<double> elsewhere_ms;
    std::vector<double> first_ms;
    for (int jump = 0; jump < jumps; ++jump) {
        const double time_s = 0.5 + 28.0 * random.uniform();
        elsewhere_ms.push_back(panel.show(time_s));
        first_ms.push_back(panel.first_picture_ms());
        Panel::rest(1.0); // as a person looks at it
        for (int step = 0; step < 6; ++step) {
            near_ms.push_back(panel.show(std::clamp(time_s + random.uniform() - 0.5, 0.0, 29.5)));
            Panel::rest(0.05);
        }
    }
    const std::string groups = ", groups of " + std::to_string(group_s) + " s";
    say(("decoded group to both frames" + groups).c_str(), near_ms, 50.0);
    say(("just opened, elsewhere, both frames" + groups).c_str(), elsewhere_ms, 300.0);
    say(("just opened, elsewhere, a picture" + groups).c_str(), first_ms, 300.0);
}

// Once a lap was read ahead, of which it tells how long that takes.
void latencies_on_the_lap(const std::string& folder, int group_s) {
    const std::string path = folder + "/1920x1080_" + std::to_string(group_s) + ".mp4";
    constexpr double lap_s = 30.0;
    auto video = video::open_video({path});
    if (!video) std::exit(1);
    video::FrameReader alone(std::move(video).value(), {});
    const auto start = Clock::now();
    alone.read_ahead(0.0, lap_s, 0.0, {});
    const double alone_ms = ms_since(start);
    std::printf("%-58s %.1f ms a frame of one video, load %.1f\n", "a lap read ahead", alone_ms / (30.0 * lap_s),
                load());

    Panel panel(path, lap_s);
    panel.show(0.0);
    Panel::rest(3e-3 * alone_ms);
    math::Random random(1);
    std::vector<double> elsewhere_ms;
    for (int jump = 0; jump < 40; ++jump) {
        elsewhere_ms.push_back(panel.show(0.5 + 28.0 * random.uniform()));
        Panel::rest(0.5);
    }
    say(("on the lap, anywhere, both frames, groups of " + std::to_string(group_s) + " s").c_str(), elsewhere_ms,
        300.0);
}

void dragged_and_memory(const std::string& folder) {
    Panel panel(folder + "/1920x1080_1.mp4");
    // Dragged: the cursor's own thread is asked 60 times a second, and must not wait.
    std::vector<double> waits_ms;
    double time_s = 1.0;
    for (int tick = 0; tick < 300; ++tick) {
        const auto start = Clock::now();
        for (auto& source : panel.sources)
            source.show(time_s += 0.045);
        QCoreApplication::processEvents(QEventLoop::AllEvents);
        waits_ms.push_back(ms_since(start));
        Panel::rest(1e-3 * std::max(1.0, 16.7 - ms_since(start)));
    }
    say("what a moving cursor waits, a tick", waits_ms, 16.7);
    Panel::rest(2.0);
    std::printf("%-56s %.0f MB, at most %.0f MB      bar 512 MB of two\n", "memory with two 1080p videos",
                memory_mb("VmRSS:"), memory_mb("VmHWM:"));
    std::fflush(stdout);
}

void playing(const std::string& folder) {
    Panel panel(encoded(folder, "1280x720", 8, 1));
    panel.show(1.0);
    Panel::rest(1.0);
    for (auto& seen : panel.seen)
        seen.clear();
    constexpr double length_s = 15.0;
    constexpr double stretch = 1.04; // B a little faster, so that both are at one place
    const auto start = Clock::now();
    while (ms_since(start) < 1e3 * length_s) {
        const double played_s = 1e-3 * ms_since(start);
        panel.sources[0].show(1.0 + played_s);
        panel.sources[1].show(1.0 + played_s * stretch);
        Panel::rest(0.015);
    }
    const std::array expected{30.0 * length_s, 30.0 * length_s * stretch};
    for (std::size_t i = 0; i < 2; ++i)
        std::printf("%-56s %.2f %% of %.0f frames                  bar 2 %%   load %.1f\n",
                    i == 0 ? "dropped while playing 720p, A" : "B",
                    100.0 * std::max(0.0, 1.0 - static_cast<double>(panel.seen[i].size()) / expected[i]), expected[i],
                    load());
    std::fflush(stdout);
}

void long_file(const std::string& folder) {
    made("-f lavfi -i testsrc2=s=3840x2160:r=30 -t 4 -c:v libx264 -preset ultrafast -crf 45 -g 30 " + folder +
         "/short.mp4");
    made("-stream_loop 1799 -i " + folder + "/short.mp4 -c copy " + folder + "/long.mp4");
    std::vector<double> open_ms;
    std::vector<double> first_ms;
    for (int i = 0; i < 5; ++i) {
        const auto start = Clock::now();
        auto video = video::open_video({folder + "/long.mp4"});
        open_ms.push_back(ms_since(start));
        if (!video) std::exit(1);
        video::FrameReader reader(std::move(video).value(), {});
        const auto asked = Clock::now();
        if (!reader.at(3600.0 + 900.0 * i)) std::exit(1);
        first_ms.push_back(ms_since(asked));
    }
    say("a two-hour 4K file opened", open_ms, 500.0);
    say("elsewhere to the frame in it", first_ms, 300.0);
}

} // namespace

int main() {
    const auto& app = bench::application();
    (void)app;
    const std::string folder = std::filesystem::temp_directory_path() / "lapwright-video-bench";
    std::filesystem::create_directories(folder);
    latencies(folder, 1, 20);
    latencies_on_the_lap(folder, 1);
    dragged_and_memory(folder);
    latencies(folder, 2, 8);
    latencies(folder, 10, 6);
    latencies_on_the_lap(folder, 10);
    playing(folder);
    const double before_mb = memory_mb("VmRSS:");
    long_file(folder);
    std::printf("%-56s %.0f MB, at most %.0f MB\n", "memory behind the 4K file", memory_mb("VmRSS:") - before_mb,
                memory_mb("VmHWM:"));
    std::filesystem::remove_all(folder);
    return 0;
}
