// SPDX-License-Identifier: GPL-3.0-or-later
// Setup sheets that were opened or dropped like any file, and the names that they give to sessions.
#include "core/analysis/setup_owner.h"
#include "core/car/setup_change.h"
#include "core/car/setup_sheet.h"
#include "core/track/track_record.h"
#include "ui/window/explaining.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QFile>
#include <QFileInfo>
#include <utility>

namespace lapwright::window {
namespace {

std::string file_name(const QString& path) {
    return QFile::encodeName(path).toStdString();
}

} // namespace

bool MainWindow::take_setup(const QString& path, const QStringList& together) {
    if (track::read_track_record(file_name(path)).ok()) return false;
    const auto sheet = car::read_setup_sheet(file_name(path));
    if (!sheet.ok() || (car::says_nothing(sheet.value()) && sheet->driver.empty() && sheet->car.empty())) return false;
    setups_.push_back({path, sheet.value(), together});
    return true;
}

// The session among those that came with the sheet, else among all that are open.
QString MainWindow::owner_of(const GivenSetup& given) const {
    for (const bool together : {true, false}) {
        std::vector<analysis::SetupCandidate> sessions;
        QStringList paths;
        for (const auto& entry : shelf_->entries()) {
            if (together && !given.together.contains(entry.path)) continue;
            sessions.push_back({file_name(entry.path), entry.session->recording.get()});
            paths << entry.path;
        }
        if (const auto owner = analysis::setup_owner(file_name(given.path), given.sheet, sessions, together))
            return paths[static_cast<qsizetype>(*owner)];
    }
    return {};
}

void MainWindow::give_setups() {
    for (const GivenSetup& given : std::exchange(setups_, {})) {
        const QString name = QFileInfo(given.path).fileName();
        const QString owner = owner_of(given);
        if (owner.isEmpty()) {
            notices_->add(
                tr("%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open "
                   "that session first, or read the sheet under Setup on the Causes page.")
                    .arg(name));
            continue;
        }
        explaining_->give_setup(owner, given.sheet);
        notices_->add(tr("The setup of %1 was read from %2.").arg(QFileInfo(owner).fileName(), name));
    }
}

void MainWindow::name_by_setup(const QString& path) {
    const bridge::SessionPointer session = shelf_->session(path);
    if (!session) return;
    const car::Names names = car::names_of(*session->recording, explaining_->known_setup(path));
    rename_open(path, {names.driver, names.car, {}, session->recording->start_unix_s, {}, {}});
}

} // namespace lapwright::window
