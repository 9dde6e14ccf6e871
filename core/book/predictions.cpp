// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/predictions.h"

#include "core/base/translation.h"
#include "core/book/said.h"
#include "core/book/session_rows.h"
#include "core/book/sha256.h"
#include "core/car/write_setup_sheet.h"

#include <cmath>
#include <sstream>

namespace lapwright::book {
namespace {

using base::Result;
using base::said;

std::string subject(const std::string& uid) {
    return "prediction " + uid;
}

std::string new_uid(Database& database) {
    Rows rows(database, "SELECT lower(hex(randomblob(16)))", {});
    return rows.next() ? rows.text(0) : "";
}

void refuse(Database& database, const std::string& what, const std::string& remedy) {
    database.fail({base::ErrorCode::cannot_be_computed, {}, what, remedy});
}

// Of two moments of one prediction the later counts, wherever the clock stands.
void touch(Database& database, const std::string& uid) {
    constexpr double tick_s = 1e-3;
    database.run("UPDATE prediction SET changed_unix_s = max(?, changed_unix_s + ?) WHERE uid = ?",
                 {now_unix_s(), tick_s, uid});
}

void require(Database& database, const std::string& uid) {
    if (!database.one_whole("SELECT 1 FROM prediction WHERE uid = ?", {uid}))
        refuse(database, said("the prediction is not in the book (any more)"), said("look at the book's list again"));
}

bool kept_already(Database& database, const Prediction& p) {
    return database
        .one_whole("SELECT 1 FROM prediction WHERE session_id = ? AND there_id = ? AND grip_share = ? AND "
                   "downforce_share = ? AND drag_share = ? AND downforce_area_m2 = ? AND drag_area_m2 = ? AND "
                   "on_a_tonne = ? AND power_w = ? AND mass_kg = ?",
                   {static_cast<std::int64_t>(p.session), static_cast<std::int64_t>(p.there), p.asked.grip_share,
                    p.asked.downforce_share, p.asked.drag_share, p.asked.downforce_area_m2, p.asked.drag_area_m2,
                    static_cast<int>(p.asked.on_a_tonne), p.asked.power_w, p.asked.mass_kg})
        .has_value();
}

bool usable(const base::Estimate& change) {
    return change.told() && std::isfinite(change.value) && std::isfinite(change.low) && std::isfinite(change.high);
}

// Sessions of any book, by their sources.
std::vector<Checksum> checksums_of(Database& database, const std::string& words) {
    std::vector<Checksum> all;
    std::istringstream stream(words);
    for (std::string hex; stream >> hex;) {
        Rows rows(database, "SELECT checksum FROM session WHERE lower(hex(checksum)) = ?", {hex});
        if (!rows.next()) continue;
        const std::string_view bytes = rows.blob(0);
        Checksum checksum{};
        std::copy_n(bytes.begin(), std::min(bytes.size(), checksum.size()), checksum.begin());
        all.push_back(checksum);
    }
    return all;
}

std::string words_of(const std::vector<Checksum>& checksums) {
    std::string words;
    for (const Checksum& one : checksums)
        words += (words.empty() ? "" : " ") + hex_text(one);
    return words;
}

SessionSummary summary(Database& database, SessionId id) {
    Rows rows(database, "SELECT " + std::string(summary_columns) + " FROM summary WHERE id = ?",
              {static_cast<std::int64_t>(id)});
    return rows.next() ? summary_of(rows) : SessionSummary{};
}

std::vector<KeptPrediction> kept_where(Database& database, const std::string& condition,
                                       std::initializer_list<Given> given) {
    std::vector<KeptPrediction> all;
    Rows rows(database,
              "SELECT prediction.id, uid, session_id, there_id, source, grip_share, downforce_share, drag_share, "
              "downforce_area_m2, drag_area_m2, on_a_tonne, power_w, mass_kg, expected, lap_s, change_s, change_low_s, "
              "change_high_s, program, kept_unix_s, driven, observed_s, observed_low_s, observed_high_s "
              "FROM prediction JOIN session AS whose ON whose.id = session_id JOIN session AS there ON there.id = "
              "there_id WHERE whose.removed_unix_s IS NULL AND there.removed_unix_s IS NULL AND " +
                  condition + " ORDER BY kept_unix_s, uid",
              given);
    while (rows.next()) {
        KeptPrediction kept{PredictionId{rows.whole(0)}, {}, {}, {}};
        Prediction& p = kept.prediction;
        p.uid = rows.text(1);
        p.session = SessionId{rows.whole(2)};
        p.there = SessionId{rows.whole(3)};
        p.source = rows.text(4) == key(PredictedBy::wing) ? PredictedBy::wing : PredictedBy::what_if;
        p.asked = {rows.real(5), rows.real(6),        rows.real(7),  rows.real(8),
                   rows.real(9), rows.whole(10) != 0, rows.real(11), rows.real(12)};
        // One that a damaged book spoilt says nothing: the prediction is then held against what a person says.
        if (auto sheet = car::parse_setup_sheet(rows.text(13), database.path())) p.expected = std::move(sheet).value();
        p.lap_s = rows.maybe_real(14);
        p.change = {rows.real(15), rows.real(16), rows.real(17), {}};
        p.program = rows.text(18);
        p.kept_unix_s = rows.real(19);
        p.driven = checksums_of(database, rows.text(20));
        if (!rows.absent(21)) p.observed = base::Estimate{rows.real(21), rows.real(22), rows.real(23), {}};
        kept.whose = summary(database, p.session);
        kept.there = summary(database, p.there);
        all.push_back(std::move(kept));
    }
    return all;
}

} // namespace

std::string key(PredictedBy source) {
    return source == PredictedBy::wing ? "wing" : "what_if";
}

Result<std::string> keep_prediction(Book& book, const Prediction& p) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, p.session);
        require_session(database, p.there);
        const std::string uid = p.uid.empty() ? new_uid(database) : p.uid;
        if (!usable(p.change))
            refuse(database, said("what the change does to the lap was not told"), said("ask for another change"));
        else if (database.well() && kept_already(database, p))
            refuse(database, said("this prediction is kept already, and what was said first counts"),
                   said("look at the book's predictions"));
        const double kept = p.kept_unix_s > 0.0 ? p.kept_unix_s : now_unix_s();
        database.run("INSERT INTO prediction (uid, session_id, there_id, source, program, kept_unix_s, grip_share, "
                     "downforce_share, drag_share, downforce_area_m2, drag_area_m2, on_a_tonne, power_w, mass_kg, "
                     "expected, lap_s, change_s, change_low_s, change_high_s, driven, changed_unix_s) VALUES "
                     "(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                     {uid,
                      static_cast<std::int64_t>(p.session),
                      static_cast<std::int64_t>(p.there),
                      key(p.source),
                      p.program,
                      kept,
                      p.asked.grip_share,
                      p.asked.downforce_share,
                      p.asked.drag_share,
                      p.asked.downforce_area_m2,
                      p.asked.drag_area_m2,
                      static_cast<int>(p.asked.on_a_tonne),
                      p.asked.power_w,
                      p.asked.mass_kg,
                      car::setup_sheet_text(p.expected),
                      p.lap_s,
                      p.change.value,
                      p.change.low,
                      p.change.high,
                      words_of(p.driven),
                      after_gone(database, subject(uid), now_unix_s())});
        return uid;
    });
}

