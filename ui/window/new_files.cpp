// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/new_files.h"

#include "ui/models/file_name.h"

#include <QDateTime>
#include <QFileInfo>
#include <QStorageInfo>

namespace lapwright::window {
namespace {

constexpr std::size_t most_files = 6;
constexpr int days_new = 7;        // in the folder; a logger's own clock, which dates files on a card, may be unset
constexpr int depth_on_volume = 3; // of the folders in which loggers keep their files
constexpr int search_pause_ms = 400;
constexpr int volume_tick_ms = 2000;

} // namespace

QStringList removable_volumes() {
    QStringList volumes;
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes()) {
        const QString root = volume.rootPath();
        if (volume.isReady() &&
            (root.startsWith(QLatin1String("/media/")) || root.startsWith(QLatin1String("/run/media/"))))
            volumes << root;
    }
    return volumes;
}

NewFiles::NewFiles(Volumes volumes, QObject* parent) : QObject(parent), volumes_(std::move(volumes)), jobs_(*this, 1) {
    pause_.setSingleShot(true);
    pause_.setInterval(search_pause_ms);
    volume_ticks_.setInterval(volume_tick_ms);
    connect(&pause_, &QTimer::timeout, this, &NewFiles::search);
    connect(&watcher_, &QFileSystemWatcher::directoryChanged, &pause_, qOverload<>(&QTimer::start));
    connect(&volume_ticks_, &QTimer::timeout, this, &NewFiles::look);
}

void NewFiles::begin() {
    if (begun_) return;
    begun_ = true;
    look();
    volume_ticks_.start();
    pause_.start();
}

void NewFiles::set_folder(const QString& folder) {
    if (folder == folder_) return;
    if (!folder_.isEmpty()) watcher_.removePath(folder_);
    folder_ = folder;
    if (!folder_.isEmpty()) watcher_.addPath(folder_);
    pause_.start();
}

void NewFiles::add_known(const workspace::KnownFile& file) {
    if (opened_.insert(file).second) pause_.start();
}

void NewFiles::set_known(const std::set<workspace::KnownFile>& in_book) {
    if (in_book == in_book_) return;
    in_book_ = in_book;
    pause_.start();
}

void NewFiles::look() {
    QStringList mounted = volumes_();
    if (mounted == mounted_) return;
    mounted_ = std::move(mounted);
    pause_.start();
}

void NewFiles::search() {
    if (!begun_) return;
    std::vector<workspace::SearchedFolder> folders;
    if (!folder_.isEmpty()) {
        const QDateTime since = QDateTime::currentDateTimeUtc().addDays(-days_new);
        folders.push_back({models::file_name(folder_), 0, static_cast<double>(since.toSecsSinceEpoch())});
    }
    for (const QString& volume : mounted_)
        folders.push_back({models::file_name(volume), depth_on_volume, {}});
    std::set<workspace::KnownFile> known = in_book_;
    known.insert(opened_.begin(), opened_.end());
    searching_.cancel();
    jobs_.add(searching_, [this, folders, known](const base::Progress& progress) -> bridge::JobQueue::Answer {
        return [this, found = workspace::new_recordings(folders, known, most_files, progress)] {
            if (found == now_) return;
            now_ = found;
            Q_EMIT changed();
        };
    });
}

} // namespace lapwright::window
