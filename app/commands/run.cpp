// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/arguments.h"
#include "app/commands/book_commands.h"
#include "app/commands/causes_text.h"
#include "app/commands/commands.h"
#include "app/commands/json_text.h"
#include "app/commands/learning_text.h"
#include "app/commands/my_car.h"
#include "app/commands/output_file.h"
#include "app/commands/predictions.h"
#include "app/commands/recipes.h"
#include "app/commands/sessions.h"
#include "app/commands/sheet_stills.h"
#include "app/commands/table_text.h"
#include "app/commands/trial_text.h"
#include "app/commands/video_text.h"
#include "app/commands/wing_text.h"
#include "core/analysis/explain.h"
#include "core/analysis/findings_of.h"
#include "core/analysis/sheet_material.h"
#include "core/analysis/wing.h"
#include "core/base/plain_text.h"
#include "core/car/setup_beside.h"
#include "core/sheet/html_sheet.h"
#include "core/sheet/tables.h"
#include "core/workspace/turning.h"

#include <algorithm>
#include <array>
#include <exception>
#include <new>
#include <ostream>
#include <sstream>
#include <string_view>
#include <utility>

namespace lapwright::commands {
namespace {

using base::Result;

// Words that never open the window.
constexpr std::array<std::string_view, 15> of_the_command_line{"batch", "video", "book",      "traces",  "recipe",
                                                               "trial", "learn", "laps",      "compare", "causes",
                                                               "wing",  "sheet", "--version", "--help",  "-h"};

int refuse(const base::Error& error, std::ostream& err) {
    err << base::one_line(error) << "\n";
    return 1;
}

int run_laps(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto record = track_of(arguments);
    if (!record) return refuse(record.error(), err);
    std::string told;
    const auto recipes = recipes_for(arguments.recipe_files, arguments.files, told);
    if (!recipes) return refuse(recipes.error(), err);
    err << told;
    std::vector<SessionPointer> sessions;
    int status = 0;
    // A bad file keeps none of the others out.
    for (const std::string& file : arguments.files) {
        std::string notes;
        const auto setup = setup_of(file, {}, notes);
        if (!setup) return refuse(setup.error(), err);
        auto session = load(file, *setup, *recipes, *record);
        if (!session) {
            status = refuse(session.error(), err);
            continue;
        }
        sessions.push_back(std::move(session).value());
        err << notes;
    }
    for (const SessionPointer& session : sessions)
        if (session->why_no_laps) err << base::one_line(*session->why_no_laps) << "\n";
    if (sessions.empty()) return status;
    out << (arguments.json ? laps_json(sessions) : laps_table(sessions));
    return status;
}

int run_compare(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto compared = pairing_of(arguments);
    if (!compared) return refuse(compared.error(), err);
    const analysis::Pairing& pairing = *compared->pairing;
    std::string notes = compared->notes;
    const auto further = further_of(arguments, pairing, notes);
    if (!further) return refuse(further.error(), err);
    err << notes;
    if (arguments.csv)
        out << sheet::csv_text(sheet::segments_table(pairing.comparison.segments, arguments.units));
    else
        out << (arguments.json ? compare_json(pairing, *further) : compare_table(pairing, arguments.units, *further));
    return 0;
}

auto explanation_of(const PairingWithSetups& compared) {
    analysis::CausesOptions options;
    options.setup_a = compared.setup_a;
    options.setup_b = compared.setup_b;
    return analysis::explain(*compared.pairing, options);
}

int run_causes(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto compared = pairing_of(arguments);
    if (!compared) return refuse(compared.error(), err);
    const analysis::Pairing& pairing = *compared->pairing;
    const auto explanation = explanation_of(*compared);
    if (!explanation) return refuse(explanation.error(), err);
    if (arguments.csv) {
        err << compared->notes;
        out << sheet::csv_text(sheet::causes_table(**explanation));
        return 0;
    }
    std::string notes = compared->notes;
    const auto my_car = my_car_of(arguments, pairing, notes);
    if (!my_car) return refuse(my_car.error(), err);
    err << notes;
    const auto found = analysis::findings_of(pairing, explanation->get(), arguments.units, *my_car);
    out << (arguments.json ? causes_json(pairing, **explanation, found, *my_car)
                           : causes_table(pairing, **explanation, found, *my_car, arguments.units));
    return 0;
}

Result<SessionPointer> other_track_of(const Arguments& arguments, std::string& notes) {
    const auto recipes = recipes_for(arguments.recipe_files, {arguments.other_track}, notes);
    if (!recipes) return recipes.error();
    return load(arguments.other_track, {}, *recipes, {});
}

int run_wing(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto compared = pairing_of(arguments);
    if (!compared) return refuse(compared.error(), err);
    const auto explanation = explanation_of(*compared);
    if (!explanation) return refuse(explanation.error(), err);
    std::string notes = compared->notes;
    SessionPointer there;
    if (!arguments.other_track.empty()) {
        auto other = other_track_of(arguments, notes);
        if (!other) return refuse(other.error(), err);
        there = std::move(other).value();
    }
    causes::DragCost cost;
    if (arguments.drag_per_downforce) cost = causes::told_cost(*arguments.drag_per_downforce);
    const causes::Explanation& e = **explanation;
    const auto wing = analysis::wing_of(e, there, cost);
    if (!wing) return refuse(wing.error(), err);
    const WingReport report{*wing, cost, e.per_kilogram};
    if (arguments.keep) {
        const auto kept = keep_wing(arguments, *compared, there, report);
        if (!kept) return refuse(kept.error(), err);
        notes += *kept;
    }
    err << notes;
    out << (arguments.json ? wing_json(*compared->pairing, report) : wing_table(*compared->pairing, report));
    return 0;
}

// A lap beside itself: its line and gate are then those of a pairing, and its channels go with it.
int run_traces(Arguments arguments, std::ostream& out, std::ostream& err) {
    arguments.files.push_back(arguments.files.front());
    arguments.lap_b = arguments.lap_a;
    const auto compared = pairing_of(arguments);
    if (!compared) return refuse(compared.error(), err);
    err << compared->notes;
    const analysis::Side& side = compared->pairing->a;
    out << (arguments.json ? traces_json(side) : sheet::csv_text(sheet::trace_table(side.trace.best)));
    return 0;
}

// All that a sheet is made from.
std::vector<std::string> inputs_of(const Arguments& arguments) {
    std::vector<std::string> inputs = arguments.files;
    inputs.insert(inputs.end(), {arguments.track_file, arguments.setup_a, arguments.setup_b});
    for (const std::string& file : arguments.files)
        inputs.push_back(car::setup_path_beside(file));
    for (const auto& more : {arguments.recipe_files, arguments.video_a.files, arguments.video_b.files})
        inputs.insert(inputs.end(), more.begin(), more.end());
    return inputs;
}

int run_sheet(const Arguments& arguments, std::ostream& err, const SheetWriter& write_sheet) {
    const bool html = sheet::names_html(arguments.out_file);
    if (!html && !write_sheet) {
        err << "lapwright: this build paints no PDF: it was made without the window; name a file that ends with "
               ".html\n";
        return 1;
    }
    if (const auto may =
            check_output(arguments.out_file, inputs_of(arguments), html ? Renews::html_sheet : Renews::pdf_sheet);
        !may)
        return refuse(may.error(), err);
    const auto compared = pairing_of(arguments);
    if (!compared) return refuse(compared.error(), err);
    analysis::SheetExtras extras;
    extras.setup_a = compared->setup_a;
    extras.setup_b = compared->setup_b;
    std::string notes = compared->notes;
    const auto my_car = my_car_of(arguments, *compared->pairing, notes);
    if (!my_car) return refuse(my_car.error(), err);
    extras.my_car = *my_car;
    // Two laps make a sheet even where nothing can be learned of the cars; it then says less, and so does this.
    const auto explanation = explanation_of(*compared);
    if (explanation)
        extras.explanation = explanation->get();
    else
        notes += base::one_line(explanation.error()) + "; the sheet is without causes\n";
    auto stills = stills_of(arguments, *compared->pairing, notes);
    if (!stills) return refuse(stills.error(), err);
    extras.stills = std::move(stills).value();
    const sheet::Sheet sheet = analysis::debrief_sheet(*compared->pairing, arguments.units, LAPWRIGHT_VERSION, extras);
    const auto written =
        html ? sheet::write_html_sheet(sheet, arguments.out_file, {arguments.us_letter, arguments.all_segments})
             : write_sheet(sheet, {arguments.out_file, arguments.us_letter, arguments.all_segments});
    if (!written) return refuse(written.error(), err);
    err << notes << arguments.out_file << " is written\n";
    return 0;
}

int run_trial(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto record = track_of(arguments);
    if (!record) return refuse(record.error(), err);
    std::string notes;
    const auto recipes = recipes_for(arguments.recipe_files, arguments.files, notes);
    if (!recipes) return refuse(recipes.error(), err);
    std::vector<analysis::TrialSession> sessions;
    for (std::size_t i = 0; i < arguments.files.size(); ++i) {
        auto setup = setup_of(arguments.files[i], {}, notes);
        if (!setup) return refuse(setup.error(), err);
        auto session = load(arguments.files[i], *setup, *recipes, *record);
        if (!session) return refuse(session.error(), err);
        const bool changed = std::ranges::find(arguments.changed, i + 1) != arguments.changed.end();
        sessions.push_back({std::move(session).value(), changed, std::move(setup).value()});
    }
    const auto report = analysis::run_trial(sessions, *record);
    if (!report) return refuse(report.error(), err);
    err << notes;
    out << (arguments.json ? trial_json(*report) : trial_table(*report));
    return 0;
}

int run_learn(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto record = track_of(arguments);
    if (!record) return refuse(record.error(), err);
    std::string notes;
    const auto recipes = recipes_for(arguments.recipe_files, arguments.files, notes);
    if (!recipes) return refuse(recipes.error(), err);
    std::vector<SessionPointer> sessions;
    for (const std::string& file : arguments.files) {
        const auto setup = setup_of(file, {}, notes);
        if (!setup) return refuse(setup.error(), err);
        auto session = load(file, *setup, *recipes, *record);
        if (!session) return refuse(session.error(), err);
        sessions.push_back(std::move(session).value());
    }
    const auto report = analysis::learn(sessions, *record);
    if (!report) return refuse(report.error(), err);
    err << notes;
    out << (arguments.json ? learning_json(*report) : learning_table(*report));
    return 0;
}

int run_recipe(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto text = recipe_text_of(arguments.files.front());
    if (!text) return refuse(text.error(), err);
    out << *text;
    return 0;
}

int run_video(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    std::string notes;
    const std::string& file = arguments.files.front();
    const auto recipes = recipes_for(arguments.recipe_files, {file}, notes);
    if (!recipes) return refuse(recipes.error(), err);
    const auto session = load(file, {}, *recipes, {});
    if (!session) return refuse(session.error(), err);
    auto opened = video::open_video({arguments.files.begin() + 1, arguments.files.end()});
    if (!opened) return refuse(opened.error(), err);
    video::Video video = std::move(opened).value();
    const auto proposal = workspace::proposed_step(**session, video);
    if (!proposal) return refuse(proposal.error(), err);
    err << notes;
    out << (arguments.json ? video_json(*(*session)->recording, video, *proposal) : video_table(video, *proposal));
    return 0;
}

} // namespace

Wish wish(const std::vector<std::string>& words) {
    const bool known =
        !words.empty() && std::ranges::find(of_the_command_line, words.front()) != of_the_command_line.end();
    return known ? Wish::run_command : Wish::open_window;
}

namespace {

// What is told on `live` is read at once; the rest when the work is done.
int carry_out(const std::vector<std::string>& words, std::ostream& out, std::ostream& err, std::ostream& live,
              const SheetWriter& write_sheet) {
    const Parsed parsed = parse(words);
    if (!parsed.arguments) {
        (parsed.status == 0 ? out : err) << parsed.message;
        return parsed.status;
    }
    switch (parsed.arguments->command) {
    case Command::laps:
        return run_laps(*parsed.arguments, out, err);
    case Command::compare:
        return run_compare(*parsed.arguments, out, err);
    case Command::causes:
        return run_causes(*parsed.arguments, out, err);
    case Command::wing:
        return run_wing(*parsed.arguments, out, err);
    case Command::sheet:
        return run_sheet(*parsed.arguments, err, write_sheet);
    case Command::trial:
        return run_trial(*parsed.arguments, out, err);
    case Command::learn:
        return run_learn(*parsed.arguments, out, err);
    case Command::traces:
        return run_traces(*parsed.arguments, out, err);
    case Command::recipe:
        return run_recipe(*parsed.arguments, out, err);
    case Command::video:
        return run_video(*parsed.arguments, out, err);
    case Command::book:
        return run_book(parsed.arguments->book, out, err);
    case Command::batch:
        return run_batch(parsed.arguments->batch, live);
    case Command::version:
        out << "lapwright " LAPWRIGHT_VERSION "\n";
        return 0;
    }
    return 2;
}

// The last place where anything can be caught: a sentence instead of a signal.
int carry_out_or_say_why(const std::vector<std::string>& words, std::ostream& out, std::ostream& err,
                         std::ostream& live, const SheetWriter& write_sheet) {
    try {
        return carry_out(words, out, err, live, write_sheet);
    } catch (const std::bad_alloc&) {
        err << "lapwright: there is not enough memory for this — close other programs, or give it less at once\n";
    } catch (const std::exception& problem) {
        err << "lapwright: a mistake of the program stopped it (" << problem.what()
            << ") — please report it with the files that you gave\n";
    }
    return 1;
}

bool prints_json(const std::vector<std::string>& words) {
    return std::ranges::find(words, "--json") != words.end();
}

} // namespace

int run(const std::vector<std::string>& words, std::ostream& out, std::ostream& err, const SheetWriter& write_sheet) {
    std::ostringstream printed;
    std::ostringstream said;
    const int status = carry_out_or_say_why(words, printed, said, err, write_sheet);
    // JSON writes control characters as escapes of its own; text for people must not command their terminal.
    out << (prints_json(words) ? printed.str() : base::printable_lines(printed.str()));
    err << base::printable_lines(said.str());
    out.flush();
    if (!out) {
        err << "standard output: what was printed could not be written — make room on the disk, or write elsewhere\n";
        return 1;
    }
    return status;
}

} // namespace lapwright::commands
