// SPDX-License-Identifier: GPL-3.0-or-later
// Driver, car, track, date and conditions of one session, typed where they are read.  Return or going elsewhere keeps
// what was typed, Escape leaves it as it was.  What is not known asks for itself: "driver?".
#pragma once

#include "core/book/search.h"
#include "core/workspace/session_names.h"

#include <QWidget>
#include <array>

class QLineEdit;

namespace lapwright::pages {

class NamesForm : public QWidget {
    Q_OBJECT

  public:
    enum Field { driver, car, track, date, conditions };

    explicit NamesForm(QWidget* parent = nullptr);

    void show_names(const workspace::SessionNames& names); // what is being typed is left alone
    void offer(const book::Names& known);                  // the book's names, while one is typed
    void begin();                                          // in the first field that is not known, else in the first
    void keep();                                           // what is being typed
    [[nodiscard]] QLineEdit& line(Field field) { return *lines_[field]; }

  Q_SIGNALS:
    void given(const lapwright::workspace::SessionNames& names); // others than before
    void said(const QString& sentence);                          // why it cannot be kept; empty: it can
    void ended();                                                // by Return or Escape

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void keep_field(Field field);
    void show_field(Field field);
    [[nodiscard]] QString words_of(Field field) const;

    workspace::SessionNames names_;
    std::array<QLineEdit*, 5> lines_{};
};

} // namespace lapwright::pages
