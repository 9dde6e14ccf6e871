// SPDX-License-Identifier: GPL-3.0-or-later
// Speed and gap over distance as the sheet shows them, with the deciding places marked by number.
#pragma once

#include "core/sheet/sheet.h"

#include <QRectF>

class QPainter;

namespace lapwright::paper {

void paint_plot(QPainter& painter, const QRectF& area, const sheet::Sheet& sheet);

} // namespace lapwright::paper
