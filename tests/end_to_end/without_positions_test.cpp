// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright compare` on two written files that have wheel speed, lateral acceleration and a lap column, and no
// positions: lap times are the lap column's, and the gap is the one that the simulator drove.
#include "tests/end_to_end/program.h"
#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"
#include "tests/truth/write_text.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;
using truth::Quantity;

constexpr double rate_hz = 50.0;

truth::Session session(const truth::CarTruth& car, std::uint64_t seed) {
    truth::SessionPlan plan;
    plan.flying_laps = 3;
    truth::DriverTruth driver;
    driver.style_seed = seed;
    return truth::drive_session(truth::ternbank(), car, driver, plan, seed);
}

std::string text(const truth::Session& session, std::uint64_t seed) {
    truth::LoggerSpec spec = truth::typical_logger(rate_hz);
    spec.position.rate_hz = 0.0;
    spec.velocity.rate_hz = 0.0;
    spec.wheel.rate_hz = rate_hz;
    spec.wheel_scale_lap_sd = 0.02;
    truth::Dialect dialect;
    dialect.row_clock = Quantity::wheel_speed_mps;
    dialect.columns = {{Quantity::wheel_speed_mps, "Wheel speed", "km/h", 3.6, 2},
                       {Quantity::a_lat_mps2, "Lateral acceleration", "g", 1.0 / 9.80665, 4},
                       {Quantity::lap_number, "Lap", "", 1.0, 0}};
    return truth::write_text(truth::log_session(session, spec, seed), dialect);
}

TEST(WithoutPositions, TwoFilesAreComparedOnTheirLapColumns) {
    const truth::Session a = session(truth::light_aero_hatch(), 301);
    const truth::Session b = session(truth::heavy_powerful_coupe(), 302);
    const Scratch scratch;
    const json result =
        document({"compare", "--json", scratch.file("a.csv", text(a, 301)), scratch.file("b.csv", text(b, 302))});
    const int lap_a = result["a"]["lap"].get<int>();
    const int lap_b = result["b"]["lap"].get<int>();
    EXPECT_NEAR(result["a"]["time_s"].get<double>(), a.lap(lap_a).time_s(), 1.0 / rate_hz);
    EXPECT_NEAR(result["b"]["time_s"].get<double>(), b.lap(lap_b).time_s(), 1.0 / rate_hz);
    EXPECT_NEAR(result["gap_s"].get<double>(),
                result["b"]["time_s"].get<double>() - result["a"]["time_s"].get<double>(), 1e-9);
    EXPECT_GT(result["gap_sd_s"].get<double>(), 0.003); // the lap column's step alone
    const auto& gap = result["trace"]["gap_s"];
    const double share = a.track().length_m() / static_cast<double>(gap.size() - 1);
    double squares = 0.0;
    for (std::size_t i = 0; i < gap.size(); ++i) {
        const double station = share * static_cast<double>(i);
        const double truly = b.lap_clock_s(lap_b, station) - a.lap_clock_s(lap_a, station);
        squares += std::pow(gap[i].get<double>() - truly, 2);
    }
    EXPECT_LE(std::sqrt(squares / static_cast<double>(gap.size())), 60e-3);
    bool said = false;
    for (const json& warning : result["warnings"])
        said = said || warning["code"] == "no_positions";
    EXPECT_TRUE(said);
}

} // namespace
} // namespace lapwright::end_to_end
