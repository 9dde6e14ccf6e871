// SPDX-License-Identifier: GPL-3.0-or-later
// What the book's list is narrowed down by: words, and beside them track, car, driver, tyre and days.
#pragma once

#include "core/base/result.h"
#include "core/book/search.h"

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace lapwright::pages {

class BookFilter : public QWidget {
    Q_OBJECT

  public:
    explicit BookFilter(QWidget* parent = nullptr);

    void set_names(const book::Names& names); // what is chosen stays, where it is still there
    // Error where a day cannot be read.
    [[nodiscard]] base::Result<book::Filter> filter() const;
    [[nodiscard]] bool asks_for_nothing() const;
    void begin(); // to the words

    [[nodiscard]] QLineEdit& words() { return *words_; }
    [[nodiscard]] QComboBox& track() { return *track_; }
    [[nodiscard]] QComboBox& car() { return *car_; }
    [[nodiscard]] QComboBox& driver() { return *driver_; }
    [[nodiscard]] QComboBox& tyre() { return *tyre_; }
    [[nodiscard]] QLineEdit& from() { return *from_; }
    [[nodiscard]] QLineEdit& until() { return *until_; }

  Q_SIGNALS:
    void changed();
    void left_downwards(); // Down in a line, Return anywhere
    void left();           // Escape

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QLineEdit* words_;
    QComboBox* track_;
    QComboBox* car_;
    QComboBox* driver_;
    QComboBox* tyre_;
    QLineEdit* from_;
    QLineEdit* until_;
};

} // namespace lapwright::pages
