// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/video_sound.h"

#include "core/base/error.h"
#include "core/video/video.h"

#include <QThread>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <optional>
#include <utility>

namespace lapwright::bridge {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double rate = VideoSound::rate_hz;

// The video's sound in one row of samples: read a piece at a time, well before it is needed.
class ReadAhead {
  public:
    explicit ReadAhead(video::Video video) : video_(std::move(video)) {}

    // The samples from that one on; few are left before the end, none behind it.
    [[nodiscard]] base::Result<std::span<const float>> from(std::int64_t sample, const video::GoOn& go_on) {
        constexpr std::int64_t soon = 2 * VideoSound::rate_hz;
        if (sample < first_ || sample > end()) {
            first_ = sample;
            samples_.clear();
            ended_ = false;
        }
        if (!ended_ && end() - sample < soon)
            if (const auto read = more(sample, go_on); !read) return read.error();
        const auto at = static_cast<std::size_t>(sample - first_);
        return std::span<const float>(samples_).subspan(at);
    }

  private:
    [[nodiscard]] std::int64_t end() const { return first_ + static_cast<std::int64_t>(samples_.size()); }

    base::Result<void> more(std::int64_t sample, const video::GoOn& go_on) {
        constexpr double first_piece_s = 4.0; // heard soon
        constexpr double piece_s = 20.0;
        const double from_s = static_cast<double>(end()) / rate;
        const double length_s = samples_.empty() ? first_piece_s : piece_s;
        auto piece = video::sound(video_, from_s, from_s + length_s, rate, go_on);
        if (!piece) return piece.error();
        samples_.erase(samples_.begin(), samples_.begin() + (sample - first_));
        first_ = sample;
        ended_ = piece->samples.empty();
        samples_.insert(samples_.end(), piece->samples.begin(), piece->samples.end());
        return {};
    }

    video::Video video_;
    std::vector<float> samples_;
    std::int64_t first_ = 0; // the sample that samples_ begins with
    bool ended_ = false;
};

// Writes what is to be heard now and a little later, over and over.  Where the device runs behind the clock by more
// than is seen between lips and voice, samples are left out; where it runs before, it waits.
base::Result<void> play_on(ReadAhead& ahead, SoundSink& sink, const std::function<double()>& now_s,
                           const video::GoOn& go_on) {
    constexpr double seen_s = 0.08; // the ITU-R BT.1359 limits lie at 0.045 s before and 0.125 s behind
    constexpr double before_s = 0.3;
    constexpr unsigned long pause_ms = 10;
    std::optional<std::int64_t> next;
    while (!go_on || go_on()) {
        const double due_s = now_s() + sink.waiting_s(); // of the next sample written
        if (!next || due_s - static_cast<double>(*next) / rate > seen_s)
            next = static_cast<std::int64_t>(std::max(0.0, std::round(due_s * rate)));
        const auto known = ahead.from(*next, go_on);
        if (!known) return known.error();
        if (known->empty()) return {};
        const double room_s = std::max(0.0, now_s() + before_s - static_cast<double>(*next) / rate);
        const auto most = std::min(known->size(), static_cast<std::size_t>(room_s * rate));
        *next += static_cast<std::int64_t>(sink.write(known->first(most)));
        QThread::msleep(pause_ms);
    }
    return {};
}

} // namespace

VideoSound::VideoSound(Open open, QObject* parent) : QObject(parent), open_(std::move(open)), jobs_(*this, 1) {}

void VideoSound::play(const std::vector<std::string>& paths, double video_s) {
    stop();
    jobs_.add(
        group_,
        [this, open = open_, paths, video_s, since = Clock::now()](const base::Progress& progress) -> JobQueue::Answer {
            const auto refuse = [this](const QString& sentence) {
                return [this, sentence] { Q_EMIT refused(sentence); };
            };
            auto opened = video::open_video(paths);
            if (!opened) return {}; // whoever shows it has said so
            if (!opened->facts.sound) return refuse(tr("the video holds none"));
            const auto sink = open(rate_hz);
            if (!sink) return refuse(tr("this machine has no device for it"));
            ReadAhead ahead(std::move(opened).value());
            const auto now_s = [&] { return video_s + std::chrono::duration<double>(Clock::now() - since).count(); };
            const auto go_on = [&] { return base::go_on(progress, "", 0.0); };
            const auto played = play_on(ahead, *sink, now_s, go_on);
            if (played || played.error().code == base::ErrorCode::cancelled) return {};
            return refuse(QString::fromStdString(base::one_line(played.error())));
        });
}

void VideoSound::stop() {
    group_.cancel();
}

} // namespace lapwright::bridge
