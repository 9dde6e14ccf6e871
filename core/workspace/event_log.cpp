// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/event_log.h"

#include "core/base/number_text.h"
#include "core/recording/recording.h"

#include <chrono>
#include <cmath>
#include <filesystem>

namespace lapwright::workspace {
namespace {

namespace fs = std::filesystem;

fs::path numbered(const std::string& folder, int number) {
    const std::string name = EventLog::file_name;
    return fs::path(folder) / (number == 0 ? name : name + "." + base::integer_text(number));
}

// To the second.
std::string moment_text() {
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    return recording::utc_text(static_cast<double>(now.time_since_epoch().count()));
}

// Whole numbers as such; others with a decimal: what a measurement had is not to be known again.
std::string number_text(double value) {
    if (!std::isfinite(value)) return "none";
    return base::fixed_text(value, value == std::round(value) ? 0 : 1);
}

} // namespace

EventLog::EventLog(const std::string& folder, std::uintmax_t most_bytes) : folder_(folder), most_bytes_(most_bytes) {
    if (folder_.empty()) return;
    std::error_code ignored;
    fs::create_directories(folder_, ignored);
    const fs::path path = numbered(folder_, 0);
    const auto size = fs::file_size(path, ignored);
    bytes_ = ignored ? 0 : size;
    file_.open(path, std::ios::app | std::ios::binary);
}

void EventLog::rotate() {
    file_.close();
    std::error_code ignored;
    fs::remove(numbered(folder_, kept_files), ignored);
    for (int number = kept_files; number > 0; --number)
        fs::rename(numbered(folder_, number - 1), numbered(folder_, number), ignored);
    file_.open(numbered(folder_, 0), std::ios::trunc | std::ios::binary);
    bytes_ = 0;
}

void EventLog::add(FixedWords event, std::initializer_list<LogDetail> details) {
    if (folder_.empty()) return;
    std::string line = moment_text() + " " + event.text();
    for (const LogDetail& detail : details)
        line += std::string(", ") + detail.name.text() + (detail.value ? " " + number_text(*detail.value) : "");
    line += '\n';
    const std::lock_guard lock(mutex_);
    if (bytes_ > 0 && bytes_ + line.size() > most_bytes_) rotate();
    if (!file_.is_open()) return;
    file_ << line << std::flush; // a crash is what it is read for
    bytes_ += line.size();
}

} // namespace lapwright::workspace
