// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/mend_values.h"

#include "core/import/columns/sentinels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

// What the file wrote, near enough to know a code again.
double written(double value_si, const ColumnGuess& guess) {
    const double value = base::from_si(value_si, guess.unit) / guess.scale;
    const double whole = std::round(value * 1e3) / 1e3;
    return std::abs(value - whole) < 1e-9 * std::max(1.0, std::abs(value)) ? whole : value;
}

// The ends of a column in SI, as the file wrote them: a code is always one of them.  Several chains of comparisons go
// side by side, as one alone waits for itself.
bool may_hold_code(const std::vector<double>& values, const ColumnGuess& guess) {
    constexpr std::size_t chains = 8;
    std::array<double, chains> least;
    std::array<double, chains> most;
    least.fill(std::numeric_limits<double>::infinity());
    most.fill(-std::numeric_limits<double>::infinity());
    std::size_t i = 0;
    for (; i + chains <= values.size(); i += chains) {
        for (std::size_t k = 0; k < chains; ++k) {
            const double value = values[i + k];
            least[k] = value < least[k] ? value : least[k];
            most[k] = value > most[k] ? value : most[k];
        }
    }
    for (; i < values.size(); ++i) {
        least[0] = values[i] < least[0] ? values[i] : least[0];
        most[0] = values[i] > most[0] ? values[i] : most[0];
    }
    const double low = *std::ranges::min_element(least);
    const double high = *std::ranges::max_element(most);
    return low <= high && may_be_code(written(low, guess), written(high, guess), guess.meaning);
}

} // namespace

std::vector<recording::Warning> blank_codes(Table& table, const std::vector<ColumnGuess>& guesses) {
    std::vector<recording::Warning> warnings;
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        const ColumnGuess& guess = guesses[i];
        std::vector<double>& values = table.columns[i].values;
        const bool measured = guess.role == Role::channel && guess.form == CellForm::number;
        if (!measured || guess.meaning == recording::Meaning::other || !may_hold_code(values, guess)) continue;
        std::vector<double> as_written(values.size());
        std::ranges::transform(values, as_written.begin(), [&](double value) { return written(value, guess); });
        const auto code = sentinel_among(as_written, guess.meaning);
        const std::size_t blanked = blank_sentinels(as_written, guess.meaning);
        if (blanked == 0) continue;
        for (std::size_t row = 0; row < values.size(); ++row)
            if (std::isnan(as_written[row])) values[row] = as_written[row];
        table.columns[i].absent += blanked;
        warnings.push_back({.kind = recording::WarningKind::no_value_code,
                            .of = guess.name,
                            .seen = {blanked, {}},
                            .figures = {*code}});
    }
    return warnings;
}

} // namespace lapwright::import
