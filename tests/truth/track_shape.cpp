// SPDX-License-Identifier: GPL-3.0-or-later
// Position on the centre line: knots at most two metres apart hold integrated positions; between a knot and a station
// a four-point Gauss-Legendre rule (Abramowitz and Stegun 25.4.30) integrates (cos, sin) of the exact heading.
#include "tests/truth/track_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace truth {
namespace {

constexpr double kKnotSpacing_m = 2.0;
constexpr std::array<double, 4> kNodes{-0.861136311594052575, -0.339981043584856265, 0.339981043584856265,
                                       0.861136311594052575};
constexpr std::array<double, 4> kWeights{0.347854845137453857, 0.652145154862546143, 0.652145154862546143,
                                         0.347854845137453857};

double heading_change(const TrackPiece& piece, const double u) {
    const auto& k = piece.curvature;
    return u * (k[0] + u * (k[1] / 2.0 + u * (k[2] / 3.0 + u * k[3] / 4.0)));
}

std::pair<double, double> displacement(const TrackPiece& piece, const double heading_rad, const double from,
                                       const double to) {
    double dx = 0.0;
    double dy = 0.0;
    const double half = (to - from) / 2.0;
    for (std::size_t i = 0; i < kNodes.size(); ++i) {
        const double heading = heading_rad + heading_change(piece, from + half * (1.0 + kNodes[i]));
        dx += kWeights[i] * half * std::cos(heading);
        dy += kWeights[i] * half * std::sin(heading);
    }
    return {dx, dy};
}

double wrapped(const double station_m, const double length_m) {
    const double rest = station_m - length_m * std::floor(station_m / length_m);
    return rest < length_m ? rest : 0.0;
}

} // namespace

TrackShape::TrackShape(std::string name, std::vector<TrackPiece> pieces, std::vector<TrackSegment> segments,
                       const StartPose start, const GeodeticOrigin origin, std::vector<HeightWave> waves,
                       std::vector<double> corner_banks_rad)
    : name_(std::move(name)), pieces_(std::move(pieces)), segments_(std::move(segments)), origin_(origin),
      waves_(std::move(waves)), corner_banks_rad_(std::move(corner_banks_rad)), corners_(corners()) {
    double heading = start.heading_rad;
    double x = start.x_m;
    double y = start.y_m;
    for (std::size_t p = 0; p < pieces_.size(); ++p) {
        const TrackPiece& piece = pieces_[p];
        piece_headings_.push_back(heading);
        const auto parts = static_cast<std::size_t>(std::max(1.0, std::ceil(piece.length_m / kKnotSpacing_m)));
        const double step = piece.length_m / static_cast<double>(parts);
        for (std::size_t i = 0; i < parts; ++i) {
            const double along = step * static_cast<double>(i);
            knots_.push_back({length_m_ + along, x, y, p, along});
            const auto [dx, dy] = displacement(piece, heading, along, along + step);
            x += dx;
            y += dy;
        }
        heading += heading_change(piece, piece.length_m);
        length_m_ += piece.length_m;
    }
    turned_rad_ = heading - start.heading_rad;
    knots_.push_back({length_m_, x, y, pieces_.size() - 1, pieces_.back().length_m});
    std::size_t knot = 0;
    for (double s = 0.0; s <= length_m_ + kKnotSpacing_m; s += kKnotSpacing_m) {
        while (knot + 2 < knots_.size() && knots_[knot + 1].station_m <= s)
            ++knot;
        buckets_.push_back(knot);
    }
}

std::size_t TrackShape::knot_before(const double station_m) const {
    std::size_t knot = buckets_[static_cast<std::size_t>(station_m / kKnotSpacing_m)];
    while (knot + 2 < knots_.size() && knots_[knot + 1].station_m <= station_m)
        ++knot;
    return knot;
}

TrackBend TrackShape::piece_bend(const std::size_t piece, const double along_m) const {
    const auto& k = pieces_[piece].curvature;
    return {piece_headings_[piece] + heading_change(pieces_[piece], along_m),
            k[0] + along_m * (k[1] + along_m * (k[2] + along_m * k[3])),
            k[1] + along_m * (2.0 * k[2] + along_m * 3.0 * k[3])};
}

