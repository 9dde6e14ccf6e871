// SPDX-License-Identifier: GPL-3.0-or-later
// A view out of the book is the one that would be worked out, to the last bit, or there is none.
#include "core/analysis/kept_view.h"

#include "core/analysis/kept_recording.h"
#include "core/analysis/run.h"
#include "core/analysis/view_archive.h"
#include "core/base/number_text.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/pairings.h"
#include "core/book/rename.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "core/book/tracks.h"
#include "core/comparison/summed_segments.h"
#include "support/recording_of.h"
#include "support/two_drives.h"

#include <gtest/gtest.h>

#include <bit>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <random>

namespace {

using namespace lapwright;
using analysis::PairingView;

// Everything that a page may show, named one by one: the archive's own list of fields is what is tested.
class Told {
  public:
    std::string text;

    void of(double value) { text += base::integer_text(std::bit_cast<std::int64_t>(value)) + " "; }
    void of(const std::string& value) { text += "'" + value + "' "; }
    void number(auto value) { text += base::integer_text(static_cast<std::int64_t>(value)) + " "; }
    void of(const std::optional<double>& value) { value ? of(*value) : of("none"); }
    void of(const comparison::Figure& f) {
        of(f.value);
        of(f.sd);
        number(f.derived);
    }
    void of(const comparison::MaybeFigure& f) { f ? of(*f) : of("none"); }
    void of(const motion::Vec2& v) {
        of(v.east);
        of(v.north);
    }
    void of(const track::Segment& s) {
        of(s.name);
        number(s.kind);
        for (const double value : {s.start_m, s.end_m, s.turned_rad})
            of(value);
        of(s.radius_m);
    }
    template <typename T>
    void all(const std::vector<T>& values) {
        number(values.size());
        for (const T& value : values)
            of(value);
    }
    void of(const lap::Lap& l) {
        number(l.number);
        number(l.kind);
        of(l.start_s);
        of(l.end_s);
        of(l.time_sd_s);
        number(l.clean);
        of(l.why_not_clean);
    }
    void of(const lap::LapTrace& t) {
        for (const auto* values :
             {&t.distance_m, &t.time_s, &t.speed_mps, &t.longitudinal_mps2, &t.lateral_mps2, &t.offset_m})
            all(*values);
        of(t.driven_length_m);
        for (const lap::TraceChannel& channel : t.channels) {
            of(channel.name);
            number(channel.meaning);
            number(channel.source_unit);
            all(channel.values);
        }
    }
    void of(const comparison::SegmentFigures& f) {
        of(f.time_s);
        of(f.entry_speed_mps);
        of(f.exit_speed_mps);
        for (const auto* figure :
             {&f.min_speed_mps, &f.min_speed_at_m, &f.top_speed_mps, &f.top_speed_at_m, &f.lift_at_m,
              &f.braking_point_m, &f.braking_mps2, &f.throttle_opens_m, &f.full_throttle_m, &f.peak_lateral_mps2,
              &f.coasting_s, &f.lift_to_brakes_s, &f.driven_length_m, &f.shifts, &f.shift_cost_s})
            of(*figure);
    }
    void of(const comparison::SegmentComparison& s) {
        of(s.segment);
        of(s.gain_s);
        of(s.a);
        of(s.b);
    }
    void of(const comparison::Repeatability& r) {
        all(r.times_a_s);
        all(r.times_b_s);
        for (const auto& value : {r.mean_difference_s, r.low_s, r.high_s, r.chance_a_wins})
            of(value);
    }
    void of(const comparison::IdealLap& ideal) {
        for (const auto& value : {ideal.time_s, ideal.best_lap_s, ideal.noise_only_gain_s, ideal.mean_lap_s})
            of(value);
    }
    void of(const analysis::Side& side) {
        const recording::Recording& recording = *side.session->recording;
        for (const std::string& name : {std::filesystem::path(recording.source_file).filename().string(),
                                        recording.driver, recording.car, recording.track, side.session->title()})
            of(name);
        of(recording.start_unix_s);
        of(side.lap);
        of(side.trace.best);
        all(side.clean_laps);
    }
    void of(const track::Track& t) {
        of(t.name);
        for (const double value : {t.frame.origin.latitude_rad, t.frame.origin.longitude_rad, t.frame.origin.height_m,
                                   t.gate.heading_rad, t.gate.half_width_m, t.line.step_m, t.line.length_m})
            of(value);
        number(t.frame.on_earth);
        of(t.gate.centre_m);
        all(t.line.position_m);
        all(t.line.tangent);
        all(t.line.curvature_per_m);
        all(t.segments);
    }
    void of(const analysis::Pairing& p) {
        of(p.track);
        of(p.a);
        of(p.b);
        number(p.a.session == p.b.session);
        const comparison::GapTrace& gap = p.comparison.gap;
        for (const auto* values : {&gap.distance_m, &gap.gap_s, &gap.sd_s, &gap.low_s, &gap.high_s})
            all(*values);
        of(p.comparison.gap_at_end_s);
        all(p.comparison.segments);
        all(p.repeatability);
        of(p.ideal_a);
        of(p.ideal_b);
        number(p.headline.ahead);
        for (const std::string& words :
             {p.headline.verdict, p.headline.uncertainty, p.headline.sentence, p.headline.deciding_segment})
            of(words);
        for (const recording::Warning& warning : p.warnings) {
            of(warning.code);
            of(warning.message);
            number(warning.line.value_or(0));
        }
    }
};

std::string told(const PairingView& view) {
    Told told;
    told.of(*view.pairing);
    told.all(view.summed);
    return told.text;
}

PairingView view_of(std::shared_ptr<const analysis::Pairing> pairing) {
    auto summed = comparison::summed_with_straights(pairing->comparison, pairing->a.trace, pairing->b.trace);
    return {std::move(pairing), std::move(summed)};
}

// Two drives of two laps in a book, compared from there.
class KeptView : public testing::Test {
  protected:
    void SetUp() override {
        const test::TwoDrives drives = test::two_drives(5, 2);
        own_a = recorded(drives.a, "Wren Alder");
        const auto session_a = *analysis::understand(own_a);
        const auto session_b = *analysis::understand(recorded(drives.b, "Tarn Ives"));
        laps = {add("a", *session_a), session_a->fastest()->number, add("b", *session_b), session_b->fastest()->number};
        whole = view_of(*analysis::compare(session_a, session_b, {laps.lap_a, laps.lap_b, {}, 20.0}));
        ASSERT_TRUE(book::put_pairing(book, {laps.session_a, laps.lap_a, laps.session_b, laps.lap_b, "", "", 1.0}));
        ASSERT_FALSE(analysis::keep_view(book, laps, whole));
    }
    void TearDown() override {
        for (const char* ending : {"", "-wal", "-shm", "-friend", "-friend-wal", "-friend-shm"})
            std::filesystem::remove(path + ending);
    }

