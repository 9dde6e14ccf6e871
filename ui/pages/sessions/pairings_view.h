// SPDX-License-Identifier: GPL-3.0-or-later
// The pairings that the book keeps: Return or a double click opens the one that is chosen.
#pragma once

#include "core/book/pairings.h"

#include <QWidget>
#include <vector>

class QLabel;

namespace lapwright::models {
class PairingList;
}

namespace lapwright::pages {

class BookTable;

class PairingsView : public QWidget {
    Q_OBJECT

  public:
    explicit PairingsView(QWidget* parent = nullptr);

    void show_pairings(std::vector<book::PairingSummary> pairings);
    void begin(); // to the list
    [[nodiscard]] BookTable& list() { return *list_; }
    [[nodiscard]] const models::PairingList& model() const { return *model_; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] QString chosen() const; // the chosen pairing in full

  Q_SIGNALS:
    void pairing_asked(const lapwright::book::PairingSummary& pairing);
    void removal_wanted(const lapwright::book::PairingSummary& pairing); // Delete: undo brings it back
    void left();

  private:
    void follow_row();

    models::PairingList* model_;
    BookTable* list_;
    QLabel* said_;
    QLabel* chosen_;
};

} // namespace lapwright::pages
