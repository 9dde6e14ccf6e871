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

// Besides what the filter needs a Transition has `template <int columns> Batch<size, columns> noise(NormalBatch&)`:
// columns drawn from N(0, Q).  A deviation, truth minus estimate, is the difference of two Batch<wanted, columns> of
// the first rows of the state: on the way there draws.put(k, error) is called for every step, on the way back
// draws.take_off(k, correction), so that the room of the result is all that they need.  go_on(k) is asked before every
// step of the way there and back.
template <int columns, int wanted, typename Transition, typename Number, typename Draws, typename GoOn = Always>
void draw_deviations(const StateSpace<Transition>& model, const Filtered<Transition, Number>& filtered,
                     std::uint64_t seed, std::uint64_t first_stream, Draws&& draws, const GoOn& go_on = {}) {
    constexpr int size = Transition::size;
    NormalBatch<columns> normals(seed, first_stream);
    std::vector<Batch<1, columns>> innovations(model.observations.size());
    Batch<size, columns> e = Batch<size, columns>::Zero();
    for (std::size_t k = 0; k < model.steps.size(); ++k) {
        if (!go_on(k)) return;
        const auto& step = model.steps[k];
        if (step.prior >= 0) {
            const auto& sd = model.priors[static_cast<std::size_t>(step.prior)].sd;
            e = sd.template cast<float>().asDiagonal() * normals.template next<size>();
        } else {
            step.transition.forward(e);
            e += step.transition.template noise<columns>(normals);
        }
        draws.put(k, Batch<wanted, columns>(e.template topRows<wanted>()));
        for (std::size_t j = step.first_observation; j < model.observations_end(k); ++j) {
            if (filtered.accepted[j] == 0) continue;
            const Observation& seen = model.observations[j];
            const float noise_sd = static_cast<float>(std::sqrt(seen.variance));
            innovations[j] = seen.of(e) + noise_sd * normals.template next<1>();
            e.noalias() -= filtered.gain[j].template cast<float>().lazyProduct(innovations[j]);
        }
    }
    Batch<size, columns> r = Batch<size, columns>::Zero();
    for (std::size_t k = model.steps.size(); k-- > 0 && go_on(k);) {
        const auto& step = model.steps[k];
        for (std::size_t j = model.observations_end(k); j-- > step.first_observation;) {
            if (filtered.accepted[j] == 0) continue;
            const Observation& seen = model.observations[j];
            const Eigen::Matrix<float, 1, size> gain = filtered.gain[j].transpose().template cast<float>();
            const Batch<1, columns> u =
                innovations[j] / static_cast<float>(filtered.innovation_variance[j]) - gain.lazyProduct(r);
            for (std::size_t i = 0; i < seen.index.size(); ++i)
                r.row(seen.index[i]) += static_cast<float>(seen.weight[i]) * u;
        }
        const Eigen::Matrix<float, wanted, size, Eigen::RowMajor> covariance =
            filtered.covariance[k].template topRows<wanted>().template cast<float>();
        draws.take_off(k, Batch<wanted, columns>(covariance.lazyProduct(r)));
        if (step.prior >= 0)
            r.setZero();
        else
            step.transition.backward(r);
    }
}

} // namespace lapwright::math
