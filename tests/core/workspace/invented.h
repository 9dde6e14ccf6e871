// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions made by hand: an out lap, five flying laps of which the fourth was held up, an in lap.
#pragma once

#include "core/book/sha256.h"
#include "core/workspace/compared.h"
#include "core/workspace/session_key.h"

#include <memory>
#include <string>

namespace lapwright::workspace {

inline constexpr int fastest_lap = 3;

// As if its file had these bytes.
inline SessionKey key_of_bytes(const std::string& bytes) {
    return {book::sha256_of(bytes)};
}

inline SessionPointer invented(const std::string& file_name, const std::string& bytes, const std::string& driver = "",
                               const std::string& car = "") {
    auto recording = std::make_shared<recording::Recording>();
    recording->source_file = file_name;
    recording->driver = driver;
    recording->car = car;
    recording->duration_s = 700.0;
    const auto stamps = std::make_shared<const std::vector<double>>(std::vector<double>{0.0, 700.0});
    recording->channels.push_back(
        {"Speed", recording::Meaning::speed, base::Unit::metre_per_second, "m/s", stamps, {30.0, 31.0}, nullptr});
    auto session = std::make_shared<analysis::Session>();
    session->recording = recording;
    session->source = {file_name, bytes.size(), key_of_bytes(bytes).checksum};
    double start_s = 10.0;
    const auto add = [&](int number, lap::LapKind kind, double time_s, bool clean) {
        session->laps.push_back({number, kind, start_s, start_s + time_s, 0.003, clean, clean ? "" : "not clean"});
        start_s += time_s;
    };
    add(0, lap::LapKind::out, 120.0, false);
    for (int number = 1; number <= 5; ++number)
        add(number, lap::LapKind::flying, number == 4 ? 80.0 : 90.0 + 0.1 * ((number + 2) % 5), number != 4);
    add(6, lap::LapKind::in, 110.0, false);
    return session;
}

// Two laps as if they were compared.
inline ComparedPointer invented_comparison(int lap_a, int lap_b) {
    auto pairing = std::make_shared<analysis::Pairing>();
    pairing->a.lap.number = lap_a;
    pairing->b.lap.number = lap_b;
    auto compared = std::make_shared<Compared>();
    compared->pairing = pairing;
    return compared;
}

} // namespace lapwright::workspace
