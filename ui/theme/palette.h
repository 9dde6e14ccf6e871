// SPDX-License-Identifier: GPL-3.0-or-later
// Colours of the two looks: warm paper by day, dark in the evening.  A is blue, B is orange; the two pairs follow Okabe
// and Ito (2002), on paper darkened until they carry text.  Every text colour has 4.5:1 and every mark 3:1 against what
// it stands on (WCAG 2.1, 1.4.3 and 1.4.11); tests/ui/theme holds them to it.
#pragma once

#include <QColor>
#include <QPalette>
#include <QString>

namespace lapwright::theme {

struct Palette {
    bool dark = false;
    QColor paper;  // the page
    QColor card;   // what lies on it
    QColor ink;    // text
    QColor quiet;  // text of less weight
    QColor rule;   // hairlines, grid
    QColor edge;   // frames of things that can be operated
    QColor tint;   // corners behind the plots
    QColor chosen; // the chosen row and stretch
    QColor a;
    QColor b;
    QColor third; // laps behind A and B: the first of them, and the second
    QColor fourth;
    QColor ribbon; // the unrolled track
    QColor even;   // neither A nor B
    QColor notice; // behind a sentence that wants to be read
};

[[nodiscard]] const Palette& paper();
[[nodiscard]] const Palette& evening();

enum class Choice { light, dark, system };

// `system` follows the lightness of the desktop's own window colour.
[[nodiscard]] const Palette& palette_for(Choice choice, const QPalette& desktop);

// The colour of the laps behind A and B, counted from 0: two in turn, of which the later pair is dashed.
[[nodiscard]] QColor further_colour(const Palette& palette, int place);
[[nodiscard]] inline bool further_dashed(int place) {
    return place >= 2;
}

// The look of the whole program, and of one window.
void apply(const Palette& palette);
[[nodiscard]] QString style_sheet(const Palette& palette);

// Contrast ratio of WCAG 2.1, 1…21; symmetric.
[[nodiscard]] double contrast(const QColor& one, const QColor& other);
// The one of two inks that reads better on `fill`.
[[nodiscard]] QColor ink_on(const QColor& fill);
// part 0: `from`, 1: `to`; in gamma-coded RGB.
[[nodiscard]] QColor blend(const QColor& from, const QColor& to, double part);

} // namespace lapwright::theme
