// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/sparse_information.h"

#include <algorithm>

namespace lapwright::season {
namespace {

using Matrix = SparseInformation::Matrix;
using Index = Matrix::StorageIndex;

std::size_t place_of(const Matrix& matrix, std::size_t one, std::size_t other) {
    const auto column = std::min(one, other);
    const auto row = static_cast<Index>(std::max(one, other));
    const Index* first = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column];
    const Index* last = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column + 1];
    return static_cast<std::size_t>(std::lower_bound(first, last, row) - matrix.innerIndexPtr());
}

} // namespace

SparseInformation::SparseInformation(std::size_t count, const std::vector<Terms>& rows) {
    std::vector<Eigen::Triplet<double>> pattern;
    for (std::size_t i = 0; i < count; ++i)
        pattern.emplace_back(static_cast<Index>(i), static_cast<Index>(i), 1.0);
    for (const Terms& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                pattern.emplace_back(static_cast<Index>(std::max(row[i].first, row[j].first)),
                                     static_cast<Index>(std::min(row[i].first, row[j].first)), 1.0);
    const auto size = static_cast<Eigen::Index>(count);
    matrix_.resize(size, size);
    matrix_.setFromTriplets(pattern.begin(), pattern.end());
    matrix_.makeCompressed();
    for (std::size_t i = 0; i < count; ++i)
        diagonal_.push_back(place_of(matrix_, i, i));
    for (const Terms& row : rows) {
        places_.emplace_back();
        for (std::size_t i = 0; i < row.size(); ++i)
            for (std::size_t j = 0; j <= i; ++j)
                places_.back().push_back(place_of(matrix_, row[i].first, row[j].first));
    }
}

void SparseInformation::begin(const Eigen::VectorXd& diagonal) {
    std::fill_n(matrix_.valuePtr(), matrix_.nonZeros(), 0.0);
    for (std::size_t i = 0; i < diagonal_.size(); ++i)
        matrix_.valuePtr()[diagonal_[i]] = diagonal[static_cast<Eigen::Index>(i)];
}

void SparseInformation::add(std::size_t row, const Terms& terms, double weight) {
    auto place = places_[row].begin();
    for (std::size_t i = 0; i < terms.size(); ++i)
        for (std::size_t j = 0; j <= i; ++j)
            matrix_.valuePtr()[*place++] += weight * terms[i].second * terms[j].second;
}

} // namespace lapwright::season
