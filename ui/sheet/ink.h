// SPDX-License-Identifier: GPL-3.0-or-later
// Colours and type of the printed sheet.  A and B differ in hue, dash and letter, so that a grey printer keeps them
// apart; blue and vermilion of Okabe and Ito (2002), darkened to 4.5:1 on white (WCAG 2.1, 1.4.3).
#pragma once

#include "core/findings/headline.h"

#include <QColor>
#include <QFont>
#include <QPen>

namespace lapwright::paper {

inline const QColor ink(0x22, 0x26, 0x2b);
inline const QColor faint_ink(0x5e, 0x62, 0x66);
inline const QColor rule(0xd8, 0xd2, 0xc2);
inline const QColor shade(0xf3, 0xee, 0xe0);
inline const QColor blue_a(0x00, 0x5a, 0x9e);
inline const QColor vermilion_b(0xb8, 0x47, 0x00);

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
