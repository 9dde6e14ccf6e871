// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/kept_recording.h"

#include "core/analysis/with_words.h"
#include "core/book/judged_by_hand.h"
#include "core/book/search.h"
#include "core/book/sessions.h"

#include <utility>

namespace lapwright::analysis {

void take_over(recording::Recording& recording, const book::SessionDetails& details) {
    if (!details.driver.empty()) recording.driver = details.driver;
    if (!details.car.empty()) recording.car = details.car;
    if (!details.track.empty()) recording.track = details.track;
    recording.start_unix_s = details.start_unix_s;
}

base::Result<recording::Recording> kept_recording(book::Book& book, book::SessionId id) {
    auto read = book::read_recording(book, id);
    if (!read) return read.error();
    const auto details = book::read_details(book, id);
    if (!details) return details.error();
    recording::Recording recording = std::move(read).value();
    take_over(recording, details.value());
    return recording;
}

base::Result<KeptRecording> read_kept(book::Book& book, book::SessionId id) {
    const auto summary = book::read_summary(book, id);
    if (!summary) return summary.error();
    auto recording = kept_recording(book, id);
    if (!recording) return recording.error();
    auto words = book::judged_by_hand(book, id);
    if (!words) return words.error();
    return KeptRecording{std::move(recording).value(), summary->source, std::move(words).value()};
}

base::Result<std::shared_ptr<const Session>> understand_kept(KeptRecording kept, const SessionOptions& options,
                                                             const base::Progress& progress) {
    const auto understood = understand(std::move(kept.recording), options, progress);
    if (!understood) return understood.error();
    auto session = std::make_shared<Session>(**understood);
    session->source = std::move(kept.source);
    return with_words(session, std::move(kept.words));
}

base::Result<std::shared_ptr<const Session>>
kept_session(book::Book& book, book::SessionId id, const SessionOptions& options, const base::Progress& progress) {
    auto kept = read_kept(book, id);
    if (!kept) return kept.error();
    return understand_kept(std::move(kept).value(), options, progress);
}

} // namespace lapwright::analysis
