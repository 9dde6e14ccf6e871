// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/my_car.h"

#include "core/analysis/my_side.h"
#include "core/book/my_car.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/finding_list.h"
#include "ui/window/debriefing.h"
#include "ui/window/edit.h"

#include <QUndoStack>

namespace lapwright::window {

MyCar::MyCar(bridge::BookQueue& book, pages::CausesPage& page, Debriefing& debriefing, QUndoStack& edits,
             QObject* parent)
    : QObject(parent), book_(book), page_(page), debriefing_(debriefing), edits_(edits) {
    connect(&page_.findings(), &pages::FindingList::mine_chosen, this, &MyCar::choose);
    connect(&book_, &bridge::BookQueue::my_car_found, this, &MyCar::take);
    connect(&book_, &bridge::BookQueue::opened_again, &book_, &bridge::BookQueue::find_my_car);
    book_.find_my_car();
}

void MyCar::set_pairing(const workspace::ComparedPointer& compared) {
    compared_ = compared;
    tell();
}

void MyCar::put(const std::optional<car::Names>& mine) {
    take(mine);
    if (book_.takes_edits())
        book_.edit_names([mine](bridge::BookQueue::Book& own) { return book::put_my_car(own.book(), mine); });
}

void MyCar::choose(std::optional<causes::Side> side) {
    if (!compared_) return;
    const analysis::Pairing& pairing = *compared_->pairing;
    std::optional<car::Names> mine;
    if (side) mine = analysis::names_to_keep(*(*side == causes::Side::a ? pairing.a : pairing.b).session);
    if (mine == mine_)
        tell(); // the button has moved
    else
        edits_.push(
            new Edit(tr("choice of your car"), [this, mine] { put(mine); }, [this, before = mine_] { put(before); }));
}

void MyCar::take(const std::optional<car::Names>& mine) {
    mine_ = mine;
    tell();
}

void MyCar::tell() {
    const auto sides = compared_ ? analysis::my_sides(mine_, *compared_->pairing) : analysis::MySides{};
    page_.set_mine(sides, mine_.has_value());
    debriefing_.set_my_car(analysis::spoken_to(sides));
}

} // namespace lapwright::window
