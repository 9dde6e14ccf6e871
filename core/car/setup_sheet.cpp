// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/setup_sheet.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/units.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

namespace lapwright::car {
namespace {

using base::said;
using nlohmann::json;

constexpr std::size_t max_bytes = 1'000'000;
constexpr std::size_t max_items = 1000;
constexpr std::size_t max_letters = 10'000; // of one text

std::uint64_t line_of(std::string_view text, std::size_t place) {
    return 1 + static_cast<std::uint64_t>(std::ranges::count(text.substr(0, place), '\n'));
}

// Reads values and remembers the first that is wrong, with the line of its key.
class Reader {
  public:
    Reader(std::string_view text, std::string file) : text_(text), file_(std::move(file)) {}

    [[nodiscard]] const std::optional<base::Error>& error() const { return error_; }

    std::optional<double> number(const json& object, const std::string& key, double least, double most) {
        const auto found = object.find(key);
        if (found == object.end() || found->is_null()) return std::nullopt;
        const double value = found->is_number() ? found->get<double>() : std::nan("");
        if (std::isfinite(value) && value >= least && value <= most) return value;
        complain(key, said("\"%1\" must be a number from %2 to %3",
                           {key, base::fixed_text(least, 0), base::fixed_text(most, 0)}));
        return std::nullopt;
    }

    std::string words(const json& object, const std::string& key) {
        const auto found = object.find(key);
        if (found == object.end() || found->is_null()) return {};
        std::string text = found->is_string() ? found->get<std::string>() : found->is_number() ? found->dump() : "";
        if (!found->is_string() && !found->is_number()) complain(key, said("\"%1\" must be text", {key}));
        if (text.size() <= max_letters) return text;
        complain(key, said("\"%1\" is too long", {key}));
        return {};
    }

    void complain(const std::string& key, const std::string& what) {
        if (error_) return;
        const std::size_t place = text_.find('"' + key + '"');
        base::Place where{file_, std::nullopt, {}};
        if (place != std::string_view::npos) where.line = line_of(text_, place);
        error_ = base::Error{base::ErrorCode::setup_not_readable, where, what, said("correct it in the setup sheet")};
    }

