// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/latency.h"

#include <algorithm>
#include <cmath>

namespace lapwright::motion {
namespace {

constexpr double farthest_s = 0.6;
constexpr double coarse_step_s = 0.03;
constexpr double fine_step_s = 0.01;
constexpr std::size_t max_samples = 12000;
constexpr std::size_t coarse_share = 4; // the first look takes one sample in so many
constexpr std::size_t min_samples = 100;
// Errors of path and readings hang together over some tenths of a second, so that samples count for fewer.
constexpr double correlated_samples = 8.0;
constexpr double longest_path_step_s = 1.5; // of the path, to be read between
constexpr double huber_sds = 2.0;
constexpr double sd_of_median = 1.4826; // standard deviation over median of what is off
// The furthest that a sample is shifted in all rounds.
constexpr double shift_reach_s = farthest_s + 0.05;

struct Fit {
    double offset = 0.0;
    double slope = 0.0;
    double correlation = 0.0;
    double residual = 0.0; // weighted mean square
    double count = 0.0;    // sum of the weights; 0: there is no line
};

// A sample of the series, the interval of the path around it, and how far it is believed.
struct Sample {
    double time_s;
    double value;
    std::size_t near;
    double weight = 1.0;
};

// The path's figure and the samples that can be held against it at every latency thought of: were the set another one
// at each, the residual would say as much of the set as of the latency.
class Readings {
  public:
    Readings(const Series& series, std::span<const double> time_s, std::span<const double> truth)
        : time_s_(time_s), truth_(truth) {
        std::vector<std::size_t> holes(time_s.size(), 0); // before each stamp
        for (std::size_t k = 0; k + 1 < time_s.size(); ++k)
            holes[k + 1] = holes[k] + (is_hole(k) ? 1 : 0);
        const std::size_t stride = 1 + series.size() / max_samples;
        std::size_t first = 0;
        std::size_t near = 0;
        std::size_t last = 0;
        const auto walk = [&](std::size_t& k, double moment_s) {
            while (k + 2 < time_s.size() && time_s[k + 1] <= moment_s)
                ++k;
        };
        for (std::size_t i = 0; i < series.size(); i += stride) {
            const double t = series.time_s[i];
            if (t - shift_reach_s < time_s.front() || t + shift_reach_s >= time_s.back()) continue;
            walk(first, t - shift_reach_s);
            walk(near, t);
            walk(last, t + shift_reach_s);
            if (holes[last + 1] == holes[first]) samples_.push_back({t, series.values[i], near});
        }
    }

    [[nodiscard]] std::size_t size() const { return samples_.size(); }

    // The line through readings over the path as it was so much earlier.
    [[nodiscard]] Fit line(double latency_s, std::size_t stride) const {
        double n = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0, yy = 0.0;
        std::ptrdiff_t earlier = 0;
        for (std::size_t i = 0; i < samples_.size(); i += stride) {
            const Sample& sample = samples_[i];
            const double value = truth_at(sample, latency_s, earlier);
            n += sample.weight;
            x += sample.weight * value;
            y += sample.weight * sample.value;
            xx += sample.weight * value * value;
            xy += sample.weight * value * sample.value;
            yy += sample.weight * sample.value * sample.value;
        }
        const double sxx = xx - x * x / n;
        const double sxy = xy - x * y / n;
        const double syy = yy - y * y / n;
        if (!(sxx > 0.0 && syy > 0.0)) return {};
        const double slope = sxy / sxx;
        return {(y - slope * x) / n, slope, sxy / std::sqrt(sxx * syy), std::max(0.0, syy - slope * sxy) / n, n};
    }

    // Huber's weights about a line: a reading far off pulls no more than one at the limit.
    void weigh(const Fit& fit, double latency_s) {
        std::vector<double> off(samples_.size());
        std::ptrdiff_t earlier = 0;
        for (std::size_t i = 0; i < samples_.size(); ++i)
            off[i] = std::fabs(samples_[i].value - fit.offset - fit.slope * truth_at(samples_[i], latency_s, earlier));
        std::vector<double> sorted = off;
        const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
        std::ranges::nth_element(sorted, middle);
        const double limit = huber_sds * sd_of_median * *middle;
        for (std::size_t i = 0; i < samples_.size(); ++i)
            samples_[i].weight = off[i] <= limit ? 1.0 : limit / off[i];
    }