    static recording::Recording recorded(const truth::Session& drive, const std::string& driver) {
        auto recording = test::recording_of(truth::log_session(drive, truth::perfect_logger(10.0), 3), driver);
        recording.source_file = "/elsewhere/" + driver;
        recording.start_unix_s = 1.7e9;
        return recording;
    }
    book::SessionId add(const std::string& name, const analysis::Session& session) {
        const recording::Recording& recording = *session.recording;
        const book::Source source{std::filesystem::path(recording.source_file).filename().string(), 1,
                                  book::sha256_of(name)};
        return book::add_session(book, source, recording, book::details_of(recording), {})->id;
    }
    [[nodiscard]] std::shared_ptr<const analysis::Pairing> worked_out_from_the_book() {
        const auto session = [&](book::SessionId id) {
            return *analysis::understand(std::move(analysis::kept_recording(book, id)).value());
        };
        return *analysis::compare(session(laps.session_a), session(laps.session_b), {laps.lap_a, laps.lap_b, {}, 20.0});
    }
    // Of the sessions in memory.
    [[nodiscard]] std::optional<PairingView> of_bytes(std::string_view bytes) const {
        return analysis::view_of_bytes(bytes, whole.pairing->a.session, whole.pairing->b.session);
    }
    [[nodiscard]] static std::optional<PairingView> read_back(const PairingView& view) {
        return analysis::view_of_bytes(analysis::view_bytes(view), view.pairing->a.session, view.pairing->b.session);
    }
    std::optional<PairingView> kept(const std::optional<track::TrackRecord>& record = {}) {
        return analysis::kept_view(book, laps, record);
    }

