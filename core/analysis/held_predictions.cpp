// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/held_predictions.h"

#include "core/analysis/kept_recording.h"
#include "core/analysis/trial_run.h"
#include "core/base/translation.h"
#include "core/book/search.h"
#include "core/book/sessions.h"
#include "core/book/tracks.h"
#include "core/car/setup_change.h"
#include "core/car/setup_reached.h"

#include <algorithm>
#include <cmath>

namespace lapwright::analysis {
namespace {

using base::Result;
using base::said;
using comparison::Verdict;

constexpr double day_s = 12.0 * 3600.0; // one day of driving lies within it, either way

struct Candidate {
    book::SessionSummary session;
    car::SetupSheet setup;
    bool changed = false;
    bool baseline = false;
};

// What was observed, or why nothing was.
struct Observed {
    std::optional<base::Estimate> change = {};
    std::string why_not = {};
};

bool named(const book::Prediction& p, const book::SessionSummary& session) {
    return std::ranges::find(p.driven, session.source.checksum) != p.driven.end();
}

// Of its driver and car there.
Result<std::vector<book::SessionSummary>> driven_there(book::Book& book, const book::KeptPrediction& kept) {
    book::Filter filter;
    filter.driver = kept.whose.driver;
    filter.car = kept.whose.car;
    filter.track = kept.there.track;
    return book::search(book, filter);
}

// The same, with what they are to the prediction.
Result<std::vector<Candidate>> candidates(book::Book& book, const book::KeptPrediction& kept) {
    const book::Prediction& p = kept.prediction;
    const auto before = book::read_details(book, p.session);
    if (!before) return before.error();
    auto found = driven_there(book, kept);
    if (!found) return found.error();
    std::vector<Candidate> all;
    for (const book::SessionSummary& session : *found) {
        if (!session.start_unix_s) continue;
        auto details = book::read_details(book, session.id);
        if (!details) return details.error();
        Candidate one{session, details->setup};
        const bool since = *one.session.start_unix_s >= p.kept_unix_s;
        const bool by_hand = !p.driven.empty();
        one.changed = since && (by_hand ? named(p, one.session) : car::reached(one.setup, before->setup, p.expected));
        // Whoever names the sessions with the change says by it that the others were driven without.
        const bool unknown = by_hand && (car::says_nothing(one.setup) || car::says_nothing(before->setup));
        one.baseline = !one.changed && !named(p, one.session) && (unknown || car::as_before(one.setup, before->setup));
        all.push_back(std::move(one));
    }
    std::ranges::sort(all, {}, [](const Candidate& one) { return *one.session.start_unix_s; });
    return all;
}

std::string why_none(const book::KeptPrediction& kept) {
    const book::Prediction& p = kept.prediction;
    if (!p.driven.empty())
        return said("the sessions named were not driven by this driver with this car on this track after the "
                    "prediction was kept, or have no date");
    if (car::expects_nothing(p.expected)) return said("say which session was driven with it");
    return said("no session since has this setup on this track");
}

// The sessions of one day, as a trial.
Result<Observed> trial_of(book::Book& book, const std::vector<Candidate>& day, const std::string& track,
                          const base::Progress& progress) {
    auto record = book::read_track(book, track);
    if (!record) return record.error();
    SessionOptions options;
    options.track = *record;
    std::vector<TrialSession> sessions;
    for (const Candidate& one : day) {
        auto session = kept_session(book, one.session.id, options, progress);
        if (!session && session.error().code == base::ErrorCode::cancelled) return session.error();
        if (!session) return Observed{{}, session.error().what};
        if ((*session)->why_no_laps) return Observed{{}, (*session)->why_no_laps->what};
        sessions.push_back({std::move(session).value(), one.changed, one.setup});
    }
    const auto report = run_trial(sessions, *record, progress);
    if (!report && report.error().code == base::ErrorCode::cancelled) return report.error();
    if (!report)
        return Observed{{}, report.error().what + (report.error().remedy.empty() ? "" : ": " + report.error().remedy)};
    const comparison::TrialEffect& gain = report->trial.lap;
    return Observed{base::Estimate{-gain.gain_s, -gain.high_s, -gain.low_s, {}}, {}};
}

Result<Observed> observe(book::Book& book, const book::KeptPrediction& kept, const base::Progress& progress) {
    if (kept.whose.car.empty() || kept.there.track.empty())
        return Observed{{}, said("the book does not know its car and its track: give them names")};
    auto found = candidates(book, kept);
    if (!found) return found.error();
    Observed best{{}, why_none(kept)};
    std::optional<double> judged_unix_s;
    for (const Candidate& changed : *found) {
        const double start = *changed.session.start_unix_s;
        if (!changed.changed || (judged_unix_s && start - *judged_unix_s <= day_s)) continue;
        judged_unix_s = start;
        std::vector<Candidate> day;
        for (const Candidate& one : *found)
            if ((one.changed || one.baseline) && std::abs(*one.session.start_unix_s - start) <= day_s)
                day.push_back(one);
        auto observed = trial_of(book, day, kept.there.track, progress);
        if (!observed) return observed;
        if (!observed->change) {
            if (!best.change) best = std::move(observed).value();
        } else if (!best.change || observed->change->half_width() < best.change->half_width()) {
            best = std::move(observed).value();
        }
    }
    return best;
}

HeldPrediction held_as_kept(book::KeptPrediction kept) {
    HeldPrediction held{std::move(kept)};
    const book::Prediction& p = held.kept.prediction;
    if (p.observed) held.against = comparison::held_against(p.change, *p.observed);
    return held;
}

bool judged(const HeldPrediction& held) {
    return held.against && held.against->verdict != Verdict::too_wide;
}

void count(HeldPredictions& predictions) {
    std::vector<Verdict> verdicts;
    for (const HeldPrediction& one : predictions.all)
        if (one.against) verdicts.push_back(one.against->verdict);
    predictions.score = comparison::score_of(verdicts);
}

} // namespace

HeldPredictions held_as_kept(std::vector<book::KeptPrediction> predictions) {
    HeldPredictions held;
    for (book::KeptPrediction& one : predictions)
        held.all.push_back(held_as_kept(std::move(one)));
    count(held);
    return held;
}

Result<HeldPredictions> hold_predictions(book::Book& book, const base::Progress& progress) {
    auto found = book::predictions(book);
    if (!found) return found.error();
    HeldPredictions predictions = held_as_kept(std::move(found).value());
    const auto steps = static_cast<double>(predictions.all.size());
    double done = 0.0;
    for (HeldPrediction& one : predictions.all) {
        const base::Progress within = [&](std::string_view, double part) {
            return base::go_on(progress, said("holding predictions against what was driven"), (done + part) / steps);
        };
        if (!within("", 0.0)) return base::cancelled();
        if (!judged(one)) {
            // The session, then the trial: each tells its own parts, of which the sum may not go back.
            const base::Progress quiet = [&](std::string_view, double) { return within("", 0.0); };
            auto observed = observe(book, one.kept, quiet);
            if (!observed) return observed.error();
            one.waits_for = observed->why_not;
            if (observed->change) {
                const std::optional<base::Estimate>& known = one.kept.prediction.observed;
                const bool news = !known || known->value != observed->change->value;
                one.kept.prediction.observed = observed->change;
                if (news && !book.read_only())
                    if (auto put = book::put_observed(book, one.kept.prediction.uid, observed->change); !put)
                        return put.error();
                one = held_as_kept(std::move(one.kept));
            }
        }
        const auto there = driven_there(book, one.kept);
        if (!there) return there.error();
        for (const book::SessionSummary& session : *there)
            if (session.start_unix_s && *session.start_unix_s >= one.kept.prediction.kept_unix_s)
                one.since.push_back(session);
        done += 1.0;
    }
    count(predictions);
    return predictions;
}

} // namespace lapwright::analysis
