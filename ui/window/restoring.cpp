// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/restoring.h"

#include "core/workspace/pairing_notes.h"
#include "ui/models/file_name.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/theme/note_field.h"
#include "ui/window/actions.h"
#include "ui/window/comparing.h"
#include "ui/window/notices.h"
#include "ui/window/noting.h"
#include "ui/window/page_stack.h"

#include <QFileInfo>
#include <QPlainTextEdit>
#include <algorithm>
#include <utility>

namespace lapwright::window {
namespace {

constexpr int write_pause_ms = 300;
constexpr int typing_pause_ms = 1500; // so much typing a crash may cost

void add_draft(std::vector<RunState::Draft>& drafts, theme::NoteField& field, const workspace::NoteAbout& about) {
    if (!field.typing()) return;
    const QString text = field.editor().toPlainText().trimmed();
    if (!text.isEmpty() && text != field.note()) drafts.push_back({about, text});
}

} // namespace

Restoring::Restoring(Parts parts, QObject* parent)
    : QObject(parent), parts_(std::move(parts)), file_(parts_.state_folder), offer_(file_.left_over()) {
    pause_.setSingleShot(true);
    pause_.setInterval(write_pause_ms);
    typing_ticks_.setInterval(typing_pause_ms);
    connect(&pause_, &QTimer::timeout, this, &Restoring::write);
    connect(&typing_ticks_, &QTimer::timeout, this, &Restoring::write);
    const auto soon = [this] { pause_.start(); };
    connect(&parts_.sessions, &models::OpenSessions::sessions_changed, this, soon);
    connect(&parts_.sessions, &models::OpenSessions::picks_changed, this, soon);
    connect(&parts_.sessions, &models::OpenSessions::sessions_changed, this, &Restoring::give_drafts);
    connect(&parts_.pages, &QStackedWidget::currentChanged, this, soon);
    connect(&parts_.comparing, &Comparing::compared, this, [this] {
        if (const auto page = std::exchange(page_, {})) parts_.pages.show_numbered(*page);
    });
    connect(parts_.actions.restore, &QAction::triggered, this, &Restoring::restore);
    pages::StartView& start = parts_.pages.sessions().start();
    connect(&start, &pages::StartView::restore_asked, parts_.actions.restore, &QAction::trigger);
    connect(&start, &pages::StartView::restore_declined, this, &Restoring::decline);
    if (!parts_.state_folder.isEmpty()) typing_ticks_.start();
    follow_offer();
}

void Restoring::follow_offer() {
    parts_.actions.restore->setEnabled(offer_.has_value());
    QStringList names;
    for (const workspace::Origin& origin : offer_ ? offer_->sessions : std::vector<workspace::Origin>()) {
        const auto* file = std::get_if<std::string>(&origin);
        names << (file != nullptr ? QFileInfo(models::path(*file)).fileName() : tr("a session of the book"));
    }
    parts_.pages.sessions().start().offer_again(
        names.isEmpty() ? QString()
                        : tr("The program ended before its window was closed. These were open: %1.")
                              .arg(names.join(QStringLiteral(", "))));
}

void Restoring::decline() {
    offer_.reset();
    follow_offer();
}

// The sessions of another book are not those that were meant.
void Restoring::restore() {
    if (!offer_) return;
    RunState state = *std::exchange(offer_, {});
    follow_offer();
    const auto meant = [&](const workspace::Origin& origin) {
        return std::holds_alternative<std::string>(origin) || state.book == parts_.book;
    };
    std::erase_if(state.sessions, [&](const workspace::Origin& origin) { return !meant(origin); });
    if (state.sessions.empty()) {
        parts_.notices.add(tr("What was open was a part of another book: start the program with that book."));
        return;
    }
    drafts_ = std::move(state.drafts);
    const auto wanted = [&](const std::optional<RunState::Lap>& lap) {
        return lap && meant(lap->origin) ? std::optional(Comparing::WantedLap{lap->origin, lap->number}) : std::nullopt;
    };
    Comparing::Plan plan{{wanted(state.a), wanted(state.b)}, false};
    const bool of_pairing = state.page != static_cast<int>(PageStack::Shown::sessions);
    plan.compare = of_pairing && plan.laps[0] && plan.laps[1];
    if (plan.compare) page_ = state.page;
    parts_.comparing.load(state.sessions, plan);
}

void Restoring::give_drafts() {
    std::vector<RunState::Draft> waiting;
    for (RunState::Draft& draft : std::exchange(drafts_, {})) {
        if (parts_.sessions.now().find(draft.about.session) != nullptr)
            parts_.noting.take_typed(draft.about, draft.text);
        else
            waiting.push_back(std::move(draft));
    }
    drafts_ = std::move(waiting);
}

RunState Restoring::now() const {
    RunState state;
    state.book = parts_.book;
    for (const auto& entry : parts_.sessions.now().entries())
        state.sessions.push_back(entry.origin());
    const auto lap = [this](const std::optional<workspace::LapPick>& pick) {
        const auto wanted = parts_.comparing.wanted_again(pick);
        return wanted && wanted->lap ? std::optional(RunState::Lap{wanted->origin, *wanted->lap}) : std::nullopt;
    };
    state.a = lap(parts_.comparing.picks().a);
    state.b = lap(parts_.comparing.picks().b);
    state.page = parts_.pages.currentIndex();
    for (pages::SessionCard* card : parts_.pages.sessions().cards()) {
        add_draft(state.drafts, card->session_note(), {card->key()});
        add_draft(state.drafts, card->lap_note(), {card->key(), card->laps().current_lap()});
    }
    const auto& compared = parts_.pairing.compared();
    const auto [first, behind] = parts_.pages.compare().chosen_segments();
    if (compared && first < behind) {
        const track::Segment& segment = compared->pairing->comparison.segments.at(first).segment;
        for (const auto side : {workspace::Side::a, workspace::Side::b}) {
            const workspace::TwoLaps& laps = parts_.pairing.laps();
            add_draft(state.drafts, parts_.pages.compare().card().note(side),
                      {side == workspace::Side::a ? laps.session_a : laps.session_b,
                       {},
                       segment.name,
                       0.5 * (segment.start_m + segment.end_m)});
        }
    }
    return state;
}

// While nothing is open what an earlier run left is still offered, and stays what there is to restore.
void Restoring::write() {
    if (offer_ && parts_.sessions.now().entries().empty())
        file_.put(*offer_);
    else
        file_.put(now());
}

} // namespace lapwright::window
