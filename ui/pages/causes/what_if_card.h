// SPDX-License-Identifier: GPL-3.0-or-later
// What if one car were another: a slider for each of its figures, and the lap that the simulation predicts.  The
// prediction itself is made elsewhere; the card asks for it at once, and for the next when one is answered.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/findings/cause_display.h"
#include "ui/theme/palette.h"

#include <QFrame>
#include <array>
#include <memory>
#include <optional>
#include <vector>

class QGridLayout;
class QLabel;
class QSlider;
class QTimer;
class QToolButton;

namespace lapwright::pages {

class WhatIfCard : public QFrame {
    Q_OBJECT

  public:
    explicit WhatIfCard(QWidget* parent = nullptr);

    // lap_a_s, lap_b_s: the compared laps' times.
    void show_explanation(std::shared_ptr<const causes::Explanation> explanation, double lap_a_s, double lap_b_s);
    void show_nothing();
    void set_units(base::UnitSystem units);
    void set_palette(const theme::Palette& palette);
    // As many as were asked for.
    void show_predictions(const std::vector<causes::Prediction>& predictions);

    void choose(causes::Side side);
    [[nodiscard]] causes::Side side() const { return side_; }
    [[nodiscard]] QSlider& slider(findings::Lever lever) { return *rows_[static_cast<std::size_t>(lever)].slider; }
    [[nodiscard]] QString prediction_text() const;
    // What is shown of the whole change; nothing where nothing is changed, or it cannot be told.
    struct Shown {
        causes::Side side{};
        causes::Change change;
        causes::Seconds lap;
    };
    [[nodiscard]] const std::optional<Shown>& shown() const { return shown_; }
    [[nodiscard]] QToolButton& keep_button() { return *keep_; }
    void reset(); // every control back to the car as it is

  Q_SIGNALS:
    // The whole change first, then what each moved control does alone.
    void predictions_asked(const std::shared_ptr<const causes::CarModel>& car,
                           const std::vector<causes::Change>& changes);
    // What is shown of the whole change, and that nothing is changed any more.
    void predicted(const causes::Prediction& prediction);
    void taken_back();
    void keep_asked(); // what is shown

  private:
    struct Row {
        QLabel* name = nullptr;
        QSlider* slider = nullptr;
        QLabel* amount = nullptr;
        QLabel* effect = nullptr;
        QLabel* each = nullptr; // what a usual step of it is worth
    };

    void add_head(QGridLayout& grid);
    void add_row(QGridLayout& grid, findings::Lever lever);
    void moved(findings::Lever lever);
    void ask();
    void show_amounts();
    void show_sensitivities();
    [[nodiscard]] double amount(findings::Lever lever) const;
    [[nodiscard]] const std::shared_ptr<const causes::CarModel>& car() const;
    [[nodiscard]] bool offered(findings::Lever lever) const;

    std::shared_ptr<const causes::Explanation> explanation_;
    double lap_a_s_ = 0.0;
    double lap_b_s_ = 0.0;
    base::UnitSystem units_ = base::UnitSystem::metric;
    causes::Side side_ = causes::Side::a;
    std::array<Row, findings::all_levers.size()> rows_;
    std::array<QLabel*, 3> head_{};
    causes::Change whole_; // that was asked for
    std::optional<Shown> shown_;
    std::vector<findings::Lever> asked_; // the moved controls, in the order in which they were asked for
    QToolButton* choose_a_;
    QToolButton* choose_b_;
    QToolButton* reset_;
    QToolButton* keep_;
    QLabel* predicted_;
    QLabel* where_;
    QLabel* leans_;
    QTimer* pause_;
    bool under_way_ = false;   // an answer is awaited
    bool moved_since_ = false; // since it was asked for
};

} // namespace lapwright::pages
