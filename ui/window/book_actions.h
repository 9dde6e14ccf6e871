// SPDX-License-Identifier: GPL-3.0-or-later
// What the actions on the whole book do, and when they can be done: while it is usable, or while it is damaged.
#pragma once

#include "ui/bridge/book_queue.h"
#include "ui/pages/sessions/book_panel.h"

#include <functional>

class QToolButton;

namespace lapwright::window {

struct Actions;
class BookCare;
class BookEditing;

// All outlive the connections.
struct BookParts {
    const Actions& actions;
    QToolButton& damage_sign;
    bridge::BookQueue& book;
    BookEditing& editing;
    BookCare& care;
    std::function<void(pages::BookPanel::Part)> show; // this list of the book
    std::function<QString()> ask_for_book;            // empty: none was chosen
};

void connect_book_actions(const BookParts& parts);

} // namespace lapwright::window
