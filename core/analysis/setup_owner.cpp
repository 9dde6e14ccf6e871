// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/setup_owner.h"

#include "core/base/plain_text.h"
#include "core/car/setup_beside.h"

#include <filesystem>
#include <functional>

namespace lapwright::analysis {
namespace {

std::string file_name(const std::string& path) {
    return std::filesystem::path(path).filename().string();
}

using Fits = std::function<bool(const SetupCandidate&)>;

std::optional<std::size_t> only_one(std::span<const SetupCandidate> sessions, const Fits& fits) {
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        if (!fits(sessions[i])) continue;
        if (found) return std::nullopt;
        found = i;
    }
    return found;
}

// A name that one of the two does not tell speaks neither for nor against.
bool against(const std::string& one, const std::string& other) {
    return !base::plain_name(one).empty() && !base::plain_name(other).empty() && !base::same_name(one, other);
}

} // namespace

std::optional<std::size_t> setup_owner(const std::string& sheet_file, const car::SetupSheet& sheet,
                                       std::span<const SetupCandidate> sessions, bool came_together) {
    const auto beside = only_one(sessions, [&](const SetupCandidate& session) {
        return file_name(car::setup_path_beside(session.file)) == file_name(sheet_file);
    });
    if (beside) return beside;
    const auto contradicts = [&](const SetupCandidate& session) {
        return against(sheet.driver, session.recording->driver) || against(sheet.car, session.recording->car);
    };
    const auto names = [&](const SetupCandidate& session) {
        const bool driver = !sheet.driver.empty() && base::same_name(sheet.driver, session.recording->driver);
        const bool car = !sheet.car.empty() && base::same_name(sheet.car, session.recording->car);
        return (driver || car) && !contradicts(session);
    };
    if (const auto named = only_one(sessions, names)) return named;
    if (sessions.size() == 1 && (came_together || !contradicts(sessions[0]))) return 0;
    return std::nullopt;
}

} // namespace lapwright::analysis
