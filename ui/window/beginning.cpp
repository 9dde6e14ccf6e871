// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/beginning.h"

#include "ui/bridge/book_queue.h"
#include "ui/models/file_name.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/window/actions.h"
#include "ui/window/preferences.h"
#include "ui/window/samples.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <utility>

namespace lapwright::window {
namespace {

constexpr qsizetype most_recent = 9; // each has a digit as its letter

} // namespace

Beginning::Beginning(Parts parts, QObject* parent)
    : QObject(parent), parts_(std::move(parts)), new_files_(new NewFiles(removable_volumes, this)) {
    parts_.page.start().set_samples(!sample_sessions().isEmpty());
    connect(&parts_.page, &pages::SessionsPage::open_asked, parts_.actions.open, &QAction::trigger);
    connect(parts_.actions.open, &QAction::triggered, this, [this] {
        parts_.open(
            QFileDialog::getOpenFileNames(parts_.page.window(), tr("Open logger files"), parts_.preferences.folder));
    });
    connect(&parts_.page, &pages::SessionsPage::samples_asked, this, [this] { parts_.start(sample_sessions()); });
    connect(&parts_.page, &pages::SessionsPage::files_asked, this,
            [this](const QStringList& paths) { parts_.open(paths); });
    connect(new_files_, &NewFiles::changed, this, [this] { parts_.page.show_new_files(new_files_->now()); });
    connect(&parts_.book, &bridge::BookQueue::files_found, this, [this](const std::set<workspace::KnownFile>& files) {
        new_files_->set_known(files);
        new_files_->begin();
    });
    connect(&parts_.book, &bridge::BookQueue::unusable, new_files_, &NewFiles::begin);
    connect(&parts_.book, &bridge::BookQueue::changed, this, [this] { parts_.book.find_files(); });
    connect(&parts_.book, &bridge::BookQueue::opened_again, this, [this] { parts_.book.find_files(); });
    new_files_->set_folder(parts_.preferences.folder);
    if (parts_.book.usable())
        parts_.book.find_files();
    else
        new_files_->begin();
    fill_recent_menu();
}

void Beginning::note_opened(const QStringList& paths) {
    QStringList& recent = parts_.preferences.recent_files;
    for (const QString& path : paths) {
        recent.removeAll(path);
        recent.prepend(path);
        const QFileInfo file(path);
        new_files_->add_known({file.fileName().toStdString(), static_cast<std::uint64_t>(file.size())});
    }
    recent = recent.mid(0, most_recent);
    new_files_->set_folder(parts_.preferences.folder);
    fill_recent_menu();
}

void Beginning::fill_recent_menu() {
    parts_.actions.recent_menu->clear();
    int place = 0;
    for (const QString& path : parts_.preferences.recent_files) {
        const QFileInfo file(path);
        QAction* action = parts_.actions.recent_menu->addAction(
            tr("&%1  %2 — %3").arg(++place).arg(in_menu(file.fileName()), in_menu(file.path())));
        connect(action, &QAction::triggered, this, [this, path] { parts_.open({path}); });
    }
    parts_.actions.recent_menu->setEnabled(place > 0);
}

} // namespace lapwright::window
