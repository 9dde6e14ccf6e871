// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on in the window, for the log that a bug report can carry (core/workspace/event_log.h): what was read,
// compared, refused and why by kind, how long the window did not answer, and how quick it reacted on the whole.  Qt's
// own messages are counted, not quoted: they may name files.
#pragma once

#include "core/base/error.h"
#include "core/workspace/event_log.h"
#include "ui/bridge/book_queue.h"
#include "ui/bridge/worker.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace lapwright::window {

struct Actions;
class PageStack;
class Reactions;

class Logging : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        bridge::Worker& worker;
        bridge::BookQueue& book;
        const PageStack& pages;
        std::string state_folder; // empty: nothing is logged
        bool ended_badly = false; // the run before
    };

    // All outlive it.
    explicit Logging(const Parts& parts, QObject* parent = nullptr);
    ~Logging() override;

    [[nodiscard]] workspace::EventLog& log() { return log_; }

  private:
    void tell_of_program();
    void follow_work(const Parts& parts);
    void follow_book(const Parts& parts);
    void note_stall();

    workspace::EventLog log_;
    Reactions* reactions_ = nullptr;
    QTimer ticks_;
    QElapsedTimer since_tick_;
    QElapsedTimer since_asked_; // the worker began
};

} // namespace lapwright::window
