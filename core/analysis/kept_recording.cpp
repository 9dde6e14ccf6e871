// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/kept_recording.h"

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

} // namespace lapwright::analysis