TrackBend TrackShape::bend(const double station_m) const {
    const double s = wrapped(station_m, length_m_);
    const Knot& knot = knots_[knot_before(s)];
    TrackBend result = piece_bend(knot.piece, knot.along_m + (s - knot.station_m));
    result.heading_rad += turned_rad_ * std::floor(station_m / length_m_);
    return result;
}

TrackPoint TrackShape::at(const double station_m) const {
    const double s = wrapped(station_m, length_m_);
    const Knot& knot = knots_[knot_before(s)];
    const double along = knot.along_m + (s - knot.station_m);
    const auto [dx, dy] = displacement(pieces_[knot.piece], piece_headings_[knot.piece], knot.along_m, along);
    TrackBend here = piece_bend(knot.piece, along);
    here.heading_rad += turned_rad_ * std::floor(station_m / length_m_);
    return {knot.x_m + dx, knot.y_m + dy, here};
}

double TrackShape::height_m(const double station_m) const {
    double sum = 0.0;
    for (const HeightWave& wave : waves_) {
        const double rate = 2.0 * std::numbers::pi * wave.cycles / length_m_;
        sum += wave.amplitude_m * std::sin(rate * station_m + wave.phase_rad);
    }
    return sum;
}

double TrackShape::slope(const double station_m) const {
    double sum = 0.0;
    for (const HeightWave& wave : waves_) {
        const double rate = 2.0 * std::numbers::pi * wave.cycles / length_m_;
        sum += wave.amplitude_m * rate * std::cos(rate * station_m + wave.phase_rad);
    }
    return sum;
}

double TrackShape::lateral_gravity_mps2(const double station_m) const {
    if (corner_banks_rad_.empty()) return 0.0;
    constexpr double kGravity = 9.80665;
    const double s = wrapped(station_m, length_m_);
    for (std::size_t c = 0; c < std::min(corners_.size(), corner_banks_rad_.size()); ++c) {
        if (s < corners_[c].start_m || s > corners_[c].end_m) continue;
        const double sharpest = bend(0.5 * (corners_[c].start_m + corners_[c].end_m)).curvature_per_m;
        return kGravity * std::sin(corner_banks_rad_[c]) * bend(s).curvature_per_m / std::abs(sharpest);
    }
    return 0.0;
}

TrackPlace TrackShape::project(const double x_m, const double y_m, const std::optional<double> hint_m) const {
    double station = hint_m.value_or(0.0);
    if (!hint_m) {
        double best = 1e300;
        for (const Knot& knot : knots_) {
            const double distance = std::hypot(x_m - knot.x_m, y_m - knot.y_m);
            if (distance < best) {
                best = distance;
                station = knot.station_m;
            }
        }
    }
    double offset = 0.0;
    for (int i = 0; i < 12; ++i) {
        const TrackPoint point = at(station);
        const double c = std::cos(point.bend.heading_rad);
        const double s = std::sin(point.bend.heading_rad);
        const double ahead = (x_m - point.x_m) * c + (y_m - point.y_m) * s;
        offset = (y_m - point.y_m) * c - (x_m - point.x_m) * s;
        station += ahead / std::max(0.2, 1.0 - offset * point.bend.curvature_per_m);
    }
    return {wrapped(station, length_m_), offset};
}

double TrackShape::closure_error_m() const {
    return std::hypot(knots_.back().x_m - knots_.front().x_m, knots_.back().y_m - knots_.front().y_m);
}

std::vector<double> TrackShape::piece_ends() const {
    std::vector<double> ends;
    double station = 0.0;
    for (const TrackPiece& piece : pieces_)
        ends.push_back(station += piece.length_m);
    return ends;
}

std::vector<TrackSegment> TrackShape::corners() const {
    std::vector<TrackSegment> result;
    std::copy_if(segments_.begin(), segments_.end(), std::back_inserter(result),
                 [](const TrackSegment& segment) { return segment.is_corner; });
    return result;
}

} // namespace truth
