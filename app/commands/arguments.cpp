// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/arguments.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <map>
#include <sstream>

namespace lapwright::commands {
namespace {

constexpr const char* about =
    "Lapwright compares two laps. Without a subcommand it opens the workstation.\n"
    "Estimates come from recorded data and are estimates; motor sport is dangerous; the event's rules,\n"
    "scrutineering and licensed practice come first.";

// CLI11's own range lets a NaN through, which compares false with everything.
CLI::Validator between(double low, double high) {
    const CLI::Range range(low, high);
    return {[range, low, high](std::string& text) {
                double value = 0.0;
                const bool finite = CLI::detail::lexical_cast(text, value) && std::isfinite(value);
                return finite ? range(text)
                              : "Value " + text + " not in range " + CLI::detail::to_string(low) + " to " +
                                    CLI::detail::to_string(high);
            },
            range.get_description()};
}

void add_units(CLI::App& app, std::string& units) {
    app.add_option("--units", units, "units of what people read")
        ->check(CLI::IsMember({"metric", "imperial", "us"}))
        ->capture_default_str();
}

void add_recipes(CLI::App& app, Arguments& arguments) {
    app.add_option("--recipe", arguments.recipe_files, "what the columns of a kind of file mean; may be given again")
        ->allow_extra_args(false);
}

void add_output(CLI::App& app, Arguments& arguments, std::string& units) {
    app.add_flag("--json", arguments.json, "one JSON document on standard output, SI units");
    add_units(app, units);
}

void add_csv(CLI::App& app, Arguments& arguments) {
    app.add_flag("--csv", arguments.csv, "the table as comma-separated text (RFC 4180)")->excludes("--json");
}

void add_pairing(CLI::App& app, Arguments& arguments) {
    app.add_option("files", arguments.files, "session A and session B (the same file twice: two laps of one session)")
        ->expected(2)
        ->required();
    app.add_option("--lap-a", arguments.lap_a, "number of A's lap (default: its fastest clean one)");
    app.add_option("--lap-b", arguments.lap_b, "number of B's lap");
    app.add_option("--track", arguments.track_file, "track file with gate and segments");
    add_recipes(app, arguments);
}

void add_setups(CLI::App& app, Arguments& arguments) {
    app.add_option("--setup-a", arguments.setup_a, "setup sheet of A (JSON)");
    app.add_option("--setup-b", arguments.setup_b, "setup sheet of B");
    const auto mass = between(100.0, 5000.0);
    app.add_option("--mass-a", arguments.mass_a_kg, "mass of A in kg, with driver and fuel")->check(mass);
    app.add_option("--mass-b", arguments.mass_b_kg, "mass of B in kg")->check(mass);
    const std::map<std::string, causes::Side> sides{{"a", causes::Side::a}, {"b", causes::Side::b}};
    app.add_option("--my-car", arguments.my_car,
                   "a or b: whom \"try next\" speaks to (default: the car that the book knows as yours, else both)")
        ->transform(CLI::CheckedTransformer(sides, CLI::ignore_case));
    app.add_option("--book", arguments.book.book_file, "the book that knows it (default: your own)")
        ->check([](const std::string& file) { return file.empty() ? "the file's name is empty" : std::string(); });
}

void add_video(CLI::App& app, VideoArguments& video, const std::string& side, const std::string& letter) {
    app.add_option("--video-" + side, video.files,
                   "video of " + letter + ", for a page of stills; given again: its next part")
        ->allow_extra_args(false);
    constexpr double a_day_s = 86'400.0;
    app.add_option("--video-offset-" + side, video.offset_s,
                   "seconds that it begins behind the recording (default: found by its sound)")
        ->check(between(-a_day_s, a_day_s))
        ->needs("--video-" + side);
}

void add_stills(CLI::App& app, Arguments& arguments) {
    add_video(app, arguments.video_a, "a", "A");
    add_video(app, arguments.video_b, "b", "B");
    app.add_option("--stills", arguments.still_moments, "which moments of the corner")
        ->delimiter(',')
        ->check(CLI::IsMember({"turn-in", "slowest", "full-throttle"}))
        ->capture_default_str();
    app.add_option("--still-corner", arguments.still_corner, "its name (default: the corner that decides)");
}

CLI::App* add_command(CLI::App& app, Arguments& arguments, Command command, const char* name, const char* what) {
    CLI::App* one = app.add_subcommand(name, what);
    one->callback([&arguments, command] { arguments.command = command; });
    return one;
}

} // namespace

Parsed parse(const std::vector<std::string>& words) {
    CLI::App app{about, "lapwright"};
    app.require_subcommand(0, 1);
    bool version = false;
    app.add_flag("--version", version, "print the version");
    Arguments arguments;
    std::string units = "metric";

    CLI::App* laps =
        add_command(app, arguments, Command::laps, "laps", "a session's laps, and what the import had to mend");
    laps->add_option("files", arguments.files, "logger files")->required();
    laps->add_option("--track", arguments.track_file, "track file with the gate");
    add_recipes(*laps, arguments);
    add_output(*laps, arguments, units);

    CLI::App* compare =
        add_command(app, arguments, Command::compare, "compare", "gap, segment table and traces of two laps");
    add_pairing(*compare, arguments);
    compare->add_option("--also", arguments.also_files, "a further session beside the two; may be given again")
        ->allow_extra_args(false);
    compare
        ->add_option("--also-lap", arguments.also_laps,
                     "numbers of their laps, in the same order (default: the fastest clean ones)")
        ->delimiter(',')
        ->needs("--also");
    compare->add_option("--step", arguments.step_m, "grid of the traces in metres")
        ->check(between(0.2, 20.0))
        ->capture_default_str();
    add_output(*compare, arguments, units);
    add_csv(*compare, arguments);

    CLI::App* causes = add_command(app, arguments, Command::causes, "causes",
                                   "what of the gap is grip, downforce, drag, power, mass, driver");
    add_pairing(*causes, arguments);
    add_setups(*causes, arguments);
    add_output(*causes, arguments, units);
    add_csv(*causes, arguments);

    CLI::App* wing = add_command(app, arguments, Command::wing, "wing",
                                 "how much downforce, with the drag that it costs, is quickest for either car here");
    add_pairing(*wing, arguments);
    add_setups(*wing, arguments);
    wing->add_option(
            "--drag-per-downforce", arguments.drag_per_downforce,
            "m2 of drag area that a m2 of downforce area costs, as a trial told it (default: 0.15, good to 0.1)")
        ->check(between(0.01, 1.0));
    wing->add_option("--track-of", arguments.other_track,
                     "a recording, of any car, of another track: how much is quickest there");
    std::string keep;
    CLI::Option* kept = wing->add_option("--keep", keep, "keeps what is predicted for a or b in the book")
                            ->check(CLI::IsMember({"a", "b"}));
    wing->add_option("--keep-downforce", arguments.keep_downforce_m2,
                     "which step of the table, m2 (default: the quickest)")
        ->needs(kept);
    wing->add_option("--keep-with", arguments.keep_with,
                     "how the setup sheet will say it, as \"wing angle=7 deg\"; may be given again")
        ->allow_extra_args(false)
        ->needs(kept);
    wing->add_flag("--json", arguments.json, "one JSON document in SI units");

    CLI::App* sheet =
        add_command(app, arguments, Command::sheet, "sheet", "the debrief sheet as a PDF or as one HTML file");
    add_pairing(*sheet, arguments);
    add_setups(*sheet, arguments);
    sheet->add_option("--out", arguments.out_file, "the file to write; .html makes HTML, anything else a PDF")
        ->required();
    std::string paper = "a4";
    sheet->add_option("--paper", paper, "size of the page")
        ->check(CLI::IsMember({"a4", "letter"}))
        ->capture_default_str();
    sheet->add_flag("--all-segments", arguments.all_segments, "a second page with every segment");
    add_stills(*sheet, arguments);
    add_units(*sheet, units);

    CLI::App* trial = add_command(app, arguments, Command::trial, "trial",
                                  "what a setup change is worth, baseline and change in turn");
    trial->add_option("files", arguments.files, "sessions in the order in which they were driven")->required();
    trial->add_option("--changed", arguments.changed, "which of them had the change, counted from 1 (2 or 2,4)")
        ->delimiter(',')
        ->required();
    trial->add_option("--track", arguments.track_file, "track file with gate and segments");
    add_recipes(*trial, arguments);
    trial->add_flag("--json", arguments.json, "one JSON document on standard output, SI units");

    CLI::App* learn = add_command(app, arguments, Command::learn, "learn",
                                  "lap and corner times over a session: the trend, and what is still to be won");
    learn->add_option("files", arguments.files, "a session, or several in the order in which they were driven")
        ->required();
    learn->add_option("--track", arguments.track_file, "track file with gate and segments");
    add_recipes(*learn, arguments);
    learn->add_flag("--json", arguments.json, "one JSON document on standard output, SI units");

    CLI::App* traces =
        add_command(app, arguments, Command::traces, "traces", "one lap over distance with every channel, SI units");
    traces->add_option("files", arguments.files, "logger file")->expected(1)->required();
    traces->add_option("--lap", arguments.lap_a, "number of the lap (default: the fastest clean one)");
    traces->add_option("--track", arguments.track_file, "track file with gate and segments");
    traces->add_option("--step", arguments.step_m, "grid in metres")->check(between(0.2, 20.0))->capture_default_str();
    add_recipes(*traces, arguments);
    traces->add_flag("--csv", arguments.csv, "comma-separated text (RFC 4180), which is also the default");
    traces->add_flag("--json", arguments.json, "one JSON document on standard output")->excludes("--csv");

    CLI::App* recipe = add_command(app, arguments, Command::recipe, "recipe",
                                   "what the columns of a file are taken for, to be corrected");
    recipe->add_option("files", arguments.files, "logger file")->expected(1)->required();

    CLI::App* video = add_command(app, arguments, Command::video, "video",
                                  "how a video stands to a recording: offset, interval, and what says so");
    constexpr int most_parts = 100;
    video->add_option("files", arguments.files, "logger file, then the video's files in their order")
        ->expected(2, 1 + most_parts)
        ->required();
    add_recipes(*video, arguments);
    video->add_flag("--json", arguments.json, "one JSON document on standard output, SI units");

    const CLI::App* book = add_book(app, arguments.book);
    const CLI::App* batch = add_batch(app, arguments.batch);

    try {
        std::vector<std::string> reversed(words.rbegin(), words.rend());
        app.parse(reversed);
    } catch (const CLI::ParseError& problem) {
        std::ostringstream out;
        std::ostringstream err;
        const int status = app.exit(problem, out, err);
        return {std::nullopt, out.str() + err.str(), status == 0 ? 0 : 2};
    }
    if (!arguments.also_laps.empty() && arguments.also_laps.size() != arguments.also_files.size())
        return {std::nullopt, "--also-lap: give a number for each --also, or none at all\n", 2};
    arguments.units = *base::parse_unit_system(units);
    arguments.us_letter = paper == "letter";
    if (!keep.empty()) arguments.keep = keep == "a" ? causes::Side::a : causes::Side::b;
    if (version)
        arguments.command = Command::version;
    else if (book->parsed())
        arguments.command = Command::book;
    else if (batch->parsed())
        arguments.command = Command::batch;
    else if (app.get_subcommands().empty())
        return {std::nullopt, app.help(), 0};
    return {arguments, {}, 0};
}

} // namespace lapwright::commands