Result<void> take_back_prediction(Book& book, const std::string& uid) {
    return edit(book.database(), [&](Database& database) {
        double changed = 0.0;
        {
            Rows rows(database, "SELECT changed_unix_s FROM prediction WHERE uid = ?", {uid});
            if (!rows.next()) return;
            changed = rows.real(0);
        }
        put_gone(database, subject(uid), changed);
        database.run("DELETE FROM prediction WHERE uid = ?", {uid});
    });
}

Result<std::vector<KeptPrediction>> predictions(Book& book) {
    return look(book.database(), [](Database& database) { return kept_where(database, "true", {}); });
}

Result<KeptPrediction> prediction(Book& book, PredictionId id) {
    return look(book.database(), [&](Database& database) {
        auto found = kept_where(database, "prediction.id = ?", {static_cast<std::int64_t>(id)});
        if (!found.empty()) return std::move(found.front());
        refuse(database, said("the prediction is not in the book (any more)"), said("look at the book's list again"));
        return KeptPrediction{};
    });
}

Result<void> say_driven(Book& book, const std::string& uid, const std::vector<Checksum>& driven) {
    return edit(book.database(), [&](Database& database) {
        require(database, uid);
        database.run("UPDATE prediction SET driven = ?, observed_s = NULL, observed_low_s = NULL, observed_high_s = "
                     "NULL WHERE uid = ?",
                     {words_of(driven), uid});
        touch(database, uid);
    });
}

Result<void> put_observed(Book& book, const std::string& uid, const std::optional<base::Estimate>& observed) {
    return edit(book.database(), [&](Database& database) {
        require(database, uid);
        const auto part = [&](double base::Estimate::* of) {
            return observed ? std::optional(*observed.*of) : std::nullopt;
        };
        database.run("UPDATE prediction SET observed_s = ?, observed_low_s = ?, observed_high_s = ? WHERE uid = ?",
                     {part(&base::Estimate::value), part(&base::Estimate::low), part(&base::Estimate::high), uid});
        touch(database, uid);
    });
}

} // namespace lapwright::book
