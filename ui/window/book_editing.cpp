// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_editing.h"

#include "ui/models/text.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/removed_list.h"
#include "ui/pages/sessions/rename_form.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QUndoCommand>
#include <QUndoStack>
#include <algorithm>
#include <optional>
#include <utility>

namespace lapwright::window {
namespace {

using bridge::BookKeeper;
using models::text;

class RenameEdit : public QUndoCommand {
  public:
    RenameEdit(BookKeeper& book, bridge::Renaming renaming, const QString& name)
        : QUndoCommand(name), book_(book), renaming_(std::move(renaming)) {}
    void redo() override { book_.rename(renaming_); }
    void undo() override { book_.undo_rename(renaming_.number); }

  private:
    BookKeeper& book_;
    bridge::Renaming renaming_;
};

class DateEdit : public QUndoCommand {
  public:
    DateEdit(BookKeeper& book, const book::SessionSummary& session, std::optional<double> start_unix_s,
             const QString& name)
        : QUndoCommand(name), book_(book), id_(session.id), before_unix_s_(session.start_unix_s),
          after_unix_s_(start_unix_s) {}
    void redo() override { book_.put_start(id_, after_unix_s_); }
    void undo() override { book_.put_start(id_, before_unix_s_); }

  private:
    BookKeeper& book_;
    book::SessionId id_;
    std::optional<double> before_unix_s_;
    std::optional<double> after_unix_s_;
};

class RemovalEdit : public QUndoCommand {
  public:
    RemovalEdit(BookKeeper& book, book::SessionId id, const QString& name) : QUndoCommand(name), book_(book), id_(id) {}
    void redo() override { book_.remove_session(id_); }
    void undo() override { book_.restore_session(id_); }

  private:
    BookKeeper& book_;
    book::SessionId id_;
};

class ReturnEdit : public QUndoCommand {
  public:
    ReturnEdit(BookKeeper& book, book::SessionId id, const QString& name) : QUndoCommand(name), book_(book), id_(id) {}
    void redo() override { book_.restore_session(id_); }
    void undo() override { book_.remove_session(id_); }

  private:
    BookKeeper& book_;
    book::SessionId id_;
};

class PairingRemovalEdit : public QUndoCommand {
  public:
    PairingRemovalEdit(BookKeeper& book, int number, book::PairingId id, const QString& name)
        : QUndoCommand(name), book_(book), number_(number), id_(id) {}
    void redo() override { book_.take_pairing(number_, id_); }
    void undo() override { book_.bring_back_pairing(number_); }

  private:
    BookKeeper& book_;
    int number_;
    book::PairingId id_;
};

class TrackEdit : public QUndoCommand {
  public:
    TrackEdit(BookKeeper& book, int number, std::string track, const QString& name)
        : QUndoCommand(name), book_(book), number_(number), track_(std::move(track)) {}
    void redo() override { book_.forget_track(number_, track_); }
    void undo() override { book_.bring_back_track(number_, track_); }

  private:
    BookKeeper& book_;
    int number_;
    std::string track_;
};

} // namespace

BookEditing::BookEditing(BookKeeper& book, pages::SessionsPage& page, QUndoStack& edits, QObject* parent)
    : QObject(parent), book_(book), page_(page), edits_(edits) {
    pages::BookView& view = page_.book();
    connect(&book_, &BookKeeper::pairings_found, this,
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
                edits_.push(
                    new PairingRemovalEdit(book_, ++number_, one.kept.id,
                                           tr("removal of the pairing %1 against %2")
                                               .arg(text(one.a.source.file_name), text(one.b.source.file_name))));
            });
}

void BookEditing::show_removed() {
    auto* list = new pages::RemovedList(&page_);
    list->setAttribute(Qt::WA_DeleteOnClose);
    connect(&book_, &BookKeeper::removed_found, list, &pages::RemovedList::show_sessions);
    connect(&book_, &BookKeeper::changed, list, [this] { book_.find_removed(); });
    connect(list, &pages::RemovedList::restore_wanted, this, [this](const book::RemovedSession& session) {
        edits_.push(new ReturnEdit(book_, session.id, tr("return of %1").arg(text(session.file_name))));
    });
    book_.find_removed();
    list->open();
}

void BookEditing::ask_for_name(const book::SessionSummary& session) {
    auto* form = new pages::RenameForm(session, page_.book().names(), &page_);
    form->setAttribute(Qt::WA_DeleteOnClose);
    connect(form, &QDialog::accepted, this, [this, form, session] {
        if (form->dates())
            edits_.push(new DateEdit(book_, session, form->start_unix_s(),
                                     tr("date of %1").arg(text(session.source.file_name))));
        else
            rename(*form);
    });
    form->open();
}

void BookEditing::rename(const pages::RenameForm& form) {
    edits_.push(new RenameEdit(book_, {++number_, form.table(), form.old_name(), form.new_name(), form.unites()},
                               tr("new name of %1").arg(text(form.old_name()))));
}

void BookEditing::remove(const book::SessionSummary& session) {
    edits_.push(new RemovalEdit(book_, session.id, tr("removal of %1").arg(text(session.source.file_name))));
}

void BookEditing::forget_track(const std::string& name) {
    edits_.push(new TrackEdit(book_, ++number_, name, tr("forgetting of %1").arg(text(name))));
}

} // namespace lapwright::window
