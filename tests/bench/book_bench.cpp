// SPDX-License-Identifier: GPL-3.0-or-later
// A book of 500 sessions of twenty minutes at 25 Hz and 24 columns, some 2 GB of text.  Twenty sessions are driven by
// the simulator, written as text and imported; each is in the book 25 times under other names, dates, notes and another
// checksum, its packed samples copied as they are (SQLite shares nothing between them).  The text's size is counted.
// "Cold" has the file's pages dropped from the system's cache before each opening.
#include "core/analysis/car_season.h"
#include "core/analysis/kept_recording.h"
#include "core/base/number_text.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "tests/bench/driven_book.h"

#include <benchmark/benchmark.h>

#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

namespace {

using namespace lapwright;

constexpr int driven = 20;
constexpr int copies = 25;
constexpr double day_s = 86400.0;

using bench::must;

book::SessionDetails details(int i) {
    const auto name = [](const char* what, int number) { return std::string(what) + base::integer_text(number); };
    book::SessionDetails some{name("Driver ", i % 7),
                              name("Car ", i % 11),
                              name("Track ", i % 9),
                              1.7e9 + day_s * (i % 300),
                              i % 3 == 0 ? "damp, cold" : "dry, light wind",
                              {}};
    some.setup.tyre = i % 2 == 0 ? "soft 200" : "hard 220";
    some.setup.items = {{"wing angle", base::integer_text(i % 12) + " deg"}, {"front spring", "90 N/mm"}};
    return some;
}

// A session's rows again under another checksum, its samples copied as they are.
book::SessionId copy_of(book::Book& book, book::SessionId from, int i) {
    const book::Checksum checksum = book::sha256_of(base::integer_text(i));
    const std::string_view bytes(reinterpret_cast<const char*>(checksum.data()), checksum.size());
    book::SessionId id{};
    must(edit(book.database(), [&](book::Database& database) {
        const auto source = static_cast<std::int64_t>(from);
        database.run("INSERT INTO session (checksum, file_name, size_bytes, conditions, tyre, setup, setup_words, "
                     "duration_s, file_driver, file_car, file_track, file_start_s) SELECT ?, file_name, size_bytes, "
                     "conditions, tyre, setup, setup_words, duration_s, file_driver, file_car, file_track, "
                     "file_start_s FROM session WHERE id = ?",
                     {book::Blob{bytes}, source});
        id = book::SessionId{database.last_id()};
        const auto target = static_cast<std::int64_t>(id);
        for (const auto& [table, columns] :
             {std::pair("lap", "place, number, kind, clean, start_s, end_s, time_sd_s, why"),
              std::pair("block", "place, count, crc, bytes"),
              std::pair("channel", "place, name, meaning, unit, unit_text, time_place, values_place, lines_place")})
            database.run("INSERT INTO " + std::string(table) + " (session_id, " + columns + ") SELECT ?, " + columns +
                             " FROM " + table + " WHERE session_id = ?",
                         {target, source});
    }));
    return id;
}

class LargeBook {
  public:
    LargeBook() : path_((std::filesystem::temp_directory_path() / "lapwright-book-bench").string()) {
        remove();
        book::Book book = must(book::Book::open(path_));
        std::vector<book::SessionId> ids;
        for (int i = 0; i < driven * copies; ++i) {
            const book::SessionId id =
                i < driven ? drive(book, i) : copy_of(book, ids[static_cast<std::size_t>(i % driven)], i);
            ids.push_back(id);
            must(change_details(book, id, details(i)));
            static_cast<void>(must(
                put_note(book, {"", {.session = id, .segment = "Sweep"}, "splitter " + base::integer_text(i), 1.0})));
            must(put_figures(book, id, {{"grip", 1.2, 1.1, 1.3, "data"}, {"drag_area_m2", 0.7, 0.6, 0.8, "data"}}));
        }
        pairing_ = must(put_pairing(book, {ids[123], 3, ids[456], 4, "a pairing", "A ahead", 1.0}));
        packed_bytes_ = *book.database().one_whole("SELECT sum(length(bytes)) FROM block");
    }
    LargeBook(const LargeBook&) = delete;
    LargeBook& operator=(const LargeBook&) = delete;
    ~LargeBook() { remove(); }

    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] book::PairingId pairing() const { return pairing_; }

    void tell(benchmark::State& state) const {
        const auto text = static_cast<double>(text_bytes_ * copies);
        const auto file = static_cast<double>(std::filesystem::file_size(path_));
        state.counters["text_MB"] = text / 1e6;
        state.counters["file_MB"] = file / 1e6;
        state.counters["samples_to_text"] = static_cast<double>(packed_bytes_) / text;
        state.counters["file_to_text"] = file / text;
    }

    void drop_from_cache() const {
        const int file = ::open(path_.c_str(), O_RDONLY | O_CLOEXEC);
        ::fsync(file);
        ::posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
        ::close(file);
    }

