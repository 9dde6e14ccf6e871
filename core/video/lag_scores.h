// SPDX-License-Identifier: GPL-3.0-or-later
// How well the sound follows a recorded figure at every lag between the two, and at every ratio of heard frequency to
// figure: a correlation in time and in log frequency, by the Fourier transform (Oppenheim and Schafer, Discrete-Time
// Signal Processing, 8.7).
#pragma once

#include "core/video/followed.h"
#include "core/video/spectrogram.h"

#include <vector>

namespace lapwright::video {

// A ratio of heard frequency to the figure, and how far the sound at it stands out at one lag (standard deviations of
// all lags).
struct HeardRatio {
    double bins = 0.0; // log2(ratio) · bins_per_octave
    double weight = 0.0;
};

struct LagScores {
    double first_lag_s = 0.0; // recording time − video time
    double hop_s = 0.0;
    std::vector<float> scores;              // sum over the ratios of the squared excess; 0 where too little overlaps
    std::vector<double> ratios;             // in bins
    std::vector<std::vector<float>> excess; // of each ratio at each lag, in standard deviations

    [[nodiscard]] double lag_s(std::size_t index) const { return first_lag_s + static_cast<double>(index) * hop_s; }
    // Those that stand out at a lag, the others left out.
    [[nodiscard]] std::vector<HeardRatio> heard_at(std::size_t index) const;
};

// Lags at which fewer than least_overlap_s of the figure's good samples meet the sound have score 0.
[[nodiscard]] LagScores lag_scores(const Spectrogram& heard, const Followed& followed, double least_overlap_s);

} // namespace lapwright::video
