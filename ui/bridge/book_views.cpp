// SPDX-License-Identifier: GPL-3.0-or-later
// The desk's and the keeper's part in showing a pairing out of the book before its sessions are read.
#include "core/analysis/kept_view.h"
#include "core/book/sessions.h"
#include "ui/bridge/book_desk.h"
#include "ui/bridge/book_keeper.h"
#include "ui/bridge/book_path.h"

#include <QFile>
#include <utility>

namespace lapwright::bridge {

std::optional<base::Error> BookDesk::keep_view(const models::LapPick& a, const models::LapPick& b,
                                               const models::Compared& compared) {
    const auto id_a = id_of(a.path);
    const auto id_b = id_of(b.path);
    if (!id_a.ok() || !id_b.ok()) return std::nullopt; // then the pairing was refused, too
    return analysis::keep_view(*book_, {id_a.value(), a.lap, id_b.value(), b.lap}, models::view_of(compared));
}

FoundView BookDesk::find_view(const ViewWanted& wanted) {
    FoundView found{wanted.a, wanted.b, {}, {}, {}};
    const auto a = find_session(wanted.a.path);
    const auto b = find_session(wanted.b.path);
    if (!a.ok() || !a.value() || !b.ok() || !b.value()) return found;
    auto view = analysis::kept_view(*book_, {**a, wanted.a.lap, **b, wanted.b.lap}, wanted.track);
    if (!view) return found;
    const auto session_a = know(**a, wanted.a.path);
    const auto session_b = know(**b, wanted.b.path);
    if (!session_a.ok() || !session_b.ok()) return found;
    found.session_a = session_a.value();
    found.session_b = session_b.value();
    found.view = models::out_of_book(std::move(*view));
    return found;
}

void BookKeeper::keep_view(const models::LapPick& a, const models::LapPick& b, const ComparedPointer& compared) {
    edit([a, b, compared](BookDesk& desk) -> Done {
        // Refused, it is only slower next time: nothing to wait for.
        if (!desk.read_only()) static_cast<void>(desk.keep_view(a, b, *compared));
        return {};
    });
}

// Behind the edits that were asked for before, but not behind those that wait for the book to take them.
void BookKeeper::find_view(const ViewWanted& wanted) {
    if (!usable_) return;
    edit_pool_.start([this, wanted] {
        if (!open_for_edits()) return;
        tell([this, found = edits_->find_view(wanted)] { Q_EMIT view_found(found); });
    });
}

} // namespace lapwright::bridge
