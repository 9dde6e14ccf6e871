// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/batch.h"

#include "app/commands/batch_summary.h"
#include "app/commands/batch_work.h"
#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/book/copy_file.h"
#include "core/book/search.h"
#include "core/workspace/own_files.h"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>
#include <sstream>

namespace lapwright::commands {
namespace {

namespace fs = std::filesystem;
using base::Error;
using base::ErrorCode;
using base::Result;

Result<std::string> text_of(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    std::ostringstream text;
    if (file && file.peek() != std::ifstream::traits_type::eof()) text << file.rdbuf();
    if (!file || !text)
        return Error{ErrorCode::file_not_readable,
                     {path, {}, {}},
                     "the list cannot be read, or is empty",
                     "write a recording or a pairing a line"};
    return text.str();
}

Result<std::vector<Job>> every_pair_of(const std::vector<Job>& recordings, const std::string& list) {
    std::vector<std::string> names;
    for (const Job& job : recordings) {
        if (!job.b.empty())
            return Error{ErrorCode::value_not_readable,
                         {list, {}, {}},
                         "the list has pairings already, \"" + job.a + "\" with \"" + job.b + "\"",
                         "write one recording a line, or leave --every-pair out"};
        names.push_back(job.a);
    }
    return all_pairs(names, sessions_a_block);
}

// The book's sessions of the track that have a clean lap.
Result<std::vector<Job>> jobs_of_track(const std::string& book_file, const std::string& track) {
    book::OpenOptions options;
    options.may_begin = false;
    auto opened = book::Book::open(book_file, options);
    if (!opened) return opened.error();
    book::Book book = std::move(opened).value();
    const auto sessions = search(book, {.track = track});
    if (!sessions) return sessions.error();
    std::vector<std::string> names;
    for (const book::SessionSummary& session : *sessions)
        if (session.best_clean_s) names.push_back("book:" + base::integer_text(static_cast<std::int64_t>(session.id)));
    if (names.size() < 2)
        return Error{ErrorCode::book_not_usable,
                     {book_file, {}, {}},
                     "fewer than two sessions of \"" + track + "\" have a clean lap",
                     "look at \"lapwright book list\" for the tracks that it has"};
    return all_pairs(names, sessions_a_block);
}

Result<std::vector<Job>> jobs_of(const BatchArguments& arguments, const std::string& book_file) {
    if (!arguments.of_track.empty()) return jobs_of_track(book_file, arguments.of_track);
    const auto text = text_of(arguments.list_file);
    if (!text) return text.error();
    auto jobs = jobs_of_list(*text, arguments.list_file);
    return jobs && arguments.every_pair ? every_pair_of(*jobs, arguments.list_file) : jobs;
}

// Whole or not at all.
Result<void> write(const std::string& path, const std::string& text) {
    const std::string partial = book::partial_name(path);
    bool good = false;
    {
        std::ofstream file(std::filesystem::path(partial), std::ios::binary | std::ios::trunc);
        file << text;
        file.close();
        good = file.good();
    }
    auto done = good ? book::appear(partial, path)
                     : Result<void>(Error{ErrorCode::file_not_writable,
                                          {path, {}, {}},
                                          "the result cannot be written",
                                          "check the folder, your rights to it and the room on the disk, and start the "
                                          "batch again: what is done stays"});
    std::error_code ignored;
    if (!done) fs::remove(partial, ignored);
    return done;
}

// What a killed worker left of this job.
void remove_remains(const std::string& folder, const std::vector<Job>& piece, const std::string& options) {
    std::vector<std::string> own;
    for (const Job& job : piece)
        own.push_back(result_name(job, options));
    std::ranges::sort(own);
    std::error_code ignored;
    for (const auto& entry : fs::directory_iterator(folder, ignored)) {
        const std::string name = entry.path().filename().string();
        const std::size_t end = name.find(".json.part");
        if (end == std::string::npos) continue;
        if (std::ranges::binary_search(own, name.substr(0, end))) fs::remove(entry.path(), ignored);
    }
}

// How the piece went.
struct Tally {
    std::size_t done = 0;
    std::size_t there = 0; // done before
    std::size_t failed = 0;
};

std::string words_of(const Tally& tally) {
    const auto number = [](std::size_t count) { return base::integer_text(static_cast<std::int64_t>(count)); };
    return number(tally.done) + " done, " + number(tally.there) + " done before, " + number(tally.failed) + " failed\n";
}

class Batch {
  public:
    Batch(const BatchArguments& arguments, BatchWork work, std::string options, std::ostream& err)
        : folder_(arguments.out_folder), work_(std::move(work)), options_(std::move(options)), err_(err) {}

