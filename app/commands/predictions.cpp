// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/predictions.h"

#include "app/commands/book_text.h"
#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/analysis/expected_setup.h"
#include "core/analysis/prediction_words.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/book/search.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "core/car/write_setup_sheet.h"
#include "core/findings/cause_display.h"
#include "core/workspace/own_files.h"

#include <ostream>
#include <vector>

namespace lapwright::commands {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using nlohmann::ordered_json;

int say_refused(const Error& error, std::ostream& err) {
    err << base::one_line(error) << "\n";
    return 1;
}

std::string id_text(book::PredictionId id) {
    return base::integer_text(static_cast<std::int64_t>(id));
}

Result<book::SessionId> session_in(book::Book& book, const std::string& file) {
    const auto source = book::source_of_file(file);
    if (!source) return source.error();
    const auto id = book::find_session(book, source->checksum);
    if (!id) return id.error();
    if (!*id)
        return Error{ErrorCode::book_not_usable,
                     {file, {}, {}},
                     "the session is not in the book, which keeps predictions of its sessions",
                     "put it in first, with lapwright book add"};
    return **id;
}

Result<book::Book> open_book(const std::string& named) {
    const auto file = workspace::book_file(named);
    if (!file) return file.error();
    book::OpenOptions options;
    options.may_begin = false;
    return book::Book::open(*file, options);
}

ordered_json asked_json(const book::AskedChange& asked) {
    return {{"grip_share", asked.grip_share},     {"downforce_share", asked.downforce_share},
            {"drag_share", asked.drag_share},     {"downforce_area_m2", asked.downforce_area_m2},
            {"drag_area_m2", asked.drag_area_m2}, {"on_a_tonne", asked.on_a_tonne},
            {"power_w", asked.power_w},           {"mass_kg", asked.mass_kg}};
}

ordered_json prediction_json(const analysis::HeldPrediction& held) {
    const book::Prediction& p = held.kept.prediction;
    const auto number = [](book::SessionId id) { return static_cast<std::int64_t>(id); };
    ordered_json driven = ordered_json::array();
    for (const book::Checksum& one : p.driven)
        driven.push_back(book::hex_text(one));
    ordered_json row{{"id", static_cast<std::int64_t>(held.kept.id)},
                     {"source", key(p.source)},
                     {"kept_utc", moment_json(p.kept_unix_s)},
                     {"program_version", p.program},
                     {"session", number(p.session)},
                     {"driver", text_or_null(held.kept.whose.driver)},
                     {"car", text_or_null(held.kept.whose.car)},
                     {"track", text_or_null(held.kept.there.track)},
                     {"asked", asked_json(p.asked)},
                     {"expected_setup", ordered_json::parse(car::setup_sheet_text(p.expected), nullptr, false)},
                     {"driven_sha256", driven},
                     {"lap_before_s", maybe_json(p.lap_s)},
                     {"change_s", estimate_json(p.change)},
                     {"observed_change_s", p.observed ? estimate_json(*p.observed) : ordered_json()},
                     {"difference_s", nullptr},
                     {"difference_half_width_s", nullptr},
                     {"z", nullptr},
                     {"verdict", nullptr},
                     {"waits_for", text_or_null(held.waits_for)}};
    if (held.against) {
        row["difference_s"] = number_json(held.against->difference_s);
        row["difference_half_width_s"] = number_json(held.against->half_width_s);
        row["z"] = number_json(held.against->z);
        row["verdict"] = key(held.against->verdict);
    }
    return row;
}

std::string predictions_json(const analysis::HeldPredictions& predictions) {
    ordered_json rows = ordered_json::array();
    for (const analysis::HeldPrediction& one : predictions.all)
        rows.push_back(prediction_json(one));
    const comparison::Score& score = predictions.score;
    return document_text({{"predictions", rows},
                          {"score",
                           {{"held", score.held},
                            {"judged", score.judged},
                            {"too_wide", score.too_wide},
                            {"share", number_json(score.share.value)},
                            {"share_low", number_json(score.share.low)},
                            {"share_high", number_json(score.share.high)},
                            {"sentence", analysis::score_sentence(score)}}}});
}

std::string predictions_table(const analysis::HeldPredictions& predictions) {
    if (predictions.all.empty()) return "no prediction\n";
    constexpr auto units = base::UnitSystem::metric;
    std::vector<std::vector<std::string>> rows{
        {"id", "kept", "driver", "car", "track", "change", "setup", "predicted", "what happened"}};
    for (const analysis::HeldPrediction& one : predictions.all) {
        const book::Prediction& p = one.kept.prediction;
        rows.push_back({id_text(one.kept.id), base::date_text(p.kept_unix_s), known(one.kept.whose.driver),
                        known(one.kept.whose.car), known(one.kept.there.track), analysis::asked_text(p.asked, units),
                        known(analysis::expected_text(p.expected, units)), findings::lap_change_text(p.change),
                        analysis::outcome_text(one)});
    }
    return aligned(rows, rows.front().size()) + "\n" + analysis::score_sentence(predictions.score) + "\n";
}

Result<book::KeptPrediction> named_prediction(const BookArguments& arguments, book::Book& book) {
    return book::prediction(book, book::PredictionId{arguments.prediction});
}

} // namespace

