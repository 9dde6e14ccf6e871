// SPDX-License-Identifier: GPL-3.0-or-later
// The explanation of the present pairing: made when a page wants it, made anew when a setup changes.  A setup comes
// from the book, else from what was entered for that session, else from the file that lies beside it (run.csv:
// run.setup.json).
#pragma once

#include "core/base/display.h"
#include "ui/bridge/worker.h"

#include <QObject>
#include <QString>
#include <array>
#include <map>
#include <optional>
#include <vector>

class QSettings;
class QUndoStack;
class QWidget;

namespace lapwright::pages {
class CausesPage;
}

namespace lapwright::window {

class Explaining : public QObject {
    Q_OBJECT

  public:
    // All outlive it.
    Explaining(bridge::Worker& worker, pages::CausesPage& page, QUndoStack& edits, QSettings& settings,
               QObject* parent = nullptr);

    void set_pairing(const models::ComparedPointer& compared, const QString& file_a, const QString& file_b);
    void want(); // starts the work unless it is done or on its way
    void called_off();
    void edit_setups(base::UnitSystem units, QWidget* parent);
    // As if entered: kept for the session, explained anew, one edit that can be undone.
    void enter_setups(const car::SetupSheet& a, const car::SetupSheet& b);
    // The same for a session that need not be compared.
    void give_setup(const QString& file, const car::SetupSheet& sheet);
    // What was entered for sessions, all at once; nothing takes it back.
    struct Entered {
        QString file;
        std::optional<car::SetupSheet> sheet;
    };
    void put_setups(const std::vector<Entered>& entered);

    // The session is in the book, with this setup: from now on its setup is kept there.
    void take_from_book(const QString& file, const car::SetupSheet& sheet);
    [[nodiscard]] bool in_book(const QString& file) const { return in_book_.contains(file); }
    [[nodiscard]] car::SetupSheet known_setup(const QString& file) const { return known_of(file).sheet; }

    [[nodiscard]] const bridge::ExplanationPointer& explanation() const { return explanation_; }
    [[nodiscard]] const car::SetupSheet& setup_a() const { return known_[0].sheet; }
    [[nodiscard]] const car::SetupSheet& setup_b() const { return known_[1].sheet; }

  Q_SIGNALS:
    void changed();                          // explanation or setups
    void setup_changed(const QString& file); // what is known of it was entered or given
    void setup_entered(const QString& file, const lapwright::car::SetupSheet& sheet); // of a session in the book

    void car_known(const QString& file, const lapwright::car::CarFigures& figures); // fitted to the session's laps

  private:
    struct Known {
        car::SetupSheet sheet;
        QString words; // where it comes from
    };

    [[nodiscard]] Known known_of(const QString& file) const;
    [[nodiscard]] std::optional<car::SetupSheet> entered_for(const QString& file) const;
    void keep(const Entered& entered);
    void follow_setups();
    void forget_explanation();
    void tell_setups();

    bridge::Worker& worker_;
    pages::CausesPage& page_;
    QUndoStack& edits_;
    QSettings& settings_;
    models::ComparedPointer compared_;
    std::array<QString, 2> files_;
    std::array<Known, 2> known_;
    std::map<QString, car::SetupSheet> in_book_;
    std::map<QString, car::SetupSheet> given_; // in this run, of sessions that are not in the book yet
    bridge::ExplanationPointer explanation_;
    bool on_its_way_ = false;
};

} // namespace lapwright::window
