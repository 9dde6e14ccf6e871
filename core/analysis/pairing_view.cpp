// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/pairing_view.h"

#include "core/analysis/view_archive.h"

#include <algorithm>
#include <array>
#include <filesystem>

namespace lapwright::analysis {
namespace {

// What the pages show of a session.
struct Head {
    std::string file;
    std::string driver;
    std::string car;
    std::string track;
    std::optional<double> start_unix_s;
};

void fields(auto& visit, Of<Head> auto& value) {
    auto& [file, driver, car, track, start] = value;
    visit(file, driver, car, track, start);
}

Head head_of(const Session& session) {
    const recording::Recording& recording = *session.recording;
    return {std::filesystem::path(recording.source_file).filename().string(), recording.driver, recording.car,
            recording.track, recording.start_unix_s};
}

std::shared_ptr<const Session> session_of(const Head& head) {
    recording::Recording recording;
    recording.source_file = head.file;
    recording.driver = head.driver;
    recording.car = head.car;
    recording.track = head.track;
    recording.start_unix_s = head.start_unix_s;
    auto session = std::make_shared<Session>();
    session->recording = std::make_shared<const recording::Recording>(std::move(recording));
    return session;
}

Gather gathered(const PairingView& view) {
    const Pairing& pairing = *view.pairing;
    std::optional<Head> other; // absent: two laps of one session
    if (pairing.b.session != pairing.a.session) other = head_of(*pairing.b.session);
    Gather gather;
    gather(pairing, view.summed, head_of(*pairing.a.session), other);
    return gather;
}

bool fits(const lap::LapTrace& trace) {
    const std::size_t size = trace.distance_m.size();
    const auto as_long = [size](const auto* values) { return values->size() == size; };
    return size >= 2 && std::ranges::is_sorted(trace.distance_m) &&
           std::ranges::all_of(std::array{&trace.time_s, &trace.speed_mps, &trace.longitudinal_mps2,
                                          &trace.lateral_mps2, &trace.offset_m},
                               as_long) &&
           std::ranges::all_of(trace.channels, [&](const auto& channel) { return as_long(&channel.values); });
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
    return bytes_of(gathered(view).gathered());
}

std::optional<PairingView> view_of_bytes(std::string_view bytes) {
    auto gathered = gathered_of(bytes);
    if (!gathered) return std::nullopt;
    Restore restore(std::move(*gathered));
    auto pairing = std::make_shared<Pairing>();
    PairingView view;
    Head a;
    std::optional<Head> b;
    restore(*pairing, view.summed, a, b);
    if (!restore.finished()) return std::nullopt;
    pairing->a.session = session_of(a);
    pairing->b.session = b ? session_of(*b) : pairing->a.session;
    view.pairing = std::move(pairing);
    return fits(view) ? std::optional(std::move(view)) : std::nullopt;
}

bool same_view(const PairingView& one, const PairingView& other) {
    return same(gathered(one).gathered(), gathered(other).gathered());
}

} // namespace lapwright::analysis
