// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/pairing_view.h"

#include "core/analysis/view_archive.h"
#include "core/lap/trace_lap.h"

#include <algorithm>
#include <array>
#include <filesystem>

namespace lapwright::analysis {
namespace {

// What the pages show of a session.
void gather_session(Gather& gather, const Side& side) {
    const recording::Recording& recording = *side.session->recording;
    gather(std::filesystem::path(recording.source_file).filename().string(), recording.driver, recording.car,
           recording.start_unix_s, side.trace.best.channels);
}

Gather shown(const PairingView& view) {
    Gather gather;
    gather(*view.pairing, view.summed, view.pairing->a.session == view.pairing->b.session);
    gather_session(gather, view.pairing->a);
    gather_session(gather, view.pairing->b);
    return gather;
}

bool fits(const lap::LapTrace& trace) {
    const std::size_t size = trace.distance_m.size();
    const auto as_long = [size](const auto* values) { return values->size() == size; };
    return size >= 2 && std::ranges::is_sorted(trace.distance_m) &&
           std::ranges::all_of(std::array{&trace.time_s, &trace.speed_mps, &trace.longitudinal_mps2,
                                          &trace.lateral_mps2, &trace.offset_m},
                               as_long);
}

bool fits(const comparison::GapTrace& gap) {
    const std::size_t size = gap.distance_m.size();
    const auto with_draws = [&](const auto* values) { return values->empty() || values->size() == size; };
    return size >= 2 && gap.gap_s.size() == size && gap.sd_s.size() == gap.low_s.size() &&
           gap.low_s.size() == gap.high_s.size() && with_draws(&gap.sd_s);
}

// What the pages rely on.
bool fits(const PairingView& view) {
    const Pairing& pairing = *view.pairing;
    const track::ReferenceLine& line = pairing.track.line;
    const std::size_t segments = pairing.track.segments.size();
    return line.size() >= 2 && line.tangent.size() == line.size() && line.curvature_per_m.size() == line.size() &&
           segments > 0 && pairing.comparison.segments.size() == segments && pairing.repeatability.size() == segments &&
           !view.summed.empty() && view.summed.size() <= segments && fits(pairing.comparison.gap) &&
           fits(pairing.a.trace.best) && fits(pairing.b.trace.best) &&
           pairing.a.trace.best.size() == pairing.b.trace.best.size();
}

} // namespace

std::string view_bytes(const PairingView& view) {
    Gather gather;
    gather(*view.pairing, view.summed);
    return bytes_of(gather.gathered());
}

std::optional<PairingView> view_of_bytes(std::string_view bytes, std::shared_ptr<const Session> a,
                                         std::shared_ptr<const Session> b) {
    auto gathered = gathered_of(bytes);
    if (!gathered) return std::nullopt;
    Restore restore(std::move(*gathered));
    auto pairing = std::make_shared<Pairing>();
    PairingView view;
    restore(*pairing, view.summed);
    view.pairing = pairing;
    if (!restore.finished() || !fits(view)) return std::nullopt;
    pairing->a.session = std::move(a);
    pairing->b.session = std::move(b);
    for (Side* side : {&pairing->a, &pairing->b})
        side->trace.best =
            lap::with_channels(std::move(side->trace.best), side->lap.start_s, *side->session->recording);
    return view;
}

bool same_view(const PairingView& one, const PairingView& other) {
    return same(shown(one).gathered(), shown(other).gathered());
}

} // namespace lapwright::analysis
