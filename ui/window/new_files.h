// SPDX-License-Identifier: GPL-3.0-or-later
// Files that came in and were not opened yet, offered on the Sessions page: of the folder that files were opened from
// last, and of removable volumes.  Both are watched while the window lives; nothing is ever written there.  What the
// book has, and what was opened from there before, is not offered.
#pragma once

#include "core/workspace/new_files.h"
#include "ui/bridge/job_queue.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QStringList>
#include <QTimer>
#include <functional>
#include <set>
#include <vector>

namespace lapwright::window {

class NewFiles : public QObject {
    Q_OBJECT

  public:
    // Where removable volumes are mounted now.
    using Volumes = std::function<QStringList()>;

    // Nothing is looked for before begin().
    explicit NewFiles(Volumes volumes, QObject* parent = nullptr);

    void set_folder(const QString& folder); // empty: none
    void add_known(const workspace::KnownFile& file);
    void set_known(const std::set<workspace::KnownFile>& in_book); // beside those that were added
    void begin();

    [[nodiscard]] const std::vector<workspace::NewFile>& now() const { return now_; }

  Q_SIGNALS:
    void changed();

  private:
    void look(); // for volumes that came or went
    void search();

    Volumes volumes_;
    bool begun_ = false;
    QString folder_;
    QStringList mounted_;
    std::set<workspace::KnownFile> in_book_;
    std::set<workspace::KnownFile> opened_;
    std::vector<workspace::NewFile> now_;
    QFileSystemWatcher watcher_;
    QTimer pause_; // a file that is being copied changes often
    QTimer volume_ticks_;
    bridge::JobGroup searching_;
    bridge::JobQueue jobs_;
};

// The volumes under the mount points of removable media (File Hierarchy Standard 3.0: /media; by session: /run/media).
[[nodiscard]] QStringList removable_volumes();

} // namespace lapwright::window
