// SPDX-License-Identifier: GPL-3.0-or-later
// Ticks at round days and hours of UTC on an axis of seconds since 1970: the day, and under it the year or, where the
// ticks are less than a day apart, the hour.
#pragma once

#include <qcustomplot.h>

namespace lapwright::plots {

class DateTicker : public QCPAxisTickerDateTime {
  public:
    explicit DateTicker(int wanted_ticks);

  protected:
    double getTickStep(const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;

  private:
    bool hours_ = false; // of the current step
};

} // namespace lapwright::plots