Result<std::string> keep_wing(const Arguments& arguments, const PairingWithSetups& compared,
                              const SessionPointer& there, const WingReport& report) {
    const bool of_a = *arguments.keep == causes::Side::a;
    const analysis::Side& side = of_a ? compared.pairing->a : compared.pairing->b;
    const causes::AeroBalance& balance = of_a ? report.wing.a : report.wing.b;
    const std::string& file = arguments.files.size() < 2 || of_a ? arguments.files.front() : arguments.files.back();
    if (!balance.untold.empty())
        return Error{ErrorCode::cannot_be_computed, {file, {}, {}}, balance.untold, "there is nothing to keep"};
    const car::SetupSheet& before = of_a ? compared.setup_a : compared.setup_b;
    auto p = analysis::predicted(balance, report.cost, arguments.keep_downforce_m2, report.on_a_tonne, before);
    if (!p)
        return Error{ErrorCode::cannot_be_computed,
                     {file, {}, {}},
                     arguments.keep_downforce_m2 ? "the table has no such step of downforce"
                                                 : "the car is quickest as it is now: nothing is predicted to change",
                     "name a step of the table with --keep-downforce"};
    if (const auto may = analysis::expect_items(*p, arguments.keep_with, before); !may) return may.error();
    auto opened = open_book(arguments.book.book_file);
    if (!opened) return opened.error();
    book::Book book = std::move(opened).value();
    const auto session = session_in(book, file);
    if (!session) return session.error();
    const auto at = there ? session_in(book, arguments.other_track) : session;
    if (!at) return at.error();
    p->session = *session;
    p->there = *at;
    if (!there) p->lap_s = side.lap.time_s();
    p->program = LAPWRIGHT_VERSION;
    const auto kept = book::keep_prediction(book, *p);
    if (!kept) return kept.error();
    return "kept in the book for " + std::string(of_a ? "A" : "B") + ": " +
           analysis::asked_text(p->asked, base::UnitSystem::metric) + ", " + findings::lap_change_text(p->change) +
           " a lap\n";
}

int run_predictions(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto predictions = analysis::hold_predictions(book);
    if (!predictions) return say_refused(predictions.error(), err);
    out << (arguments.json ? predictions_json(*predictions) : predictions_table(*predictions));
    return 0;
}

int run_driven(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto kept = named_prediction(arguments, book);
    if (!kept) return say_refused(kept.error(), err);
    std::vector<book::Checksum> driven;
    for (const std::int64_t id : arguments.sessions) {
        const auto session = book::read_summary(book, book::SessionId{id});
        if (!session) return say_refused(session.error(), err);
        if (session->start_unix_s && *session->start_unix_s < kept->prediction.kept_unix_s)
            return say_refused({ErrorCode::cannot_be_computed,
                                {},
                                "session " + base::integer_text(id) +
                                    " was driven before the prediction was kept and cannot hold it to account",
                                "name a later one, or correct its date with lapwright book date"},
                               err);
        driven.push_back(session->source.checksum);
    }
    const auto put = book::say_driven(book, kept->prediction.uid, driven);
    if (!put) return say_refused(put.error(), err);
    out << "prediction " << id_text(kept->id)
        << (driven.empty() ? " goes by the setup sheets again\n" : " goes by the sessions that were named\n");
    return 0;
}

int run_take_back(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto kept = named_prediction(arguments, book);
    if (!kept) return say_refused(kept.error(), err);
    const auto done = book::take_back_prediction(book, kept->prediction.uid);
    if (!done) return say_refused(done.error(), err);
    out << "prediction " << id_text(kept->id) << " is taken back\n";
    return 0;
}

} // namespace lapwright::commands
