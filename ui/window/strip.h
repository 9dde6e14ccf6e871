// SPDX-License-Identifier: GPL-3.0-or-later
// The strip at the head of the window: its menus, a button for each page, what the worker is at, and the units.
#pragma once

#include "ui/window/actions.h"

#include <QFrame>

class QLabel;
class QProgressBar;
class QToolButton;

namespace lapwright::window {

class Notices;

class Strip : public QFrame {
    Q_OBJECT

  public:
    explicit Strip(QWidget* parent = nullptr);

    [[nodiscard]] const Actions& actions() const { return actions_; }
    [[nodiscard]] QToolButton& waiting_sign() { return *waiting_sign_; } // edits that wait for the book
    [[nodiscard]] QToolButton& damage_sign() { return *damage_sign_; }   // a book that is damaged
    [[nodiscard]] Notices& notices() { return *notices_; }
    void set_busy(bool busy);
    void set_progress(const QString& stage, double part_done);
    void set_units(base::UnitSystem units);

  private:
    QToolButton* button_for(QAction* action, const QString& kind);

    QMenuBar* bar_;
    Actions actions_;
    Notices* notices_; // what nothing else stands in, so that they move nothing
    QLabel* stage_;
    QProgressBar* progress_;
    QToolButton* cancel_;
    QToolButton* waiting_sign_;
    QToolButton* damage_sign_;
    QToolButton* units_button_;
};

} // namespace lapwright::window
