// SPDX-License-Identifier: GPL-3.0-or-later
// One panel of the stack as both know it: who makes its frame (stack_panels.h) and who fills it (stack_contents.h).
#pragma once

#include "core/base/units.h"
#include "ui/models/text.h"
#include "ui/plots/cursor.h"
#include "ui/plots/drawing.h"
#include "ui/theme/fonts.h"

#include <QFontMetrics>
#include <span>
#include <vector>

namespace lapwright::plots {

// Points of one curve; not owned.
struct Series {
    std::span<const double> xs;
    std::span<const double> ys;
};

inline constexpr int row_space_px = 3; // between two panels
inline constexpr int speed_height_px = 110;
inline constexpr int line_height_px = 60;
inline constexpr int channel_height_px = 56;
inline constexpr int gap_height_px = 70;
inline constexpr int gains_height_px = 76;
inline const QString ribbon_id = QStringLiteral("panel:track");
inline const QString speed_id = QStringLiteral("panel:speed");
inline const QString line_id = QStringLiteral("panel:line");
inline const QString gap_id = QStringLiteral("panel:gap");
inline const QString gains_id = QStringLiteral("panel:gains");

struct StackPanel {
    QString id;
    QString title;
    QCPAxisRect* rect = nullptr;
    ReadOut read_out;
    const Drawing* writing = nullptr; // names or numbers that lines keep clear of
    std::vector<Series> series;       // what the value axis is fitted to
    int usual_px = 0;                 // least height
    int share = 1;
    bool with_zero = false; // the whole lap's values are shown with zero among them
};

[[nodiscard]] inline int title_height() {
    return QFontMetrics(theme::small()).height() + 2;
}

[[nodiscard]] inline QString unit_suffix(base::Unit unit) {
    const QString symbol = models::text(base::symbol(unit));
    return symbol.isEmpty() ? QString() : QStringLiteral(", ") + symbol;
}

} // namespace lapwright::plots
