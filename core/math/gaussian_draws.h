// SPDX-License-Identifier: GPL-3.0-or-later
// Draws from the posterior of a linear-Gaussian state-space model: the simulation smoother of Durbin and Koopman 2002,
// Biometrika 89(3):603, in the form of the filter's error process.
//
// A state and observations are simulated from the model with mean zero; e is the simulated state minus what the filter
// makes of the simulated observations, so e_k = F e_{k-1} + w, ν = h e + ε, e -= K ν; its smoothed counterpart e - P r
// is distributed as truth minus smoothed estimate.  The gains of one filter pass serve all draws; `columns` of them go
// together through each step.
#pragma once

#include "core/math/gaussian_smoother.h"
#include "core/math/normal_random.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <vector>

namespace lapwright::math {

// Rows of states or noises, a column each draw.  Of a deviation that is a metre at most, single precision keeps a tenth
// of a micrometre.
template <int rows, int columns>
using Batch = Eigen::Matrix<float, rows, columns, Eigen::RowMajor>;

template <int columns>
class NormalBatch {
  public:
    // Column c takes the stream first_stream + c.
    NormalBatch(std::uint64_t seed, std::uint64_t first_stream) : streams_(seed, first_stream) {}

    template <int rows>
    [[nodiscard]] Batch<rows, columns> next() {
        Batch<rows, columns> z;
        for (int i = 0; i < rows; ++i)
            streams_.next(&z(i, 0));
        return z;
    }

  private:
    NormalStreams<columns> streams_;
};

// Draws of one record, all its sections there, then all of them back.  Besides what the filter needs a Transition has
// `template <int columns> Batch<size, columns> noise(NormalBatch&)`: columns drawn from N(0, Q).  A deviation, truth
// minus estimate, is the difference of two Batch<wanted, columns> of the first rows of the state: on the way there
// draws.put(k, error) is called for every step of the section, on the way back draws.take_off(k, correction), so that
// the room of the result is all that they need.
template <typename Transition, int columns, int wanted>
class Deviations {
  public:
    // Of a section, to be kept from the way there to the way back: in so many steps to the standard deviation
    // that what is rounded off is nothing beside the noise of an observation.
    using Innovations = std::vector<std::array<std::int16_t, columns>>;

    Deviations(std::uint64_t seed, std::uint64_t first_stream) : normals_(seed, first_stream) {}

    template <typename Number, typename Draws>
    [[nodiscard]] Innovations there(const StateSpace<Transition>& model, const Filtered<Transition, Number>& filtered,
                                    Draws&& draws) {
        Innovations innovations(model.observations.size());
        for (std::size_t k = 0; k < model.steps.size(); ++k) {
            const auto& step = model.steps[k];
            if (step.prior >= 0) {
                const auto& sd = model.priors[static_cast<std::size_t>(step.prior)].sd;
                e_ = sd.template cast<float>().asDiagonal() * normals_.template next<size>();
            } else {
                step.transition.forward(e_);
                e_ += step.transition.template noise<columns>(normals_);
            }
            draws.put(k, Batch<wanted, columns>(e_.template topRows<wanted>()));
            for (std::size_t j = step.first_observation; j < model.observations_end(k); ++j) {
                if (filtered.accepted[j] == 0) continue;
                const Observation& seen = model.observations[j];
                const float noise_sd = static_cast<float>(std::sqrt(seen.variance));
                const Batch<1, columns> innovation = seen.of(e_) + noise_sd * normals_.template next<1>();
                const float scale = per_sd / static_cast<float>(std::sqrt(filtered.innovation_variance[j]));
                for (int c = 0; c < columns; ++c) // rounded, as what is cut off is positive
                    innovations[j][static_cast<std::size_t>(c)] =
                        static_cast<std::int16_t>(static_cast<int>(innovation[c] * scale + (middle + 0.5F)) - middle);
                e_.noalias() -= filtered.gain[j].template cast<float>().lazyProduct(innovation);
            }
        }
        return innovations;
    }

    template <typename Number, typename Draws>
    void back(const StateSpace<Transition>& model, const Filtered<Transition, Number>& filtered,
              const Innovations& innovations, Draws&& draws) {
        for (std::size_t k = model.steps.size(); k-- > 0;) {
            const auto& step = model.steps[k];
            for (std::size_t j = model.observations_end(k); j-- > step.first_observation;) {
                if (filtered.accepted[j] == 0) continue;
                const Observation& seen = model.observations[j];
                const Eigen::Matrix<float, 1, size> gain = filtered.gain[j].transpose().template cast<float>();
                const float scale = 1.0F / (per_sd * static_cast<float>(std::sqrt(filtered.innovation_variance[j])));
                Batch<1, columns> u;
                for (int c = 0; c < columns; ++c)
                    u[c] = static_cast<float>(innovations[j][static_cast<std::size_t>(c)]) * scale;
                u.noalias() -= gain.lazyProduct(r_);
                for (std::size_t i = 0; i < seen.index.size(); ++i)
                    r_.row(seen.index[i]) += static_cast<float>(seen.weight[i]) * u;
            }
            const Eigen::Matrix<float, wanted, size, Eigen::RowMajor> covariance =
                filtered.covariance[k].template topRows<wanted>().template cast<float>();
            draws.take_off(k, Batch<wanted, columns>(covariance.lazyProduct(r_)));
            if (step.prior >= 0)
                r_.setZero();
            else
                step.transition.backward(r_);
        }
    }

  private:
    static constexpr int size = Transition::size;
    static constexpr float per_sd = 2048.0F;
    static constexpr int middle = 32768;

    NormalBatch<columns> normals_;
    Batch<size, columns> e_ = Batch<size, columns>::Zero();
    Batch<size, columns> r_ = Batch<size, columns>::Zero();
};

} // namespace lapwright::math
