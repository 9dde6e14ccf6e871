// SPDX-License-Identifier: GPL-3.0-or-later
// The unknowns of a fit over many outings: each with its prior, found again by what it is about.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::season {

// A sum of unknowns, each times its factor.
using Terms = std::vector<std::pair<std::size_t, double>>;

class Unknowns {
  public:
    // The place of the unknown of that name; a new one is normal about `mean`.
    std::size_t place(const std::string& name, double mean, double sd) {
        const auto [found, is_new] = places_.try_emplace(name, means_.size());
        if (is_new) {
            means_.push_back(mean);
            sds_.push_back(sd);
        }
        return found->second;
    }

    [[nodiscard]] std::size_t count() const { return means_.size(); }
    [[nodiscard]] const std::vector<double>& means() const { return means_; }
    [[nodiscard]] const std::vector<double>& sds() const { return sds_; }

  private:
    std::map<std::string, std::size_t> places_;
    std::vector<double> means_;
    std::vector<double> sds_;
};

// Of a vector of values.
template <typename Vector>
double sum_of(const Terms& terms, const Vector& x) {
    double sum = 0.0;
    for (const auto& [place, factor] : terms)
        sum += factor * x[static_cast<decltype(x.size())>(place)];
    return sum;
}

} // namespace lapwright::season
