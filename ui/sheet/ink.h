// SPDX-License-Identifier: GPL-3.0-or-later
// Colours and type of the printed sheet.
#pragma once

#include "core/findings/headline.h"
#include "core/sheet/paper_colours.h"

#include <QColor>
#include <QFont>
#include <QPen>

namespace lapwright::paper {

inline const QColor ink(QRgb{sheet::colours::ink});
inline const QColor faint_ink(QRgb{sheet::colours::faint_ink});
inline const QColor rule(QRgb{sheet::colours::rule});
inline const QColor shade(QRgb{sheet::colours::shade});
inline const QColor blue_a(QRgb{sheet::colours::blue_a});
inline const QColor vermilion_b(QRgb{sheet::colours::vermilion_b});

inline QColor colour_of(findings::Favours favours) {
    switch (favours) {
    case findings::Favours::a:
        return blue_a;
    case findings::Favours::b:
        return vermilion_b;
    case findings::Favours::neither:
        return ink;
    }
    return ink;
}

// Sizes are pixels of the point-sized page.
inline QFont type(int size, bool bold = false) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(size);
    font.setBold(bold);
    return font;
}

} // namespace lapwright::paper
