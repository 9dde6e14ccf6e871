// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window takes to its first reaction: from a key, a click, a turn of the wheel or, over the plots, a
// movement of the pointer that it is given to the end of the next painting of anything in it.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <functional>
#include <vector>

namespace lapwright::window {

// Seconds to the reactions, one for each that was answered; all figures 0 without any.
struct ReactionTimes {
    std::vector<double> seconds;

    // The part of them, 0 to 1, that took at most so long.
    [[nodiscard]] double quantile_s(double part) const;
};

class Reactions : public QObject {
    Q_OBJECT

  public:
    // Of the whole application, from now on.  `on_plots` says whether the plots of two laps are what is looked at.
    explicit Reactions(std::function<bool()> on_plots, QObject* parent = nullptr);

    [[nodiscard]] const ReactionTimes& to_all() const { return to_all_; }     // keys, clicks, wheel
    [[nodiscard]] const ReactionTimes& on_plots() const { return on_plots_; } // what moves the cursor or zooms

  Q_SIGNALS:
    void reacted(double seconds); // to a key, a click or the wheel

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void customEvent(QEvent* event) override;

  private:
    enum class Input { other, moves_or_zooms, pointer };

    void given(Input input);
    void painted();

    std::function<bool()> plots_are_shown_;
    QElapsedTimer since_input_; // invalid: all is answered
    Input input_ = Input::other;
    bool painting_ = false;
    ReactionTimes to_all_;
    ReactionTimes on_plots_;
};

} // namespace lapwright::window
