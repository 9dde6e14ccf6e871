// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/date_ticker.h"

#include "core/base/translation.h"

#include <QObject>

namespace lapwright::plots {
namespace {

constexpr double day_s = 86400.0;

} // namespace

DateTicker::DateTicker(int wanted_ticks) {
    setTickCount(wanted_ticks);
    setDateTimeSpec(Qt::UTC);
}

double DateTicker::getTickStep(const QCPRange& range) {
    const double step = QCPAxisTickerDateTime::getTickStep(range);
    hours_ = step < day_s;
    return step;
}

QString DateTicker::getTickLabel(double tick, const QLocale&, QChar, int) {
    const QDateTime moment = keyToDateTime(tick).toUTC();
    const QString pattern = hours_ ? QObject::tr("d MMM\nhh:mm") : QObject::tr("d MMM\nyyyy");
    return QLocale(QString::fromLatin1(base::language_code())).toString(moment, pattern);
}

} // namespace lapwright::plots