    // Stops where a result cannot be written: the next could not be either.
    Result<void> run(const std::vector<Job>& piece) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const std::string name = result_name(piece[i], options_);
            std::error_code unknown;
            if (fs::exists(result_path(folder_, name), unknown)) {
                ++tally_.there;
                continue;
            }
            tell(base::integer_text(static_cast<std::int64_t>(i + 1)) + " of " +
                 base::integer_text(static_cast<std::int64_t>(piece.size())) + ": " + name);
            if (auto done = do_job(piece[i], name); !done) return done;
        }
        return {};
    }

    [[nodiscard]] const Tally& tally() const { return tally_; }

  private:
    void tell(const std::string& line) { err_ << base::printable_lines(line + "\n") << std::flush; }

    Result<void> do_job(const Job& job, const std::string& name) {
        const auto document = work_.document(job);
        if (!document) {
            ++tally_.failed;
            const std::string why = base::one_line(document.error());
            tell(why);
            return write(failure_path(folder_, name),
                         nlohmann::json{{"error", why}}.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) +
                             "\n");
        }
        if (auto written = write(result_path(folder_, name), *document); !written) return written;
        std::error_code none;
        fs::remove(failure_path(folder_, name), none);
        ++tally_.done;
        return {};
    }

    std::string folder_;
    BatchWork work_;
    std::string options_;
    std::ostream& err_;
    Tally tally_;
};

std::string summary_name(const Shard& shard) {
    const auto number = [](std::size_t n) { return base::integer_text(static_cast<std::int64_t>(n)); };
    return shard.n == 1 ? "summary.csv" : "summary-" + number(shard.i) + "-of-" + number(shard.n) + ".csv";
}

// What of the options makes another result.
std::string options_text(const BatchArguments& arguments) {
    return arguments.track_file + "\n" + base::exact_text(arguments.step_m);
}

Result<Tally> carry_out_batch(const BatchArguments& arguments, std::ostream& err) {
    const auto book_file = workspace::book_file(arguments.book_file);
    if (!book_file) return book_file.error();
    const auto jobs = jobs_of(arguments, *book_file);
    if (!jobs) return jobs.error();
    std::optional<track::TrackRecord> record;
    if (!arguments.track_file.empty()) {
        auto read = track::read_track_record(arguments.track_file);
        if (!read) return read.error();
        record = std::move(read).value();
    }
    std::error_code problem;
    fs::create_directories(arguments.out_folder, problem);
    if (problem)
        return Error{ErrorCode::file_not_writable,
                     {arguments.out_folder, {}, {}},
                     "the folder cannot be made",
                     "name another with --out"};
    const Shard shard = parse_shard(arguments.shard).value_or(Shard{});
    const std::vector<Job> piece = piece_of(*jobs, shard);
    const std::string options = options_text(arguments);
    remove_remains(arguments.out_folder, piece, options);
    Batch batch(arguments, BatchWork(*book_file, std::move(record), arguments.step_m), options, err);
    const auto run = batch.run(piece);
    if (!run) return run.error();
    const std::string summary = (fs::path(arguments.out_folder) / summary_name(shard)).string();
    const auto written = write(summary, summary_csv(piece, arguments.out_folder, options));
    if (!written) return written.error();
    return batch.tally();
}

} // namespace

CLI::App* add_batch(CLI::App& app, BatchArguments& arguments) {
    CLI::App* batch = app.add_subcommand(
        "batch", "many recordings or pairings, one JSON document each, in pieces that any number of workers share");
    CLI::Option* list =
        batch->add_option("list", arguments.list_file,
                          "a text file: a recording a line, or two with a tab between and, if wished, two lap numbers");
    CLI::Option* track = batch->add_option("--of-track", arguments.of_track,
                                           "instead of a list: the fastest clean laps of all sessions of this track in "
                                           "the book, each against each other");
    list->excludes(track);
    batch->add_option("--book", arguments.book_file, "the book (default: your own)");
    batch->add_flag("--every-pair", arguments.every_pair, "the list's recordings each against each other");
    batch->add_option("--out", arguments.out_folder, "folder of the results; what is there already is not done again")
        ->required();
    batch
        ->add_option("--shard", arguments.shard,
                     "which piece of the jobs this worker does: 3/16 is the third of sixteen")
        ->check([](const std::string& text) {
            return parse_shard(text) ? std::string() : text + " is no piece: write 3/16";
        });
    batch->add_option("--track", arguments.track_file, "track file with gate and segments");
    batch->add_option("--step", arguments.step_m, "grid of the traces in metres")
        ->check(CLI::Range(0.2, 20.0))
        ->capture_default_str();
    batch->callback([&arguments] {
        if (arguments.list_file.empty() && arguments.of_track.empty())
            throw CLI::RequiredError("a list, or --of-track,");
    });
    return batch;
}

int run_batch(const BatchArguments& arguments, std::ostream& err) {
    const auto tally = carry_out_batch(arguments, err);
    if (!tally) {
        err << base::printable_lines(base::one_line(tally.error())) << "\n";
        return 1;
    }
    err << words_of(*tally);
    return tally->failed == 0 ? 0 : 1;
}

} // namespace lapwright::commands