    std::string path =
        (std::filesystem::temp_directory_path() /
         ("lapwright-kept-view-" + base::integer_text(static_cast<std::int64_t>(std::random_device{}()))))
            .string();
    book::Book book = std::move(book::Book::open(path)).value();
    recording::Recording own_a;
    book::TwoLaps laps;
    PairingView whole;
};

TEST_F(KeptView, EveryFieldComesBackToTheLastBit) {
    auto pairing = std::make_shared<analysis::Pairing>(*whole.pairing);
    pairing->warnings.push_back({"made_up", "in line 4711", 4711});
    pairing->a.trace.best.offset_m.at(3) = std::nan("");
    pairing->a.lap.why_not_clean = std::string("\0 and \xff", 7); // any bytes
    pairing->b.lap.number = -1;
    const PairingView view = view_of(pairing);
    ASSERT_TRUE(view.pairing->comparison.segments.at(0).gain_s.sd); // there are draws
    const auto back = read_back(view);
    ASSERT_TRUE(back);
    EXPECT_TRUE(told(*back) == told(view)); // too long to be printed
    EXPECT_TRUE(analysis::same_view(*back, view));
    EXPECT_FALSE(analysis::same_view(*back, whole));
    auto one_session = std::make_shared<analysis::Pairing>(*pairing);
    one_session->b.session = one_session->a.session;
    const auto one = read_back(view_of(one_session));
    EXPECT_EQ(one->pairing->a.session, one->pairing->b.session);
}

TEST_F(KeptView, IsWhatWouldBeWorkedOutFromTheBook) {
    const auto view = kept();
    ASSERT_TRUE(view);
    EXPECT_TRUE(told(*view) == told(view_of(worked_out_from_the_book())));
}

// A track file names the track of files that do not; in the book they have its name.
TEST_F(KeptView, OfFilesThatATrackFileNamesHoldsWithThatFile) {
    track::TrackRecord record = track::record_of(whole.pairing->track);
    record.name = "Mudflat";
    const auto timed = [&](recording::Recording recording) {
        analysis::SessionOptions options;
        options.track = record;
        return *analysis::understand(std::move(recording), options);
    };
    const auto compared = [&](const auto& a, const auto& b) {
        return view_of(*analysis::compare(a, b, {laps.lap_a, laps.lap_b, record, 20.0}));
    };
    for (const book::SessionId id : {laps.session_a, laps.session_b}) {
        book::SessionDetails details = *book::read_details(book, id);
        details.track = record.name;
        ASSERT_FALSE(book::change_details(book, id, details));
    }
    const auto from_files =
        compared(timed(*whole.pairing->a.session->recording), timed(*whole.pairing->b.session->recording));
    ASSERT_FALSE(analysis::keep_view(book, laps, from_files));
    EXPECT_FALSE(kept());
    const auto view = kept(record);
    ASSERT_TRUE(view);
    EXPECT_TRUE(analysis::same_view(*view, from_files)); // so that nothing is shown again
    const auto in_book = [&](book::SessionId id) {
        return timed(std::move(analysis::kept_recording(book, id)).value());
    };
    EXPECT_TRUE(told(*view) == told(compared(in_book(laps.session_a), in_book(laps.session_b))));
}

// What no page of it shows may change; what it was worked out from may not.
TEST_F(KeptView, HoldsUntilSomethingItWasMadeFromIsAnother) {
    book::SessionDetails details = *book::read_details(book, laps.session_a);
    details.setup.tyre = "soft";
    ASSERT_FALSE(book::change_details(book, laps.session_a, details));
    EXPECT_TRUE(kept());

    track::TrackRecord record;
    record.name = "Mudflat";
    record.gate.position = whole.pairing->track.frame.origin;
    EXPECT_FALSE(kept(record));
    ASSERT_FALSE(book::put_track(book, record));
    EXPECT_FALSE(kept());
    const auto gone = book::forget_track(book, "Mudflat");
    ASSERT_TRUE(gone.ok());
    EXPECT_TRUE(kept());

    book::TwoLaps other = laps;
    other.lap_b += 1;
    EXPECT_FALSE(analysis::kept_view(book, other, {}));
    const auto renamed = book::rename(book, book::NameTable::driver, "Tarn Ives", "Tarn Ives-Moor", book::Unite::no);
    ASSERT_TRUE(renamed.ok());
    EXPECT_FALSE(kept());
    ASSERT_FALSE(book::undo_rename(book, renamed.value()));
    EXPECT_TRUE(kept());

    recording::Recording other_samples = own_a;
    other_samples.channels[0].values[7] = std::nextafter(other_samples.channels[0].values[7], 1e9);
    ASSERT_FALSE(book::replace_recording(book, laps.session_a, other_samples));
    EXPECT_FALSE(kept());
    // Those in memory are no longer those of the book: nothing is kept under its name.
    ASSERT_FALSE(analysis::keep_view(book, laps, whole));
    EXPECT_FALSE(kept());
}

TEST_F(KeptView, OfAnotherProgramOrDamagedIsPassedOverAndGoesWithItsPairing) {
    for (const char* damage :
         {"UPDATE kept_view SET made_from = zeroblob(32)", "UPDATE kept_view SET crc = crc + 1",
          "UPDATE kept_view SET bytes = substr(bytes, 1, length(bytes) - 1)", "UPDATE kept_view SET bytes = x''",
          "UPDATE kept_view SET crc = 0, bytes = x''", "DELETE FROM kept_view"}) {
        book.database().run_script(damage);
        ASSERT_TRUE(book.database().well());
        EXPECT_FALSE(kept()) << damage;
        ASSERT_FALSE(analysis::keep_view(book, laps, whole));
        EXPECT_TRUE(kept());
    }
    ASSERT_FALSE(book::export_book(book, path + "-friend"));
    {
        auto friends = std::move(book::Book::open(path + "-friend")).value();
        EXPECT_EQ(friends.database().one_whole("SELECT count(*) FROM pairing"), 1);
        EXPECT_EQ(friends.database().one_whole("SELECT count(*) FROM kept_view"), 0);
    }
    book.database().run("UPDATE block SET bytes = x'00' WHERE id = (SELECT min(id) FROM block)");
    EXPECT_FALSE(kept()); // without that channel it would be worked out otherwise
    ASSERT_FALSE(book::remove_pairing(book, book::pairings(book)->front().id));
    EXPECT_EQ(book.database().one_whole("SELECT count(*) FROM kept_view"), 0);
    ASSERT_FALSE(analysis::keep_view(book, laps, whole)); // of what is no kept pairing
    EXPECT_EQ(book.database().one_whole("SELECT count(*) FROM kept_view"), 0);
}

// Bytes whose checksums are right, as a damaged or ill-meant program might have written them.
TEST_F(KeptView, WhatDoesNotFitTogetherIsNoView) {
    auto small = std::make_shared<analysis::Pairing>(*whole.pairing);
    for (auto* points : {&small->track.line.position_m, &small->track.line.tangent})
        points->resize(5);
    small->track.line.curvature_per_m.resize(5);
    const std::string bytes = analysis::view_bytes(view_of(small));
    ASSERT_TRUE(of_bytes(bytes));
    std::mt19937_64 random(11);
    const auto below = [&random](std::size_t most) { return static_cast<std::size_t>(random() % most); };
    for (int i = 0; i < 60; ++i) {
        std::string flipped = bytes;
        flipped[below(flipped.size())] ^= static_cast<char>(1U << below(8));
        if (const auto view = of_bytes(flipped)) told(*view);
        EXPECT_FALSE(of_bytes(std::string_view(bytes).substr(0, below(bytes.size()))));
    }
    const auto gathered = analysis::gathered_of(bytes);
    ASSERT_TRUE(gathered);
    for (int i = 0; i < 60; ++i) {
        analysis::Gathered other = *gathered;
        if (i % 4 == 0)
            other.columns[below(other.columns.size())].resize(below(300));
        else
            other.plain[below(other.plain.size())] ^= static_cast<char>(1U << below(8));
        if (const auto view = of_bytes(analysis::bytes_of(other))) told(*view);
    }
    small->comparison.gap.gap_s.pop_back();
    EXPECT_FALSE(read_back(view_of(small)));
}

} // namespace
