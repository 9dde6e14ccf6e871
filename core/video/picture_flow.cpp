// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/picture_flow.h"

#include "core/base/progress.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <deque>
#include <numbers>
#include <unsupported/Eigen/FFT>
#include <utility>

namespace lapwright::video {
namespace {

constexpr PictureLimits small_picture{256, 144};
// Where the horizon of a camera that looks ahead may lie, as shares of the height (common practice, no source).
constexpr double highest = 0.16;
constexpr double lowest = 0.64;
constexpr std::size_t most_rows = 12;          // of a band
constexpr std::size_t remembered_frames = 600; // some twenty seconds
// A small shift is told better over some frames; a car turns more slowly than that.
constexpr double baseline_s = 0.14;
constexpr double longest_apart_s = 0.5; // of two that can still be compared

float brightness(const Picture& picture, std::size_t row, std::size_t column) {
    const auto at = 3U * (row * static_cast<std::size_t>(picture.width) + column);
    return static_cast<float>(picture.rgb[at]) + 2.0F * static_cast<float>(picture.rgb[at + 1]) +
           static_cast<float>(picture.rgb[at + 2]);
}

std::vector<std::size_t> rows_of(const Picture& picture, std::size_t band) {
    const double height = (lowest - highest) / flow_bands * picture.height;
    const auto top = static_cast<std::size_t>(highest * picture.height + static_cast<double>(band) * height);
    const std::size_t count = std::max<std::size_t>(1, static_cast<std::size_t>(height));
    const std::size_t every = (count + most_rows - 1) / most_rows;
    std::vector<std::size_t> rows;
    for (std::size_t row = top; row < top + count; row += every)
        rows.push_back(row);
    return rows;
}

// Where a parabola through three neighbours has its top, in steps from the middle one.
double top_between(float before, float top, float after) {
    const float bend = before - 2.0F * top + after;
    return bend < 0.0F ? std::clamp(0.5 * static_cast<double>((before - after) / bend), -0.5, 0.5) : 0.0;
}

} // namespace

// The last frames' bands, as spectra of their rows.
class FlowMeter::Views {
  public:
    void take(const Picture& picture, double time_s) {
        width_ = static_cast<std::size_t>(picture.width);
        ++frames_;
        View now;
        now.time_s = time_s;
        for (std::size_t band = 0; band < flow_bands; ++band)
            now.bands[band] = spectra(picture, rows_of(picture, band), means_[band]);
        while (views_.size() > 1 && time_s - views_[1].time_s >= baseline_s)
            views_.pop_front();
        views_.push_back(std::move(now));
    }
    // The two that are compared; the first frame says nothing, since all of it is its own mean.
    [[nodiscard]] bool ready() const {
        return frames_ > 2 && views_.size() > 1 && gap_s() > 0.0 && gap_s() < longest_apart_s;
    }
    [[nodiscard]] double gap_s() const { return views_.back().time_s - views_.front().time_s; }
    [[nodiscard]] double middle_s() const { return 0.5 * (views_.back().time_s + views_.front().time_s); }

    // How far the later one lies to the right of the earlier, in widths.
    [[nodiscard]] double moved(std::size_t band) {
        const std::vector<Spectrum>& now = views_.back().bands[band];
        const std::vector<Spectrum>& before = views_.front().bands[band];
        Spectrum cross(width_, 0.0F);
        std::vector<float> power(width_, 0.0F);
        for (std::size_t r = 0; r < now.size(); ++r)
            for (std::size_t k = 0; k < width_; ++k) {
                cross[k] += now[r][k] * std::conj(before[r][k]);
                power[k] += std::abs(now[r][k]) * std::abs(before[r][k]);
            }
        cross[0] = 0.0F;
        for (std::size_t k = 1; k < width_; ++k)
            cross[k] = power[k] > 0.0F ? cross[k] / power[k] : 0.0F;
        Spectrum peaks;
        transform_.inv(peaks, cross);
        const int width = static_cast<int>(width_);
        const auto at = [&](int shift) {
            return peaks[static_cast<std::size_t>(((shift % width) + width) % width)].real();
        };
        int best = 0;
        for (int shift = -width / 3; shift <= width / 3; ++shift)
            if (at(shift) > at(best)) best = shift;
        return (best + top_between(at(best - 1), at(best), at(best + 1))) / static_cast<double>(width_);
    }

  private:
    using Spectrum = std::vector<std::complex<float>>;
    struct View {
        double time_s = 0.0;
        std::array<std::vector<Spectrum>, flow_bands> bands; // of each row
    };

    [[nodiscard]] std::vector<Spectrum> spectra(const Picture& picture, const std::vector<std::size_t>& rows,
                                                std::vector<float>& means) {
        if (means.empty()) means.assign(rows.size() * width_, 0.0F);
        const float share = 1.0F / static_cast<float>(std::min(frames_, remembered_frames));
        std::vector<Spectrum> made(rows.size());
        std::vector<float> line(width_);
        for (std::size_t r = 0; r < rows.size(); ++r) {
            for (std::size_t x = 0; x < width_; ++x) {
                const float value = brightness(picture, rows[r], x);
                float& mean = means[r * width_ + x];
                line[x] = (value - mean) * window_at(x);
                mean += share * (value - mean);
            }
            transform_.fwd(made[r], line);
        }
        return made;
    }

    // Towards the edges less, so that what leaves the picture does not count (Hann's window).
    [[nodiscard]] float window_at(std::size_t x) const {
        const float turn =
            2.0F * std::numbers::pi_v<float> * (static_cast<float>(x) + 0.5F) / static_cast<float>(width_);
        return 0.5F * (1.0F - std::cos(turn));
    }

    Eigen::FFT<float> transform_;
    std::size_t width_ = 0;
    std::array<std::vector<float>, flow_bands> means_; // of each pixel over the last seconds
    std::size_t frames_ = 0;
    std::deque<View> views_; // the first one a baseline before the last
};

FlowMeter::FlowMeter() : views_(std::make_unique<Views>()) {}
FlowMeter::~FlowMeter() = default;

void FlowMeter::add(const Picture& picture, double time_s) {
    constexpr int least_px = 16;
    if (picture.width < least_px || picture.height < least_px) return;
    views_->take(picture, time_s);
    if (!views_->ready() || (!flow_.time_s.empty() && views_->middle_s() <= flow_.time_s.back())) return;
    flow_.time_s.push_back(views_->middle_s());
    for (std::size_t band = 0; band < flow_bands; ++band)
        flow_.rates[band].push_back(views_->moved(band) / views_->gap_s());
}

base::Result<Flow> picture_flow(Video& video, double from_s, double to_s, const GoOn& go_on) {
    FlowMeter meter;
    for (std::size_t i = video.part_at(from_s); i < video.parts.size() && video.parts[i].start_s < to_s; ++i) {
        const Part& part = video.parts[i];
        if (const auto wound = part.file->seek(from_s - part.start_s); !wound) return wound.error();
        for (;;) {
            const auto next = part.file->next_frame(go_on);
            if (!next) return next.error();
            if (!*next || part.start_s + (*next)->time_s >= to_s) break;
            if (part.start_s + (*next)->time_s < from_s) continue;
            const auto picture = part.file->picture(small_picture);
            if (!picture) return picture.error();
            meter.add(*picture, part.start_s + (*next)->time_s);
        }
    }
    return meter.flow();
}

} // namespace lapwright::video
