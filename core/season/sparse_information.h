// SPDX-License-Identifier: GPL-3.0-or-later
// The information matrix of a fit whose every row holds few of the unknowns: its pattern is found once and filled
// often.
#pragma once

#include "core/season/unknowns.h"

#include <Eigen/SparseCore>

#include <cstddef>
#include <vector>

namespace lapwright::season {

class SparseInformation {
  public:
    using Matrix = Eigen::SparseMatrix<double>; // its lower half

    // rows: the unknowns of each, every one once, in the order in which add() will be given their factors.
    SparseInformation(std::size_t count, const std::vector<Terms>& rows);

    // Nothing but a diagonal, shape (count).
    void begin(const Eigen::VectorXd& diagonal);

    // weight · a aᵀ for the terms a of that row.
    void add(std::size_t row, const Terms& terms, double weight);

    [[nodiscard]] const Matrix& matrix() const { return matrix_; }

  private:
    Matrix matrix_;
    std::vector<std::size_t> diagonal_;            // places among the matrix's values
    std::vector<std::vector<std::size_t>> places_; // of each row's pairs (i, j ≤ i)
};

} // namespace lapwright::season
