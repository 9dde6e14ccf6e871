// SPDX-License-Identifier: GPL-3.0-or-later
// Doing a job of a batch: the document that "laps" or "compare" would print of it, from sessions that are kept while
// neighbouring jobs want them.
#pragma once

#include "app/commands/batch_jobs.h"
#include "app/commands/sessions.h"
#include "core/base/result.h"
#include "core/track/track_record.h"

#include <list>
#include <optional>
#include <string>
#include <utility>

namespace lapwright::commands {

// A session of twenty minutes with 24 channels at 25 Hz takes some 30 MB.
inline constexpr std::size_t sessions_a_block = 6;
inline constexpr std::size_t max_kept_sessions = sessions_a_block + 2;

class BatchWork {
  public:
    BatchWork(std::string book_file, std::optional<track::TrackRecord> record, double step_m)
        : book_file_(std::move(book_file)), record_(std::move(record)), step_m_(step_m) {}

    [[nodiscard]] base::Result<std::string> document(const Job& job);

  private:
    [[nodiscard]] base::Result<SessionPointer> session(const std::string& recording);

    std::string book_file_;
    std::optional<track::TrackRecord> record_;
    double step_m_;
    std::list<std::pair<std::string, base::Result<SessionPointer>>> kept_; // the last used first; refusals too
};

} // namespace lapwright::commands
