// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settled_debrief.h"

#include "ui/window/explaining.h"
#include "ui/window/page_stack.h"

#include <utility>

namespace lapwright::window {

// Queued: by then the page has taken what came.
SettledDebrief::SettledDebrief(PageStack& pages, const workspace::PresentPairing& pairing, const Explaining& explaining,
                               QObject* parent)
    : QObject(parent), pages_(pages), pairing_(pairing) {
    connect(&explaining, &Explaining::changed, this, &SettledDebrief::go_on, Qt::QueuedConnection);
    connect(&pages, &PageStack::asked, this, &SettledDebrief::go_on, Qt::QueuedConnection);
}

void SettledDebrief::then(std::function<void()> work) {
    pages_.show_debrief();
    work_ = std::move(work);
    go_on();
}

void SettledDebrief::go_on() {
    if (pages_.comes() == PageStack::Shown::debrief) return;
    if (pages_.comes() || pages_.shown() != PageStack::Shown::debrief) work_ = {};
    if (!work_ || pairing_.state() == workspace::PresentPairing::State::explaining) return;
    std::exchange(work_, {})();
}

} // namespace lapwright::window