  private:
    std::string_view text_;
    std::string file_;
    std::optional<base::Error> error_;
};

void read_items(Reader& reader, const json& document, SetupSheet& sheet) {
    const auto items = document.find("items");
    if (items == document.end() || items->is_null()) return;
    if (!items->is_array()) return reader.complain("items", said("\"items\" must be a list"));
    if (items->size() > max_items) return reader.complain("items", said("\"items\" are too many"));
    for (const json& item : *items) {
        if (!item.is_object()) return reader.complain("items", said("every item needs a \"name\" and a \"value\""));
        sheet.items.push_back({reader.words(item, "name"), reader.words(item, "value")});
    }
}

void read_conditions(Reader& reader, const json& document, SetupSheet& sheet) {
    const auto found = document.find("conditions");
    if (found == document.end() || found->is_null()) return;
    if (!found->is_object()) return reader.complain("conditions", said("\"conditions\" must be an object"));
    if (const auto t = reader.number(*found, "air_temperature_c", -40.0, 60.0))
        sheet.conditions.temperature_k = base::to_si(*t, base::Unit::celsius);
    if (const auto p = reader.number(*found, "pressure_hpa", 500.0, 1100.0))
        sheet.conditions.pressure_pa = base::to_si(*p, base::Unit::hectopascal);
    if (const auto h = reader.number(*found, "humidity_percent", 0.0, 100.0)) sheet.conditions.humidity = *h / 100.0;
    sheet.conditions.altitude_m = reader.number(*found, "altitude_m", -500.0, 5000.0);
}

void read_springs(Reader& reader, const json& document, SetupSheet& sheet) {
    const auto found = document.find("springs");
    if (found == document.end() || found->is_null()) return;
    if (!found->is_object()) return reader.complain("springs", said("\"springs\" must be an object"));
    const auto front = reader.number(*found, "front_n_per_mm", 1.0, 2000.0);
    const auto rear = reader.number(*found, "rear_n_per_mm", 1.0, 2000.0);
    const auto sd = reader.number(*found, "sd_percent", 0.0, 100.0);
    if (!front || !rear)
        return reader.complain("springs", said("\"springs\" need both \"front_n_per_mm\" and \"rear_n_per_mm\""));
    sheet.springs = Springs{1000.0 * *front, 1000.0 * *rear, sd ? *sd / 100.0 : Springs{}.relative_sd};
}

std::optional<KnownFigure> read_figure(Reader& reader, const json& object, const char* key, const char* sd_key,
                                       double least, double most, double to_si) {
    const auto value = reader.number(object, key, least, most);
    const auto sd = reader.number(object, sd_key, 0.0, most);
    if (!value) return std::nullopt;
    return known_figure(to_si * *value, sd ? std::optional(to_si * *sd) : std::nullopt);
}

void read_known(Reader& reader, const json& document, SetupSheet& sheet) {
    const auto found = document.find("known");
    if (found == document.end() || found->is_null()) return;
    if (!found->is_object()) return reader.complain("known", said("\"known\" must be an object"));
    sheet.known.downforce_area_m2 =
        read_figure(reader, *found, "downforce_area_m2", "downforce_area_sd_m2", -3.0, 15.0, 1.0);
    sheet.known.drag_area_m2 = read_figure(reader, *found, "drag_area_m2", "drag_area_sd_m2", 0.0, 5.0, 1.0);
    sheet.known.power_w = read_figure(reader, *found, "power_kw", "power_sd_kw", 1.0, 2000.0, 1000.0);
}

base::Result<json> parsed(std::string_view text, const std::string& file) {
    const auto refused = [&](std::optional<std::uint64_t> line, const std::string& what, const std::string& remedy) {
        return base::Error{base::ErrorCode::setup_not_readable, {file, line, {}}, what, remedy};
    };
    if (text.size() > max_bytes)
        return refused({}, said("this is too long for a setup sheet"),
                       said("see README.md for what a setup sheet holds"));
    // The library tells the place of a mistake only by an exception: all of its kinds end here.
    try {
        return json::parse(text);
    } catch (const json::parse_error& mistake) {
        const std::size_t place = std::min(text.size(), mistake.byte > 0 ? mistake.byte - 1 : 0);
        return refused(line_of(text, place), said("this is not valid JSON"),
                       said("look for a missing comma, quote or brace"));
    } catch (const json::exception&) {
        return refused({}, said("a number in it is beyond what can be stored"), said("correct it in the setup sheet"));
    }
}

} // namespace

KnownFigure known_figure(double value, std::optional<double> sd) {
    constexpr double usual_share = 0.1;
    return {value, sd.value_or(usual_share * std::abs(value))};
}

base::Result<SetupSheet> parse_setup_sheet(std::string_view text, const std::string& file) {
    const auto content = parsed(text, file);
    if (!content) return content.error();
    const json& document = *content;
    if (!document.is_object())
        return base::Error{base::ErrorCode::setup_not_readable,
                           {file, 1, {}},
                           said("the setup sheet is not a JSON object"),
                           said("see README.md for what a setup sheet holds")};
    Reader reader(text, file);
    SetupSheet sheet;
    const auto mass = reader.number(document, "mass_kg", 100.0, 5000.0);
    const auto sd = reader.number(document, "mass_sd_kg", 0.0, 500.0);
    if (mass) sheet.mass = Mass{*mass, sd.value_or(Mass{}.sd_kg)};
    sheet.driver = reader.words(document, "driver");
    sheet.car = reader.words(document, "car");
    sheet.tyre = reader.words(document, "tyre");
    read_items(reader, document, sheet);
    read_conditions(reader, document, sheet);
    read_springs(reader, document, sheet);
    read_known(reader, document, sheet);
    if (reader.error()) return *reader.error();
    return sheet;
}

base::Result<SetupSheet> read_setup_sheet(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    if (!file)
        return base::Error{base::ErrorCode::file_not_readable,
                           {path, {}, {}},
                           said("the setup sheet cannot be opened"),
                           said("check the name and that it may be read")};
    std::string content(max_bytes + 1, '\0');
    file.read(content.data(), static_cast<std::streamsize>(content.size()));
    content.resize(static_cast<std::size_t>(file.gcount()));
    return parse_setup_sheet(content, path);
}

} // namespace lapwright::car
