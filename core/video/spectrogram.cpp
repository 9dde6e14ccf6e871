// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/spectrogram.h"

#include <algorithm>
#include <array>
#include <complex>
#include <numbers>
#include <unsupported/Eigen/FFT>

namespace lapwright::video {
namespace {

constexpr std::size_t window = 256; // 128 ms: 8 Hz apart at the speed of change of an engine (some 50 Hz a second)
constexpr std::size_t padded = 1024;
constexpr float least_power = 1e-12F;

std::vector<float> hann() {
    std::vector<float> weights(window);
    for (std::size_t i = 0; i < window; ++i)
        weights[i] = static_cast<float>(0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * (static_cast<double>(i) + 0.5) /
                                                             static_cast<double>(window)));
    return weights;
}

// For each bin of the axis the line of the transform below it, and the share of the next one.
struct Line {
    std::size_t below = 0;
    float share = 0.0F;
};
std::array<Line, sound_bins> lines() {
    std::array<Line, sound_bins> places{};
    for (int bin = 0; bin < sound_bins; ++bin) {
        const double hz = lowest_hz * std::exp2(bin / bins_per_octave);
        const double line = hz / sound_rate_hz * static_cast<double>(padded);
        places[static_cast<std::size_t>(bin)] = {static_cast<std::size_t>(line),
                                                 static_cast<float>(line - std::floor(line))};
    }
    return places;
}

// Takes the mean of an octave around each bin off it.
void above_surroundings(float* row) {
    constexpr int half_octave = static_cast<int>(bins_per_octave) / 2;
    std::array<float, sound_bins + 1> sums{};
    for (std::size_t bin = 0; bin < sound_bins; ++bin)
        sums[bin + 1] = sums[bin] + row[bin];
    for (int bin = 0; bin < sound_bins; ++bin) {
        const int from = std::max(0, bin - half_octave);
        const int to = std::min(sound_bins, bin + half_octave + 1);
        row[bin] -=
            (sums[static_cast<std::size_t>(to)] - sums[static_cast<std::size_t>(from)]) / static_cast<float>(to - from);
    }
}

// Each bin to mean zero and variance one over time; a bin that never changes to zero.
void standardise(std::vector<float>& values) {
    const std::size_t rows = values.size() / sound_bins;
    for (std::size_t bin = 0; bin < sound_bins; ++bin) {
        double sum = 0.0;
        double squares = 0.0;
        for (std::size_t row = 0; row < rows; ++row) {
            const double value = static_cast<double>(values[row * sound_bins + bin]);
            sum += value;
            squares += value * value;
        }
        const double mean = sum / static_cast<double>(rows);
        const double variance = squares / static_cast<double>(rows) - mean * mean;
        const double scale = variance > 1e-6 ? 1.0 / std::sqrt(variance) : 0.0;
        for (std::size_t row = 0; row < rows; ++row) {
            float& value = values[row * sound_bins + bin];
            value = static_cast<float>((static_cast<double>(value) - mean) * scale);
        }
    }
}

} // namespace

float Spectrogram::at(std::size_t row, double bin) const {
    const double below = std::floor(bin);
    if (!(below >= 0.0 && below + 1.0 < sound_bins)) return 0.0F;
    const auto share = static_cast<float>(bin - below);
    const auto lower = static_cast<int>(below);
    return (1.0F - share) * at(row, lower) + share * at(row, lower + 1);
}

Spectrogram spectrogram(const Sound& sound, double hop_s) {
    const double middle_s = static_cast<double>(window - 1) / sound_rate_hz / 2.0;
    Spectrogram made{sound.start_s + middle_s, hop_s, {}};
    if (sound.samples.size() < window) return made;
    const double step = hop_s * sound_rate_hz;
    const auto rows = static_cast<std::size_t>(static_cast<double>(sound.samples.size() - window) / step) + 1;
    made.values.resize(rows * sound_bins);
    static const std::vector<float> weights = hann();
    static const std::array<Line, sound_bins> places = lines();
    Eigen::FFT<float> transform;
    transform.SetFlag(Eigen::FFT<float>::HalfSpectrum);
    std::vector<float> piece(padded, 0.0F);
    std::vector<std::complex<float>> spectrum;
    std::array<float, padded / 2 + 1> power{};
    for (std::size_t row = 0; row < rows; ++row) {
        const auto first = static_cast<std::size_t>(std::llround(static_cast<double>(row) * step));
        for (std::size_t i = 0; i < window; ++i)
            piece[i] = weights[i] * sound.samples[std::min(first + i, sound.samples.size() - 1)];
        transform.fwd(spectrum, piece);
        for (std::size_t i = 0; i < power.size(); ++i)
            power[i] = std::log(std::norm(spectrum[i]) + least_power);
        float* const values = &made.values[row * sound_bins];
        for (std::size_t bin = 0; bin < sound_bins; ++bin)
            values[bin] = (1.0F - places[bin].share) * power[places[bin].below] +
                          places[bin].share * power[places[bin].below + 1];
        above_surroundings(values);
    }
    standardise(made.values);
    return made;
}

} // namespace lapwright::video
