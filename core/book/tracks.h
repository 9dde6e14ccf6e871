// SPDX-License-Identifier: GPL-3.0-or-later
// Tracks of the book: gate, segments with their names, reference line.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/book/names.h"
#include "core/track/track.h"
#include "core/track/track_record.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

struct KeptLine {
    motion::LocalFrame frame;
    track::ReferenceLine line;
};

// Under the record's name; one that is there is replaced, its line kept when none is given.
[[nodiscard]] base::Result<void> put_track(Book& book, const track::TrackRecord& record,
                                           const std::optional<KeptLine>& line = {});
// Nothing where the book knows no more of the track than its name, or not even that.
[[nodiscard]] base::Result<std::optional<track::TrackRecord>> read_track(Book& book, const std::string& name);
[[nodiscard]] base::Result<std::optional<KeptLine>> read_line(Book& book, const std::string& name);
// All that have a record, by name: to find the one whose gate is near.
[[nodiscard]] base::Result<std::vector<track::TrackRecord>> tracks(Book& book);

// As a person edited it; what there was before is the answer, to be brought back.  The line stays where the timing line
// stayed: it begins there.
[[nodiscard]] base::Result<TrackParts> change_track(Book& book, const track::TrackRecord& record);

// Gate, segments and line go, the name stays with its sessions; what went is the answer, to be brought back.
[[nodiscard]] base::Result<TrackParts> forget_track(Book& book, const std::string& name);
[[nodiscard]] base::Result<void> bring_back_track(Book& book, const std::string& name, const TrackParts& parts);

} // namespace lapwright::book
