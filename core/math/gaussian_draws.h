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

// Rows of states or noises, a column each draw.
template <int rows, int columns>
using Batch = Eigen::Matrix<double, rows, columns, Eigen::RowMajor>;

template <int columns>
class NormalBatch {
  public:
    // Column c takes the stream first_stream + c.
    NormalBatch(std::uint64_t seed, std::uint64_t first_stream) {
        for (int c = 0; c < columns; ++c)
            streams_.emplace_back(seed, first_stream + static_cast<std::uint64_t>(c));
    }

    template <int rows>
    [[nodiscard]] Batch<rows, columns> next() {
        Batch<rows, columns> z;
        for (int c = 0; c < columns; ++c)
            for (int i = 0; i < rows; ++i)
                z(i, c) = streams_[static_cast<std::size_t>(c)].next();
        return z;
    }

  private:
    std::vector<NormalStream> streams_;
};

// Besides what the filter needs a Transition has `template <int columns> Batch<size, columns> noise(NormalBatch&)`:
// columns drawn from N(0, Q).  Calls keep(k, deviation) for every step from the last to the first; deviation is a
// Batch<wanted, columns> of truth minus estimate, the first rows of the state.  go_on(k) is asked before every step of
// the way there and back.
template <int columns, int wanted, typename Transition, typename Keep, typename GoOn = Always>
void draw_deviations(const StateSpace<Transition>& model, const Filtered<Transition>& filtered, std::uint64_t seed,
                     std::uint64_t first_stream, Keep&& keep, const GoOn& go_on = {}) {
    constexpr int size = Transition::size;
    NormalBatch<columns> normals(seed, first_stream);
    // Of a deviation that is a metre at most, single precision keeps a tenth of a micrometre.
    std::vector<Eigen::Matrix<float, wanted, columns, Eigen::RowMajor>> errors(model.steps.size());
    std::vector<Eigen::Matrix<float, 1, columns, Eigen::RowMajor>> innovations(model.observations.size());
    Batch<size, columns> e = Batch<size, columns>::Zero();
    for (std::size_t k = 0; k < model.steps.size(); ++k) {
        if (!go_on(k)) return;
        const auto& step = model.steps[k];
        if (step.prior >= 0) {
            const auto& sd = model.priors[static_cast<std::size_t>(step.prior)].sd;
            e = sd.asDiagonal() * normals.template next<size>();
        } else {
            step.transition.forward(e);
            e += step.transition.template noise<columns>(normals);
        }
        errors[k] = e.template topRows<wanted>().template cast<float>();
        for (std::size_t j = step.first_observation; j < model.observations_end(k); ++j) {
            if (filtered.accepted[j] == 0) continue;
            const Observation& seen = model.observations[j];
            const Batch<1, columns> innovation = seen.of(e) + std::sqrt(seen.variance) * normals.template next<1>();
            innovations[j] = innovation.template cast<float>();
            e.noalias() -= filtered.gain[j].lazyProduct(innovation);
        }
    }
    Batch<size, columns> r = Batch<size, columns>::Zero();
    for (std::size_t k = model.steps.size(); k-- > 0 && go_on(k);) {
        const auto& step = model.steps[k];
        for (std::size_t j = model.observations_end(k); j-- > step.first_observation;) {
            if (filtered.accepted[j] == 0) continue;
            const Observation& seen = model.observations[j];
            const Batch<1, columns> u = innovations[j].template cast<double>() / filtered.innovation_variance[j] -
                                        filtered.gain[j].transpose().lazyProduct(r);
            for (std::size_t i = 0; i < seen.index.size(); ++i)
                r.row(seen.index[i]) += seen.weight[i] * u;
        }
        Batch<wanted, columns> deviation = errors[k].template cast<double>();
        deviation.noalias() -= filtered.covariance[k].template topRows<wanted>().lazyProduct(r);
        keep(k, deviation);
        if (step.prior >= 0)
            r.setZero();
        else
            step.transition.backward(r);
    }
}

} // namespace lapwright::math
