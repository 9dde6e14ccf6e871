// SPDX-License-Identifier: GPL-3.0-or-later
// A book filled with sessions of twenty minutes at 25 Hz and 24
// columns: driven by the simulator, written as text and imported.
#pragma once

#include "core/analysis/run.h"
#include "core/base/number_text.h"
#include "core/book/book.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "core/import/formats/import.h"
#include "tests/truth/write_text.h"

#include <cstdlib>
#include <iostream>
#include <optional>
#include <string>
#include <utility>

namespace lapwright::bench {

[[noreturn]] inline void stop(const base::Error& error) {
    std::cerr << base::one_line(error) << "\n";
    std::exit(1);
}

template <typename T>
T must(base::Result<T> result) {
    if (!result) stop(result.error());
    return std::move(result).value();
}

inline void must(const base::Result<void>& done) {
    if (!done) stop(done.error());
}

struct Driven {
    book::SessionId id{};
    std::size_t text_bytes = 0;
    std::vector<lap::Lap> laps;
};

inline Driven keep_driven(book::Book& book, std::uint64_t seed) {
    const std::string text = truth::benchmark_text(1.0 / 3.0, 25.0, seed);
    auto recording = must(import::import_bytes(text, "session.csv"));
    const auto session = must(analysis::understand(recording));
    const book::Source source{"session-" + base::integer_text(static_cast<std::int64_t>(seed)) + ".csv", text.size(),
                              book::sha256_of(text)};
    return {must(add_session(book, source, recording, {}, session->laps)).id, text.size(), session->laps};
}

} // namespace lapwright::bench
