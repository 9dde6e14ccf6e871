// SPDX-License-Identifier: GPL-3.0-or-later
// Clock readings, dates, moments, angles and sentences, each by itself.  Positions and checksums of the NMEA examples
// are published ones.
#include "core/import/columns/column_values.h"
#include "core/import/formats/nmea_sentence.h"
#include "core/import/tables/facts.h"
#include "core/import/text/angle_text.h"
#include "core/import/text/day.h"
#include "core/import/text/encoding.h"
#include "core/import/text/moment.h"

#include "core/base/constants.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

TEST(Moment, ReadsClocks) {
    EXPECT_DOUBLE_EQ(read_clock("10:20:03.4").value(), 37203.4);
    EXPECT_DOUBLE_EQ(read_clock("10:20:03,4").value(), 37203.4);
    EXPECT_DOUBLE_EQ(read_clock("1:23.456").value(), 83.456);
    EXPECT_DOUBLE_EQ(read_clock("12:00:01 AM").value(), 1.0);
    EXPECT_DOUBLE_EQ(read_clock("12:00:01 PM").value(), 43201.0);
    EXPECT_DOUBLE_EQ(read_clock("10:20:03:400").value(), 37203.4);
    for (const char* text :
         {"", "10", "10:60:00", "1:60.0", "10:20:61", "a:b:c", "10:20:03:4", "13:00:00 PM", ":20:03", "10::03"})
        EXPECT_FALSE(read_clock(text)) << text;
}

TEST(Moment, ReadsDates) {
    constexpr std::int64_t day = 20589; // 2026-05-16, days after 1970-01-01
    for (const char* text :
         {"2026-05-16", "2026/05/16", "16.05.2026", "16/05/2026", "05/16/2026", "16.05.26", "20260516"}) {
        ASSERT_TRUE(read_date(text)) << text;
        EXPECT_EQ(read_date(text)->days, day) << text;
        EXPECT_FALSE(read_date(text)->day_and_month_unsure) << text;
    }
    EXPECT_TRUE(read_date("05/04/2026")->day_and_month_unsure);
    EXPECT_FALSE(read_date("04/04/2026")->day_and_month_unsure);
    for (const char* text : {"16-May-2026", "16 May 26", "May 16, 2026", "16. Mai 2026", "16-mai-2026",
                             "16 de mayo de 2026", "16 maggio 2026", "16 mei 2026", "Sat 16 May 2026"}) {
        ASSERT_TRUE(read_date(text)) << text;
        EXPECT_EQ(read_date(text)->days, day) << text;
    }
    for (const char* text : {"", "2026-13-01", "2026-257-01", "2026-01-257", "01/257/2026", "16-Mayday-2026",
                             "May 2026", "2026-02-30", "31.04.2026", "1.2", "2026", "2026-05", "99999999"})
        EXPECT_FALSE(read_date(text)) << text;
}

TEST(Moment, ReadsZones) {
    const double noon = read_moment("2026-05-16T12:00:00Z")->unix_s;
    for (const char* text : {"2026-05-16T14:00:00+02:00", "2026-05-16 07:00:00-0500", "2026-05-16T12:00:00 UTC",
                             "2026-05-16T14:00:00+02"}) {
        ASSERT_TRUE(read_moment(text)) << text;
        EXPECT_DOUBLE_EQ(read_moment(text)->unix_s, noon) << text;
        EXPECT_TRUE(read_moment(text)->zone_known) << text;
    }
    EXPECT_FALSE(read_moment("2026-05-16 12:00:00")->zone_known);
    for (const char* text :
         {"16-May-2026 12:00:00.000", "16.05.2026, 12:00", "2026/05/16-12:00:00", "May 16, 2026 12:00:00 PM",
          "Sat May 16 14:00:00 GMT+02:00 2026", "Sat May 16 12:00:00 CET 2026", "16 août 2026 12:00"}) {
        ASSERT_TRUE(read_moment(text)) << text;
        const double later = std::string_view(text).find("ao") == std::string_view::npos ? 0.0 : 92.0 * 86400.0;
        EXPECT_DOUBLE_EQ(read_moment(text)->unix_s, noon + later) << text;
    }
}

