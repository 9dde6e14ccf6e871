// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/session_shelf.h"

#include <algorithm>
#include <utility>

namespace lapwright::models {

void SessionShelf::expect(const QStringList& paths) {
    for (const QString& path : paths) {
        if (!order_.contains(path)) order_.append(path);
    }
}

void SessionShelf::add(const QString& path, SessionPointer session) {
    const auto place = std::ranges::find(entries_, path, &Entry::path);
    if (place == entries_.end()) {
        expect({path});
        const auto place_of = [this](const Entry& entry) { return order_.indexOf(entry.path); };
        entries_.insert(std::ranges::upper_bound(entries_, order_.indexOf(path), {}, place_of),
                        {path, std::move(session)});
    } else {
        place->session = std::move(session);
    }
    drop_lost_picks();
    Q_EMIT sessions_changed();
}

void SessionShelf::remove(const QString& path) {
    if (std::erase_if(entries_, [&](const Entry& entry) { return entry.path == path; }) == 0) return;
    drop_lost_picks();
    Q_EMIT sessions_changed();
}

void SessionShelf::unite(const QString& stays, const QString& goes) {
    if (stays == goes || !session(stays) || !session(goes)) return;
    for (auto* side : {&a_, &b_})
        if (*side && (*side)->path == goes) (*side)->path = stays;
    if (a_ == b_) b_.reset();
    const auto place = order_.indexOf(goes);
    if (place < order_.indexOf(stays)) {
        order_.removeOne(stays);
        order_.insert(place, stays);
    }
    const auto place_of = [this](const Entry& entry) { return order_.indexOf(entry.path); };
    std::erase_if(entries_, [&](const Entry& entry) { return entry.path == goes; });
    std::ranges::sort(entries_, {}, place_of);
    drop_lost_picks();
    Q_EMIT sessions_changed();
    Q_EMIT picks_changed();
}

SessionShelf::SessionPointer SessionShelf::session(const QString& path) const {
    const auto place = std::ranges::find(entries_, path, &Entry::path);
    return place == entries_.end() ? nullptr : place->session;
}

void SessionShelf::pick(Side side, const LapPick& pick) {
    if (!exists(pick)) return;
    auto& chosen = side == Side::a ? a_ : b_;
    auto& other = side == Side::a ? b_ : a_;
    // The lap that the other side holds changes sides.
    if (other == pick) other = chosen;
    chosen = pick;
    Q_EMIT picks_changed();
}

void SessionShelf::pick_fastest(Side side, const QString& path) {
    const SessionPointer open = session(path);
    const lap::Lap* fastest = open ? open->fastest() : nullptr;
    if (fastest != nullptr) pick(side, {path, fastest->number, true});
}

void SessionShelf::swap() {
    std::swap(a_, b_);
    Q_EMIT picks_changed();
}

void SessionShelf::put_picks(const std::optional<LapPick>& a, const std::optional<LapPick>& b) {
    const auto before = std::pair(a_, b_);
    a_ = a && exists(*a) ? a : std::nullopt;
    b_ = b && exists(*b) ? b : std::nullopt;
    if (before != std::pair(a_, b_)) Q_EMIT picks_changed();
}

void SessionShelf::take_fastest(int lap_a, int lap_b) {
    const auto before = std::pair(a_, b_);
    const auto take = [this](std::optional<LapPick>& side, int lap) {
        if (side && side->fastest && exists({side->path, lap})) side->lap = lap;
    };
    take(a_, lap_a);
    take(b_, lap_b);
    if (before != std::pair(a_, b_)) Q_EMIT picks_changed();
}

void SessionShelf::pick_defaults() {
    const auto fill = [this](std::optional<LapPick>& side, const std::optional<LapPick>& other) {
        for (const Entry& entry : entries_) {
            if (side || (other && other->path == entry.path)) continue;
            if (const lap::Lap* fastest = entry.session->fastest()) side = LapPick{entry.path, fastest->number, true};
        }
    };
    const auto before = std::pair(a_, b_);
    fill(a_, b_);
    fill(b_, a_);
    if (before != std::pair(a_, b_)) Q_EMIT picks_changed();
}

const std::optional<LapPick>& SessionShelf::picked(Side side) const {
    return side == Side::a ? a_ : b_;
}

bool SessionShelf::exists(const LapPick& pick) const {
    const SessionPointer open = session(pick.path);
    return open && open->lap(pick.lap) != nullptr;
}

void SessionShelf::drop_lost_picks() {
    const auto before = std::pair(a_, b_);
    if (a_ && !exists(*a_)) a_.reset();
    if (b_ && !exists(*b_)) b_.reset();
    if (before != std::pair(a_, b_)) Q_EMIT picks_changed();
}

} // namespace lapwright::models
