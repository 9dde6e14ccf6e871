// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/step_by_picture.h"

#include "core/base/translation.h"
#include "core/base/wording.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <cstddef>
#include <limits>
#include <optional>
#include <unsupported/Eigen/FFT>
#include <utility>

namespace lapwright::video {
namespace {

using base::said;

constexpr double grid_s = 0.04;
constexpr double least_shared_s = 40.0;
constexpr double slice_s = 10.0;
constexpr double longest_dark_s = 0.6;
constexpr double other_from_s = 1.0;         // another offset, not the flank of the best one
constexpr double least_turning_radps = 0.03; // standard deviation: a straight tells nothing
// What tells a fit from chance, seen over simulated drives in tests/core/video: the pieces of the right lap agree
// within a few milliseconds, those of another lap or session of the same driver within eight and more.
constexpr double least_correlation = 0.75;
constexpr double least_sharper_turning = 1.5;
constexpr double least_picture_agreement = 0.8;
constexpr double agrees_s = 0.15;
constexpr double worst_picture_sd_s = 0.005;
constexpr double picture_bias_sd_s = 0.0045; // of a body that rolls, and turns a little before its course does

// Values every grid_s, NaN where nothing is known.
struct Series {
    double first_s = 0.0;
    std::vector<double> values;

    [[nodiscard]] double at(double time_s) const {
        const double place = (time_s - first_s) / grid_s;
        if (!(place >= 0.0) || place > static_cast<double>(values.size()) - 1.0) return std::nan("");
        const auto below = std::min(static_cast<std::size_t>(place), values.size() - 2);
        const double share = place - static_cast<double>(below);
        return (1.0 - share) * values[below] + share * values[below + 1];
    }
    [[nodiscard]] double time_s(std::size_t i) const { return first_s + static_cast<double>(i) * grid_s; }
};

Series evenly(const std::vector<double>& time_s, const std::vector<double>& values) {
    Series made;
    if (time_s.size() < 2) return made;
    made.first_s = time_s.front();
    const auto count = static_cast<std::size_t>((time_s.back() - time_s.front()) / grid_s) + 1;
    std::size_t i = 0;
    for (std::size_t k = 0; k < count; ++k) {
        const double at_s = made.time_s(k);
        while (i + 2 < time_s.size() && time_s[i + 1] <= at_s)
            ++i;
        const double gap_s = time_s[i + 1] - time_s[i];
        made.values.push_back(gap_s > longest_dark_s ? std::nan("")
                                                     : std::lerp(values[i], values[i + 1],
                                                                 std::clamp((at_s - time_s[i]) / gap_s, 0.0, 1.0)));
    }
    return made;
}

// A frame that was misread is told by its neighbours: the median of three.
std::vector<double> without_misreadings(const std::vector<double>& rates) {
    std::vector<double> smooth = rates;
    for (std::size_t i = 1; i + 1 < rates.size(); ++i) {
        const auto [low, high] = std::minmax(rates[i - 1], rates[i + 1]);
        smooth[i] = std::clamp(rates[i], low, high);
    }
    return smooth;
}

// Sums over the overlap at every lag, by the Fourier transform.
class Sums {
  public:
    Sums(const Series& flow, const Series& turning)
        : rows_(flow.values.size()), lags_(rows_ + turning.values.size() - 1) {
        while (size_ < rows_ + turning.values.size())
            size_ *= 2;
        for (int power = 0; power < 3; ++power) {
            flow_[static_cast<std::size_t>(power)] = spectrum(flow, power);
            turning_[static_cast<std::size_t>(power)] = spectrum(turning, power);
        }
    }
    [[nodiscard]] std::size_t lags() const { return lags_; }
    // Of flow^i · turning^j; index k is the lag k − (rows − 1) in hops.
    [[nodiscard]] std::vector<double> of(std::size_t flow_power, std::size_t turning_power) {
        std::vector<std::complex<double>> product(size_);
        for (std::size_t k = 0; k < size_; ++k)
            product[k] = turning_[turning_power][k] * std::conj(flow_[flow_power][k]);
        std::vector<std::complex<double>> circular;
        transform_.inv(circular, product);
        std::vector<double> values(lags_);
        for (std::size_t k = 0; k < lags_; ++k)
            values[k] = circular[(k + size_ - (rows_ - 1)) % size_].real();
        return values;
    }

  private:
    [[nodiscard]] std::vector<std::complex<double>> spectrum(const Series& series, int power) {
        std::vector<std::complex<double>> values(size_, 0.0);
        for (std::size_t i = 0; i < series.values.size(); ++i)
            if (!std::isnan(series.values[i])) values[i] = std::pow(series.values[i], power);
        std::vector<std::complex<double>> made;
        transform_.fwd(made, values);
        return made;
    }

