// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/pictures.h"

#include "core/book/database.h"
#include "core/book/session_rows.h"

#include <bit>
#include <cmath>
#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::book {
namespace {

using base::Result;

constexpr std::size_t float_bytes = 4;
constexpr std::size_t most_floats = 4096; // a book may hold anything

std::string bytes_of(const std::vector<float>& values) {
    std::string bytes;
    bytes.reserve(values.size() * float_bytes);
    for (const float value : values)
        for (std::size_t i = 0; i < float_bytes; ++i)
            bytes += static_cast<char>((std::bit_cast<std::uint32_t>(value) >> (8 * i)) & 0xFFU);
    return bytes;
}

// Empty where they are no such values.
std::vector<float> floats_of(std::string_view bytes) {
    if (bytes.size() % float_bytes != 0 || bytes.size() > most_floats * float_bytes) return {};
    std::vector<float> values;
    for (std::size_t at = 0; at < bytes.size(); at += float_bytes) {
        std::uint32_t bits = 0;
        for (std::size_t i = 0; i < float_bytes; ++i)
            bits |= static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[at + i])) << (8 * i);
        values.push_back(std::bit_cast<float>(bits));
        if (!std::isfinite(values.back())) return {};
    }
    return values;
}

} // namespace

Result<void> put_gap_curve(Book& book, const ComparedLaps& laps, const GapCurve& gaps_s) {
    return edit(book.database(), [&](Database& database) {
        const std::string bytes = bytes_of(gaps_s);
        database.run(
            "INSERT OR REPLACE INTO gap_curve SELECT a.id, ?, b.id, ?, ? FROM session AS a JOIN session AS b "
            "WHERE a.checksum = ? AND b.checksum = ?",
            {laps.lap_a, laps.lap_b, Blob{bytes}, Blob{as_bytes(laps.source_a)}, Blob{as_bytes(laps.source_b)}});
    });
}

Result<void> put_outline(Book& book, SessionId id, const Outline& places_m) {
    std::vector<float> values;
    for (const auto& [east_m, north_m] : places_m)
        values.insert(values.end(), {east_m, north_m});
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        const std::string bytes = bytes_of(values);
        database.run("INSERT OR REPLACE INTO outline VALUES (?, ?)", {static_cast<std::int64_t>(id), Blob{bytes}});
    });
}

Result<bool> has_outline(Book& book, SessionId id) {
    return look(book.database(), [&](Database& database) {
        return database.one_whole("SELECT 1 FROM outline WHERE session_id = ?", {static_cast<std::int64_t>(id)})
            .has_value();
    });
}

Result<Pictures> pictures(Book& book, const std::vector<PairingId>& pairings, const std::vector<SessionId>& sessions) {
    return look(book.database(), [&](Database& database) {
        Pictures found;
        for (const PairingId id : pairings) {
            Rows rows(database,
                      "SELECT gaps_s FROM gap_curve JOIN pairing USING (session_a, lap_a, session_b, lap_b) "
                      "WHERE pairing.id = ?",
                      {static_cast<std::int64_t>(id)});
            if (!rows.next()) continue;
            if (GapCurve gaps_s = floats_of(rows.blob(0)); gaps_s.size() > 1) found.gaps[id] = std::move(gaps_s);
        }
        for (const SessionId id : sessions) {
            Rows rows(database, "SELECT places_m FROM outline WHERE session_id = ?", {static_cast<std::int64_t>(id)});
            if (!rows.next()) continue;
            const std::vector<float> values = floats_of(rows.blob(0));
            Outline places_m;
            for (std::size_t i = 0; i + 1 < values.size(); i += 2)
                places_m.emplace_back(values[i], values[i + 1]);
            if (places_m.size() > 2) found.outlines[id] = std::move(places_m);
        }
        return found;
    });
}

} // namespace lapwright::book
