// SPDX-License-Identifier: GPL-3.0-or-later
// The answer first: both sides of the pairing, who is ahead, and where it comes from in a sentence.
#pragma once

#include "core/analysis/analysis.h"
#include "ui/theme/palette.h"

#include <QWidget>

class QLabel;
class QGridLayout;

namespace lapwright::theme {
class ElidedLabel;
}

namespace lapwright::pages {

class LineSample;

class PairingHeader : public QWidget {
    Q_OBJECT

  public:
    explicit PairingHeader(QWidget* parent = nullptr);

    void set_pairing(const analysis::Pairing& pairing);
    void set_palette(const theme::Palette& palette);

  private:
    struct SideLabels {
        LineSample* line = nullptr;
        theme::ElidedLabel* who = nullptr;
        theme::ElidedLabel* which = nullptr;
    };

    SideLabels add_side(QGridLayout& grid, bool is_a);
    void colour_verdict();

    SideLabels a_;
    SideLabels b_;
    QLabel* verdict_;
    QLabel* uncertainty_;
    QLabel* sentence_;
    theme::ElidedLabel* doubts_; // what the pairing warns of
    theme::ElidedLabel* ideal_;  // best segments put together, and what chance alone would give
    findings::Favours ahead_ = findings::Favours::neither;
    theme::Palette palette_;
};

} // namespace lapwright::pages
