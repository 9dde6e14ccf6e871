// SPDX-License-Identifier: GPL-3.0-or-later
// The explanation of the present pairing: made when a page wants it, made anew when a setup changes.  Setups that were
// entered for sessions without a book are kept in the settings.
#pragma once

#include "core/base/display.h"
#include "core/workspace/session_names.h"
#include "core/workspace/setups.h"
#include "ui/bridge/worker.h"
#include "ui/models/open_sessions.h"

#include <QObject>
#include <QString>
#include <array>
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
    struct Parts {
        bridge::Worker& worker;
        pages::CausesPage& page;
        QUndoStack& edits;
        QSettings& settings;
        const models::OpenSessions& sessions;
        workspace::PresentPairing& pairing;
    };

    // All outlive it.
    explicit Explaining(const Parts& parts, QObject* parent = nullptr);

    void follow_pairing(); // another one is the present one
    void want();           // starts the work unless it is done or on its way
    void called_off();     // it was on its way
    void edit_setups(base::UnitSystem units, QWidget* parent);
    // As if entered: kept for the session, explained anew, one edit that can be undone.
    void enter_setups(const car::SetupSheet& a, const car::SetupSheet& b);
    // The same for a session that need not be compared.
    void give_setup(const workspace::OpenSessions::Entry& session, const car::SetupSheet& sheet);

    void session_opened(const workspace::SessionKey& key); // what the settings keep for it is known from now on
    // The session is in the book, with this setup: from now on its setup is kept there.
    void take_from_book(const workspace::SessionKey& key, const car::SetupSheet& sheet);
    void rename(const workspace::SessionKey& key, const workspace::SessionNames& names); // in its setup
    [[nodiscard]] bool in_book(const workspace::SessionKey& key) const { return setups_.in_book(key); }
    [[nodiscard]] car::SetupSheet known_setup(const workspace::SessionKey& key) const;

    [[nodiscard]] const bridge::ExplanationPointer& explanation() const { return parts_.pairing.explanation(); }
    [[nodiscard]] const car::SetupSheet& setup_a() const { return known_[0].sheet; }
    [[nodiscard]] const car::SetupSheet& setup_b() const { return known_[1].sheet; }

  Q_SIGNALS:
    void changed(); // explanation, that there is none, or setups
    // What is known of it was entered or given.
    void setup_changed(const lapwright::workspace::SessionKey& key);
    // Of a session in the book.
    void setup_entered(const lapwright::workspace::SessionKey& key, const lapwright::car::SetupSheet& sheet);
    // Fitted to the session's laps.
    void car_known(const lapwright::workspace::SessionKey& key, const lapwright::car::CarFigures& figures);

  private:
    struct Entered {
        workspace::SessionKey key;
        std::optional<car::SetupSheet> before;
        std::optional<car::SetupSheet> after;
    };

    [[nodiscard]] std::array<workspace::SessionKey, 2> sides() const;
    void push(const QString& name, const std::vector<Entered>& entered);
    void enter(const workspace::SessionKey& key, const std::optional<car::SetupSheet>& sheet);
    void follow_setups();
    void look_setups_up();
    void begin_anew();

    Parts parts_;
    workspace::Setups setups_;
    std::array<workspace::KnownSetup, 2> known_; // of the pairing's sides
};

} // namespace lapwright::window
