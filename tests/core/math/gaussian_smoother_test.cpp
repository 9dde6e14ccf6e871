// SPDX-License-Identifier: GPL-3.0-or-later
// The smoother against closed forms, and against a direct dense solution of the normal equations.
//
// Closed forms: random walk q = r = 1: filtered variance (√5 - 1)/2, smoothed 1/√5; white acceleration of density q
// with position noise density r_p and velocity noise density r_v: with A = 1/q, B = 1/r_v, C = 1/r_p, W = √(B +
// 2√(AC)): smoothed position variance 1/(2 √C W), velocity variance 1/(2 √A W) (derived from the Riccati equation).
#include "core/math/gaussian_draws.h"
#include "core/math/gaussian_smoother.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

#include <array>

namespace lapwright::math {
namespace {

struct RandomWalk {
    static constexpr int size = 1;
    double variance = 1.0;
    template <typename State>
    void forward(State&) const {}
    template <typename State>
    void backward(State&) const {}
    template <typename Covariance>
    void add_noise(Covariance& p) const {
        p(0, 0) += variance;
    }
    template <int columns>
    Batch<1, columns> noise(NormalBatch<columns>& normals) const {
        return static_cast<float>(std::sqrt(variance)) * normals.template next<1>();
    }
};

// Position and velocity under white acceleration of density q.
struct WhiteAcceleration {
    static constexpr int size = 2;
    double step = 0.0;
    double q = 1.0;
    template <typename State>
    void forward(State& x) const {
        x.row(0) += static_cast<typename State::Scalar>(step) * x.row(1);
    }
    template <typename State>
    void backward(State& x) const {
        x.row(1) += static_cast<typename State::Scalar>(step) * x.row(0);
    }
    [[nodiscard]] Eigen::Matrix2d covariance() const {
        Eigen::Matrix2d q0;
        q0 << step * step * step / 3.0, step * step / 2.0, step * step / 2.0, step;
        return q * q0;
    }
    template <typename Covariance>
    void add_noise(Covariance& p) const {
        p += covariance();
    }
    template <int columns>
    Batch<2, columns> noise(NormalBatch<columns>& normals) const {
        const Eigen::Matrix2d root = covariance().llt().matrixL();
        return root.cast<float>() * normals.template next<2>();
    }
};

StateSpace<RandomWalk> random_walk(std::size_t steps) {
    StateSpace<RandomWalk> model;
    model.priors.push_back(
        {RandomWalk{}.size * StateSpace<RandomWalk>::Vector::Zero(), 1000.0 * StateSpace<RandomWalk>::Vector::Ones()});
    for (std::size_t k = 0; k < steps; ++k) {
        model.steps.push_back({RandomWalk{}, k, k == 0 ? 0 : -1});
        model.observations.push_back({{0, 0, 0}, 0, 0.0F, {1.0, 0.0, 0.0}, 0.0, 1.0});
    }
    return model;
}

TEST(GaussianSmoother, HasTheGoldenVariancesOfTheRandomWalk) {
    const auto model = random_walk(201);
    const auto filtered = Filter<RandomWalk>::run(model, 1e9);
    const double predicted = filtered.covariance[100](0, 0);
    EXPECT_NEAR(predicted / (predicted + 1.0), 0.6180339887, 1e-9); // after the observation
    EXPECT_NEAR(smoothed(model, filtered).covariance[100](0, 0), 0.4472135955, 1e-9);
}

struct ClosedForm {
    double q, r_position, r_velocity; // no velocity: 0
    double position, velocity;
};

class WhiteAccelerationVariance : public testing::TestWithParam<ClosedForm> {};

TEST_P(WhiteAccelerationVariance, AgreesWithTheClosedForm) {
    const ClosedForm form = GetParam();
    constexpr double step = 0.005;
    constexpr std::size_t steps = 8001;
    StateSpace<WhiteAcceleration> model;
    model.priors.push_back(
        {StateSpace<WhiteAcceleration>::Vector::Zero(), 100.0 * StateSpace<WhiteAcceleration>::Vector::Ones()});
    for (std::size_t k = 0; k < steps; ++k) {
        model.steps.push_back({{step, form.q}, model.observations.size(), k == 0 ? 0 : -1});
        model.observations.push_back({{0, 0, 0}, 0, 0.0F, {1.0, 0.0, 0.0}, 0.0, form.r_position / step});
        if (form.r_velocity > 0.0)
            model.observations.push_back({{1, 0, 0}, 0, 0.0F, {1.0, 0.0, 0.0}, 0.0, form.r_velocity / step});
    }
    const auto result = smoothed(model, Filter<WhiteAcceleration>::run(model, 1e9));
    const double a = 1.0 / form.q;
    const double b = form.r_velocity > 0.0 ? 1.0 / form.r_velocity : 0.0;
    const double c = 1.0 / form.r_position;
    const double w = std::sqrt(b + 2.0 * std::sqrt(a * c));
    EXPECT_NEAR(1.0 / (2.0 * std::sqrt(c) * w), form.position, 1e-6);
    EXPECT_NEAR(1.0 / (2.0 * std::sqrt(a) * w), form.velocity, 1e-6);
    EXPECT_NEAR(result.covariance[steps / 2](0, 0) / form.position, 1.0, 1e-3);
    EXPECT_NEAR(result.covariance[steps / 2](1, 1) / form.velocity, 1.0, 1e-3);
}

INSTANTIATE_TEST_SUITE_P(GaussianSmoother, WhiteAccelerationVariance,
                         testing::Values(ClosedForm{1.0, 1.0, 0.0, 0.353553391, 0.353553391},
                                         ClosedForm{1.0, 1.0, 1.0, 0.288675135, 0.288675135},
                                         ClosedForm{2.0, 0.5, 0.1, 0.102062073, 0.204124145}));

// A short record with uneven steps, mixed observations, a restart and an outlier.
StateSpace<WhiteAcceleration> short_record(std::size_t steps) {
    StateSpace<WhiteAcceleration> model;
    NormalStream normals(5, 0);
    model.priors.push_back({Eigen::Vector2d{1.0, -2.0}, Eigen::Vector2d{3.0, 2.0}});
    model.priors.push_back({Eigen::Vector2d{-4.0, 0.5}, Eigen::Vector2d{2.0, 5.0}});
    for (std::size_t k = 0; k < steps; ++k) {
        const int prior = k == 0 ? 0 : k == steps / 2 ? 1 : -1;
        const double step = prior >= 0 ? 0.0 : 0.1 + 0.05 * std::fabs(normals.next());
        model.steps.push_back({{step, 0.7}, model.observations.size(), prior});
        if (k % 3 != 1) model.observations.push_back({{0, 0, 0}, 0, 0.0F, {1.0, 0.0, 0.0}, normals.next(), 0.3});
        if (k % 2 == 0) model.observations.push_back({{0, 1, 0}, 1, 0.0F, {0.4, -1.2, 0.0}, normals.next(), 0.5});
        if (k == 7) model.observations.push_back({{1, 0, 0}, 1, 0.0F, {1.0, 0.0, 0.0}, 500.0, 0.1});
    }
    return model;
}

struct Dense {
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariance;
};

// All states at once: information matrix and vector of prior, transitions and accepted observations, then one solve.
Dense dense_solution(const StateSpace<WhiteAcceleration>& model, const std::vector<std::uint8_t>& accepted) {
    const auto n = static_cast<Eigen::Index>(2 * model.steps.size());
    Eigen::MatrixXd information = Eigen::MatrixXd::Zero(n, n);
    Eigen::VectorXd vector = Eigen::VectorXd::Zero(n);
    for (std::size_t k = 0; k < model.steps.size(); ++k) {
        const auto at = static_cast<Eigen::Index>(2 * k);
        const auto& step = model.steps[k];
        if (step.prior >= 0) {
            const auto& prior = model.priors[static_cast<std::size_t>(step.prior)];
            const Eigen::Matrix2d weight = prior.sd.cwiseAbs2().cwiseInverse().asDiagonal();
            information.block<2, 2>(at, at) += weight;
            vector.segment<2>(at) += weight * prior.mean;
        } else {
            const Eigen::Matrix2d weight = step.transition.covariance().inverse();
            Eigen::Matrix<double, 2, 4> difference;
            difference << -1.0, -step.transition.step, 1.0, 0.0, 0.0, -1.0, 0.0, 1.0;
            information.block<4, 4>(at - 2, at - 2) += difference.transpose() * weight * difference;
        }
        for (std::size_t j = step.first_observation; j < model.observations_end(k); ++j) {
            if (accepted[j] == 0) continue;
            const Observation& seen = model.observations[j];
            Eigen::Vector2d h = Eigen::Vector2d::Zero();
            for (std::size_t i = 0; i < 3; ++i)
                h[seen.index[i]] += seen.weight[i];
            information.block<2, 2>(at, at) += h * h.transpose() / seen.variance;
            vector.segment<2>(at) += h * seen.value / seen.variance;
        }
    }
    const Eigen::MatrixXd covariance = information.inverse();
    return {covariance * vector, covariance};
}

TEST(GaussianSmoother, AgreesWithTheNormalEquationsOfAShortRecord) {
    const auto model = short_record(30);
    const auto filtered = Filter<WhiteAcceleration>::run(model, 6.0);
    EXPECT_EQ(std::ranges::count(filtered.accepted, 0), 1); // the outlier
    const Dense dense = dense_solution(model, filtered.accepted);
    const auto result = smoothed(model, filtered);
    for (std::size_t k = 0; k < model.steps.size(); ++k) {
        const auto at = static_cast<Eigen::Index>(2 * k);
        EXPECT_LT((result.mean[k] - dense.mean.segment<2>(at)).norm(), 1e-9);
        EXPECT_LT((result.covariance[k] - dense.covariance.block<2, 2>(at, at)).norm(), 1e-9);
    }
}

TEST(GaussianSmoother, NeverThrowsOutWhatIsHarmless) {
    auto model = short_record(30);
    for (Observation& seen : model.observations)
        seen.harmless = 1000.0F;
    EXPECT_EQ(std::ranges::count(Filter<WhiteAcceleration>::run(model, 6.0).accepted, 0), 0);
}

double log_likelihood(const Filtered<WhiteAcceleration>& filtered) {
    double sum = 0.0;
    for (std::size_t j = 0; j < filtered.accepted.size(); ++j)
        if (filtered.accepted[j] != 0)
            sum -= 0.5 * (std::log(filtered.innovation_variance[j]) +
                          std::pow(filtered.innovation[j], 2) / filtered.innovation_variance[j]);
    return sum;
}

// û and its variance give the score of the log-likelihood in log R and log q: compared with finite differences.
TEST(GaussianSmoother, KnowsTheScoreOfTheNoiseVariances) {
    const auto model = short_record(30);
    struct Score {
        const StateSpace<WhiteAcceleration>& model;
        double observation_score = 0.0;
        double noise_score = 0.0;
        void observation(std::size_t j, double u, double d) {
            observation_score += 0.5 * model.observations[j].variance * (u * u - d);
        }
        void step(std::size_t k, const Eigen::Vector2d& r, const StateSpace<WhiteAcceleration>::Matrix& n) {
            if (model.steps[k].prior >= 0) return;
            const Eigen::Matrix2d q = model.steps[k].transition.covariance();
            noise_score += 0.5 * (r.dot(q * r) - n.cwiseProduct(q).sum());
        }
    };
    Score score{model};
    walk_back<true>(model, Filter<WhiteAcceleration>::run(model, 6.0), score);
    const auto likelihood = [&](double observation_factor, double noise_factor) {
        auto changed = model;
        for (Observation& seen : changed.observations)
            seen.variance *= observation_factor;
        for (auto& step : changed.steps)
            step.transition.q *= noise_factor;
        return log_likelihood(Filter<WhiteAcceleration>::run(changed, 6.0));
    };
    const double h = 1e-4;
    EXPECT_NEAR(score.observation_score, (likelihood(std::exp(h), 1.0) - likelihood(std::exp(-h), 1.0)) / (2.0 * h),
                1e-5);
    EXPECT_NEAR(score.noise_score, (likelihood(1.0, std::exp(h)) - likelihood(1.0, std::exp(-h))) / (2.0 * h), 1e-5);
}

// Steps first … end - 1 as a model of their own.
StateSpace<WhiteAcceleration> section_of(const StateSpace<WhiteAcceleration>& model, std::size_t first,
                                         std::size_t end) {
    StateSpace<WhiteAcceleration> section;
    section.priors = model.priors;
    for (std::size_t k = first; k < end; ++k) {
        section.steps.push_back(model.steps[k]);
        section.steps.back().first_observation = section.observations.size();
        for (std::size_t j = model.steps[k].first_observation; j < model.observations_end(k); ++j)
            section.observations.push_back(model.observations[j]);
    }
    return section;
}

// The record of 20 steps in sections, each filtered from where the one before it ended.
struct Sections {
    static constexpr std::array<std::size_t, 5> borders{0, 4, 8, 13, 20};
    std::vector<StateSpace<WhiteAcceleration>> models;
    std::vector<Filtered<WhiteAcceleration>> filtered;

