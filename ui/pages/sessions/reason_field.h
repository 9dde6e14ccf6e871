// SPDX-License-Identifier: GPL-3.0-or-later
// Asks in one line why a lap is set aside or counted; Return gives the reason, or none; Escape, or going elsewhere,
// leaves the lap as it was.
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace lapwright::pages {

class ReasonField : public QWidget {
    Q_OBJECT

  public:
    explicit ReasonField(QWidget* parent = nullptr); // hidden until it is asked

    void begin(const QString& question);
    [[nodiscard]] QLineEdit& line() { return *line_; }

  Q_SIGNALS:
    void given(const QString& reason);
    void ended(); // by Return or Escape

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QLabel* question_;
    QLineEdit* line_;
};

} // namespace lapwright::pages
