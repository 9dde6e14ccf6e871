// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/pictures.h"

namespace lapwright::analysis {
namespace {

constexpr std::size_t gap_values = 96;
constexpr std::size_t outline_places = 120;

} // namespace

book::GapCurve gap_curve(const Pairing& pairing) {
    const std::vector<double>& gap_s = pairing.comparison.gap.gap_s;
    book::GapCurve curve_s;
    if (gap_s.size() < 2) return curve_s;
    for (std::size_t i = 0; i < gap_values; ++i)
        curve_s.push_back(static_cast<float>(gap_s[i * (gap_s.size() - 1) / (gap_values - 1)]));
    return curve_s;
}

book::Outline outline(const Session& session) {
    book::Outline places_m;
    const lap::Lap* lap = session.fastest();
    if (lap == nullptr || !session.motion || session.motion->source == motion::PositionSource::dead_reckoning)
        return places_m;
    const motion::Path& path = session.motion->best;
    if (path.size() < 2) return places_m;
    for (std::size_t i = 0; i < outline_places; ++i) {
        const double part = static_cast<double>(i) / outline_places; // the last place joins the first
        const motion::Vec2 at_m = path.at(lap->start_s + part * lap->time_s()).position_m;
        places_m.emplace_back(static_cast<float>(at_m.east), static_cast<float>(at_m.north));
    }
    return places_m;
}

} // namespace lapwright::analysis