    Eigen::FFT<double> transform_;
    std::size_t rows_;
    std::size_t lags_;
    std::size_t size_ = 1;
    std::array<std::vector<std::complex<double>>, 3> flow_;
    std::array<std::vector<std::complex<double>>, 3> turning_;
};

// At every lag; −1 where too little overlaps, or the car hardly turns.
std::vector<double> correlations(const Series& flow, const Series& turning) {
    Sums sums(flow, turning);
    const auto n = sums.of(0, 0);
    const auto f = sums.of(1, 0);
    const auto w = sums.of(0, 1);
    const auto ff = sums.of(2, 0);
    const auto ww = sums.of(0, 2);
    const auto fw = sums.of(1, 1);
    std::vector<double> found(sums.lags(), -1.0);
    for (std::size_t k = 0; k < found.size(); ++k) {
        if (n[k] * grid_s < least_shared_s) continue;
        const double flow_variance = ff[k] / n[k] - f[k] / n[k] * f[k] / n[k];
        const double turning_variance = ww[k] / n[k] - w[k] / n[k] * w[k] / n[k];
        if (flow_variance <= 0.0 || turning_variance < least_turning_radps * least_turning_radps) continue;
        found[k] = (fw[k] / n[k] - f[k] / n[k] * w[k] / n[k]) / std::sqrt(flow_variance * turning_variance);
    }
    return found;
}

// The best offset first, then those that leave little more unexplained; laps of one driver are alike.
struct GoodOffsets {
    std::vector<double> offsets_s;
    double best = -1.0; // correlation
    double ratio = 0.0; // of what is left unexplained at the best other offset to that at this one
};

GoodOffsets good_offsets(std::vector<double> found, const Series& flow, const Series& turning) {
    constexpr std::size_t most = 8;
    constexpr double nearly = 2.0; // as much unexplained
    const auto apart = static_cast<std::ptrdiff_t>(other_from_s / grid_s);
    const double first_s = turning.first_s - flow.first_s - (static_cast<double>(flow.values.size()) - 1.0) * grid_s;
    GoodOffsets good;
    while (good.offsets_s.size() < most) {
        const auto top = std::ranges::max_element(found);
        if (good.offsets_s.empty()) good.best = *top;
        const double left = (1.0 - *top) / std::max(1.0 - good.best, 1e-9);
        if (good.offsets_s.size() == 1) good.ratio = left;
        if (*top <= 0.0 || left > nearly) break;
        const auto at = top - found.begin();
        good.offsets_s.push_back(first_s + static_cast<double>(at) * grid_s);
        std::fill(found.begin() + std::max<std::ptrdiff_t>(0, at - apart),
                  found.begin() + std::min<std::ptrdiff_t>(std::ssize(found), at + apart + 1), -1.0);
    }
    return good;
}

// Flow = scale · turning + level at one offset.
struct Lens {
    double scale = 0.0;
    double level = 0.0;
};

Lens lens_at(const Series& flow, const Series& turning, double offset_s) {
    double n = 0.0;
    double f = 0.0;
    double w = 0.0;
    double fw = 0.0;
    double ww = 0.0;
    for (std::size_t i = 0; i < flow.values.size(); ++i) {
        const double rate = turning.at(flow.time_s(i) + offset_s);
        if (std::isnan(rate) || std::isnan(flow.values[i])) continue;
        n += 1.0;
        f += flow.values[i];
        w += rate;
        fw += flow.values[i] * rate;
        ww += rate * rate;
    }
    const double spread = n * ww - w * w;
    if (!(spread > 0.0)) return {};
    const double scale = (n * fw - f * w) / spread;
    return {scale, (f - scale * w) / n};
}

// What one slice adds to the shift: its own best one is moved / weight.
struct Slice {
    double moved = 0.0;
    double weight = 0.0;
};

std::vector<Slice> slices_at(const Series& flow, const Series& turning, double offset_s, const Lens& lens) {
    const auto rows = static_cast<std::size_t>(slice_s / grid_s);
    std::vector<Slice> slices;
    for (std::size_t first = 0; first + rows <= flow.values.size(); first += rows) {
        Slice slice;
        for (std::size_t i = first; i < first + rows; ++i) {
            const double time_s = flow.time_s(i) + offset_s;
            const double slope =
                lens.scale * (turning.at(time_s + grid_s) - turning.at(time_s - grid_s)) / (2.0 * grid_s);
            const double left_over = flow.values[i] - lens.level - lens.scale * turning.at(time_s);
            if (std::isnan(slope) || std::isnan(left_over)) continue;
            slice.moved += slope * left_over;
            slice.weight += slope * slope;
        }
        if (slice.weight > 0.0) slices.push_back(slice);
    }
    return slices;
}

struct RefinedTurning {
    double offset_s = 0.0;
    double sd_s = 0.0;
    double agreement = 0.0;
};

std::optional<RefinedTurning> refine_turning(const Series& flow, const Series& turning, double offset_s) {
    constexpr int rounds = 12;
    constexpr double most_s = 0.1; // a round
    std::vector<Slice> slices;
    double weight = 0.0;
    for (int round = 0; round < rounds; ++round) {
        const Lens lens = lens_at(flow, turning, offset_s);
        slices = slices_at(flow, turning, offset_s, lens);
        double moved = 0.0;
        weight = 0.0;
        for (const Slice& slice : slices) {
            moved += slice.moved;
            weight += slice.weight;
        }
        if (!(weight > 0.0) || !(lens.scale > 0.0)) return {};
        offset_s += std::clamp(moved / weight, -most_s, most_s);
    }
    const auto count = static_cast<double>(slices.size());
    if (count < 4.0) return {};
    RefinedTurning refined{offset_s, 0.0, 0.0};
    for (const Slice& slice : slices) {
        refined.sd_s += slice.moved * slice.moved;
        if (std::abs(slice.moved / slice.weight) < agrees_s) refined.agreement += slice.weight / weight;
    }
    refined.sd_s = std::sqrt(refined.sd_s * count / (count - 1.0)) / weight;
    return refined;
}

// Of the good offsets the one whose pieces agree best; nothing where another one's do nearly as well.
std::optional<RefinedTurning> sharpest_turning(const Series& flow, const Series& turning,
                                               const std::vector<double>& offsets_s) {
    std::optional<RefinedTurning> best;
    double other_sd_s = std::numeric_limits<double>::infinity();
    for (const double offset_s : offsets_s) {
        const auto refined = refine_turning(flow, turning, offset_s);
        if (!refined || (best && std::abs(refined->offset_s - best->offset_s) < 0.5 * other_from_s)) continue;
        if (best) other_sd_s = std::min(other_sd_s, std::max(refined->sd_s, best->sd_s));
        if (!best || refined->sd_s < best->sd_s) best = refined;
    }
    return best && other_sd_s >= least_sharper_turning * best->sd_s ? best : std::nullopt;
}

StepAnswer not_told(std::string why) {
    return {{}, std::move(why)};
}

// The band in which the picture follows the car best lies at the horizon.
struct Horizon {
    Series flow;
    GoodOffsets good;
};

Horizon horizon_of(const Flow& flow, const Series& turning) {
    Horizon horizon;
    for (const std::vector<double>& rates : flow.rates) {
        Series seen = evenly(flow.time_s, without_misreadings(rates));
        GoodOffsets good = good_offsets(correlations(seen, turning), seen, turning);
        if (good.best > horizon.good.best) horizon = {std::move(seen), std::move(good)};
    }
    return horizon;
}

} // namespace

StepAnswer step_by_picture(const Flow& flow, const Turning& turning) {
    if (flow.length_s() < least_shared_s) return not_told(said("the picture of the video is shorter than 40 seconds"));
    const Series driven = evenly(turning.time_s, turning.rate_radps);
    if (driven.values.size() < 2) return not_told(said("how the car turns is not known"));
    const Horizon horizon = horizon_of(flow, driven);
    if (horizon.good.best < least_correlation)
        return not_told(said("the picture does not turn as the car does at any offset"));
    const auto refined = sharpest_turning(horizon.flow, driven, horizon.good.offsets_s);
    if (!refined || refined->sd_s > worst_picture_sd_s || refined->agreement < least_picture_agreement)
        return not_told(said("no offset stands out at which the picture turns as the car does"));
    const double half_width_s = base::half_width_95(std::hypot(refined->sd_s, picture_bias_sd_s));
    StepEstimate estimate;
    estimate.step.offset_s = refined->offset_s;
    estimate.step.around_s = 0.5 * (flow.time_s.front() + flow.time_s.back());
    estimate.offset_low_s = refined->offset_s - half_width_s;
    estimate.offset_high_s = refined->offset_s + half_width_s;
    estimate.method = StepMethod::picture_and_turning;
    estimate.score = horizon.good.ratio;
    return {estimate, ""};
}

} // namespace lapwright::video