TEST(Day, HasNoMoreThanItsHours) {
    EXPECT_EQ(moment_of("2026-05-16 23:59").value(), 20589.0 * 86400.0 + 86340.0);
    EXPECT_EQ(moment_of(" 2026-05-16T10:20:30Z").value(), 20589.0 * 86400.0 + 37230.0);
    EXPECT_EQ(moment_of("2026-05-16").value(), 20589.0 * 86400.0);
    for (const char* text : {"2026-05-16 24:00", "2026-05-16 25:00", "2026-05-16T24:00:00Z", "2026-05-16 100:00"}) {
        ASSERT_FALSE(moment_of(text).ok()) << text;
        EXPECT_EQ(moment_of(text).error().what, "\"" + std::string(text) + "\" has no time of day");
    }
    EXPECT_TRUE(read_moment("2026-05-16 25:00")) << "a recording may go on past midnight";
}

TEST(AngleText, ReadsEveryWayOfWriting) {
    for (const char* text : {"54.9N", "N54.9", "54°54.0'N", "54° 54' 00.0\" N", "54 54.0 N", "54.9°"})
        EXPECT_NEAR(read_angle(text, '.').value(), 54.9, 1e-12) << text;
    EXPECT_NEAR(read_angle("2°21'00\"W", '.').value(), -2.35, 1e-12);
    EXPECT_NEAR(read_angle("54,9N", ',').value(), 54.9, 1e-12);
    EXPECT_NEAR(read_angle("2°21' O", '.', Letters::o_is_east).value(), 2.35, 1e-12);
    EXPECT_NEAR(read_angle("2°21' O", '.', Letters::o_is_west).value(), -2.35, 1e-12);
    EXPECT_NEAR(read_angle("54.9Z", '.', Letters::o_is_east).value(), -54.9, 1e-12);
    EXPECT_FALSE(read_angle("2°21' O", '.')) << "whose O it is, is not known";
    for (const char* text : {"", "54.9", "N", "54°61'N", "54.5°30'N", "54°54'54'54'N", "north"})
        EXPECT_FALSE(read_angle(text, '.')) << text;
}

TEST(NmeaSentence, TakesPublishedExamples) {
    const auto gga = read_sentence("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47");
    EXPECT_EQ(gga.fault, SentenceFault::none);
    EXPECT_EQ(gga.sentence.kind, "GGA");
    EXPECT_NEAR(nmea_angle(gga.sentence.field(1), "N", 2).value(), 48.1173 * base::pi / 180.0, 1e-12);
    EXPECT_NEAR(nmea_angle(gga.sentence.field(3), "E", 3).value(), (11.0 + 31.0 / 60.0) * base::pi / 180.0, 1e-12);
    EXPECT_DOUBLE_EQ(nmea_time("123519").value(), 45319.0);
    EXPECT_EQ(read_sentence("$GPGSA,A,3,04,05,,09,12,,,24,,,,,2.5,1.3,2.1*39").fault, SentenceFault::none);
    EXPECT_EQ(read_sentence("$GPGSA,A,3,04,05,,09,12,,,24,,,,,2.5,1.3,2.2*39").fault, SentenceFault::wrong_sum);
    EXPECT_EQ(read_sentence("$GPGSA,A,3").fault, SentenceFault::without_sum);
    EXPECT_FALSE(nmea_angle("4860.000", "N", 2));
    EXPECT_FALSE(nmea_angle("4807.038", "E", 2));
    EXPECT_FALSE(nmea_time("246000"));
}

