// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/batch_work.h"

#include "app/commands/json_text.h"
#include "app/commands/recipes.h"
#include "core/analysis/run.h"
#include "core/base/number_text.h"
#include "core/workspace/own_files.h"
#include "core/workspace/reading.h"

#include <algorithm>
#include <vector>

namespace lapwright::commands {
namespace {

using base::Result;

constexpr std::string_view of_book = "book:";

Result<SessionPointer> read_from_book(const std::string& recording, const std::string& book_file,
                                      const std::optional<track::TrackRecord>& record) {
    const auto id = base::parse_integer(std::string_view(recording).substr(of_book.size()));
    if (!id)
        return base::Error{base::ErrorCode::value_not_readable,
                           {recording, {}, {}},
                           "this is no session of the book",
                           "write book: and its id, as \"lapwright book list\" has it"};
    return workspace::read_session(book::SessionId{*id}, {book_file, record, {}, {}, workspace::own_recipe_folder()});
}

Result<SessionPointer> read_from_file(const std::string& file, const std::optional<track::TrackRecord>& record) {
    std::string notes; // what lies beside a file is read as ever; a thousand lines on it help nobody
    const auto setup = setup_of(file, {}, notes);
    if (!setup) return setup.error();
    const auto recipes = recipes_for({}, {file}, notes);
    if (!recipes) return recipes.error();
    return load(file, *setup, *recipes, record);
}

} // namespace

Result<SessionPointer> BatchWork::session(const std::string& recording) {
    const auto known = std::ranges::find(kept_, recording, &decltype(kept_)::value_type::first);
    if (known != kept_.end()) {
        kept_.splice(kept_.begin(), kept_, known);
        return kept_.front().second;
    }
    if (kept_.size() == max_kept_sessions) kept_.pop_back(); // before another is read: they are what memory holds
    kept_.emplace_front(recording, recording.starts_with(of_book) ? read_from_book(recording, book_file_, record_)
                                                                  : read_from_file(recording, record_));
    return kept_.front().second;
}

Result<std::string> BatchWork::document(const Job& job) {
    const auto a = session(job.a);
    if (!a) return a.error();
    if (job.b.empty()) return laps_json({*a});
    const auto b = session(job.b);
    if (!b) return b.error();
    const auto pairing = analysis::compare(*a, *b, {job.lap_a, job.lap_b, record_, step_m_});
    if (!pairing) return pairing.error();
    return compare_json(**pairing);
}

} // namespace lapwright::commands
