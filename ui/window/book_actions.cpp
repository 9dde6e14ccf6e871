// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_actions.h"

#include "core/book/salvage.h"
#include "ui/window/actions.h"
#include "ui/window/book_care.h"
#include "ui/window/book_editing.h"

#include <QToolButton>
#include <utility>

namespace lapwright::window {
namespace {

void enable(const BookParts& parts, bool usable, bool damaged) {
    const Actions& a = parts.actions;
    for (QAction* action : {a.book, a.season, a.pairings, a.predictions, a.removed, a.check_book, a.merge_book})
        action->setEnabled(usable);
    a.salvage_book->setEnabled(damaged);
    parts.damage_sign.setVisible(damaged);
}

} // namespace

void connect_book_actions(const BookParts& parts) {
    using bridge::BookQueue;
    using Part = pages::BookPanel::Part;
    const Actions& a = parts.actions;
    BookCare* care = &parts.care;
    for (const auto& [action, part] :
         {std::pair(a.book, Part::sessions), std::pair(a.season, Part::season), std::pair(a.pairings, Part::pairings),
          std::pair(a.predictions, Part::predictions)})
        QObject::connect(action, &QAction::triggered, care, [show = parts.show, part = part] { show(part); });
    enable(parts, parts.book.usable(), false);
    QObject::connect(&parts.book, &BookQueue::unusable, care,
                     [parts](const base::Error& error) { enable(parts, false, book::is_damage(error)); });
    QObject::connect(&parts.book, &BookQueue::opened_again, care, [parts] { enable(parts, true, false); });
    QObject::connect(a.removed, &QAction::triggered, &parts.editing, &BookEditing::show_removed);
    QObject::connect(a.check_book, &QAction::triggered, care, &BookCare::check);
    QObject::connect(a.salvage_book, &QAction::triggered, care, &BookCare::salvage);
    QObject::connect(a.merge_book, &QAction::triggered, care, [care, ask = parts.ask_for_book] {
        const QString other = ask();
        if (!other.isEmpty()) care->merge(other);
    });
    QObject::connect(care, &BookCare::changed, &parts.book, &BookQueue::changed);
    QObject::connect(care, &BookCare::salvaged, &parts.book, &BookQueue::open_again);
}

} // namespace lapwright::window
