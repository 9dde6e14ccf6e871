// SPDX-License-Identifier: GPL-3.0-or-later
// What was measured of both cars against speed, with the fitted curve and its 95 % band.  A is solid with filled dots,
// B dashed with hollow ones; what only bounds the curve from below is a triangle that points up.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "ui/plots/picture.h"
#include "ui/theme/palette.h"

#include <QString>
#include <QWidget>
#include <memory>
#include <vector>

class QCustomPlot;

namespace lapwright::plots {

struct EvidencePoint {
    double speed_mps = 0.0;
    double value_mps2 = 0.0;
    bool from_below = false; // the limit is somewhere above
};

struct Evidence {
    std::vector<EvidencePoint> points_a;
    std::vector<EvidencePoint> points_b;
    car::Curve curve_a;
    car::Curve curve_b;
};

// Cornering acceleration, every clean lap's corner a point, with the limit as used.
[[nodiscard]] Evidence cornering_evidence(const causes::Explanation& explanation);
// Push of the engine less drag, with the fitted power and drag; no more points than can be told apart.
[[nodiscard]] Evidence driving_evidence(const causes::Explanation& explanation);

class EvidencePlot : public QWidget {
    Q_OBJECT

  public:
    explicit EvidencePlot(const QString& title, QWidget* parent = nullptr);

    void set_evidence(Evidence evidence);
    void set_units(base::UnitSystem units);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] const Evidence& evidence() const { return evidence_; }
    [[nodiscard]] PicturePart picture_part() const; // larger than on the page
    [[nodiscard]] QSize sizeHint() const override { return {260, 190}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {170, 160}; }

  private:
    void build();

    QCustomPlot* plot_;
    Evidence evidence_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    theme::Palette palette_;
};

} // namespace lapwright::plots
