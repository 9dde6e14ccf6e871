// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window takes to its first reaction: from a key, a click or a turn of the wheel that it is given to the
// end of the next painting of anything in it.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <vector>

namespace lapwright::window {

class Reactions : public QObject {
    Q_OBJECT

  public:
    explicit Reactions(QObject* parent = nullptr); // of the whole application, from now on

    [[nodiscard]] const std::vector<double>& seconds() const { return seconds_; } // one for each that was answered
    [[nodiscard]] double slowest_s() const;
    [[nodiscard]] double middle_s() const; // the median; both 0 without any

  Q_SIGNALS:
    void reacted(double seconds);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void painted();

    QElapsedTimer since_input_; // invalid: all is answered
    bool painting_ = false;
    std::vector<double> seconds_;
};

} // namespace lapwright::window
