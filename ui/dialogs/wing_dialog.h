// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing the track wants for both cars: a sentence each, the lap over downforce, and what a wing costs in drag,
// which can be changed.  It computes nothing.
#pragma once

#include "core/causes/aero_balance.h"
#include "ui/theme/palette.h"

#include <QDialog>
#include <QString>
#include <QStringList>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace lapwright::plots {
class WingPlot;
}

namespace lapwright::dialogs {

class WingDialog : public QDialog {
    Q_OBJECT

  public:
    explicit WingDialog(const theme::Palette& palette, QWidget* parent = nullptr);

    void show_balances(const causes::AeroBalance& a, const causes::AeroBalance& b, bool on_a_tonne);
    void show_working();
    void show_refusal(const QString& sentence); // of the track that was chosen
    // Names of sessions whose track may be asked about instead.
    void offer_tracks(const QStringList& sessions);
    [[nodiscard]] int track() const; // of those the one that is chosen; -1: where both drove
    // Until it is changed the usual one.
    [[nodiscard]] causes::DragCost cost() const;

    [[nodiscard]] QDoubleSpinBox& cost_box() { return *cost_; }
    [[nodiscard]] QComboBox& track_box() { return *track_; }
    [[nodiscard]] QString said() const; // both sentences
    [[nodiscard]] QPushButton& keep_button(causes::Side side) { return side == causes::Side::a ? *keep_a_ : *keep_b_; }
    [[nodiscard]] plots::WingPlot& plot() { return *plot_; }

  Q_SIGNALS:
    void cost_changed();
    void track_changed();
    void keep_asked(lapwright::causes::Side side); // what is quickest for it

  private:
    QWidget* tracks_; // the row with the box
    QComboBox* track_;
    QDoubleSpinBox* cost_;
    QLabel* cost_told_;
    QLabel* said_a_;
    QLabel* said_b_;
    QPushButton* keep_a_;
    QPushButton* keep_b_;
    plots::WingPlot* plot_;
    bool told_ = false; // a person said what it costs
};

} // namespace lapwright::dialogs
