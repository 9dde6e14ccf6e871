// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/kept_recording.h"

#include "core/book/sessions.h"

#include <algorithm>
#include <filesystem>
#include <tuple>
#include <utility>

namespace lapwright::analysis {
namespace {

bool same_channel(const recording::Channel& one, const recording::Channel& other) {
    const auto head = [](const recording::Channel& c) {
        return std::tie(c.name, c.meaning, c.source_unit, c.source_unit_text, c.values);
    };
    return head(one) == head(other) && (one.time_s == other.time_s || *one.time_s == *other.time_s);
}

} // namespace

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

bool same_recording(const recording::Recording& one, const recording::Recording& other) {
    const auto head = [](const recording::Recording& r) {
        return std::tie(r.driver, r.car, r.start_unix_s, r.splits_s, r.duration_s);
    };
    const auto file = [](const recording::Recording& r) { return std::filesystem::path(r.source_file).filename(); };
    return head(one) == head(other) && file(one) == file(other) &&
           std::ranges::equal(one.channels, other.channels, same_channel);
}

} // namespace lapwright::analysis
