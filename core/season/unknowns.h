// SPDX-License-Identifier: GPL-3.0-or-later
// The unknowns of a fit over many outings: each with its prior, found again by what it is about.
#pragma once

#include "core/season/setup_levels.h"

#include <cstddef>
#include <map>
#include <numbers>
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

// Of each item and each of its values but the first.
template <typename Vector>
std::vector<std::vector<double>> values_of(const std::vector<std::vector<Terms>>& effects, const Vector& x) {
    std::vector<std::vector<double>> all;
    for (const std::vector<Terms>& item : effects) {
        all.emplace_back();
        for (const Terms& value : item)
            all.back().push_back(sum_of(value, x));
    }
    return all;
}

// An unknown for each value of a setup item, times `factor` in the sums of the sessions that have it; the answer: what
// each value but the first does against the first.  usual_sd: of the difference of two values.
[[nodiscard]] inline std::vector<Terms> add_item(Unknowns& unknowns, const SetupLevels& item, const std::string& figure,
                                                 double usual_sd, double factor, std::vector<Terms>& sums) {
    std::vector<std::size_t> places;
    for (const std::string& value : item.values)
        places.push_back(
            unknowns.place(figure + " of " + item.item + '\n' + value, 0.0, usual_sd / std::numbers::sqrt2));
    for (std::size_t s = 0; s < item.of_session.size(); ++s)
        sums[s].emplace_back(places[item.of_session[s]], factor);
    std::vector<Terms> effects;
    for (std::size_t v = 1; v < places.size(); ++v)
        effects.push_back({{places[v], 1.0}, {places[0], -1.0}});
    return effects;
}

} // namespace lapwright::season
