// SPDX-License-Identifier: GPL-3.0-or-later
// Setup sheets that were opened or dropped like any file.
#include "core/car/setup_change.h"
#include "core/car/setup_sheet.h"
#include "core/track/track_record.h"
#include "ui/window/explaining.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QFile>
#include <QFileInfo>

namespace lapwright::window {

// A setup sheet belongs to the open session that it lies beside, else to the only one of its driver and car.
bool MainWindow::take_setup(const QString& path) {
    if (track::read_track_record(QFile::encodeName(path).toStdString()).ok()) return false;
    const auto sheet = car::read_setup_sheet(QFile::encodeName(path).toStdString());
    const QString name = QFileInfo(path).fileName();
    if (!sheet.ok() || (car::says_nothing(sheet.value()) && sheet->driver.empty() && sheet->car.empty())) return false;
    QStringList fitting;
    for (const auto& entry : shelf_->entries()) {
        const QFileInfo file(entry.path);
        if (name == file.completeBaseName() + QStringLiteral(".setup.json")) {
            fitting = QStringList(entry.path);
            break;
        }
        const recording::Recording& r = *entry.session->recording;
        if (!sheet->car.empty() && r.car == sheet->car && r.driver == sheet->driver) fitting += entry.path;
    }
    if (fitting.size() != 1) {
        notices_->add(
            tr("%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open "
               "that session first, or read the sheet under Setup on the Causes page.")
                .arg(name));
        return true;
    }
    explaining_->put_setups({{fitting.front(), sheet.value()}});
    notices_->add(tr("The setup of %1 was read from %2.").arg(QFileInfo(fitting.front()).fileName(), name));
    return true;
}

} // namespace lapwright::window
