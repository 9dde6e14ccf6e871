// SPDX-License-Identifier: GPL-3.0-or-later
// What is open in a running window, as a file of the person's own that outlives a crash: sessions, the two laps, the
// page, and what is being typed.  Each run has a file with a lock; one whose run has ended without closing it is found
// by the next.
#pragma once

#include "core/workspace/notes.h"
#include "core/workspace/session_key.h"

#include <QByteArray>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::window {

struct RunState {
    struct Lap {
        workspace::Origin origin; // of its session
        int number = 0;
    };
    struct Draft {
        workspace::NoteAbout about;
        QString text;
    };

    QString book; // whose sessions are meant by number
    std::vector<workspace::Origin> sessions;
    std::optional<Lap> a = {};
    std::optional<Lap> b = {};
    int page = 0;
    std::vector<Draft> drafts = {};

    [[nodiscard]] bool empty() const { return sessions.empty(); }
};

[[nodiscard]] QByteArray run_state_text(const RunState& state); // JSON
// Nothing where the text is no such state: a crash may leave anything.
[[nodiscard]] std::optional<RunState> parse_run_state(const QByteArray& text);

class RunFile {
  public:
    // An empty folder: nothing is kept.  What an ended run left there is taken away.
    explicit RunFile(const QString& folder);
    ~RunFile(); // the run has ended well

    [[nodiscard]] const std::optional<RunState>& left_over() const { return left_over_; } // of the newest
    void put(const RunState& state);
    void abandon(); // as a crash would, for tests: neither file nor lock is touched any more

  private:
    void take_left_over(const QString& folder);

    QString path_; // empty: nothing is kept
    std::unique_ptr<QLockFile> lock_;
    QByteArray written_;
    std::optional<RunState> left_over_;
};

} // namespace lapwright::window