TEST(Encoding, IsToldFromBytesAlone) {
    EXPECT_EQ(detect_encoding("time,speed\n1,2\n"), Encoding::utf8);
    EXPECT_EQ(detect_encoding("m/s\xC2\xB2"), Encoding::utf8);
    EXPECT_EQ(detect_encoding("m/s\xB2,x"), Encoding::windows_1252);
    EXPECT_EQ(detect_encoding(std::string_view("t\0i\0m\0e\0", 8)), Encoding::utf16_little);
    EXPECT_EQ(detect_encoding(std::string_view("\0t\0i\0m\0e", 8)), Encoding::utf16_big);
    EXPECT_EQ(to_utf8("\x80 \xB2 \xFC", Encoding::windows_1252).text, "€ ² ü");
    EXPECT_EQ(to_utf8(std::string_view("\x3D\xD8\x97\xDE", 4), Encoding::utf16_little).text, "\xF0\x9F\x9A\x97");
    EXPECT_EQ(to_utf8(std::string_view("\x3D\xD8", 2), Encoding::utf16_little).damaged, 1U);
}

// Characters of one and of two units, an end that is cut, and a half that stands alone.
TEST(Encoding, ReadsUtf16InPiecesAsInOne) {
    const std::string_view text("\x41\0\x3D\xD8\x97\xDE\x42\0\x97\xDE\x3D\xD8\x43\0\x3D\xD8\x97", 17);
    const Utf8Text whole = to_utf8(text, Encoding::utf16_little);
    EXPECT_EQ(whole.damaged, 4U);
    for (std::size_t cut = 4; cut <= text.size(); ++cut) {
        Utf8Text pieces;
        const std::size_t first = whole_characters(text.substr(0, cut), Encoding::utf16_little);
        EXPECT_GT(first, 0U);
        append_utf16(text.substr(0, first), Encoding::utf16_little, pieces);
        append_utf16(text.substr(first), Encoding::utf16_little, pieces);
        EXPECT_EQ(pieces.text, whole.text) << cut;
        EXPECT_EQ(pieces.damaged, whole.damaged) << cut;
    }
}

TEST(ColumnValues, TellsPackedFormsFromPlainNumbers) {
    EXPECT_TRUE(looks_like_packed_clock({100003, 100103, 100203, 100303, 100403, 100503}));
    EXPECT_FALSE(looks_like_packed_clock({36003, 36063, 36123, 36183, 36243, 36303}));
    EXPECT_FALSE(looks_like_packed_clock({100003, 100004, 100005}));
    EXPECT_TRUE(looks_like_degrees_minutes({5207.4, 5207.5}));
    EXPECT_FALSE(looks_like_degrees_minutes({52.074, 52.075}));
    EXPECT_FALSE(looks_like_degrees_minutes({5267.4}));
}

TEST(Facts, KnowKeysInSixLanguages) {
    for (const char* key : {"Driver", "Fahrer", "Pilote", "Piloto", "Pilota", "Rijder"})
        EXPECT_EQ(understand({{key, "Mara Quill"}}).driver, "Mara Quill") << key;
    EXPECT_EQ(read_fact("Driver: Mara: Quill", {','}), std::pair(std::string("Driver"), std::string("Mara: Quill")));
    EXPECT_EQ(read_fact("# Car = Hatch", {','}), std::pair(std::string("Car"), std::string("Hatch")));
    EXPECT_EQ(read_fact("Note;one;two", {';'}), std::pair(std::string("Note"), std::string("one two")));
    EXPECT_EQ(understand({{"Date", "2026-05-16"}, {"Time", "10:20"}}).start_unix_s, 20589.0 * 86400.0 + 37200.0);
    EXPECT_EQ(understand({{"Driver", "Mara\nQuill"}}).driver, "Mara Quill");
    EXPECT_EQ(understand({{"Sample rate", "50 Hz"}}).row_rate_hz, 50.0);
    EXPECT_FALSE(understand({{"Sample rate", "often"}}).row_rate_hz);
}

} // namespace
} // namespace lapwright::import
