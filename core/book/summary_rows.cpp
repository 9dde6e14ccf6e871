// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/summary_rows.h"

#include <algorithm>

namespace lapwright::book {

SessionSummary summary_of(const Rows& rows) {
    SessionSummary summary;
    summary.id = SessionId{rows.whole(0)};
    const std::string_view checksum = rows.blob(1);
    std::copy_n(checksum.begin(), std::min(checksum.size(), summary.source.checksum.size()),
                summary.source.checksum.begin());
    summary.source.file_name = rows.text(2);
    summary.source.size_bytes = static_cast<std::uint64_t>(rows.whole(3));
    summary.driver = rows.text(4);
    summary.car = rows.text(5);
    summary.track = rows.text(6);
    summary.tyre = rows.text(7);
    summary.conditions = rows.text(8);
    summary.start_unix_s = rows.maybe_real(9);
    summary.duration_s = rows.real(10);
    summary.laps = static_cast<int>(rows.whole(11));
    summary.clean_laps = static_cast<int>(rows.whole(12));
    summary.best_clean_s = rows.maybe_real(13);
    summary.notes = static_cast<int>(rows.whole(14));
    return summary;
}

} // namespace lapwright::book
