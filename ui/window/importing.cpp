// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/importing.h"

#include "core/import/channels/trust.h"
#include "ui/dialogs/column_dialog.h"
#include "ui/dialogs/recipe_list.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"

#include <QWidget>
#include <span>

namespace lapwright::window {

Importing::Importing(bridge::Worker& worker, const std::string& recipe_folder, QWidget* window)
    : QObject(window), worker_(worker), folder_(recipe_folder), window_(window) {
    connect(&worker_, &bridge::Worker::preview_ready, this, &Importing::opened_preview);
    connect(&worker_, &bridge::Worker::preview_refused, this, [this](const QString& path, const base::Error& error) {
        if (!dialog_ || dialog_->path() != path) return;
        if (dialog_->has_preview()) {
            dialog_->show_refusal(error);
            return;
        }
        // What is no table has no columns to ask about.
        if (!by_itself_) Q_EMIT refused(models::text(base::one_line(error)));
        dialog_->reject();
    });
}

void Importing::note_session(const QString& path, const analysis::Session& session) {
    if (!seen_.contains(path)) seen_ << path;
    const recording::Recording& recording = *session.recording;
    const bool asks = import::asks(recording) || (session.why_no_laps && import::guessed_columns(recording));
    if (asks && !asked_.contains(path) && !waiting_.contains(path)) waiting_ << path;
}

void Importing::note_refusal(const QString& path, const base::Error& error) {
    if (!seen_.contains(path)) seen_ << path;
    const bool answer_helps =
        error.code == base::ErrorCode::time_not_usable || error.code == base::ErrorCode::no_motion;
    // There is no session from which a person could ask for the dialog: it comes until it is cancelled.
    if (answer_helps && !waiting_.contains(path)) waiting_ << path;
}

bool Importing::ask_next() {
    if (dialog_) return true;
    if (waiting_.isEmpty()) return false;
    open(waiting_.takeFirst(), true);
    return true;
}

void Importing::ask_about(const workspace::OpenSessions::Entry& session) {
    if (session.file())
        ask(models::path(*session.file()));
    else
        Q_EMIT refused(tr("%1 came out of the book: open its file to change what its columns mean.")
                           .arg(models::text(session.file_name())));
}

void Importing::ask(const QString& path) {
    if (!dialog_) open(path, false);
}

// The dialog is shown when the first preview has come: a file without columns never shows one.
void Importing::open(const QString& path, bool by_itself) {
    by_itself_ = by_itself;
    asked_.insert(path);
    dialog_ = new dialogs::ColumnDialog([this](const import::Recipe& recipe) { return folder_.keep(recipe); }, units_,
                                        palette_, window_);
    dialog_->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog_, &dialogs::ColumnDialog::preview_asked, this,
            [this, path](const import::Options& options) { worker_.preview(path, options); });
    connect(dialog_, &QDialog::finished, this, [this, path](int result) {
        dialog_.clear();
        if (result == QDialog::Accepted) answered_for(path);
        Q_EMIT answered();
    });
    dialog_->open_file(path, import::recipe_for(models::file_name(path), folder_.list().recipes));
}

// What was said of one file holds for the others of its shape that were read before, or wait to be asked about.
void Importing::answered_for(const QString& path) {
    const auto recipes = folder_.list().recipes;
    const auto said = import::recipe_for(models::file_name(path), recipes);
    const auto kept = said ? folder_.find(*said) : std::nullopt;
    Q_EMIT read_again(path);
    if (!kept) return;
    for (const QString& other : QStringList(seen_)) {
        if (other == path || !import::recipe_for(models::file_name(other), std::span(&*kept, 1))) continue;
        waiting_.removeAll(other);
        Q_EMIT read_again(other);
    }
}

void Importing::opened_preview(const QString& path, const bridge::PreviewPointer& preview) {
    if (!dialog_ || dialog_->path() != path) return;
    dialog_->show_preview(preview);
    if (!dialog_->isVisible()) dialog_->open();
}

void Importing::show_recipes() {
    dialogs::RecipeList(folder_, units_, palette_, window_).exec();
}

} // namespace lapwright::window
