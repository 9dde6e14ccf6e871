// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_editing.h"

#include "core/book/sessions.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/removed_list.h"
#include "ui/pages/sessions/rename_form.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/edit.h"

#include <QUndoStack>
#include <algorithm>
#include <optional>

namespace lapwright::window {
namespace {

using bridge::BookQueue;
using models::text;
using Book = BookQueue::Book;

} // namespace

BookEditing::BookEditing(BookQueue& book, pages::SessionsPage& page, QUndoStack& edits, QObject* parent)
    : QObject(parent), book_(book), page_(page), edits_(edits) {
    pages::BookView& view = page_.book();
    connect(&book_, &BookQueue::pairings_found, this,
            [this](const std::vector<book::PairingSummary>& pairings) { pairings_ = pairings; });
    connect(&view, &pages::BookView::renaming_asked, this, &BookEditing::ask_for_name);
    connect(&view, &pages::BookView::removal_wanted, this, &BookEditing::remove);
    connect(&view, &pages::BookView::removal_asked, this, [this](const book::SessionSummary& session) {
        const auto with_it = std::ranges::count_if(pairings_, [&](const book::PairingSummary& one) {
            return one.a.id == session.id || one.b.id == session.id;
        });
        page_.book().ask_for_removal(session, static_cast<int>(with_it));
    });
    connect(&page_.book_panel().pairings(), &pages::PairingsView::removal_wanted, this,
            [this](const book::PairingSummary& one) {
                const int number = ++number_;
                const QString name = tr("removal of the pairing %1 against %2")
                                         .arg(text(one.a.source.file_name), text(one.b.source.file_name));
                push(
                    name, &BookQueue::edit,
                    [number, id = one.kept.id](Book& own) { return own.take_pairing(number, id); },
                    [number](Book& own) { return own.bring_back_pairing(number); });
            });
}

void BookEditing::show_removed() {
    auto* list = new pages::RemovedList(&page_);
    list->setAttribute(Qt::WA_DeleteOnClose);
    connect(&book_, &BookQueue::removed_found, list, &pages::RemovedList::show_sessions);
    connect(&book_, &BookQueue::changed, list, [this] { book_.find_removed(); });
    connect(list, &pages::RemovedList::restore_wanted, this, [this](const book::RemovedSession& session) {
        push(
            tr("return of %1").arg(text(session.file_name)), &BookQueue::edit,
            [id = session.id](Book& own) { return book::restore_session(own.book(), id); },
            [id = session.id](Book& own) { return book::remove_session(own.book(), id); });
    });
    book_.find_removed();
    list->open();
}

void BookEditing::ask_for_name(const book::SessionSummary& session) {
    auto* form = new pages::RenameForm(session, page_.book().names(), &page_);
    form->setAttribute(Qt::WA_DeleteOnClose);
    connect(form, &QDialog::accepted, this, [this, form, session] {
        if (form->dates())
            date(session, form->start_unix_s());
        else
            rename(*form);
    });
    form->open();
}

void BookEditing::push(const QString& name, How how, const BookQueue::Work& redo, const BookQueue::Work& undo) {
    edits_.push(new Edit(
        name, [&book = book_, how, redo] { (book.*how)(redo); }, [&book = book_, how, undo] { (book.*how)(undo); }));
}

void BookEditing::date(const book::SessionSummary& session, std::optional<double> start_unix_s) {
    const auto put = [id = session.id](std::optional<double> start) {
        return [id, start](Book& own) { return book::change_start(own.book(), id, start); };
    };
    push(tr("date of %1").arg(text(session.source.file_name)), &BookQueue::edit_names, put(start_unix_s),
         put(session.start_unix_s));
}

void BookEditing::rename(const pages::RenameForm& form) {
    const workspace::Renaming wanted{++number_, form.table(), form.old_name(), form.new_name(), form.unites()};
    push(
        tr("new name of %1").arg(text(form.old_name())), &BookQueue::edit_names,
        [wanted](Book& own) { return own.rename(wanted); },
        [number = wanted.number](Book& own) { return own.undo_rename(number); });
}

void BookEditing::rename_track(const std::string& from, const std::string& to) {
    const workspace::Renaming wanted{++number_, book::NameTable::track, from, to, true};
    push(
        tr("new name of %1").arg(text(from)), &BookQueue::edit_tracks,
        [wanted](Book& own) { return own.rename(wanted); },
        [number = wanted.number](Book& own) { return own.undo_rename(number); });
}

void BookEditing::remove(const book::SessionSummary& session) {
    push(
        tr("removal of %1").arg(text(session.source.file_name)), &BookQueue::edit,
        [id = session.id](Book& own) { return book::remove_session(own.book(), id); },
        [id = session.id](Book& own) { return book::restore_session(own.book(), id); });
}

void BookEditing::forget_track(const std::string& name) {
    const int number = ++number_;
    push(
        tr("forgetting of %1").arg(text(name)), &BookQueue::edit_tracks,
        [number, name](Book& own) { return own.forget_track(number, name); },
        [number, name](Book& own) { return own.bring_back_track(number, name); });
}

} // namespace lapwright::window