    explicit Sections(const StateSpace<WhiteAcceleration>& model) {
        Filter<WhiteAcceleration>::State state;
        for (std::size_t s = 0; s + 1 < borders.size(); ++s) {
            models.push_back(section_of(model, borders.at(s), borders.at(s + 1)));
            Filter<WhiteAcceleration>::run(models.back(), 6.0, state, filtered.emplace_back());
        }
    }
};

// Back through sections is the same as back through the whole.
TEST(GaussianSmoother, MayWalkThroughSections) {
    const auto model = short_record(20);
    struct Means {
        const Filtered<WhiteAcceleration>& from;
        std::size_t first;
        std::vector<Eigen::Vector2d>& to;
        void observation(std::size_t, double, double) const {}
        void step(std::size_t k, const Eigen::Vector2d& r, const StateSpace<WhiteAcceleration>::Matrix& n) const {
            to[first + k] = from.mean[k] + from.covariance[k] * r + n * Eigen::Vector2d{0.1, 0.2};
        }
    };
    std::vector<Eigen::Vector2d> whole(20);
    const auto filtered = Filter<WhiteAcceleration>::run(model, 6.0);
    walk_back<true>(model, filtered, Means{filtered, 0, whole});
    const Sections sections(model);
    std::vector<Eigen::Vector2d> parts(20);
    Behind<WhiteAcceleration> behind;
    for (std::size_t s = sections.models.size(); s-- > 0;)
        walk_back<true>(sections.models[s], sections.filtered[s],
                        Means{sections.filtered[s], Sections::borders.at(s), parts}, behind);
    for (std::size_t k = 0; k < whole.size(); ++k)
        EXPECT_EQ(whole[k], parts[k]) << k;
}

struct Columns {
    Eigen::MatrixXd& all;
    Eigen::Index first;
    std::size_t step;
    void put(std::size_t k, const Batch<2, 8>& error) const { here(k) = error.cast<double>(); }
    void take_off(std::size_t k, const Batch<2, 8>& correction) const { here(k) -= correction.cast<double>(); }
    [[nodiscard]] Eigen::Block<Eigen::MatrixXd, 2, 8> here(std::size_t k) const {
        return all.block<2, 8>(static_cast<Eigen::Index>(2 * (step + k)), first);
    }
};

// 4000 draws: a variance is known to 2.2 % (1 sd), so that 10 % is over four of these; likewise correlations to 0.016.
TEST(GaussianDraws, ScatterLikeThePosterior) {
    const auto model = short_record(20);
    const Dense dense = dense_solution(model, Filter<WhiteAcceleration>::run(model, 6.0).accepted);
    const Sections sections(model);
    const auto n = dense.mean.size();
    constexpr int batches = 500;
    Eigen::MatrixXd draws(n, 8 * batches);
    for (int b = 0; b < batches; ++b) {
        Deviations<WhiteAcceleration, 8, 2> deviations(3, static_cast<std::uint64_t>(8 * b));
        const auto columns = [&](std::size_t s) { return Columns{draws, 8 * b, Sections::borders.at(s)}; };
        std::vector<Deviations<WhiteAcceleration, 8, 2>::Innovations> innovations;
        for (std::size_t s = 0; s < sections.models.size(); ++s)
            innovations.push_back(deviations.there(sections.models[s], sections.filtered[s], columns(s)));
        for (std::size_t s = sections.models.size(); s-- > 0;)
            deviations.back(sections.models[s], sections.filtered[s], innovations[s], columns(s));
    }
    const Eigen::MatrixXd seen = draws * draws.transpose() / static_cast<double>(draws.cols());
    const Eigen::VectorXd sd = dense.covariance.diagonal().cwiseSqrt();
    for (Eigen::Index i = 0; i < n; ++i) {
        EXPECT_NEAR(draws.row(i).mean() / sd[i], 0.0, 0.07);
        for (Eigen::Index j = 0; j <= i; ++j)
            EXPECT_NEAR(seen(i, j) / (sd[i] * sd[j]), dense.covariance(i, j) / (sd[i] * sd[j]), 0.1);
    }
}

} // namespace
} // namespace lapwright::math
