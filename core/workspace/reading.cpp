// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/reading.h"

#include "core/analysis/kept_recording.h"
#include "core/analysis/run.h"
#include "core/analysis/with_words.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/book/book.h"
#include "core/book/judged_by_hand.h"
#include "core/book/sessions.h"
#include "core/book/tracks.h"
#include "core/car/setup_beside.h"

#include <filesystem>
#include <optional>
#include <utility>

namespace lapwright::workspace {
namespace {

using base::Result;
using base::said;

std::vector<track::TrackRecord> tracks_of(book::Book& book) {
    auto tracks = book::tracks(book);
    return tracks ? std::move(tracks).value() : std::vector<track::TrackRecord>();
}

// None where there is no book or it cannot be read: whoever keeps it says so.
std::vector<track::TrackRecord> tracks_of_book(const std::string& book_file) {
    if (book_file.empty() || !std::filesystem::exists(book_file)) return {};
    auto opened = book::Book::open(book_file);
    if (!opened) return {};
    book::Book book = std::move(opened).value();
    return tracks_of(book);
}

// What the book has of the session's laps; the session itself where there is no book, or it does not know it.
SessionPointer with_words_of(const std::string& book_file, const SessionPointer& session) {
    if (book_file.empty() || !std::filesystem::exists(book_file)) return session;
    auto opened = book::Book::open(book_file);
    if (!opened) return session;
    book::Book book = std::move(opened).value();
    const auto id = book::find_session(book, session->source.checksum);
    if (!id || !*id) return session;
    auto words = book::judged_by_hand(book, **id);
    return words ? analysis::with_words(session, std::move(words).value()) : session;
}

SessionPointer with_source(const analysis::Session& session, book::Source source) {
    auto known = std::make_shared<analysis::Session>(session);
    known->source = std::move(source);
    return known;
}

Result<SessionPointer> read_file(const std::string& path, const ReadingOptions& options,
                                 const base::Progress& progress) {
    if (const auto may = book::refuse_as_file(options.book_file, path); !may) return may.error();
    analysis::SessionOptions how;
    how.track = options.track;
    if (!options.track) how.known_tracks = tracks_of_book(options.book_file);
    how.import.recipe = import::recipe_for(path, options.recipes);
    auto words = import::RecipeFolder(options.words_folder).vocabulary();
    if (!words) return words.error();
    how.import.vocabulary = std::move(words).value();
    if (options.setup)
        how.setup = *options.setup;
    else if (const auto beside = car::setup_beside(path); beside && *beside)
        how.setup = **beside;
    std::optional<Result<SessionPointer>> session;
    std::optional<Result<book::Source>> source;
    base::parallel_for(2, 0, [&](std::size_t i) {
        if (i == 0) session = analysis::load_session(path, how, progress);
        if (i == 1) source = book::source_of_file(path);
    });
    if (!*session) return session->error();
    if (!*source) return source->error();
    return with_words_of(options.book_file, with_source(***session, **source));
}

Result<SessionPointer> read_from_book(book::SessionId id, const ReadingOptions& options,
                                      const base::Progress& progress) {
    if (options.book_file.empty())
        return base::Error{base::ErrorCode::book_not_usable,
                           {},
                           said("this session is in the book, and the window has none"),
                           said("start it with the book, or open the session's file")};
    auto opened = book::Book::open(options.book_file);
    if (!opened) return opened.error();
    book::Book book = std::move(opened).value();
    if (!base::go_on(progress, said("reading from the book"), 0.05)) return base::cancelled();
    analysis::SessionOptions how;
    how.track = options.track;
    if (!options.track) how.known_tracks = tracks_of(book);
    return analysis::kept_session(book, id, how, progress);
}

} // namespace

Result<SessionPointer> read_session(const Origin& origin, const ReadingOptions& options,
                                    const base::Progress& progress) {
    if (const auto* file = std::get_if<std::string>(&origin)) return read_file(*file, options, progress);
    return read_from_book(std::get<book::SessionId>(origin), options, progress);
}

Result<import::Preview> preview_session(const std::string& path, import::Options options,
                                        const ReadingOptions& reading) {
    if (const auto may = book::refuse_as_file(reading.book_file, path); !may) return may.error();
    auto words = import::RecipeFolder(reading.words_folder).vocabulary();
    if (!words) return words.error();
    options.vocabulary = std::move(words).value();
    return import::preview_file(path, options);
}

} // namespace lapwright::workspace
