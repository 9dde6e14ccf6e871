// SPDX-License-Identifier: GPL-3.0-or-later
// By how much a map is shifted, from lateral offsets all round a lap: offset = normal · shift + habit.
//
// Two drivers' lines differ, but smoothly, as cars do; the normal turns as fast as the road.  So the habit is a
// stationary process on the closed lap, with the spectrum of a Matérn covariance (Rasmussen and Williams 2006, Gaussian
// Processes for Machine Learning, 4.2.1) and some white noise.  Its length, its smoothness and the share of the noise
// are those of the greatest restricted likelihood (Patterson and Thompson 1971, Biometrika 58(3):545), the shift is by
// generalised least squares.  On a closed grid the Fourier coefficients of such a process are independent, so that each
// likelihood costs one pass over them.  How well the shift is known says a jackknife over pieces of the whitened lap,
// which holds where the model does not.
#pragma once

#include <Eigen/Core>

#include <span>
#include <vector>

namespace lapwright::lap {

struct Shift {
    Eigen::Vector2d value = Eigen::Vector2d::Zero(); // east, north
    Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
    double degrees_of_freedom = 1.0;
    [[nodiscard]] double variance() const { return 0.5 * covariance.trace(); } // per axis
};

// A spectrum that drivers' habits may have, and what it makes of the normals.
struct Habit {
    Eigen::ArrayXd whitening;      // 1 / √variance of each coefficient
    Eigen::MatrixX2d normals;      // whitened
    Eigen::Matrix2d information;   // of them
    double log_determinants = 0.0; // of the variances and of the information
};

// One road, on cells evenly spaced round the lap.
class RoadShift {
  public:
    // Unit normals at the cells, at least 16; how far apart the cells are.
    RoadShift(std::vector<Eigen::Vector2d> normals, double cell_m);

    // Offsets at the cells along the normals; NaN where there is none, which is filled from its neighbours.
    [[nodiscard]] Shift of(std::span<const double> offsets_m) const;

    // What a shift looks like at the cells.
    [[nodiscard]] std::vector<double> offsets(const Eigen::Vector2d& shift) const;

  private:
    std::vector<Eigen::Vector2d> normals_;
    Eigen::MatrixXd waves_;         // orthonormal: cosines and sines over the cells, a column each
    Eigen::MatrixX2d coefficients_; // of the normals
    std::vector<Habit> habits_;     // among which the likeliest is chosen
};

} // namespace lapwright::lap
