// SPDX-License-Identifier: GPL-3.0-or-later
// The demo: two invented drivers, cars and loggers on Ternbank, and a third session with another setup. Gives both the
// truth and the files, so that a test can hold what the program says of a file against what really happened.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "tests/truth/drive.h"
#include "tests/truth/logger.h"
#include "tests/truth/write_text.h"

namespace truth {

struct SetupItem {
    std::string name;
    std::string value;
};

struct DemoConditions {
    double air_temperature_c = 20.0;
    double pressure_hpa = 1013.25;
    double humidity_percent = 50.0;
    double air_density = 1.2; // what the simulation used; CIPM-2007 of the three above
};

struct DemoEntry {
    std::string file; // of the session
    std::string setup_file;
    std::string car_name;
    std::string tyre;
    DriverTruth driver;
    CarTruth car;
    SessionPlan plan;
    DemoConditions conditions;
    std::vector<SetupItem> setup;
    LoggerSpec logger;
    Dialect dialect;
    std::uint64_t drive_seed = 1;
    std::uint64_t logger_seed = 1;
};

/// Aero hatch; powerful coupe; the hatch again with less wing.
[[nodiscard]] std::vector<DemoEntry> demo_entries();
[[nodiscard]] Session drive_entry(const std::shared_ptr<const TrackShape>& track, const DemoEntry& entry);

struct NamedText {
    std::string name;
    std::string text;
};

/// Three sessions, three setup sheets, one track record.
[[nodiscard]] std::vector<NamedText> sample_files();

[[nodiscard]] std::string track_record_json(const TrackShape& track);
[[nodiscard]] std::string setup_json(const DemoEntry& entry);

} // namespace truth
