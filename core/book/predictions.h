// SPDX-License-Identifier: GPL-3.0-or-later
// Predictions that a person kept: the change of the lap time that a change of the car was said to make.  What was
// predicted never changes afterwards, and the same cannot be kept twice, so that the score (core/comparison/
// prediction_score.h) counts what was said before the drive.  What was observed since is kept with it.
#pragma once

#include "core/base/estimate.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/car/setup_sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

enum class PredictionId : std::int64_t {};

// What is changed about the car, and nothing where it is 0; shares: +0.1 is a tenth more.
struct AskedChange {
    double grip_share = 0.0;
    double downforce_share = 0.0;
    double drag_share = 0.0;
    double downforce_area_m2 = 0.0;
    double drag_area_m2 = 0.0;
    bool on_a_tonne = false; // the areas
    double power_w = 0.0;
    double mass_kg = 0.0;

    bool operator==(const AskedChange&) const = default;
};

enum class PredictedBy { what_if, wing };
[[nodiscard]] std::string key(PredictedBy source); // as in JSON: "what_if"

struct Prediction {
    std::string uid = {}; // empty: not yet in any book
    SessionId session{};  // whose car and driver
    SessionId there{};    // on whose track; the same session where it was driven
    PredictedBy source{};
    AskedChange asked = {};
    car::SetupSheet expected = {};     // what the setup sheet will say when it is driven; says nothing where unknown
    std::optional<double> lap_s = {};  // as driven before
    base::Estimate change = {};        // of the lap time, s, negative: quicker
    std::string program = {};          // its version
    double kept_unix_s = 0.0;          // 0: now
    std::vector<Checksum> driven = {}; // sessions that a person says were driven with it
    std::optional<base::Estimate> observed = {};
};

struct KeptPrediction {
    PredictionId id{};
    Prediction prediction;
    SessionSummary whose;
    SessionSummary there;
};

// Answers with its uid; with one that was taken back it is there again.  Error cannot_be_computed where the same change
// of the same session is kept already, or the change is not told.
[[nodiscard]] base::Result<std::string> keep_prediction(Book& book, const Prediction& prediction);
// One that is not there is taken back already.
[[nodiscard]] base::Result<void> take_back_prediction(Book& book, const std::string& uid);

// The oldest first; those of removed sessions are left out.
[[nodiscard]] base::Result<std::vector<KeptPrediction>> predictions(Book& book);
[[nodiscard]] base::Result<KeptPrediction> prediction(Book& book, PredictionId id);

// The sessions, by their sources, that a person says were driven with it: all of them, from now on.  What was observed
// is forgotten.
[[nodiscard]] base::Result<void> say_driven(Book& book, const std::string& uid, const std::vector<Checksum>& driven);
[[nodiscard]] base::Result<void> put_observed(Book& book, const std::string& uid,
                                              const std::optional<base::Estimate>& observed);

} // namespace lapwright::book
