// SPDX-License-Identifier: GPL-3.0-or-later
// Filter and smoother of a linear-Gaussian state-space model with scalar observations, any spacing of the steps.
//
// Notation: state x (size N), step k: x_k = F x_{k-1} + w, w ~ N(0, Q); observation z = h x + e, e ~ N(0, R), h sparse.
// Forward: the Kalman filter, one scalar at a time (gain K, innovation ν with variance S).  Backward: the
// fixed-interval smoother in the form of Bryson and Frazier (r and N in the notation of Durbin and Koopman 2012,
// chapter 4), which gives the same answer as Rauch, Tung and Striebel 1965 without a matrix inverse: x̂ = x + P r, cov =
// P - P N P. r and N also give the exact score of the likelihood in every noise variance (Koopman and Shephard 1992).
// A long record may be walked through in sections, each with a model of its own, to save memory: there the filter's
// state, back r and N are handed on.
#pragma once

#include <Eigen/Core>

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace lapwright::math {

// z = Σ weight_i x[index_i] + noise; unused weights are 0.
struct Observation {
    std::array<std::uint8_t, 3> index{};
    std::uint8_t sensor = 0; // for whoever collects figures by sensor
    float harmless = 0.0F;   // an innovation up to this size is never thrown out
    std::array<double, 3> weight{};
    double value = 0.0;
    double variance = 1.0;

    template <typename State>
    [[nodiscard]] auto of(const State& x) const {
        using Number = typename State::Scalar;
        return static_cast<Number>(weight[0]) * x.row(index[0]) + static_cast<Number>(weight[1]) * x.row(index[1]) +
               static_cast<Number>(weight[2]) * x.row(index[2]);
    }
};

// A Transition has `static constexpr int size`, and applies F and its transpose to the rows of a matrix in place
// (`forward(m)`, `backward(m)`), and adds Q to a covariance (`add_noise(p)`).
template <typename Transition>
struct StateSpace {
    static constexpr int size = Transition::size;
    using Vector = Eigen::Matrix<double, size, 1>;
    using Matrix = Eigen::Matrix<double, size, size, Eigen::RowMajor>;

    // What is believed before the first observation of a stretch that is joined to nothing before it.
    struct Prior {
        Vector mean = Vector::Zero();
        Vector sd = Vector::Ones();
    };

    struct Step {
        Transition transition;
        std::size_t first_observation = 0; // its observations end where the next step's begin
        int prior = -1;                    // index into priors: the state starts afresh; -1: the transition leads here
    };

    std::vector<Step> steps; // the first has a prior
    std::vector<Observation> observations;
    std::vector<Prior> priors;
    // So many observations by one sensor of one part of the state are thrown out in a row at most; the next one is
    // believed, or else a filter that has gone astray, along one axis perhaps, would never come back.
    std::size_t patience = 50;

    [[nodiscard]] std::size_t observations_end(std::size_t step) const {
        return step + 1 < steps.size() ? steps[step + 1].first_observation : observations.size();
    }
};

// Takes out what rounding did to a matrix's symmetry.
template <typename Matrix>
void mirror(Matrix& m) {
    for (Eigen::Index i = 1; i < m.rows(); ++i)
        for (Eigen::Index j = 0; j < i; ++j)
            m(i, j) = m(j, i);
}

// The filter's memory, one entry a step or an observation.  It is the most of what a smoother needs; what corrections
// are made of may be kept in single precision.
template <typename Transition, typename Number = double>
struct Filtered {
    static constexpr int size = Transition::size;
    std::vector<Eigen::Matrix<double, size, 1>> mean;                           // before the step's observations
    std::vector<Eigen::Matrix<Number, size, size, Eigen::RowMajor>> covariance; // likewise
    std::vector<Eigen::Matrix<Number, size, 1>> gain;
    std::vector<double> innovation;
    std::vector<double> innovation_variance;
    std::vector<std::uint8_t> accepted; // 0: thrown out by the gate, as if it had not been made
};

template <typename Transition, typename Number = double>
class Filter {
  public:
    using Model = StateSpace<Transition>;
    using Memory = Filtered<Transition, Number>;

    // Between two steps.
    struct State {
        typename Model::Vector mean = Model::Vector::Zero();
        typename Model::Matrix covariance = Model::Matrix::Zero();
        // Observations thrown out in a row, by sensor and state.
        std::array<std::size_t, 16 * static_cast<std::size_t>(Transition::size)> refused{};
    };

    // Observations further than `gate` standard deviations from their prediction are thrown out, unless harmless.
    [[nodiscard]] static Memory run(const Model& model, double gate) {
        Memory result;
        State state;
        run(model, gate, state, result);
        return result;
    }

    // The same from a state on, which it leaves at the end of the model, into memory that may have been used before.
    static void run(const Model& model, double gate, State& state, Memory& result) {
        make_room(result, model);
        Gate gate_state{gate, model.patience, state.refused};
        typename Model::Vector& x = state.mean;
        typename Model::Matrix& p = state.covariance;
        for (std::size_t k = 0; k < model.steps.size(); ++k) {
            predict(model, k, x, p);
            result.mean[k] = x;
            result.covariance[k] = p.template cast<Number>();
            const std::size_t end = model.observations_end(k);
            for (std::size_t j = model.steps[k].first_observation; j < end; ++j)
                update(model.observations[j], j, gate_state, x, p, result);
        }
    }

  private:
    static constexpr int size = Transition::size;

    static void make_room(Memory& result, const Model& model) {
        result.mean.resize(model.steps.size());
        result.covariance.resize(model.steps.size());
        result.gain.resize(model.observations.size());
        result.innovation.resize(model.observations.size());
        result.innovation_variance.resize(model.observations.size());
        result.accepted.resize(model.observations.size());
    }

    static void predict(const Model& model, std::size_t k, typename Model::Vector& x, typename Model::Matrix& p) {
        const typename Model::Step& step = model.steps[k];
        if (step.prior >= 0) {
            const auto& prior = model.priors[static_cast<std::size_t>(step.prior)];
            x = prior.mean;
            p = prior.sd.cwiseAbs2().asDiagonal();
            return;
        }
        step.transition.forward(x);
        step.transition.forward(p);
        p.transposeInPlace();
        step.transition.forward(p);
        mirror(p);
        step.transition.add_noise(p);
    }

    struct Gate {
        double width;
        std::size_t patience;
        decltype(State::refused)& refused;

        bool lets_in(const Observation& seen, double innovation, double variance) {
            const int slot = seen.sensor * size + seen.index[0];
            std::size_t& row = refused[static_cast<std::size_t>(slot) % refused.size()];
            const bool fits = innovation * innovation <= width * width * variance ||
                              std::fabs(innovation) <= static_cast<double>(seen.harmless);
            const bool let_in = fits || row >= patience;
            row = let_in ? 0 : row + 1;
            return let_in;
        }
    };

    static void update(const Observation& seen, std::size_t j, Gate& gate, typename Model::Vector& x,
                       typename Model::Matrix& p, Memory& result) {
        const typename Model::Vector covariance = seen.of(p).transpose();
        const double variance = seen.of(covariance)(0) + seen.variance;
        const double innovation = seen.value - seen.of(x)(0);
        result.innovation[j] = innovation;
        result.innovation_variance[j] = variance;
        result.accepted[j] = gate.lets_in(seen, innovation, variance) ? 1 : 0;
        if (result.accepted[j] == 0) return;
        const double root_information = 1.0 / std::sqrt(variance);
        // As a square, so that it stays symmetric to the last bit: what is not grows over many steps.
        const typename Model::Vector root = covariance * root_information;
        const typename Model::Vector gain = root * root_information;
        result.gain[j] = gain.template cast<Number>();
        x.noalias() += gain * innovation;
        p.noalias() -= root * root.transpose();
    }
};

// What the steps behind a section say of those before it; nothing behind the last.
template <typename Transition>
struct Behind {
    typename StateSpace<Transition>::Vector r = StateSpace<Transition>::Vector::Zero();
    typename StateSpace<Transition>::Matrix n = StateSpace<Transition>::Matrix::Zero();
};

// Walks from the last step to the first.  For each observation that was accepted it calls
// visitor.observation(j, u, d): the smoothing error u and its variance d (ê = R u); for each step, after those of its
// observations, visitor.step(k, r, n).  With `with_variance` false d is 0 and n is zero.
template <bool with_variance, typename Transition, typename Number, typename Visitor>
void walk_back(const StateSpace<Transition>& model, const Filtered<Transition, Number>& filtered, Visitor&& visitor,
               Behind<Transition>& behind) {
    using Model = StateSpace<Transition>;
    typename Model::Vector& r = behind.r;
    typename Model::Matrix& n = behind.n;
    for (std::size_t k = model.steps.size(); k-- > 0;) {
        for (std::size_t j = model.observations_end(k); j-- > model.steps[k].first_observation;) {
            if (filtered.accepted[j] == 0) continue;
            const Observation& seen = model.observations[j];
            const typename Model::Vector gain = filtered.gain[j].template cast<double>();
            const double u = filtered.innovation[j] / filtered.innovation_variance[j] - gain.dot(r);
            double d = 0.0;
            if constexpr (with_variance) {
                const typename Model::Vector back = gain.transpose().lazyProduct(n).transpose();
                d = 1.0 / filtered.innovation_variance[j] + gain.dot(back);
                for (std::size_t i = 0; i < seen.index.size(); ++i) {
                    if (seen.weight[i] == 0.0) continue;
                    n.row(seen.index[i]) -= seen.weight[i] * back.transpose();
                    n.col(seen.index[i]) -= seen.weight[i] * back;
                    for (std::size_t l = 0; l < seen.index.size(); ++l)
                        n(seen.index[i], seen.index[l]) += seen.weight[i] * seen.weight[l] * d;
                }
            }
            for (std::size_t i = 0; i < seen.index.size(); ++i)
                r[seen.index[i]] += seen.weight[i] * u;
            visitor.observation(j, u, d);
        }
        visitor.step(k, r, n);
        const typename Model::Step& step = model.steps[k];
        if (step.prior >= 0) {
            r.setZero();
            n.setZero();
            continue;
        }
        step.transition.backward(r);
        if constexpr (with_variance) {
            step.transition.backward(n);
            n.transposeInPlace();
            step.transition.backward(n);
            mirror(n);
        }
    }
}

template <bool with_variance, typename Transition, typename Number, typename Visitor>
void walk_back(const StateSpace<Transition>& model, const Filtered<Transition, Number>& filtered, Visitor&& visitor) {
    Behind<Transition> nothing;
    walk_back<with_variance>(model, filtered, visitor, nothing);
}

// Means and covariances of the states given all observations.
template <typename Transition>
struct Smoothed {
    std::vector<typename StateSpace<Transition>::Vector> mean;
    std::vector<typename StateSpace<Transition>::Matrix> covariance;
};

template <typename Transition>
[[nodiscard]] Smoothed<Transition> smoothed(const StateSpace<Transition>& model, const Filtered<Transition>& filtered) {
    using Model = StateSpace<Transition>;
    struct Keep {
        const Filtered<Transition>& from;
        Smoothed<Transition>& result;
        void observation(std::size_t, double, double) const {}
        void step(std::size_t k, const typename Model::Vector& r, const typename Model::Matrix& n) const {
            const typename Model::Matrix& p = from.covariance[k];
            result.mean[k] = from.mean[k] + p * r;
            result.covariance[k] = p - p * n * p;
        }
    };
    Smoothed<Transition> result;
    result.mean.resize(model.steps.size());
    result.covariance.resize(model.steps.size());
    walk_back<true>(model, filtered, Keep{filtered, result});
    return result;
}

} // namespace lapwright::math
