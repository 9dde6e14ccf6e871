// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/logging.h"

#include "ui/models/file_name.h"
#include "ui/window/actions.h"
#include "ui/window/page_stack.h"
#include "ui/window/reactions.h"

#include <QDesktopServices>
#include <QGuiApplication>
#include <QLibraryInfo>
#include <QScreen>
#include <QThread>
#include <QUrl>
#include <QVersionNumber>
#include <atomic>
#include <cmath>

namespace lapwright::window {
namespace {

using base::ErrorCode;
using workspace::FixedWords;

constexpr double slow_reaction_s = 0.1;
constexpr int heartbeat_ms = 500;
constexpr qint64 stall_ms = 300; // beyond the tick

std::atomic<workspace::EventLog*> message_log = nullptr;
QtMessageHandler handler_before = nullptr;

FixedWords kind_of(ErrorCode code) {
    switch (code) {
    case ErrorCode::file_not_readable:
        return "a file is not readable";
    case ErrorCode::file_not_writable:
        return "a file is not writable";
    case ErrorCode::file_too_large:
        return "a file is too large";
    case ErrorCode::not_a_table:
        return "not a table";
    case ErrorCode::column_missing:
        return "a column is missing";
    case ErrorCode::value_not_readable:
        return "a value is not readable";
    case ErrorCode::time_not_usable:
        return "the time is not usable";
    case ErrorCode::no_motion:
        return "no motion";
    case ErrorCode::no_laps:
        return "no laps";
    case ErrorCode::lap_not_found:
        return "a lap is not found";
    case ErrorCode::different_tracks:
        return "different tracks";
    case ErrorCode::track_not_readable:
        return "a track is not readable";
    case ErrorCode::setup_not_readable:
        return "a setup is not readable";
    case ErrorCode::recipe_not_readable:
        return "a recipe is not readable";
    case ErrorCode::book_not_usable:
        return "the book is not usable";
    case ErrorCode::cannot_be_computed:
        return "it cannot be computed";
    case ErrorCode::cancelled:
        return "it was called off";
    }
    return "for another reason";
}

// What moves under the hand is wanted within a frame of 16 ms.
void tell(workspace::EventLog& log, FixedWords what, const ReactionTimes& times) {
    const auto milliseconds = [&](double part) { return 1000.0 * times.quantile_s(part); };
    log.add(what, {{"number", static_cast<double>(times.seconds.size())},
                   {"middle milliseconds", milliseconds(0.5)},
                   {"95 % within milliseconds", milliseconds(0.95)},
                   {"slowest milliseconds", milliseconds(1.0)}});
}

void count_message(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (auto* log = message_log.load(); log != nullptr && type != QtDebugMsg && type != QtInfoMsg) {
        if (type == QtWarningMsg)
            log->add("Qt warned");
        else
            log->add("Qt met an error");
    }
    if (handler_before != nullptr) handler_before(type, context, message);
}

} // namespace

Logging::Logging(const Parts& parts, QObject* parent) : QObject(parent), log_(parts.state_folder) {
    parts.actions.show_log->setEnabled(!log_.folder().empty());
    if (log_.folder().empty()) return;
    connect(parts.actions.show_log, &QAction::triggered, this, [this] {
        log_.add("the log's folder was shown");
        QDesktopServices::openUrl(QUrl::fromLocalFile(models::path(log_.folder())));
    });
    tell_of_program();
    if (parts.ended_badly) log_.add("the run before ended without closing its window");
    follow_work(parts);
    follow_book(parts);
    connect(&parts.pages, &QStackedWidget::currentChanged, this,
            [this](int page) { log_.add("a page was shown", {{"number", page}}); });
    ticks_.setInterval(heartbeat_ms);
    connect(&ticks_, &QTimer::timeout, this, &Logging::note_stall);
    since_tick_.start();
    ticks_.start();
    reactions_ = new Reactions([&pages = parts.pages] { return pages.on_compare(); }, this);
    connect(reactions_, &Reactions::reacted, this, [this](double seconds) {
        if (seconds > slow_reaction_s)
            log_.add("a reaction was slow", {{"milliseconds", std::round(1000.0 * seconds)}});
    });
    message_log = &log_;
    if (handler_before == nullptr) handler_before = qInstallMessageHandler(count_message);
}

Logging::~Logging() {
    if (message_log.load() == &log_) message_log = nullptr;
    if (reactions_ != nullptr) {
        tell(log_, "reactions to keys, clicks and the wheel", reactions_->to_all());
        tell(log_, "cursor and zoom over the plots", reactions_->on_plots());
    }
    log_.add("the window was closed");
}

void Logging::tell_of_program() {
    const QVersionNumber own = QVersionNumber::fromString(QStringLiteral(LAPWRIGHT_VERSION));
    const QVersionNumber qt = QLibraryInfo::version();
    log_.add("the program began", {{"version", own.majorVersion()},
                                   {"minor", own.minorVersion()},
                                   {"micro", own.microVersion()},
                                   {"Qt", qt.majorVersion()},
                                   {"minor", qt.minorVersion()},
                                   {"cores", QThread::idealThreadCount()}});
    for (const QScreen* screen : QGuiApplication::screens())
        log_.add("a screen is there", {{"width", screen->size().width()},
                                       {"height", screen->size().height()},
                                       {"scale", screen->devicePixelRatio()}});
}

void Logging::follow_work(const Parts& parts) {
    using bridge::Worker;
    const Worker* worker = &parts.worker;
    connect(worker, &Worker::busy_changed, this, [this](bool busy) {
        if (busy) since_asked_.start();
    });
    const auto seconds = [this] {
        return since_asked_.isValid() ? static_cast<double>(since_asked_.elapsed()) / 1000.0 : 0.0;
    };
    connect(worker, &Worker::session_ready, this,
            [this, seconds](const workspace::Origin& origin, const workspace::SessionPointer& session) {
                const recording::Recording& recording = *session->recording;
                const bool in_book = std::holds_alternative<book::SessionId>(origin);
                log_.add("a session was read", {{in_book ? FixedWords("from the book") : FixedWords("from a file")},
                                                {"channels", static_cast<double>(recording.channels.size())},
                                                {"bytes", static_cast<double>(session->source.size_bytes)},
                                                {"laps", static_cast<double>(session->laps.size())},
                                                {"warnings", static_cast<double>(recording.warnings.size())},
                                                {"seconds", seconds()}});
            });
    connect(worker, &Worker::file_refused, this, [this](const workspace::Origin&, const base::Error& error) {
        log_.add("a file was refused", {{kind_of(error.code)}});
    });
    connect(worker, &Worker::pairing_ready, this,
            [this, seconds] { log_.add("two laps were compared", {{"seconds", seconds()}}); });
    connect(worker, &Worker::comparison_refused, this,
            [this](const base::Error& error) { log_.add("a comparison was refused", {{kind_of(error.code)}}); });
    connect(worker, &Worker::explanation_ready, this,
            [this, seconds] { log_.add("a gap was explained", {{"seconds", seconds()}}); });
    connect(worker, &Worker::explanation_refused, this,
            [this](const base::Error& error) { log_.add("an explanation was refused", {{kind_of(error.code)}}); });
}

void Logging::follow_book(const Parts& parts) {
    using bridge::BookQueue;
    const BookQueue* book = &parts.book;
    connect(book, &BookQueue::refused, this,
            [this](const base::Error& error) { log_.add("the book refused", {{kind_of(error.code)}}); });
    connect(book, &BookQueue::unusable, this,
            [this](const base::Error& error) { log_.add("there is no book", {{kind_of(error.code)}}); });
    connect(book, &BookQueue::opened_read_only, this, [this] { log_.add("the book can only be read"); });
    connect(book, &BookQueue::waits, this, [this](int edits, const base::Error& reason) {
        log_.add("edits wait for the book", {{"number", edits}, {kind_of(reason.code)}});
    });
    connect(book, &BookQueue::caught_up, this, [this] { log_.add("the book has all edits"); });
}

void Logging::note_stall() {
    const qint64 late_ms = since_tick_.restart() - heartbeat_ms;
    if (late_ms > stall_ms) log_.add("the window did not answer", {{"seconds", static_cast<double>(late_ms) / 1000.0}});
}

} // namespace lapwright::window
