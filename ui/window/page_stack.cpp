// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/page_stack.h"

#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/comparing.h"
#include "ui/window/explaining.h"
#include "ui/window/given_files.h"

#include <utility>

namespace lapwright::window {

PageStack::PageStack(models::OpenSessions* sessions, models::Notes* notes, QWidget* parent)
    : QStackedWidget(parent), sessions_(new pages::SessionsPage(sessions, notes, this)),
      compare_(new pages::ComparePage(this)), causes_(new pages::CausesPage(this)),
      debrief_(new pages::DebriefPage(this)) {
    for (QWidget* page : std::initializer_list<QWidget*>{sessions_, compare_, causes_, debrief_})
        addWidget(page);
}

void PageStack::follow(const Parts& parts) {
    parts_.emplace(parts);
    const auto shows = [this](QAction* action, void (PageStack::*page)()) {
        connect(action, &QAction::triggered, this, page);
    };
    shows(parts.actions.show_sessions, &PageStack::show_sessions);
    shows(parts.actions.compare, &PageStack::show_compare);
    shows(parts.actions.show_compare, &PageStack::show_compare);
    shows(parts.actions.show_causes, &PageStack::show_causes);
    shows(parts.actions.show_debrief, &PageStack::show_debrief);
    connect(sessions_, &pages::SessionsPage::compare_asked, this, &PageStack::show_compare);
    connect(&parts.sessions, &models::OpenSessions::picks_changed, this, &PageStack::follow_state);
    connect(&parts.sessions, &models::OpenSessions::sessions_changed, this, &PageStack::follow_state);
    connect(&parts.comparing, &Comparing::refused, this, &PageStack::follow_state);
    connect(&parts.comparing, &Comparing::renamed, this, &PageStack::follow_edit);
    connect(&parts.given, &GivenFiles::track_changed, this, &PageStack::follow_state);
}

bool PageStack::on_compare() const {
    return currentWidget() == compare_;
}

std::optional<PageStack::Shown> PageStack::comes() const {
    if (wanted_ == nullptr) return std::nullopt;
    return static_cast<Shown>(indexOf(wanted_));
}

void PageStack::set_palette(const theme::Palette& palette) {
    sessions_->set_palette(palette);
    compare_->set_palette(palette);
    causes_->set_palette(palette);
    debrief_->set_palette(palette);
}

void PageStack::show_sessions() {
    show_page(sessions_);
}

void PageStack::show_compare() {
    show_page(compare_);
}

void PageStack::show_causes() {
    show_page(causes_);
}

void PageStack::show_debrief() {
    show_page(debrief_);
}

void PageStack::show_numbered(int page) {
    if (QWidget* wanted = widget(page)) show_page(wanted);
}

void PageStack::show_wanted() {
    show_page(wanted_ != nullptr ? wanted_ : compare_);
}

// Laps that were picked since the last comparison are compared before a page of the pairing is shown.
void PageStack::show_page(QWidget* page) {
    const workspace::Picks& picks = parts_->comparing.picks();
    const bool to_compare = page != sessions_ && picks.complete() && !parts_->pairing.shows(picks);
    wanted_ = to_compare ? page : nullptr;
    if (to_compare) parts_->comparing.compare();
    const bool shown = page == sessions_ || (!to_compare && parts_->pairing.compared());
    const bool comes = shown && currentWidget() != page;
    if (shown) setCurrentWidget(page);
    follow_state();
    Q_EMIT asked();
    if (!shown) return;
    if (page == sessions_ && comes) sessions_->begin();
    if (page == compare_) compare_->stack().setFocus();
    if (page == causes_) causes_->matrix().setFocus();
    if (page == causes_ || page == debrief_) parts_->explaining.want();
}

void PageStack::follow_edit() {
    QWidget* page = currentWidget();
    if (page == sessions_) return;
    if (!parts_->pairing.shows(parts_->comparing.picks()))
        show_page(page);
    else if (page == causes_ || page == debrief_)
        parts_->explaining.want();
}

void PageStack::follow_state() {
    const Actions& a = parts_->actions;
    const QWidget* page = currentWidget();
    const bool picked = parts_->comparing.picks().complete();
    const bool compared = parts_->pairing.compared() != nullptr;
    a.show_sessions->setChecked(page == sessions_);
    for (const auto& [action, shown] : {std::pair<QAction*, QWidget*>(a.show_compare, compare_),
                                        std::pair<QAction*, QWidget*>(a.show_causes, causes_),
                                        std::pair<QAction*, QWidget*>(a.show_debrief, debrief_)}) {
        action->setChecked(page == shown);
        action->setEnabled(picked || compared);
    }
    for (QAction* action : a.of_compare_page())
        action->setEnabled(on_compare());
    for (QAction* action : a.of_sessions_page())
        action->setEnabled(page == sessions_);
    a.forget_track->setEnabled(parts_->given.track() || !parts_->given.track_name().empty());
    a.trial->setEnabled(parts_->sessions.now().entries().size() > 1);
    a.compare->setEnabled(page == sessions_ && picked);
    for (QAction* action : {a.setup, a.wing, a.keep_prediction, a.print, a.save_sheet, a.save_html})
        action->setEnabled(compared);
    for (QAction* action : {a.save_table, a.save_picture})
        action->setEnabled(on_compare() || page == causes_);
    a.channels_menu->setEnabled(on_compare());
}

} // namespace lapwright::window
