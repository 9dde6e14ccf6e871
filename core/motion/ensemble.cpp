// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/ensemble.h"

#include "core/base/parallel.h"
#include "core/base/translation.h"

#include <algorithm>
#include <memory>

namespace lapwright::motion {
namespace {

using base::said;

constexpr int batch = 16;       // draws that go together
constexpr int written_rows = 7; // of a departure: position, velocity, acceleration east (0-2) and north (4-6)
// What a filter remembers of so many steps stays near the processor.  The filter is run again on the way back, which is
// cheaper than to keep it for a whole session.
constexpr std::size_t section_steps = 512;

Path with_room(const std::vector<Node>& nodes) {
    std::vector<double> stamps(nodes.size());
    std::ranges::transform(nodes, stamps.begin(), &Node::time_s);
    Path path;
    path.time_s = std::make_shared<const std::vector<double>>(std::move(stamps));
    path.position_m.resize(nodes.size());
    path.velocity_mps.resize(nodes.size());
    path.acceleration_mps2.resize(nodes.size());
    return path;
}

template <int state_size>
struct BestPath {
    const math::Filtered<MotionTransition<state_size>, float>& filtered;
    std::size_t first; // step of the section
    Ensemble& result;
    void observation(std::size_t, double, double) const {}
    template <typename Vector, typename Matrix>
    void step(std::size_t k, const Vector& r, const Matrix&) const {
        const Vector x = filtered.mean[k] + filtered.covariance[k].template cast<double>().lazyProduct(r);
        result.best.position_m[first + k] = {x[0], x[4]};
        result.best.velocity_mps[first + k] = {x[1], x[5]};
        result.best.acceleration_mps2[first + k] = {x[2], x[6]};
        if constexpr (state_size > 8) {
            const double share = 1.0 / static_cast<double>(result.best.size());
            result.accelerometer_bias_mps2.east += share * x[8];
            result.accelerometer_bias_mps2.north += share * x[9];
        }
    }
};

// Where a section's departures stand.
struct DeparturesFrom {
    static constexpr std::array<Eigen::Index, Departures::figures> rows{0, 4, 1, 5, 2, 6}; // of the state
    const Departures& departures;
    std::size_t first; // step of the section

    [[nodiscard]] auto row(std::size_t k, std::size_t figure) const {
        return Eigen::Map<math::Batch<1, batch>>(departures.at(first + k) + figure * batch);
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

// There and back through the whole session.
template <int state_size>
class Walk {
  public:
    using Transition = MotionTransition<state_size>;
    using Filter = math::Filter<Transition, float>;

    Walk(const Estimation& estimation, const EnsembleOptions& options, base::TaskProgress& progress)
        : estimation_(estimation), options_(options), progress_(progress) {}

    // Draws a batch, or none, and finds the rest of the result where it is wanted.  False: cancelled.
    bool run(std::size_t first_draw, const Departures* departures, Ensemble* result) {
        using Deviations = math::Deviations<Transition, batch, written_rows>;
        Deviations deviations(options_.seed, first_draw);
        std::vector<typename Deviations::Innovations> innovations;
        math::Behind<Transition> behind;
        return there([&](std::size_t, std::size_t first) {
                   if (result) count(result->counts);
                   if (departures)
                       innovations.push_back(deviations.there(model_, filtered_, DeparturesFrom{*departures, first}));
               }) &&
               back([&](std::size_t section, std::size_t first) {
                   if (result)
                       math::walk_back<false>(model_, filtered_, BestPath<state_size>{filtered_, first, *result},
                                              behind);
                   if (departures)
                       deviations.back(model_, filtered_, innovations[section], DeparturesFrom{*departures, first});
               });
    }

  private:
    bool there(const auto& task) {
        typename Filter::State state;
        for (std::size_t section = 0; section * section_steps < estimation_.nodes.size(); ++section) {
            begun_.push_back(state);
            filter(section, state);
            task(section, section * section_steps);
            if (!progress_.done()) return false;
        }
        return true;
    }

    bool back(const auto& task) {
        for (std::size_t section = begun_.size(); section-- > 0;) {
            filter(section, begun_[section]);
            task(section, section * section_steps);
            if (!progress_.done()) return false;
        }
        return true;
    }

    void filter(std::size_t section, typename Filter::State& state) {
        const std::size_t first = section * section_steps;
        const std::size_t end = std::min(first + section_steps, estimation_.nodes.size());
        model_ = motion_model<state_size>(estimation_.nodes, estimation_.situations, estimation_.levels, options_.use,
                                          first, end);
        Filter::run(model_, options_.gate, state, filtered_);
    }

    void count(std::array<SensorCount, sensors>& counts) const {
        for (std::size_t j = 0; j < model_.observations.size(); ++j) {
            SensorCount& of_sensor = counts[model_.observations[j].sensor];
            ++of_sensor.samples;
            if (filtered_.accepted[j] == 0) ++of_sensor.rejected;
        }
    }

    const Estimation& estimation_;
    const EnsembleOptions& options_;
    base::TaskProgress& progress_;
    std::vector<typename Filter::State> begun_; // before each section
    math::StateSpace<Transition> model_;        // of the section
    typename Filter::Memory filtered_;          // likewise
};

template <int state_size>
std::optional<Ensemble> ensemble_of(const Estimation& estimation, const EnsembleOptions& options,
                                    const base::Progress& progress) {
    Ensemble result;
    result.best = with_room(estimation.nodes);
    result.draws.resize(options.draws);
    const std::size_t walks = std::max(1U, (options.draws + batch - 1) / batch);
    const std::size_t sections = (estimation.nodes.size() + section_steps - 1) / section_steps;
    base::TaskProgress walked(progress, said("drawing the ensemble"), 2 * walks * sections, 0.5, 1.0);
    const bool done = base::parallel_for(walks, options.threads, [&](std::size_t i, std::size_t) {
        Walk<state_size> walk(estimation, options, walked);
        Ensemble* const with_best = i == 0 ? &result : nullptr;
        if (options.draws == 0) return walk.run(0, nullptr, with_best);
        const auto departures = std::make_shared<const Departures>(estimation.nodes.size(), batch);
        for (std::size_t d = i * batch; d < std::min<std::size_t>(options.draws, (i + 1) * batch); ++d)
            result.draws[d] = {departures, d - i * batch, {}};
        return walk.run(i * batch, departures.get(), with_best);
    });
    if (!done) return std::nullopt;
    return result;
}

} // namespace

std::optional<Ensemble> ensemble(const Estimation& estimation, const EnsembleOptions& options,
                                 const base::Progress& progress) {
    return options.use.aids ? ensemble_of<10>(estimation, options, progress)
                            : ensemble_of<8>(estimation, options, progress);
}

} // namespace lapwright::motion
