// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/unit_ticker.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "ui/models/text.h"

#include <cmath>

namespace lapwright::plots {

UnitTicker::UnitTicker(base::Unit unit, int wanted_ticks) : unit_(unit) {
    setTickCount(wanted_ticks);
    setTickOrigin(base::to_si(0.0, unit));
}

double UnitTicker::getTickStep(const QCPRange& range) {
    const double factor = base::definition(unit_).factor;
    const double step = QCPAxisTicker::getTickStep(QCPRange(range.lower / factor, range.upper / factor));
    // As many decimals as the step has: 0.25 needs two.
    decimals_ = 0;
    while (decimals_ < 6 && std::abs(step * std::pow(10.0, decimals_) - std::round(step * std::pow(10.0, decimals_))) >
                                1e-6 * step * std::pow(10.0, decimals_)) {
        ++decimals_;
    }
    return step * factor;
}

QString UnitTicker::getTickLabel(double tick, const QLocale&, QChar, int) {
    QString label = models::text(base::shown_text(base::from_si(tick, unit_), decimals_));
    label.replace(QLatin1Char('-'), QChar(0x2212));        // the minus of all other figures
    return label.replace(QLatin1Char('-'), QChar(0x2212)); // the minus of print
}

double LapTimeTicker::getTickStep(const QCPRange& range) {
    const double step = QCPAxisTicker::getTickStep(range);
    decimals_ = step >= 1.0 ? 0 : step >= 0.1 ? 1 : step >= 0.01 ? 2 : 3;
    return step;
}

QString LapTimeTicker::getTickLabel(double tick, const QLocale&, QChar, int) {
    return models::text(base::lap_time_text(tick, decimals_));
}

} // namespace lapwright::plots
