// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/write_setup_sheet.h"

#include "core/base/units.h"

#include <nlohmann/json.hpp>

namespace lapwright::car {
namespace {

using nlohmann::ordered_json;

ordered_json conditions_json(const AirConditions& conditions) {
    ordered_json json = ordered_json::object();
    if (conditions.temperature_k)
        json["air_temperature_c"] = base::from_si(*conditions.temperature_k, base::Unit::celsius);
    if (conditions.pressure_pa) json["pressure_hpa"] = base::from_si(*conditions.pressure_pa, base::Unit::hectopascal);
    if (conditions.humidity) json["humidity_percent"] = base::from_si(*conditions.humidity, base::Unit::percent);
    if (conditions.altitude_m) json["altitude_m"] = *conditions.altitude_m;
    return json;
}

ordered_json springs_json(const Springs& springs) {
    return {{"front_n_per_mm", springs.front_n_per_m / 1000.0},
            {"rear_n_per_mm", springs.rear_n_per_m / 1000.0},
            {"sd_percent", 100.0 * springs.relative_sd}};
}

ordered_json known_json(const KnownFigures& known) {
    ordered_json json = ordered_json::object();
    const auto add = [&](const char* key, const char* sd_key, const std::optional<KnownFigure>& figure, double to_si) {
        if (!figure) return;
        json[key] = figure->value / to_si;
        json[sd_key] = figure->sd / to_si;
    };
    add("downforce_area_m2", "downforce_area_sd_m2", known.downforce_area_m2, 1.0);
    add("drag_area_m2", "drag_area_sd_m2", known.drag_area_m2, 1.0);
    add("power_kw", "power_sd_kw", known.power_w, 1000.0);
    return json;
}

} // namespace

std::string setup_sheet_text(const SetupSheet& sheet) {
    ordered_json json = ordered_json::object();
    if (sheet.mass) {
        json["mass_kg"] = sheet.mass->value_kg;
        json["mass_sd_kg"] = sheet.mass->sd_kg;
    }
    for (const auto& [key, words] :
         {std::pair("driver", &sheet.driver), std::pair("car", &sheet.car), std::pair("tyre", &sheet.tyre)}) {
        if (!words->empty()) json[key] = *words;
    }
    if (!sheet.items.empty()) {
        json["items"] = ordered_json::array();
        for (const SetupItem& item : sheet.items)
            json["items"].push_back({{"name", item.name}, {"value", item.value}});
    }
    const ordered_json conditions = conditions_json(sheet.conditions);
    if (!conditions.empty()) json["conditions"] = conditions;
    if (sheet.springs) json["springs"] = springs_json(*sheet.springs);
    if (const ordered_json known = known_json(sheet.known); !known.empty()) json["known"] = known;
    // Words that are no UTF-8 are mended rather than refused.
    return json.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

} // namespace lapwright::car
