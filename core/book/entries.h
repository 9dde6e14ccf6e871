// SPDX-License-Identifier: GPL-3.0-or-later
// What the book keeps, as plain values.  Names (driver, car, track) are the keys by which
// people and other books know things: compared without regard to ASCII case and to blanks
// around them; empty where unknown.  Ids belong to one book file and mean nothing in another;
// a uid is made once and is the same in every book.  Moments are UTC seconds since 1970.
#pragma once

#include "core/car/setup_sheet.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

enum class SessionId : std::int64_t {};
enum class PairingId : std::int64_t {};

// SHA-256 of a file's bytes (FIPS 180-4).
using Checksum = std::array<std::uint8_t, 32>;

// The file that a session came from.  Two sources with one checksum are one session.
struct Source {
    std::string file_name; // without its folder
    std::uint64_t size_bytes = 0;
    Checksum checksum{};

    bool operator==(const Source&) const = default;
};

// What people say of a session; may be changed at any time.
struct SessionDetails {
    std::string driver = {};
    std::string car = {};
    std::string track = {};
    std::optional<double> start_unix_s = {};
    std::string conditions = {}; // in words: "dry, light wind from the west"
    // Tyre and weather figures are in it.  Where it names driver and car, it reads back with those of the session.
    car::SetupSheet setup = {};
};

// One row of a list of sessions.
struct SessionSummary {
    SessionId id{};
    Source source;
    std::string driver;
    std::string car;
    std::string track;
    std::string tyre;
    std::string conditions;
    std::optional<double> start_unix_s;
    double duration_s = 0.0;
    int laps = 0; // of all kinds
    int clean_laps = 0;
    std::optional<double> best_clean_s; // absent where no lap is clean
    int notes = 0;
};

// What a note is about: a pairing or a session, within it a lap (number as the session's laps have it) or a segment of
// the track (by its name; at_m finds it again when it has got another).
struct NoteAbout {
    std::optional<SessionId> session = {};
    std::optional<PairingId> pairing = {};
    std::optional<int> lap = {};
    std::string segment = {};
    std::optional<double> at_m = {}; // middle of the segment, along the reference line

    bool operator==(const NoteAbout&) const = default;
};

struct Note {
    std::string uid; // empty: not yet in any book
    NoteAbout about;
    std::string text;
    double changed_unix_s = 0.0;
};

// Two laps that were compared and are to be found again.  One pairing for the same four.
struct Pairing {
    SessionId session_a{};
    int lap_a = 0;
    SessionId session_b{};
    int lap_b = 0;
    std::string title;
    std::string sentence; // the headline, as it was when it was kept
    double changed_unix_s = 0.0;
};

struct KeptPairing {
    PairingId id{};
    Pairing pairing;
};

// A figure that was fitted to a session's laps: "grip", "downforce_area_m2"; low..high is its 95 % interval.
struct KeptFigure {
    std::string name;
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    std::string decided_by; // "data", "prior", "setup"

    bool operator==(const KeptFigure&) const = default;
};

} // namespace lapwright::book
