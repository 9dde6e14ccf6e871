// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/given_files.h"

#include "core/base/error.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/explaining.h"
#include "ui/window/notices.h"
#include "ui/window/preferences.h"

#include <QFileInfo>
#include <algorithm>
#include <iterator>
#include <utility>

namespace lapwright::window {

using models::text;

GivenFiles::GivenFiles(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {}

bool GivenFiles::take(QStringList& files) {
    const QStringList all = std::exchange(files, {});
    const auto is_json = [](const QString& file) { return file.endsWith(QLatin1String(".json"), Qt::CaseInsensitive); };
    std::ranges::copy_if(all, std::back_inserter(files), [&](const QString& file) { return !is_json(file); });
    bool changed = false;
    for (const QString& file : all)
        if (is_json(file) && !take_setup(file, files)) changed = use_track(file) || changed;
    if (files.isEmpty() && !parts_.pairing.reading()) give_setups();
    return changed;
}

bool GivenFiles::use_track(const QString& path) {
    const auto record = track::read_track_record(models::file_name(path));
    if (!record.ok()) {
        parts_.notices.add(text(base::one_line(record.error())));
        return false;
    }
    track_ = record.value();
    parts_.preferences.track_file = path;
    parts_.page.set_track(text(track_->name), QFileInfo(path).fileName());
    Q_EMIT track_changed();
    return true;
}

void GivenFiles::put_track(const std::optional<track::TrackRecord>& record) {
    forget_track();
    track_ = record;
    Q_EMIT track_changed();
}

void GivenFiles::forget_track() {
    track_.reset();
    parts_.preferences.track_file.clear();
    parts_.page.set_track({}, {});
}

std::string GivenFiles::track_name() const {
    if (track_) return track_->name;
    for (const auto& entry : parts_.sessions.now().entries())
        if (entry.session->known_track) return entry.session->known_track->name;
    return {};
}

bool GivenFiles::take_setup(const QString& path, const QStringList& together) {
    auto given = workspace::read_given_setup(models::file_name(path), models::origins_of(together));
    if (given) setups_.push_back(std::move(*given));
    return given.has_value();
}

void GivenFiles::give_setups() {
    for (const workspace::GivenSetup& given : std::exchange(setups_, {})) {
        const QString name = QFileInfo(models::path(given.file)).fileName();
        const auto* owner = workspace::owner_of(given, parts_.sessions.now());
        if (!owner) {
            parts_.notices.add(
                tr("%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open "
                   "that session first, or read the sheet under Setup on the Causes page.")
                    .arg(name));
            continue;
        }
        const QString owner_name = text(owner->file_name());
        parts_.explaining.give_setup(*owner, given.sheet);
        parts_.notices.add(tr("The setup of %1 was read from %2.").arg(owner_name, name));
    }
}

} // namespace lapwright::window
