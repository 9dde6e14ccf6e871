// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/gpx.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/import/channels/fix_track.h"
#include "core/import/formats/point_values.h"
#include "core/import/text/cells.h"
#include "core/import/text/encoding.h"
#include "core/import/text/limits.h"
#include "core/import/text/moment.h"
#include "core/recording/warning_words.h"

#include <expat.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;
using recording::Recording;
using recording::WarningKind;

constexpr std::size_t xml_piece_bytes = std::size_t{64} << 10U;
constexpr std::size_t deepest = 64;
constexpr std::size_t longest_text = 4096;

// The name behind a prefix: "gpx:trkpt" is a trkpt.
std::string_view local_name(std::string_view name) {
    const std::size_t colon = name.rfind(':');
    return colon == std::string_view::npos ? name : name.substr(colon + 1);
}

// What the document says, gathered while it is read.
struct Document {
    XML_Parser parser = nullptr;
    std::vector<std::string> path; // local names of the open elements
    std::string text;              // of the innermost one
    std::vector<Fix> fixes;
    Fix point;
    PointValues beside; // in the extensions of points
    bool in_point = false;
    bool segment_starts = false;
    bool hostile = false; // entity declarations, or nested beyond reason
    bool too_many = false;
    bool zone_missing = false;
    recording::LineTally without_position;
    std::vector<std::pair<std::string, std::string>> facts;

    [[nodiscard]] std::uint32_t line() const { return static_cast<std::uint32_t>(XML_GetCurrentLineNumber(parser)); }
    void stop() const { XML_StopParser(parser, XML_FALSE); }
};

double attribute(const XML_Char** attributes, std::string_view name) {
    for (std::size_t i = 0; attributes[i]; i += 2)
        if (local_name(attributes[i]) == name)
            return base::parse_number(trimmed(attributes[i + 1])).value_or(Fix::absent);
    return Fix::absent;
}

void open_point(Document& document, const XML_Char** attributes) {
    document.point = {};
    document.in_point = true;
    document.point.line = document.line();
    document.point.new_segment = std::exchange(document.segment_starts, false);
    const double latitude = attribute(attributes, "lat");
    const double longitude = attribute(attributes, "lon");
    if (!(std::abs(latitude) <= 90.0 && std::abs(longitude) <= 180.0)) return;
    document.point.latitude = latitude * base::pi / 180.0;
    document.point.longitude = longitude * base::pi / 180.0;
}

void close_point(Document& document) {
    document.in_point = false;
    if (std::isnan(document.point.latitude)) return document.without_position.add(document.point.line);
    document.fixes.push_back(document.point);
    if (document.fixes.size() <= largest_rows) return;
    document.too_many = true;
    document.stop();
}

void take_time(Document& document, std::string_view text) {
    const auto moment = read_moment(text);
    if (!moment) return;
    document.point.time_s = moment->unix_s;
    document.zone_missing = document.zone_missing || !moment->zone_known;
}

// The text of an element inside a point.
void take_value(Document& document, std::string_view element) {
    Fix& fix = document.point;
    const std::string_view text = trimmed(document.text);
    if (element == "time") return take_time(document, text);
    const double value = base::parse_number(text).value_or(Fix::absent);
    if (std::isnan(value) || std::abs(value) > largest_magnitude) return;
    if (element == "ele")
        fix.altitude_m = value;
    else if (element == "speed")
        fix.speed_mps = value;
    else if (element == "course")
        fix.course = value * base::pi / 180.0;
    else if (element == "sat")
        fix.satellites = value;
    else if (element == "hdop")
        fix.dilution = value;
    else if (std::ranges::find(document.path, "extensions") != document.path.end())
        document.beside.add(element, value, document.fixes.size());
}

void take_fact(Document& document, std::string_view element) {
    const bool told =
        element == "name" || element == "desc" || element == "cmt" || element == "type" || element == "keywords";
    const std::string_view text = trimmed(document.text);
    if (!told || text.empty() || document.facts.size() >= max_facts) return;
    document.facts.emplace_back(element, whole_characters_of(text, longest_fact_bytes));
}

void XMLCALL on_start(void* data, const XML_Char* name, const XML_Char** attributes) {
    Document& document = *static_cast<Document*>(data);
    document.path.emplace_back(local_name(name));
    document.text.clear();
    if (document.path.size() > deepest) {
        document.hostile = true;
        return document.stop();
    }
    if (document.path.back() == "trkseg") document.segment_starts = !document.fixes.empty();
    if (document.path.back() == "trkpt" && !document.in_point) open_point(document, attributes);
}

void XMLCALL on_end(void* data, const XML_Char*) {
    Document& document = *static_cast<Document*>(data);
    if (document.path.empty()) return;
    const std::string element = std::move(document.path.back());
    document.path.pop_back();
    if (element == "trkpt")
        close_point(document);
    else if (document.in_point)
        take_value(document, element);
    else
        take_fact(document, element);
    document.text.clear();
}

