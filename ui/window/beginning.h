// SPDX-License-Identifier: GPL-3.0-or-later
// How a person comes by sessions: files that are asked for, new files that are offered, files that were opened lately,
// the samples.
#pragma once

#include "ui/window/new_files.h"

#include <QObject>
#include <QStringList>
#include <functional>

namespace lapwright::bridge {
class BookQueue;
}

namespace lapwright::pages {
class SessionsPage;
}

namespace lapwright::window {

struct Actions;
struct Preferences;

class Beginning : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        pages::SessionsPage& page;
        bridge::BookQueue& book;
        Preferences& preferences;
        std::function<void(const QStringList&)> open;  // beside what is open
        std::function<void(const QStringList&)> start; // and straight to the comparison
    };

    // All outlive it.
    explicit Beginning(Parts parts, QObject* parent = nullptr);

    // Recordings that a person asked for.
    void note_opened(const QStringList& paths);

    [[nodiscard]] NewFiles& new_files() { return *new_files_; }

  private:
    void fill_recent_menu();

    Parts parts_;
    NewFiles* new_files_;
};

} // namespace lapwright::window
