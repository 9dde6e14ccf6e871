// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/lag_scores.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <complex>
#include <unsupported/Eigen/FFT>

namespace lapwright::video {
namespace {

using Spectrum = std::vector<std::complex<float>>;

// Half orders up to the eighth: what engines of two to twelve cylinders fire at, and their harmonics.
constexpr std::array engine_orders{0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0, 8.0};
// Heard hertz for a m/s: a firing frequency of 60 to 400 Hz at 15 to 60 m/s, all gears in it.
constexpr double least_per_mps = 0.8;
constexpr double most_per_mps = 12.0;

std::vector<double> ratios_of(FollowedKind kind) {
    std::vector<double> bins;
    if (kind == FollowedKind::engine_speed) {
        for (const double order : engine_orders)
            bins.push_back(std::log2(order) * bins_per_octave);
        return bins;
    }
    for (double bin = std::floor(std::log2(least_per_mps) * bins_per_octave);
         bin <= std::log2(most_per_mps) * bins_per_octave; bin += 1.0)
        bins.push_back(bin);
    return bins;
}

std::size_t power_of_two_above(std::size_t size) {
    std::size_t power = 1;
    while (power < size)
        power *= 2;
    return power;
}

class Correlator {
  public:
    Correlator(const Spectrogram& heard, const Followed& followed) : heard_(heard) {
        const double first_s = followed.time_s.front();
        const auto length = static_cast<std::size_t>((followed.time_s.back() - first_s) / heard.hop_s) + 1;
        size_ = power_of_two_above(heard.rows() + length);
        length_ = length;
        transform_.SetFlag(Eigen::FFT<float>::HalfSpectrum);
        place_figure(followed, first_s);
        place_sound();
    }

    // Index i of what is found is the lag i − (rows − 1), in hops.
    [[nodiscard]] std::vector<float> at_ratio(double ratio_bins) {
        const double below = std::floor(ratio_bins);
        const auto share = static_cast<float>(ratio_bins - below);
        Spectrum sum(size_ / 2 + 1, 0.0F);
        for (std::size_t bin = 0; bin < figure_.size(); ++bin) {
            const int low = figure_first_ + static_cast<int>(bin) + static_cast<int>(below);
            add(sum, bin, low, 1.0F - share);
            if (share > 0.0F) add(sum, bin, low + 1, share);
        }
        return back(sum);
    }

    // How many good samples of the figure meet the sound at each lag.
    [[nodiscard]] std::vector<float> overlap() {
        std::vector<float> present(size_, 0.0F);
        std::fill_n(present.begin(), heard_.rows(), 1.0F);
        Spectrum sound;
        transform_.fwd(sound, present);
        Spectrum figure;
        transform_.fwd(figure, good_);
        for (std::size_t i = 0; i < sound.size(); ++i)
            sound[i] = figure[i] * std::conj(sound[i]);
        return back(sound);
    }
    [[nodiscard]] std::size_t lags() const { return heard_.rows() + length_ - 1; }

  private:
    void place_figure(const Followed& followed, double first_s) {
        std::vector<double> places(length_);
        good_.assign(size_, 0.0F);
        double low = 1e9;
        double high = -1e9;
        for (std::size_t i = 0; i < length_; ++i) {
            places[i] = bin_of(value_at(followed, first_s + static_cast<double>(i) * heard_.hop_s));
            if (std::isnan(places[i])) continue;
            good_[i] = 1.0F;
            low = std::min(low, places[i]);
            high = std::max(high, places[i]);
        }
        if (low > high) return;
        figure_first_ = static_cast<int>(std::floor(low));
        std::vector<std::vector<float>> rows(
            static_cast<std::size_t>(static_cast<int>(std::floor(high)) - figure_first_ + 2),
            std::vector<float>(size_, 0.0F));
        for (std::size_t i = 0; i < length_; ++i) {
            if (std::isnan(places[i])) continue;
            const double at = places[i] - figure_first_;
            const auto bin = static_cast<std::size_t>(at);
            const auto share = static_cast<float>(at - std::floor(at));
            rows[bin][i] += 1.0F - share;
            rows[bin + 1][i] += share;
        }
        for (auto& row : rows)
            transform_.fwd(figure_.emplace_back(), row);
    }

