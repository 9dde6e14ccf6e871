// SPDX-License-Identifier: GPL-3.0-or-later
// An invented closed track in the plane. Frame: x east, y north, metres, from the origin's tangent plane; heading in
// radians counter-clockwise from east; curvature positive for left-handers; lateral offset positive to the left.
// Station s runs along the centre line from the gate. Curvature is a cubic polynomial of s on each piece, so heading
// is exact and position is a Gauss-Legendre integral of the heading (error below 1e-9 m).
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace truth {

/// Curvature k[0] + k[1] u + k[2] u^2 + k[3] u^3 in 1/m, u metres from the piece's start.
struct TrackPiece {
    double length_m = 0.0;
    std::array<double, 4> curvature{};
};

/// A corner lies from where curvature leaves zero to where it is zero again; straights lie between.
struct TrackSegment {
    std::string name;
    bool is_corner = false;
    double start_m = 0.0;
    double end_m = 0.0;
};

struct TrackBend {
    double heading_rad = 0.0; // continuous along the lap, not wrapped
    double curvature_per_m = 0.0;
    double curvature_rate_per_m2 = 0.0; // d curvature / ds
};

struct TrackPoint {
    double x_m = 0.0;
    double y_m = 0.0;
    TrackBend bend;
};

struct TrackPlace {
    double station_m = 0.0; // in [0, length)
    double offset_m = 0.0;
};

struct GeodeticOrigin {
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double height_m = 0.0;
};

/// Height above the origin's tangent plane: sum of amplitude * sin(2 pi cycles s / length + phase).
struct HeightWave {
    double amplitude_m = 0.0;
    int cycles = 1;
    double phase_rad = 0.0;
};

struct StartPose {
    double x_m = 0.0;
    double y_m = 0.0;
    double heading_rad = 0.0;
};

class TrackShape {
  public:
    TrackShape(std::string name, std::vector<TrackPiece> pieces, std::vector<TrackSegment> segments = {},
               StartPose start = {}, GeodeticOrigin origin = {}, std::vector<HeightWave> waves = {},
               std::vector<double> corner_banks_rad = {});

    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] double length_m() const { return length_m_; }
    [[nodiscard]] const std::vector<TrackSegment>& segments() const { return segments_; }
    [[nodiscard]] std::vector<TrackSegment> corners() const;
    [[nodiscard]] const GeodeticOrigin& origin() const { return origin_; }
    [[nodiscard]] double gate_half_width_m() const { return 9.0; }

    /// Stations where one piece ends and the next begins: curvature is smooth between them.
    [[nodiscard]] std::vector<double> piece_ends() const;

    /// Any station; stations one length apart are the same place (heading grows by the turned angle).
    [[nodiscard]] TrackPoint at(double station_m) const;
    [[nodiscard]] TrackBend bend(double station_m) const;
    [[nodiscard]] double height_m(double station_m) const;
    [[nodiscard]] double slope(double station_m) const; // d height / ds
    /// Gravity along the banked road, positive to the left: g sin(bank), the bank growing with the corner's curvature.
    [[nodiscard]] double lateral_gravity_mps2(double station_m) const;

    /// Foot of the perpendicular. With a hint the search stays near it (a track that crosses itself needs one).
    [[nodiscard]] TrackPlace project(double x_m, double y_m, std::optional<double> hint_m = std::nullopt) const;

    /// Distance between the end and the start of the lap, and the heading turned over it.
    [[nodiscard]] double closure_error_m() const;
    [[nodiscard]] double turned_rad() const { return turned_rad_; }

  private:
    struct Knot {
        double station_m;
        double x_m;
        double y_m;
        std::size_t piece;
        double along_m; // metres into the piece
    };
    [[nodiscard]] std::size_t knot_before(double station_m) const;
    [[nodiscard]] TrackBend piece_bend(std::size_t piece, double along_m) const;

    std::string name_;
    std::vector<TrackPiece> pieces_;
    std::vector<double> piece_headings_;
    std::vector<TrackSegment> segments_;
    GeodeticOrigin origin_;
    std::vector<HeightWave> waves_;
    std::vector<double> corner_banks_rad_; // index as corners(), positive: the inside is lower; missing: flat
    std::vector<TrackSegment> corners_;
    std::vector<Knot> knots_;
    std::vector<std::size_t> buckets_;
    double length_m_ = 0.0;
    double turned_rad_ = 0.0;
};

} // namespace truth
