// SPDX-License-Identifier: GPL-3.0-or-later
// Predictions in the window: what What if or the wing's dialog shows is kept in the book, after asking how the setup
// sheet will say it; in the book's list one is taken back, or the session named that was driven with it.  All are edits
// that can be undone.
#pragma once

#include "core/analysis/held_predictions.h"
#include "core/workspace/present_pairing.h"
#include "ui/bridge/book_queue.h"

#include <QObject>
#include <QPointer>

class QInputDialog;
class QUndoStack;
class QWidget;

namespace lapwright::window {

class Explaining;
class Notices;
class PageStack;
class WingAsking;
struct Actions;

class Predicting : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        const Explaining& explaining;
        const workspace::PresentPairing& pairing;
        PageStack& pages;
        WingAsking& wing;
        bridge::BookQueue& book;
        QUndoStack& edits;
        Notices& notices;
        QWidget& window;
    };

    // All outlive it.
    explicit Predicting(const Parts& parts);

    [[nodiscard]] QInputDialog* dialog() const; // null when it is closed

  private:
    void keep_what_if();
    // Of the car on that side; there: null for where both drove.
    void ask(causes::Side side, book::Prediction prediction, const workspace::SessionPointer& there);
    void keep(const workspace::SessionKey& of, const workspace::SessionKey& there, const book::Prediction& prediction);
    void take_back(const book::Prediction& prediction);
    void ask_for_driven(const analysis::HeldPrediction& held);
    void open(QInputDialog* dialog);

    Parts parts_;
    QPointer<QInputDialog> dialog_;
};

} // namespace lapwright::window
