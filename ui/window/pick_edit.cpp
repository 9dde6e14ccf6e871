// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/pick_edit.h"

#include <QUndoCommand>
#include <utility>

namespace lapwright::window {
namespace {

using models::Side;
using Picks = std::pair<std::optional<models::LapPick>, std::optional<models::LapPick>>;

Picks picks_of(const models::SessionShelf& shelf) {
    return {shelf.picked(Side::a), shelf.picked(Side::b)};
}

class PickEdit : public QUndoCommand {
  public:
    PickEdit(models::SessionShelf& shelf, const QString& name, Picks before, Picks after)
        : QUndoCommand(name), shelf_(shelf), before_(std::move(before)), after_(std::move(after)) {}
    void redo() override { shelf_.put_picks(after_.first, after_.second); }
    void undo() override { shelf_.put_picks(before_.first, before_.second); }

  private:
    models::SessionShelf& shelf_;
    Picks before_;
    Picks after_;
};

} // namespace

void edit_picks(models::SessionShelf& shelf, QUndoStack& edits, const QString& name,
                const std::function<void(models::SessionShelf&)>& change) {
    const Picks before = picks_of(shelf);
    change(shelf);
    const Picks after = picks_of(shelf);
    if (after != before) edits.push(new PickEdit(shelf, name, before, after));
}

} // namespace lapwright::window
