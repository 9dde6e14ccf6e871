// SPDX-License-Identifier: GPL-3.0-or-later
// What is heard over time, on a logarithmic frequency axis: there the orders of an engine are copies of its speed,
// moved up by the logarithm of the order (order tracking; Fyfe and Munck 1997, Mech. Syst. Signal Process. 11(2):187).
//
// Values are log power above its surroundings: what is loud at all frequencies, and a tone that never changes, are
// taken out; each frequency has variance one over time.
#pragma once

#include "core/video/media_file.h"

#include <cmath>
#include <vector>

namespace lapwright::video {

inline constexpr double lowest_hz = 20.0;
inline constexpr double bins_per_octave = 24.0;
inline constexpr int sound_bins = 132; // up to 20 Hz · 2^5.5 = 905 Hz
inline constexpr double sound_rate_hz = 2000.0;

// The place of a frequency on the axis, in bins; may lie outside.
[[nodiscard]] inline double bin_of(double frequency_hz) {
    return std::log2(frequency_hz / lowest_hz) * bins_per_octave;
}

struct Spectrogram {
    double start_s = 0.0; // of the first row's middle
    double hop_s = 0.0;
    std::vector<float> values; // rows of sound_bins

    [[nodiscard]] std::size_t rows() const { return values.size() / sound_bins; }
    [[nodiscard]] float at(std::size_t row, int bin) const {
        return values[row * sound_bins + static_cast<std::size_t>(bin)];
    }
    // Linear between two bins; 0, the mean, outside.
    [[nodiscard]] float at(std::size_t row, double bin) const;
};

// sound: at sound_rate_hz.  No rows where it is shorter than a window (128 ms).
[[nodiscard]] Spectrogram spectrogram(const Sound& sound, double hop_s);

} // namespace lapwright::video
