// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/ensemble.h"

#include "core/base/parallel.h"
#include "core/base/translation.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <span>

namespace lapwright::motion {
namespace {

using base::said;

constexpr int batch = 16;       // draws that go together
constexpr int written_rows = 7; // of a departure: position, velocity, acceleration east (0-2) and north (4-6)
constexpr std::size_t steps_between_reports = 4096;

template <int state_size>
using Model = math::StateSpace<MotionTransition<state_size>>;
template <int state_size>
using Pass = math::Filtered<MotionTransition<state_size>, float>;

Path with_room(const std::shared_ptr<const std::vector<double>>& time_s) {
    Path path;
    path.time_s = time_s;
    path.position_m.resize(time_s->size());
    path.velocity_mps.resize(time_s->size());
    path.acceleration_mps2.resize(time_s->size());
    return path;
}

template <int state_size>
struct BestPath {
    const Pass<state_size>& filtered;
    Ensemble& result;
    void observation(std::size_t, double, double) const {}
    template <typename Vector, typename Matrix>
    void step(std::size_t k, const Vector& r, const Matrix&) const {
        const Vector x = filtered.mean[k] + filtered.covariance[k].template cast<double>().lazyProduct(r);
        result.best.position_m[k] = {x[0], x[4]};
        result.best.velocity_mps[k] = {x[1], x[5]};
        result.best.acceleration_mps2[k] = {x[2], x[6]};
        if constexpr (state_size > 8) {
            const double share = 1.0 / static_cast<double>(filtered.mean.size());
            result.accelerometer_bias_mps2.east += share * x[8];
            result.accelerometer_bias_mps2.north += share * x[9];
        }
    }
};

// A batch of draws of a whole session.
struct BatchOfDraws {
    static constexpr std::array<Eigen::Index, Departures::figures> rows{0, 4, 1, 5, 2, 6}; // of the state
    const Departures& departures;

    [[nodiscard]] auto row(std::size_t k, std::size_t figure) const {
        return Eigen::Map<math::Batch<1, batch>>(departures.at(k) + figure * batch);
    }
    void put(std::size_t k, const auto& error) const {
        for (std::size_t f = 0; f < rows.size(); ++f)
            row(k, f) = error.row(rows[f]);
    }
    void take_off(std::size_t k, const auto& correction) const {
        for (std::size_t f = 0; f < rows.size(); ++f)
            row(k, f) -= correction.row(rows[f]);
    }
};

// Asked at every step, of whichever thread, it passes the question on once in so many.
class Report {
  public:
    Report(const base::Progress& progress, std::size_t whole) : progress_(progress), whole_(whole) {}
    [[nodiscard]] bool go_on(std::size_t step) {
        if (step % steps_between_reports != 0) return true;
        const std::scoped_lock lock(mutex_);
        done_ = std::min(whole_, done_ + steps_between_reports);
        go_on_ = go_on_ && base::go_on(progress_, said("drawing the ensemble"),
                                       0.5 + 0.5 * static_cast<double>(done_) / static_cast<double>(whole_));
        return go_on_;
    }
    [[nodiscard]] bool stopped() const { return !go_on_; }

  private:
    const base::Progress& progress_;
    std::size_t whole_;
    std::size_t done_ = 0;
    std::atomic<bool> go_on_ = true;
    std::mutex mutex_;
};

std::size_t batches_of(const EnsembleOptions& options) {
    return (options.draws + batch - 1) / batch;
}

template <int state_size>
bool draw_all(const Model<state_size>& model, const Pass<state_size>& filtered, const EnsembleOptions& options,
              Report& report, Ensemble& result) {
    result.draws.resize(options.draws);
    return base::parallel_for(batches_of(options), options.threads, [&](std::size_t b, std::size_t) {
        const std::size_t first = b * batch;
        const auto departures = std::make_shared<const Departures>(model.steps.size(), batch);
        math::draw_deviations<batch, written_rows>(model, filtered, options.seed, first, BatchOfDraws{*departures},
                                                   [&](std::size_t k) { return report.go_on(k); });
        for (std::size_t c = 0; c < batch && first + c < options.draws; ++c)
            result.draws[first + c] = {departures, c, {}};
        return !report.stopped();
    });
}

template <int state_size>
std::optional<Ensemble> ensemble_of(const Estimation& estimation, const EnsembleOptions& options,
                                    const base::Progress& progress) {
    if (!base::go_on(progress, said("drawing the ensemble"), 0.5)) return std::nullopt;
    const auto model =
        motion_model<state_size>(estimation.nodes, estimation.situations, estimation.levels, options.use);
    // There and back for the best path and for each batch of draws.
    Report report(progress, 2 * (1 + batches_of(options)) * model.steps.size());
    const auto asked = [&](std::size_t k) { return report.go_on(k); };
    if (!asked(0)) return std::nullopt;
    Ensemble result;
    const auto filtered = math::Filter<MotionTransition<state_size>, float>::run(model, options.gate, asked);
    if (report.stopped()) return std::nullopt;
    std::vector<double> stamps(estimation.nodes.size());
    std::ranges::transform(estimation.nodes, stamps.begin(), &Node::time_s);
    result.best = with_room(std::make_shared<const std::vector<double>>(std::move(stamps)));
    math::walk_back<false>(model, filtered, BestPath<state_size>{filtered, result}, asked);
    for (std::size_t j = 0; j < model.observations.size(); ++j) {
        SensorCount& count = result.counts[static_cast<std::size_t>(model.observations[j].sensor)];
        ++count.samples;
        if (filtered.accepted[j] == 0) ++count.rejected;
    }
    if (report.stopped() || !draw_all<state_size>(model, filtered, options, report, result)) return std::nullopt;
    return result;
}

} // namespace

std::optional<Ensemble> ensemble(const Estimation& estimation, const EnsembleOptions& options,
                                 const base::Progress& progress) {
    return options.use.aids ? ensemble_of<10>(estimation, options, progress)
                            : ensemble_of<8>(estimation, options, progress);
}

} // namespace lapwright::motion
