// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/hostile/good_files.h"

#include <memory>

#include "tests/worlds/world.h"

namespace hostile {
namespace {

std::shared_ptr<const truth::TrackShape> short_track() {
    truth::CircuitPlan plan;
    plan.name = "Invented short track";
    plan.first_straight_m = 230.0;
    plan.length_m = 1300.0;
    plan.corners = {{"1", 95.0, 38.0, 16.0, 140.0, "a"},
                    {"2", 85.0, 30.0, 14.0, 190.0, "b"},
                    {"3", -60.0, 55.0, 20.0, 110.0, "c"},
                    {"4", 130.0, 28.0, 12.0, 120.0, "d"},
                    {"5", 110.0, 34.0, 14.0, 60.0, "e"}};
    plan.origin = {51.5, -3.25, 80.0};
    return std::make_shared<const truth::TrackShape>(truth::build_circuit(plan));
}

worlds::Entry entry_of(worlds::FileForm form, const truth::Dialect& dialect) {
    worlds::Entry entry;
    entry.plan.flying_laps = 3;
    entry.session = std::make_shared<const truth::Session>(
        truth::drive_session(short_track(), truth::light_aero_hatch(), {}, entry.plan, 5));
    entry.logger.form = form;
    entry.logger.dialect = dialect;
    entry.logger.spec = truth::typical_logger(10.0);
    entry.logger.spec.wheel.rate_hz = 10.0;
    worlds::write_file(entry, truth::log_session(*entry.session, entry.logger.spec, 9));
    return entry;
}

truth::Dialect without_positions() {
    truth::Dialect dialect = truth::plain_dialect();
    dialect.columns = {{truth::Quantity::lap_number, "Lap", "", 1.0, 0},
                       {truth::Quantity::wheel_speed_mps, "Wheel speed", "km/h", 3.6, 2},
                       {truth::Quantity::a_lat_mps2, "Lateral acceleration", "m/s2", 1.0, 3},
                       {truth::Quantity::throttle, "Throttle", "%", 100.0, 0}};
    return dialect;
}

truth::Dialect clock_of_day() {
    truth::Dialect dialect = truth::plain_dialect();
    dialect.time_style = truth::TimeStyle::time_of_day;
    dialect.start_of_day_s = 86'300.0; // midnight comes
    dialect.delimiter = ';';
    dialect.decimal_mark = ',';
    dialect.columns.resize(2);
    return dialect;
}

} // namespace

std::vector<GoodFile> good_files() {
    using worlds::FileForm;
    const truth::Dialect plain = truth::plain_dialect();
    return {{"all.csv", entry_of(FileForm::table, plain).text, Form::table, ','},
            {"wheel.csv", entry_of(FileForm::table, without_positions()).text, Form::table, ','},
            {"clock.csv", entry_of(FileForm::table, clock_of_day()).text, Form::table, ';'},
            {"track.gpx", entry_of(FileForm::gpx, plain).text, Form::lines, ','},
            {"sentences.nmea", entry_of(FileForm::nmea, plain).text, Form::lines, ','}};
}

std::string good_track_file() {
    return R"({"name": "Invented short track", "length_m": 1300,
 "gate": {"latitude_deg": 51.5, "longitude_deg": -3.25, "heading_deg": 90, "half_width_m": 12},
 "segments": [{"name": "Start", "kind": "straight", "start_m": 0, "end_m": 230},
  {"name": "One", "kind": "corner", "start_m": 230, "end_m": 310},
  {"name": "Rest", "kind": "straight", "start_m": 310, "end_m": 1300}]}
)";
}

std::string good_setup_file() {
    return R"({"mass_kg": 1325, "mass_sd_kg": 8, "driver": "Ylva Brand", "car": "Plover", "tyre": "semi-slick",
 "items": [{"name": "Wing angle", "value": "7 deg"}, {"name": "Fuel", "value": "22 l"}],
 "conditions": {"air_temperature_c": 19, "pressure_hpa": 1012, "humidity_percent": 60, "altitude_m": 80}}
)";
}

} // namespace hostile
