// SPDX-License-Identifier: GPL-3.0-or-later
// Two drives, each recorded by a logger of that kind, as the program compares them; null where it cannot.
#pragma once

#include "core/analysis/run.h"
#include "support/recording_of.h"
#include "support/two_drives.h"

namespace lapwright::test {

inline std::shared_ptr<const analysis::Pairing> paired(const TwoDrives& drives, const truth::LoggerSpec& spec,
                                                       std::uint64_t seed) {
    const auto side = [&](const truth::Session& session, const char* name, std::uint64_t own_seed) {
        const auto result = analysis::understand(recording_of(truth::log_session(session, spec, own_seed), name), {});
        return result.ok() ? *result : nullptr;
    };
    const auto a = side(drives.a, "a", 2 * seed + 1);
    const auto b = side(drives.b, "b", 2 * seed + 2);
    if (!a || !b) return nullptr;
    const auto pairing = analysis::compare(a, b);
    return pairing.ok() ? *pairing : nullptr;
}

} // namespace lapwright::test