  private:
    [[nodiscard]] bool is_hole(std::size_t k) const {
        return std::isnan(truth_[k]) || std::isnan(truth_[k + 1]) || time_s_[k + 1] - time_s_[k] > longest_path_step_s;
    }

    // `earlier`: by how many intervals it was for the sample before, where the search begins.
    [[nodiscard]] double truth_at(const Sample& sample, double latency_s, std::ptrdiff_t& earlier) const {
        const double moment = sample.time_s - latency_s;
        const auto near = static_cast<std::ptrdiff_t>(sample.near);
        auto at = static_cast<std::size_t>(
            std::clamp(near - earlier, std::ptrdiff_t{0}, static_cast<std::ptrdiff_t>(time_s_.size()) - 2));
        while (time_s_[at] > moment)
            --at;
        while (time_s_[at + 1] <= moment)
            ++at;
        earlier = near - static_cast<std::ptrdiff_t>(at);
        return truth_[at] + (truth_[at + 1] - truth_[at]) * (moment - time_s_[at]) / (time_s_[at + 1] - time_s_[at]);
    }

    std::span<const double> time_s_;
    std::span<const double> truth_;
    std::vector<Sample> samples_;
};

struct Best {
    double latency_s = 0.0;
    Fit fit;
};

Best search(const Readings& readings, double middle_s, double max_s, double step_s, std::size_t stride) {
    Best best{middle_s, readings.line(middle_s, stride)};
    const int steps = static_cast<int>(std::lround(max_s / step_s));
    for (int i = -steps; i <= steps; ++i) {
        const Fit fit = readings.line(middle_s + i * step_s, stride);
        if (fit.count > 0.0 && (best.fit.count == 0.0 || fit.residual < best.fit.residual))
            best = {middle_s + i * step_s, fit};
    }
    return best;
}

// Coarse, then finer, with the weights of each round about the best of the one before.
Best search(Readings& readings) {
    const std::size_t stride = readings.size() > coarse_share * min_samples * 2 ? coarse_share : 1;
    Best best = search(readings, 0.0, farthest_s, coarse_step_s, stride);
    if (best.fit.count == 0.0) return best;
    readings.weigh(best.fit, best.latency_s);
    best = search(readings, 0.0, farthest_s, coarse_step_s, stride);
    for (int round = 0; round < 3 && best.fit.count > 0.0; ++round) {
        readings.weigh(best.fit, best.latency_s);
        const double middle_s = std::clamp(best.latency_s, -farthest_s, farthest_s);
        best = search(readings, middle_s, 2.0 * fine_step_s, fine_step_s, 1);
    }
    return best;
}

} // namespace

bool Relation::has_latency() const {
    return std::fabs(latency_s) > std::max(4.0 * latency_sd_s, 0.004);
}

std::optional<Relation> relation(const Series& series, std::span<const double> time_s, std::span<const double> truth) {
    if (series.size() < min_samples || time_s.size() < min_samples) return std::nullopt;
    Readings readings(series, time_s, truth);
    if (readings.size() < min_samples) return std::nullopt;
    const auto [best_s, best] = search(readings);
    if (best.count == 0.0 || std::fabs(best.correlation) < 0.5) return std::nullopt;

    const Fit before = readings.line(best_s - fine_step_s, 1);
    const Fit after = readings.line(best_s + fine_step_s, 1);
    const double bend = before.residual - 2.0 * best.residual + after.residual;
    if (before.count == 0.0 || after.count == 0.0 || bend <= 0.0) return std::nullopt;
    const double shift = std::clamp(0.5 * (before.residual - after.residual) / bend, -1.0, 1.0) * fine_step_s;
    // residual = σ² + ½ L² bend/step²; each of n/c independent samples: var(L) = σ² c / (n · ½ bend/step²).
    const double curvature = 0.5 * bend / (fine_step_s * fine_step_s);
    const double variance = best.residual * correlated_samples / (best.count * curvature);
    const Fit there = readings.line(best_s + shift, 1);
    return Relation{best_s + shift, std::sqrt(variance), there.offset, there.slope, there.correlation};
}

} // namespace lapwright::motion
