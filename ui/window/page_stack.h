// SPDX-License-Identifier: GPL-3.0-or-later
// The four pages, one of which is shown: which it may be, and what can be done on it.
#pragma once

#include "core/workspace/present_pairing.h"
#include "ui/models/notes.h"
#include "ui/models/open_sessions.h"
#include "ui/theme/palette.h"

#include <QStackedWidget>

namespace lapwright::pages {
class CausesPage;
class ComparePage;
class DebriefPage;
class SessionsPage;
} // namespace lapwright::pages

namespace lapwright::window {

struct Actions;
class Comparing;
class Explaining;
class GivenFiles;

class PageStack : public QStackedWidget {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        const models::OpenSessions& sessions;
        const workspace::PresentPairing& pairing;
        Comparing& comparing;
        Explaining& explaining;
        const GivenFiles& given;
    };

    PageStack(models::OpenSessions* sessions, models::Notes* notes, QWidget* parent);
    void follow(const Parts& parts); // from now on; all outlive it

    enum class Shown { sessions, compare, causes, debrief };
    [[nodiscard]] Shown shown() const { return static_cast<Shown>(currentIndex()); }
    [[nodiscard]] std::optional<Shown> comes() const; // when the laps that it shows are compared
    [[nodiscard]] pages::SessionsPage& sessions() { return *sessions_; }
    [[nodiscard]] pages::ComparePage& compare() { return *compare_; }
    [[nodiscard]] pages::CausesPage& causes() { return *causes_; }
    [[nodiscard]] pages::DebriefPage& debrief() { return *debrief_; }
    [[nodiscard]] bool on_compare() const;
    void set_palette(const theme::Palette& palette);

    void show_sessions();
    void show_compare();
    void show_causes();
    void show_debrief();
    void show_numbered(int page); // of Shown
    void show_wanted();           // the pairing that a page waited for is there
    void follow_edit();           // on a page of the pairing: what it shows is made anew
    void follow_state();

  Q_SIGNALS:
    void asked(); // for a page: it is shown, or comes

  private:
    void show_page(QWidget* page);

    std::optional<Parts> parts_;
    pages::SessionsPage* sessions_;
    pages::ComparePage* compare_;
    pages::CausesPage* causes_;
    pages::DebriefPage* debrief_;
    QWidget* wanted_ = nullptr; // to be shown when the comparison is there
};

} // namespace lapwright::window
