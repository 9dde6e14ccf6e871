// SPDX-License-Identifier: GPL-3.0-or-later
// Ticks at round values of the unit that is shown, on an axis whose coordinates are SI; and lap times.
#pragma once

#include "core/base/units.h"

#include <qcustomplot.h>

namespace lapwright::plots {

class UnitTicker : public QCPAxisTicker {
  public:
    UnitTicker(base::Unit unit, int wanted_ticks);

  protected:
    double getTickStep(const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;

  private:
    base::Unit unit_;
    int decimals_ = 0; // of the current step
};

// 1:29.5
class LapTimeTicker : public QCPAxisTicker {
  protected:
    double getTickStep(const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;

  private:
    int decimals_ = 1;
};

} // namespace lapwright::plots
