// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/track_record.h"

#include "core/base/constants.h"
#include "core/base/translation.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

namespace lapwright::track {
namespace {

using base::said;
using nlohmann::json;
constexpr double degree = base::pi / 180.0;
constexpr double widest_gate_m = 60.0;
constexpr std::size_t max_segments = 500;
constexpr std::size_t max_bytes = 1'000'000;
constexpr std::size_t max_letters = 1000; // of a name

base::Error unreadable(const std::string& file, const std::string& what) {
    return {
        base::ErrorCode::track_not_readable, {file, {}, {}}, what, said("see README.md for what a track file holds")};
}

// A finite number under a key, within limits; nothing when it is absent or something else.
std::optional<double> number(const json& object, const char* key, double least, double most) {
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number()) return std::nullopt;
    const double value = found->get<double>();
    if (!std::isfinite(value) || value < least || value > most) return std::nullopt;
    return value;
}

// As number(), and the default where the key is absent; false where something else stands there.
bool take(double& value, const json& object, const char* key, double least, double most) {
    if (!object.contains(key)) return true;
    const auto given = number(object, key, least, most);
    value = given.value_or(value);
    return given.has_value();
}

std::string text(const json& object, const char* key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

double heading_from_course(double course_deg) {
    return (90.0 - course_deg) * degree;
}

double course_from_heading(double heading_rad) {
    const double course = std::fmod(90.0 - heading_rad / degree, 360.0);
    return course < 0.0 ? course + 360.0 : course;
}

std::optional<Segment> segment(const json& object) {
    const auto start = number(object, "start_m", 0.0, 1e6);
    const auto end = number(object, "end_m", 0.0, 1e6);
    const std::string kind = text(object, "kind");
    if (!start || !end || *end <= *start || (kind != "corner" && kind != "straight")) return std::nullopt;
    Segment result;
    result.name = text(object, "name");
    result.kind = kind == "corner" ? SegmentKind::corner : SegmentKind::straight;
    result.start_m = *start;
    result.end_m = *end;
    return result;
}

// Empty where there are none; nothing where something else stands there.
std::optional<std::vector<double>> turns_of(const json& document, double length_m) {
    std::vector<double> turns;
    const auto list = document.find("turns_m");
    if (list == document.end()) return turns;
    if (!list->is_array() || list->size() > max_segments) return std::nullopt;
    for (const json& entry : *list) {
        const double least = turns.empty() ? 0.0 : turns.back();
        if (!entry.is_number()) return std::nullopt;
        const double turn = entry.get<double>();
        if (!std::isfinite(turn) || turn < least || turn > length_m) return std::nullopt;
        turns.push_back(turn);
    }
    return turns;
}

} // namespace

base::Result<TrackRecord> parse_track_record(std::string_view bytes, const std::string& name) {
    if (bytes.size() > max_bytes) return unreadable(name, said("this is too long for a track file"));
    const json document = json::parse(bytes, nullptr, false);
    if (!document.is_object()) return unreadable(name, said("the track file is not a JSON object"));
    TrackRecord record;
    record.name = text(document, "name");
    if (record.name.size() > max_letters) return unreadable(name, said("the track's name is too long"));
    const auto gate = document.find("gate");
    if (gate == document.end() || !gate->is_object()) return unreadable(name, said("the track file has no \"gate\""));
    const auto latitude = number(*gate, "latitude_deg", -90.0, 90.0);
    const auto longitude = number(*gate, "longitude_deg", -180.0, 180.0);
    const auto course = number(*gate, "heading_deg", -360.0, 720.0);
    if (!latitude || !longitude || !course)
        return unreadable(name,
                          said("the gate needs \"latitude_deg\", \"longitude_deg\" and \"heading_deg\" as numbers"));
    record.gate.position = {*latitude * degree, *longitude * degree, 0.0};
    record.gate.heading_rad = heading_from_course(*course);
    if (!take(record.gate.half_width_m, *gate, "half_width_m", 1.0, widest_gate_m))
        return unreadable(name,
                          said("\"half_width_m\" is not a number from 1 to 60: a wider timing line would be crossed "
                               "by other parts of the track"));
    if (!take(record.length_m, document, "length_m", 0.0, longest_lap_m))
        return unreadable(name, said("\"length_m\" is not a number from 0 to 50000"));
    if (const auto list = document.find("segments"); list != document.end()) {
        if (!list->is_array()) return unreadable(name, said("\"segments\" is not a list"));
        if (list->size() > max_segments)
            return unreadable(name, said("\"segments\" has more than 500 entries, too many to tell anything of one"));
        double at = 0.0;
        for (const json& entry : *list) {
            const auto one = entry.is_object() ? segment(entry) : std::nullopt;
            if (!one || one->start_m < at - 1e-6)
                return unreadable(
                    name, said("a segment needs \"name\", \"kind\" (corner or straight), \"start_m\" < \"end_m\", "
                               "and follows the one before it"));
            record.segments.push_back(*one);
            at = one->end_m;
        }
    }
    const auto turns = turns_of(document, record.length_m);
    if (!turns) return unreadable(name, said("\"turns_m\" is not a list of rising distances on the lap"));
    record.turns_m = *turns;
    return record;
}

base::Result<TrackRecord> read_track_record(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    if (!file)
        return base::Error{base::ErrorCode::file_not_readable,
                           {path, {}, {}},
                           said("the track file cannot be opened"),
                           said("check the name and that it may be read")};
    std::string content(max_bytes + 1, '\0');
    file.read(content.data(), static_cast<std::streamsize>(content.size()));
    content.resize(static_cast<std::size_t>(file.gcount()));
    return parse_track_record(content, path);
}

std::string track_record_json(const TrackRecord& record) {
    json segments = json::array();
    for (const Segment& s : record.segments)
        segments.push_back({{"name", s.name},
                            {"kind", s.kind == SegmentKind::corner ? "corner" : "straight"},
                            {"start_m", s.start_m},
                            {"end_m", s.end_m}});
    json document{{"name", record.name},
                  {"gate",
                   {{"latitude_deg", record.gate.position.latitude_rad / degree},
                    {"longitude_deg", record.gate.position.longitude_rad / degree},
                    {"heading_deg", course_from_heading(record.gate.heading_rad)},
                    {"half_width_m", record.gate.half_width_m}}},
                  {"length_m", record.length_m},
                  {"segments", segments}};
    if (!record.turns_m.empty()) document["turns_m"] = record.turns_m;
    return document.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace lapwright::track
