// SPDX-License-Identifier: GPL-3.0-or-later
// The HTML sheet read back: well-formed whatever a file said, nothing fetched, the exact gains inside.
#include "core/sheet/html_sheet.h"

#include "core/base/number_text.h"
#include "core/sheet/html_cursor.h"
#include "core/sheet/html_reader.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <limits>
#include <random>
#include <set>

namespace lapwright::sheet {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string hostile = "</p><script>alert('1')</script>&\"]]><!-- \x01";

Sheet invented(const std::string& words) {
    Sheet sheet;
    sheet.headline = words;
    sheet.sentence = words;
    sheet.place = words;
    sheet.side_a = words;
    sheet.side_b = words;
    sheet.plot = {{0, 10, 20, 30},
                  {100, 120, 90, 110},
                  {98, 121, 92, 108},
                  {0, 0.1, -0.2, 0.4},
                  {-0.1, 0, -0.3, 0.3},
                  {0.1, 0.2, -0.1, 0.5},
                  words,
                  {}};
    sheet.findings = {{words, words, words, words, Favours::a, 10, 20}, {words, words, "", words, Favours::b, 10, 20}};
    sheet.columns = {"", words, words, words};
    sheet.corners = {{{words, words, words, words}, 0.123456789012345, true}};
    sheet.segments = {{{words, words, words, words}, 0.123456789012345, true}, {{words, "B", "1", "2"}, -0.5, false}};
    sheet.segments.back().matters = true;
    sheet.segment_words = {words, words};
    sheet.driving = {{words, words, Favours::a}};
    sheet.map = {{0, 10, 20, 30}, {0, 50, 50, 0}, {0, 0, 80, 80}};
    sheet.plot.segment_names.assign(4, words);
    sheet.causes = {{words, words, Favours::b}};
    sheet.setup = {{words, words, Favours::neither}};
    sheet.notes = {words};
    sheet.remarks = {words};
    sheet.cautions = words;
    sheet.made_from = words;
    return sheet;
}

// RFC 4648, 10.
TEST(Markup, Base64OfTheStandardsOwnWords) {
    EXPECT_EQ(base64(""), "");
    EXPECT_EQ(base64("f"), "Zg==");
    EXPECT_EQ(base64("fo"), "Zm8=");
    EXPECT_EQ(base64("foo"), "Zm9v");
    EXPECT_EQ(base64("foob"), "Zm9vYg==");
    EXPECT_EQ(base64("fooba"), "Zm9vYmE=");
    EXPECT_EQ(base64("foobar"), "Zm9vYmFy");
    EXPECT_EQ(base64("\xff\xfe\xfb"), "//77");
}

TEST(HtmlSheet, StillsStandInsideTheFileWithTheirWords) {
    Sheet sheet = invented("words");
    EXPECT_THAT(html_sheet(sheet), Not(HasSubstr("img-src")));
    EXPECT_TRUE(read_html(html_sheet(sheet)).named("section", "stills").empty());
    sheet.stills = {{hostile, {"foobar", 96, 54, hostile}, {"", 0, 0, "no video of B"}},
                    {"Pin", {"f", 10, 20, "A"}, {"fo", 30, 40, "B"}}};
    const ReadBack read = read_html(html_sheet(sheet));
    ASSERT_TRUE(read.well_formed) << read.problem;
    const auto pictures = read.named("img");
    ASSERT_EQ(pictures.size(), 3U);
    EXPECT_EQ(pictures[0].attributes.at("src"), "data:image/jpeg;base64,Zm9vYmFy");
    EXPECT_EQ(pictures[0].attributes.at("width"), "96");
    EXPECT_EQ(pictures[0].attributes.at("height"), "54");
    EXPECT_EQ(pictures[2].attributes.at("src"), "data:image/jpeg;base64,Zm8=");
    EXPECT_THAT(read.named("section", "stills").at(0).text, HasSubstr("no video of B"));
    EXPECT_THAT(html_sheet(sheet), HasSubstr("; img-src data:\""));
}

TEST(HtmlSheet, IsWellFormedWhateverAFileSaid) {
    const ReadBack read = read_html(html_sheet(invented(hostile), {false, true}));
    ASSERT_TRUE(read.well_formed) << read.problem;
    std::string shown = hostile;
    shown.replace(shown.find('\x01'), 1, "\xEF\xBF\xBD");
    EXPECT_EQ(read.named("h1").at(0).text, shown);
    EXPECT_EQ(read.named("p", "claim").at(0).text, shown);
    EXPECT_EQ(read.named("ul", "notes").at(0).text, "\n" + shown + "\n");
    const std::set<std::string> known{"html",   "head",   "meta",    "title",   "style", "body",  "main",  "header",
                                      "script", "figure", "details", "summary", "span",  "h1",    "h2",    "p",
                                      "svg",    "rect",   "circle",  "text",    "line",  "path",  "g",     "ol",
                                      "ul",     "li",     "div",     "section", "table", "thead", "tbody", "tr",
                                      "th",     "td",     "data",    "footer"};
    for (const Element& element : read.elements)
        EXPECT_TRUE(known.contains(element.name)) << element.name;
}

TEST(HtmlSheet, FetchesNothingAndRunsItsOwnScriptAlone) {
    const ReadBack hostile_read = read_html(html_sheet(invented(hostile), {false, true}));
    ASSERT_EQ(hostile_read.named("script").size(), 1U);
    EXPECT_EQ(hostile_read.named("script").at(0).text, cursor_script) << "whatever a file said";
    std::string html = html_sheet(invented("words"), {true, true});
    html.erase(html.find("<script"), 7);
    for (const char* way :
         {"://", "url(", "@import", "src=", "href", "<script", "<link", "<object", "<iframe", "onload"})
        EXPECT_THAT(html, Not(HasSubstr(way)));
    EXPECT_THAT(html, HasSubstr("default-src 'none'"));
}

TEST(HtmlSheet, KeepsTheExactGains) {
    const ReadBack read = read_html(html_sheet(invented("words"), {false, true}));
    std::vector<double> gains;
    for (const Element& data : read.named("data"))
        gains.push_back(base::parse_number(data.attributes.at("value")).value());
    EXPECT_EQ(gains, (std::vector<double>{0.123456789012345, 0.123456789012345, -0.5}));
}

TEST(HtmlSheet, HasASecondPageOnDemandAndThePaperThatWasAsked) {
    EXPECT_TRUE(read_html(html_sheet(invented("words"))).named("section", "second").empty());
    EXPECT_EQ(read_html(html_sheet(invented("words"), {false, true})).named("section", "second").size(), 1U);
    EXPECT_THAT(html_sheet(invented("words")), HasSubstr("size: A4 portrait"));
    EXPECT_THAT(html_sheet(invented("words"), {true, false}), HasSubstr("size: letter portrait"));
}

// What the cursor tells, for every place that it can stand at.
TEST(HtmlSheet, KnowsBothSpeedsAndTheGapAtEveryPlace) {
    const ReadBack read = read_html(html_sheet(invented("words")));
    const std::string words = read.named("figure", "plots").at(0).attributes.at("data-words");
    EXPECT_THAT(words, HasSubstr("0 m, words · A 100.0, B 98.0 words · level"));
    EXPECT_THAT(words, HasSubstr("30 m, words · A 110.0, B 108.0 words · A ahead 0.40\u00A0s ±0.10"));
    EXPECT_EQ(read.named("svg", "plot").size(), 2U) << "one for a phone";
    EXPECT_EQ(read.named("details").size(), 2U);
}

TEST(HtmlSheet, AGainWithinItsErrorHasNoColourOfAnyone) {
    Sheet sheet = invented("words");
    for (const Favours favours : {Favours::a, Favours::b, Favours::neither}) {
        sheet.corners.front().favours = favours;
        const ReadBack read = read_html(html_sheet(sheet));
        const auto bars = read.named("svg", "bar");
        ASSERT_FALSE(bars.empty());
        const bool coloured = std::ranges::any_of(read.elements, [&](const Element& e) {
            const auto fill = e.attributes.find("fill");
            return e.name == "rect" && fill != e.attributes.end() &&
                   (fill->second == colour_text(colours::blue_a) || fill->second == colour_text(colours::vermilion_b));
        });
        EXPECT_EQ(coloured, favours != Favours::neither);
    }
}

TEST(HtmlSheet, LiftsThePenOverWhatIsNoNumber) {
    Sheet sheet = invented("words");
    sheet.plot.speed_a[1] = std::numeric_limits<double>::quiet_NaN();
    sheet.plot.gap_s.assign(4, std::numeric_limits<double>::quiet_NaN());
    const ReadBack read = read_html(html_sheet(sheet));
    const std::string path = read.named("path", "speed-a").at(0).attributes.at("d");
    EXPECT_EQ(std::ranges::count(path, 'M'), 2);
    EXPECT_EQ(std::ranges::count(path, 'L'), 1);
    EXPECT_EQ(read.named("path", "gap").at(0).attributes.at("d"), "");
}

TEST(HtmlSheet, IsStillASheetWithNothingToSay) {
    EXPECT_TRUE(read_html(html_sheet({})).well_formed);
    EXPECT_TRUE(read_html(html_sheet({})).named("svg").empty());
}

TEST(HtmlSheet, IsChosenByTheEnding) {
    for (const char* name : {"a.html", "a.HTM", "/b.pdf/a.Html"})
        EXPECT_TRUE(names_html(name)) << name;
    for (const char* name : {"a.pdf", "html", "a.html.pdf", ""})
        EXPECT_FALSE(names_html(name)) << name;
}

// Any bytes at all: what comes out can be read, and is the same text where it was text.
TEST(Markup, AnyBytesBecomeTextThatAParserTakes) {
    std::mt19937 random(20261125);
    std::uniform_int_distribution<int> byte(0, 255);
    std::uniform_int_distribution<int> length(0, 40);
    for (int round = 0; round < 2000; ++round) {
        std::string bytes(static_cast<std::size_t>(length(random)), ' ');
        for (char& letter : bytes)
            letter = static_cast<char>(byte(random));
        const std::string safe = escaped(bytes);
        const ReadBack read = read_html("<p title=\"" + safe + "\">" + safe + "</p>");
        ASSERT_TRUE(read.well_formed) << round << ": " << read.problem;
    }
    const std::string text = "Größe · 1 m² — ±0.03 \xF0\x9F\x8F\x81";
    EXPECT_EQ(read_html("<p>" + escaped(text) + "</p>").elements.at(0).text, text);
}

// Ill-formed sequences of The Unicode Standard 15.0, 3.9, table 3-8 and after: too long, surrogates, beyond the last
// plane, cut short.
TEST(Markup, RefusesWhatIsNoUtf8) {
    for (const char* bytes :
         {"\xC0\xAF", "\xE0\x80\xBF", "\xF0\x81\x82\x41", "\xED\xA0\x80", "\xF4\x91\x92\x93", "\xE1\x80"})
        EXPECT_THAT(escaped(bytes), testing::StartsWith("\xEF\xBF\xBD")) << bytes;
}

} // namespace
} // namespace lapwright::sheet
