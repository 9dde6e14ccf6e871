// SPDX-License-Identifier: GPL-3.0-or-later
// The results of a batch as one table, read from the documents that are there: whoever made them.
#pragma once

#include "app/commands/batch_jobs.h"

#include <string>
#include <vector>

namespace lapwright::commands {

// Where a job's result lies, and where the reason why there is none.
[[nodiscard]] std::string result_path(const std::string& folder, const std::string& name);
[[nodiscard]] std::string failure_path(const std::string& folder, const std::string& name);

// Comma-separated text (RFC 4180), a row a job: result, status (done, failed, missing), file_a, file_b, lap_a, lap_b,
// time_a_s, time_b_s, gap_s (positive: A is ahead), gap_sd_s, why it failed.  Of one recording lap_a is its fastest
// clean lap.
[[nodiscard]] std::string summary_csv(const std::vector<Job>& jobs, const std::string& folder,
                                      const std::string& options);

} // namespace lapwright::commands
