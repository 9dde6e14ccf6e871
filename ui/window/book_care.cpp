// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_care.h"

#include "core/book/exchange.h"
#include "core/book/salvage.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/window/notices.h"

#include <QPointer>
#include <QProgressDialog>
#include <utility>

namespace lapwright::window {
namespace {

using models::text;

constexpr int whole = 1000;
constexpr int shown_after_ms = 400;

QString counted(int count, const QString& one, const QString& several) {
    return count == 1 ? one : several.arg(count);
}

QString merged_words(const book::Merged& merged) {
    QString words = BookCare::tr("%1 came from the friend's book, %2; with %3 and %4.")
                        .arg(counted(merged.sessions, BookCare::tr("1 new session"), BookCare::tr("%1 new sessions")),
                             counted(merged.known_sessions, BookCare::tr("1 was known already"),
                                     BookCare::tr("%1 were known already")),
                             counted(merged.notes, BookCare::tr("1 note"), BookCare::tr("%1 notes")),
                             counted(merged.pairings, BookCare::tr("1 pairing"), BookCare::tr("%1 pairings")));
    if (!merged.removed.empty())
        words += BookCare::tr(" Of the known ones %1 that were removed: the list of removed sessions brings them back.")
                     .arg(counted(static_cast<int>(merged.removed.size()), BookCare::tr("1 is among those"),
                                  BookCare::tr("%1 are among those")));
    if (merged.conflicts > 0)
        words +=
            BookCare::tr(" Of %1 the books said different things: \"lapwright book conflicts\" shows and settles them.")
                .arg(counted(merged.conflicts, BookCare::tr("1 field"), BookCare::tr("%1 fields")));
    return words;
}

QString salvaged_words(const book::Salvaged& salvaged) {
    if (salvaged.was_whole) return BookCare::tr("The book is whole; nothing was changed.");
    QString words =
        BookCare::tr("%1 and %2 were saved; the damaged book is kept as %3.")
            .arg(counted(salvaged.sessions, BookCare::tr("1 session"), BookCare::tr("%1 sessions")),
                 counted(salvaged.notes, BookCare::tr("1 note"), BookCare::tr("%1 notes")), text(salvaged.kept_as));
    if (salvaged.removed_sessions > 0)
        words += QStringLiteral(" ") + counted(salvaged.removed_sessions,
                                               BookCare::tr("1 removed session can be brought back."),
                                               BookCare::tr("%1 removed sessions can be brought back."));
    for (const std::string& loss : salvaged.losses)
        words += QStringLiteral(" ") + text(loss) + QLatin1Char('.');
    return words;
}

} // namespace

BookCare::BookCare(std::string book_file, Notices& notices, QWidget& window, QObject* parent)
    : QObject(parent), book_file_(std::move(book_file)), notices_(notices), window_(window), jobs_(*this, 1) {}

void BookCare::tell(const base::Error& error) {
    if (error.code != base::ErrorCode::cancelled) tell(text(base::one_line(error)));
}

void BookCare::tell(const QString& sentence) {
    notices_.add(sentence);
}

void BookCare::run(const QString& title, bool may_stop, bridge::JobQueue::Work work) {
    if (jobs_.busy()) return;
    QPointer<QProgressDialog> shown =
        new QProgressDialog(title, may_stop ? tr("Stop") : QString(), 0, may_stop ? whole : 0, &window_);
    shown->setWindowTitle(tr("The book"));
    shown->setWindowModality(Qt::WindowModal);
    shown->setMinimumDuration(shown_after_ms);
    shown->setAutoReset(false);
    shown->setAutoClose(false);
    shown->setValue(0);
    if (may_stop)
        connect(shown, &QProgressDialog::canceled, this, [this, shown] {
            stoppable_.cancel();
            shown->deleteLater();
        });
    else
        shown->setCancelButton(nullptr);
    const auto told = [shown, work = std::move(work)](const base::Progress& progress) -> bridge::JobQueue::Answer {
        return [shown, answer = work(progress)] {
            delete shown;
            answer();
        };
    };
    jobs_.add(stoppable_, told, [shown, may_stop](const QString&, double part_done) {
        if (shown && may_stop) shown->setValue(static_cast<int>(part_done * whole));
    });
}

void BookCare::check() {
    run(tr("Reading the whole book"), true, [this](const base::Progress& progress) -> bridge::JobQueue::Answer {
        auto opened = book::Book::open(book_file_, {.may_begin = false});
        if (!opened.ok()) return [this, error = opened.error()] { tell(error); };
        book::Book book = std::move(opened).value();
        const auto health = book.check(progress);
        if (!health.ok()) return [this, error = health.error()] { tell(error); };
        return [this, found = health.value()] {
            if (found.whole()) return tell(tr("The book was read to its end and is whole."));
            QStringList complaints;
            for (const std::string& one : found.complaints)
                complaints << text(one);
            tell(tr("The book is damaged: %1. Its sessions can still be opened; \"lapwright book salvage\" makes a "
                    "whole "
                    "book of what can be read, when no window has it open.")
                     .arg(complaints.join(QStringLiteral("; "))));
        };
    });
}

void BookCare::merge(const QString& other_book) {
    const std::string other = models::file_name(other_book);
    run(tr("Taking in the other book"), false, [this, other](const base::Progress&) -> bridge::JobQueue::Answer {
        auto opened = book::Book::open(book_file_);
        if (!opened.ok()) return [this, error = opened.error()] { tell(error); };
        book::Book book = std::move(opened).value();
        const auto merged = book::merge_from(book, other);
        if (!merged.ok()) return [this, error = merged.error()] { tell(error); };
        return [this, done = merged.value()] {
            tell(merged_words(done));
            Q_EMIT changed();
        };
    });
}

void BookCare::salvage() {
    run(tr("Saving what can be read"), false, [this](const base::Progress&) -> bridge::JobQueue::Answer {
        const auto saved = book::salvage(book_file_);
        if (!saved.ok()) return [this, error = saved.error()] { tell(error); };
        return [this, done = saved.value()] {
            tell(salvaged_words(done));
            Q_EMIT salvaged();
        };
    });
}

} // namespace lapwright::window
