// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/judging.h"

#include "core/base/number_text.h"
#include "ui/bridge/book_queue.h"
#include "ui/models/open_sessions.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/comparing.h"
#include "ui/window/edit.h"

#include <QUndoStack>

namespace lapwright::window {

using bridge::BookQueue;
using models::text;
using workspace::SessionKey;

Judging::Judging(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    connect(&parts_.page, &pages::SessionsPage::lap_judged, this, &Judging::take);
}

void Judging::take(const SessionKey& key, int number, const std::optional<lap::JudgedByHand>& word) {
    const auto session = parts_.sessions.now().session(key);
    const lap::Lap* lap = session ? session->lap(number) : nullptr;
    if (!lap) return;
    const auto before = session->by_hand;
    const auto after = lap::with_word(before, *lap, word);
    const QString which = tr("lap %1 of %2").arg(text(base::integer_text(number)), text(session->source.file_name));
    const QString name = !word         ? tr("program's word on %1").arg(which)
                         : word->clean ? tr("counting of %1").arg(which)
                                       : tr("setting aside of %1").arg(which);
    parts_.edits.push(
        new Edit(name, [this, key, after] { put(key, after); }, [this, key, before] { put(key, before); }));
}

void Judging::put(const SessionKey& key, const std::vector<lap::JudgedByHand>& words) {
    parts_.comparing.judge(key, words);
    const auto session = parts_.sessions.now().session(key);
    if (session && parts_.book.takes_edits())
        parts_.book.edit([session](BookQueue::Book& own) { return own.judge_laps(*session); });
}

} // namespace lapwright::window
