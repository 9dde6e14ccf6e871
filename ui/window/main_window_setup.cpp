// SPDX-License-Identifier: GPL-3.0-or-later
// Setup sheets that were opened or dropped like any file, and the names that they give to sessions.
#include "core/car/names.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/window/explaining.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QFileInfo>
#include <utility>

namespace lapwright::window {

using models::text;

bool MainWindow::take_setup(const QString& path, const QStringList& together) {
    auto given = workspace::read_given_setup(models::file_name(path), models::origins_of(together));
    if (given) setups_.push_back(std::move(*given));
    return given.has_value();
}

void MainWindow::give_setups() {
    for (const workspace::GivenSetup& given : std::exchange(setups_, {})) {
        const QString name = QFileInfo(models::path(given.file)).fileName();
        const auto* owner = workspace::owner_of(given, sessions_->now());
        if (!owner) {
            notices_->add(
                tr("%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open "
                   "that session first, or read the sheet under Setup on the Causes page.")
                    .arg(name));
            continue;
        }
        const QString owner_name = text(owner->file_name());
        explaining_->give_setup(*owner, given.sheet);
        notices_->add(tr("The setup of %1 was read from %2.").arg(owner_name, name));
    }
}

void MainWindow::name_by_setup(const workspace::SessionKey& key) {
    const workspace::SessionPointer session = sessions_->now().session(key);
    if (!session) return;
    const car::Names names = car::names_of(*session->recording, explaining_->known_setup(key));
    rename_open(key, {names.driver, names.car, {}, session->recording->start_unix_s, {}, {}});
}

} // namespace lapwright::window