  private:
    book::SessionId drive(book::Book& book, int i) {
        const bench::Driven one = bench::keep_driven(book, static_cast<std::uint64_t>(i) + 1);
        text_bytes_ += one.text_bytes;
        return one.id;
    }

    void remove() const {
        for (const char* const ending : {"", "-wal", "-shm"})
            std::filesystem::remove(path_ + ending);
    }

    std::string path_;
    book::PairingId pairing_{};
    std::size_t text_bytes_ = 0; // of those that were driven
    std::int64_t packed_bytes_ = 0;
};

const LargeBook& large() {
    static const LargeBook book;
    return book;
}

void OpenBook(benchmark::State& state) {
    const LargeBook& large_book = large();
    for (auto _ : state) {
        if (state.range(0) == 1) {
            state.PauseTiming();
            large_book.drop_from_cache();
            state.ResumeTiming();
        }
        auto book = must(book::Book::open(large_book.path()));
        benchmark::DoNotOptimize(must(search(book)).size());
    }
    large_book.tell(state);
}
BENCHMARK(OpenBook)->ArgName("cold")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(5);

void SearchBook(benchmark::State& state) {
    auto book = must(book::Book::open(large().path()));
    const std::vector<book::Filter> filters{{},
                                            {.words = "split"},
                                            {.driver = "Driver 3", .words = "wing dry"},
                                            {.track = "Track 4", .tyre = "soft 200"},
                                            {.from_unix_s = 1.7e9 + 50 * day_s, .until_unix_s = 1.7e9 + 80 * day_s}};
    const book::Filter& filter = filters[static_cast<std::size_t>(state.range(0))];
    std::size_t found = 0;
    for (auto _ : state)
        found = must(search(book, filter)).size();
    state.counters["found"] = static_cast<double>(found);
}
BENCHMARK(SearchBook)->ArgName("filter")->DenseRange(0, 4)->Unit(benchmark::kMillisecond)->UseRealTime();

void Season(benchmark::State& state) {
    auto book = must(book::Book::open(large().path()));
    for (auto _ : state) {
        benchmark::DoNotOptimize(must(season_of_track(book, "Track 4")).size());
        benchmark::DoNotOptimize(must(season_of_car(book, "Car 4")).size());
    }
}
BENCHMARK(Season)->Unit(benchmark::kMillisecond)->UseRealTime();

// One car's 45 sessions, some fifteen hours of samples, read and put together.
void CarTogether(benchmark::State& state) {
    book::Book book = must(book::Book::open(large().path()));
    for (auto _ : state) {
        const analysis::CarSeason season = must(analysis::car_season(book, "Car 3"));
        state.counters["sessions"] = static_cast<double>(season.sessions.size());
        state.counters["changes"] = static_cast<double>(season.effects.size());
    }
}
BENCHMARK(CarTogether)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);

void ReadPairing(benchmark::State& state) {
    auto book = must(book::Book::open(large().path()));
    for (auto _ : state) {
        const book::Pairing pairing = must(read_pairing(book, large().pairing()));
        benchmark::DoNotOptimize(must(read_recording(book, pairing.session_a)).channels.size());
        benchmark::DoNotOptimize(must(read_recording(book, pairing.session_b)).channels.size());
    }
}
BENCHMARK(ReadPairing)->Unit(benchmark::kMillisecond)->UseRealTime();

// From the stored samples to the finished comparison: what a window must do that keeps nothing else.
void ComputePairing(benchmark::State& state) {
    auto book = must(book::Book::open(large().path()));
    for (auto _ : state) {
        const book::Pairing pairing = must(read_pairing(book, large().pairing()));
        const auto a = must(analysis::understand(must(read_recording(book, pairing.session_a))));
        const auto b = must(analysis::understand(must(read_recording(book, pairing.session_b))));
        benchmark::DoNotOptimize(must(analysis::compare(a, b))->comparison.gap_at_end_s.value);
    }
}
BENCHMARK(ComputePairing)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(2);

void CheckBook(benchmark::State& state) {
    auto book = must(book::Book::open(large().path()));
    for (auto _ : state)
        if (!must(book.check()).whole()) state.SkipWithError("the book is not whole");
}
BENCHMARK(CheckBook)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);

void AddSession(benchmark::State& state) {
    const std::string text = truth::benchmark_text(1.0 / 3.0, 25.0, 1);
    const auto recording = must(import::import_bytes(text, "session.csv"));
    auto book = must(book::Book::open(large().path()));
    std::vector<book::SessionId> added;
    for (auto _ : state) {
        const book::Source source{
            "new.csv", text.size(),
            book::sha256_of("new " + base::integer_text(static_cast<std::int64_t>(added.size())))};
        added.push_back(must(add_session(book, source, recording, {}, {})).id);
    }
    for (const book::SessionId id : added)
        must(remove_session(book, id));
}
BENCHMARK(AddSession)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(5);

} // namespace