void XMLCALL on_text(void* data, const XML_Char* text, int length) {
    Document& document = *static_cast<Document*>(data);
    if (document.text.size() + static_cast<std::size_t>(length) <= longest_text)
        document.text.append(text, static_cast<std::size_t>(length));
}

void XMLCALL on_entity(void* data, const XML_Char*, int, const XML_Char*, int, const XML_Char*, const XML_Char*,
                       const XML_Char*, const XML_Char*) {
    Document& document = *static_cast<Document*>(data);
    document.hostile = true;
    document.stop();
}

struct ParserDelete {
    void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};

} // namespace

bool looks_like_gpx(std::string_view head) {
    head = trimmed(head.substr(0, 8192));
    if (!head.starts_with('<')) return false;
    for (std::size_t at = head.find('<'); at != std::string_view::npos; at = head.find('<', at + 1)) {
        const std::string_view tag = head.substr(at + 1, 64);
        if (tag.starts_with('?') || tag.starts_with('!')) continue;
        const std::size_t end = std::min(tag.find_first_of(" \t\r\n>/"), tag.size());
        return local_name(tag.substr(0, end)) == "gpx";
    }
    return false;
}

namespace {

// What was turned into UTF-8 still says in its first line that it is UTF-16.
bool declares_utf16(std::string_view text) {
    const std::string_view declaration = text.substr(0, std::min(text.find("?>"), std::size_t{256}));
    return declaration.starts_with("<?xml") && (declaration.find("UTF-16") != std::string_view::npos ||
                                                declaration.find("utf-16") != std::string_view::npos);
}

} // namespace

base::Result<Recording> read_gpx(std::string_view text, const std::string& name, const base::Progress& progress) {
    const std::unique_ptr<std::remove_pointer_t<XML_Parser>, ParserDelete> parser(
        XML_ParserCreate(declares_utf16(text) ? "UTF-8" : nullptr));
    if (!parser)
        return Error{ErrorCode::file_too_large, {name, {}, ""}, said("the memory does not suffice for this file"), ""};
    Document document;
    document.parser = parser.get();
    XML_SetUserData(parser.get(), &document);
    XML_SetElementHandler(parser.get(), on_start, on_end);
    XML_SetCharacterDataHandler(parser.get(), on_text);
    XML_SetEntityDeclHandler(parser.get(), on_entity);
    Recording recording;
    recording.source_file = name;
    for (std::size_t at = 0; at < text.size(); at += xml_piece_bytes) {
        const std::string_view piece = text.substr(at, xml_piece_bytes);
        if (!base::go_on(progress, said("reading track points"),
                         static_cast<double>(at) / static_cast<double>(text.size())))
            return base::cancelled();
        const bool last = at + piece.size() == text.size();
        if (XML_Parse(parser.get(), piece.data(), static_cast<int>(piece.size()), last ? XML_TRUE : XML_FALSE) ==
            XML_STATUS_OK)
            continue;
        if (document.hostile)
            return Error{ErrorCode::not_a_table,
                         {name, document.line(), ""},
                         said("the XML declares entities or nests too deeply"),
                         said("export the track as plain GPX 1.1")};
        if (document.too_many)
            return Error{ErrorCode::file_too_large,
                         {name, document.line(), ""},
                         said("the file holds more points than can be held"),
                         said("export one session alone")};
        // What was read before the damage is still good.
        recording.warnings.push_back({.kind = WarningKind::xml_broken,
                                      .seen = {1, {document.line()}},
                                      .texts = {XML_ErrorString(XML_GetErrorCode(parser.get()))}});
        break;
    }
    recording.facts = std::move(document.facts);
    if (document.without_position.count > 0)
        recording.warnings.push_back({.kind = WarningKind::positions_off_the_globe, .seen = document.without_position});
    double first_reading_s = 0.0;
    if (!add_fixes(recording, document.fixes, ClockKind::elapsed, first_reading_s,
                   std::move(document.beside).columns(document.fixes))) {
        if (document.fixes.empty() && !recording.warnings.empty() &&
            recording.warnings.front().kind == WarningKind::xml_broken)
            return Error{ErrorCode::not_a_table,
                         {name, recording.warnings.front().seen.first_lines.front(), ""},
                         recording::words(recording.warnings.front()),
                         said("export the track as plain GPX 1.1")};
        return Error{ErrorCode::time_not_usable,
                     {name, {}, ""},
                     said("fewer than two track points have a time and a position"),
                     said("export the track with times")};
    }
    recording.start_unix_s = first_reading_s;
    if (document.zone_missing) recording.warnings.push_back({.kind = WarningKind::zone_unknown});
    return recording;
}

} // namespace lapwright::import
