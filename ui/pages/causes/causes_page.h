// SPDX-License-Identifier: GPL-3.0-or-later
// Why the gap is what it is: the answer in a sentence, the matrix of segments and causes, both cars' figures with the
// evidence behind them, the findings, and what if.
#pragma once

#include "core/analysis/my_side.h"
#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/workspace/compared.h"
#include "ui/plots/picture.h"
#include "ui/theme/palette.h"

#include <QString>
#include <QWidget>
#include <memory>
#include <vector>

class QLabel;
class QToolButton;

namespace lapwright::plots {
class EvidencePlot;
class RegionPlot;
} // namespace lapwright::plots

namespace lapwright::pages {

class CausesTable;
class CausesView;
class DriverStrip;
class FiguresCard;
class FindingList;
class NextTestCard;
class WhatIfCard;

class CausesPage : public QWidget {
    Q_OBJECT

  public:
    explicit CausesPage(QWidget* parent = nullptr);

    // A new pairing, not yet explained: the page says that it is being worked on.
    void show_pairing(workspace::ComparedPointer compared);
    void show_explanation(std::shared_ptr<const causes::Explanation> explanation);
    void show_refusal(const QString& sentence);               // instead of an explanation
    void set_setup_words(const QString& words);               // where the setup of both cars comes from
    void set_mine(const analysis::MySides& mine, bool known); // whom "try next" speaks to, see FindingList
    void set_units(base::UnitSystem units);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] const std::shared_ptr<const causes::Explanation>& explanation() const { return explanation_; }
    [[nodiscard]] QByteArray picture(const QString& heading, plots::PictureForm form) const; // of the plots
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QString notes() const;
    [[nodiscard]] CausesView& matrix() { return *matrix_; }
    [[nodiscard]] WhatIfCard& what_if() { return *what_if_; }
    [[nodiscard]] DriverStrip& drivers() { return *drivers_; }
    [[nodiscard]] FindingList& findings() { return *findings_; }
    [[nodiscard]] NextTestCard& next_test() { return *next_test_; }

  Q_SIGNALS:
    void place_asked(double start_m, double end_m); // on the Compare page
    void setup_asked();

  private:
    void fill();
    void fill_notes();
    void fill_findings();
    [[nodiscard]] QStringList warnings() const; // of the explanation
    void show_drivers(int row);                 // of the matrix
    QWidget* make_left();
    QWidget* make_right();

    workspace::ComparedPointer compared_;
    std::shared_ptr<const causes::Explanation> explanation_;
    theme::Palette palette_ = theme::paper();
    QString without_; // the sentence while there is no explanation
    base::UnitSystem units_ = base::UnitSystem::metric;
    analysis::MySides mine_;
    QLabel* sentence_;
    QLabel* notes_;
    QLabel* setup_words_;
    QToolButton* setup_;
    CausesTable* table_;
    CausesView* matrix_;
    DriverStrip* drivers_;
    FindingList* findings_;
    FiguresCard* figures_;
    plots::EvidencePlot* cornering_;
    plots::EvidencePlot* driving_;
    plots::RegionPlot* split_;
    NextTestCard* next_test_;
    WhatIfCard* what_if_;
};

} // namespace lapwright::pages
