// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/explain.h"

#include "core/analysis/car_laps.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/causes/explain.h"
#include "core/comparison/compare_laps.h"
#include "core/motion/estimate_motion.h"

#include <algorithm>
#include <array>
#include <optional>

namespace lapwright::analysis {
namespace {

using base::Result;
using base::said;

struct Learned {
    std::vector<lap::LapTrace> laps;
    car::CarFigures figures;
};

Result<Learned> learn(const Side& side, const Pairing& pairing, const car::SetupSheet& setup,
                      const CausesOptions& options) {
    CarLaps laps;
    const auto take = [&](const lap::LapTrace& trace, const lap::Lap& lap) {
        laps.take(*side.session, *side.session->motion, trace, lap.start_s);
    };
    for (std::size_t i = 0; i < side.clean_traces.size(); ++i)
        take(side.clean_traces[i], side.clean_laps[i]);
    if (laps.laps().empty()) take(side.trace.best, side.lap);
    const car::CarData data = laps.data(*side.session, setup, pairing.track.segments, pairing.length_sd);
    const recording::Recording& recording = *side.session->recording;
    auto figures = car::car_figures(data, {options.draws, motion::own_seed(recording, options.seed)});
    if (!figures) {
        base::Error error = figures.error();
        error.place.file = recording.source_file;
        return error;
    }
    return Learned{laps.laps(), std::move(figures).value()};
}

} // namespace

Result<std::shared_ptr<const causes::Explanation>> explain(const Pairing& pairing, const CausesOptions& options,
                                                           const base::Progress& progress) {
    if (!base::go_on(progress, said("learning what the cars can do"), 0.0)) return base::cancelled();
    // Two laps of one session are of one car: what is not known of it is not known alike on both sides.
    const bool same_car = pairing.a.session == pairing.b.session;
    const car::SetupSheet& setup_b = same_car ? options.setup_a : options.setup_b;
    std::array<std::optional<Result<Learned>>, 2> learned;
    base::parallel_for(2, std::max(1U, options.threads), [&](std::size_t i) {
        learned[i] =
            i == 0 ? learn(pairing.a, pairing, options.setup_a, options) : learn(pairing.b, pairing, setup_b, options);
    });
    for (const auto& one : learned)
        if (!*one) return one->error();
    const auto& segments = pairing.track.segments;
    Learned learned_a = std::move(*learned[0]).value();
    Learned learned_b = std::move(*learned[1]).value();
    const causes::KnownSide side_a{std::move(learned_a.figures), std::move(learned_a.laps),
                                   comparison::segment_times(pairing.a.trace.best, segments)};
    const causes::KnownSide side_b{std::move(learned_b.figures), std::move(learned_b.laps),
                                   comparison::segment_times(pairing.b.trace.best, segments)};
    causes::ExplainOptions how;
    how.seed = options.seed;
    how.same_car = same_car;
    how.threads = options.threads;
    auto explanation = causes::explain(side_a, side_b, pairing.comparison, how, progress);
    if (!explanation) return explanation.error();
    return std::make_shared<const causes::Explanation>(std::move(explanation).value());
}

} // namespace lapwright::analysis