    void place_sound() {
        std::vector<float> row(size_, 0.0F);
        for (int bin = 0; bin < sound_bins; ++bin) {
            for (std::size_t i = 0; i < heard_.rows(); ++i)
                row[i] = heard_.at(i, bin);
            transform_.fwd(sound_.emplace_back(), row);
        }
    }

    void add(Spectrum& sum, std::size_t bin, int sound_bin, float weight) const {
        if (sound_bin < 0 || sound_bin >= sound_bins) return;
        const Spectrum& sound = sound_[static_cast<std::size_t>(sound_bin)];
        const Spectrum& figure = figure_[bin];
        for (std::size_t i = 0; i < sum.size(); ++i)
            sum[i] += weight * figure[i] * std::conj(sound[i]);
    }

    // Lags from −(rows − 1) on; the transform has the negative ones at its end.
    std::vector<float> back(const Spectrum& spectrum) {
        std::vector<float> circular;
        transform_.inv(circular, spectrum, static_cast<Eigen::Index>(size_));
        std::vector<float> values(lags());
        const std::size_t shift = size_ - (heard_.rows() - 1);
        for (std::size_t i = 0; i < values.size(); ++i)
            values[i] = circular[(i + shift) % size_];
        return values;
    }

    const Spectrogram& heard_;
    Eigen::FFT<float> transform_;
    std::size_t size_ = 0;
    std::size_t length_ = 0;
    int figure_first_ = 0; // bin of the first row
    std::vector<float> good_;
    std::vector<Spectrum> figure_; // a row for each bin that the figure visits
    std::vector<Spectrum> sound_;
};

// In standard deviations of all lags with enough overlap, 0 at the others.
std::vector<float> in_deviations(std::vector<float> sums, const std::vector<float>& overlap, float least) {
    std::vector<double> usable;
    for (std::size_t i = 0; i < sums.size(); ++i) {
        sums[i] = overlap[i] >= least ? sums[i] / std::sqrt(overlap[i]) : 0.0F;
        if (overlap[i] >= least) usable.push_back(static_cast<double>(sums[i]));
    }
    const double spread = usable.size() < 2 ? 0.0 : math::robust_sd(usable);
    const double middle = usable.empty() ? 0.0 : math::median(usable);
    for (std::size_t i = 0; i < sums.size(); ++i)
        sums[i] = spread > 0.0 && overlap[i] >= least
                      ? static_cast<float>((static_cast<double>(sums[i]) - middle) / spread)
                      : 0.0F;
    return sums;
}

} // namespace

std::vector<HeardRatio> LagScores::heard_at(std::size_t index) const {
    constexpr double stands_out = 3.0;
    std::vector<HeardRatio> heard;
    for (std::size_t i = 0; i < ratios.size(); ++i) {
        const double weight = static_cast<double>(excess[i][index]);
        if (weight > stands_out) heard.push_back({ratios[i], weight});
    }
    return heard;
}

LagScores lag_scores(const Spectrogram& heard, const Followed& followed, double least_overlap_s) {
    LagScores found;
    found.hop_s = heard.hop_s;
    if (heard.rows() == 0 || followed.time_s.size() < 2) return found;
    Correlator correlator(heard, followed);
    found.first_lag_s = followed.time_s.front() - heard.start_s - static_cast<double>(heard.rows() - 1) * heard.hop_s;
    found.ratios = ratios_of(followed.kind);
    const std::vector<float> overlap = correlator.overlap();
    const auto least = static_cast<float>(std::max(1.0, least_overlap_s / heard.hop_s));
    found.scores.assign(correlator.lags(), 0.0F);
    for (const double ratio : found.ratios) {
        found.excess.push_back(in_deviations(correlator.at_ratio(ratio), overlap, least));
        for (std::size_t i = 0; i < found.scores.size(); ++i) {
            const float excess = std::max(0.0F, found.excess.back()[i]);
            found.scores[i] += excess * excess;
        }
    }
    return found;
}

} // namespace lapwright::video
