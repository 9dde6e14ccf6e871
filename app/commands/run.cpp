// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/run.h"
#include "app/commands/arguments.h"
#include "app/commands/commands.h"
#include "app/commands/json_text.h"
#include "app/commands/table_text.h"

#include <algorithm>
#include <array>
#include <future>
#include <ostream>
#include <string_view>

namespace lapwright::commands {
namespace {

using base::Result;
using SessionPointer = std::shared_ptr<const analysis::Session>;

// Words that never open the window.
constexpr std::array<std::string_view, 7> of_the_command_line{"laps",      "compare", "causes", "sheet",
                                                              "--version", "--help",  "-h"};

int refuse(const base::Error& error, std::ostream& err) {
    err << base::one_line(error) << "\n";
    return 1;
}

Result<std::optional<track::TrackRecord>> track_of(const Arguments& arguments) {
    if (arguments.track_file.empty()) return std::optional<track::TrackRecord>();
    auto record = track::read_track_record(arguments.track_file);
    if (!record) return record.error();
    return std::optional(std::move(record).value());
}

int run_laps(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto record = track_of(arguments);
    if (!record) return refuse(record.error(), err);
    analysis::SessionOptions options;
    options.track = *record;
    std::vector<SessionPointer> sessions;
    for (const std::string& file : arguments.files) {
        auto session = analysis::load_session(file, options);
        if (!session) return refuse(session.error(), err);
        sessions.push_back(std::move(session).value());
    }
    out << (arguments.json ? laps_json(sessions) : laps_table(sessions));
    return 0;
}

int run_compare(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto record = track_of(arguments);
    if (!record) return refuse(record.error(), err);
    analysis::SessionOptions options;
    options.track = *record;
    const bool same_file = arguments.files[1] == arguments.files[0];
    // Both at once: a machine in the trailer has two cores at least.
    std::future<Result<SessionPointer>> loading_b;
    if (!same_file)
        loading_b = std::async(std::launch::async, [&] { return analysis::load_session(arguments.files[1], options); });
    const auto a = analysis::load_session(arguments.files[0], options);
    const auto b = same_file ? a : loading_b.get();
    if (!a) return refuse(a.error(), err);
    if (!b) return refuse(b.error(), err);
    const auto pairing = analysis::compare(*a, *b, {arguments.lap_a, arguments.lap_b, *record, arguments.step_m});
    if (!pairing) return refuse(pairing.error(), err);
    out << (arguments.json ? compare_json(**pairing) : compare_table(**pairing, arguments.units));
    return 0;
}

} // namespace

Wish wish(const std::vector<std::string>& words) {
    const bool known =
        !words.empty() && std::ranges::find(of_the_command_line, words.front()) != of_the_command_line.end();
    return known ? Wish::run_command : Wish::open_window;
}

int run(const std::vector<std::string>& words, std::ostream& out, std::ostream& err) {
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
    case Command::version:
        out << "lapwright " LAPWRIGHT_VERSION "\n";
        return 0;
    }
    return 2;
}

} // namespace lapwright::commands
