// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright sheet … --out SHEET.html`: one whole file whose numbers are those of the JSON documents.
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "tests/core/sheet/html_reader.h"
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <cmath>
#include <iterator>

namespace lapwright::end_to_end {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using ::testing::HasSubstr;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

sheet::ReadBack written(const std::vector<std::string>& further = {}) {
    const Scratch scratch;
    const std::string path = (scratch.folder() / "sheet.html").string();
    std::vector<std::string> words{"sheet", hatch, coupe, "--out", path};
    words.insert(words.end(), further.begin(), further.end());
    const Outcome result = run(words);
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(std::distance(fs::directory_iterator(scratch.folder()), fs::directory_iterator()), 1);
    return sheet::read_html(read(path));
}

// "A 0.44 ±0.03" is 0.44 and "B 0.4" is -0.4, each rounded to its own last digit.
void expect_rounded(const std::string& text, double exact) {
    const std::size_t begin = text.find_first_of("0123456789"); // the blank after the letter keeps both on one line
    const std::string number = text.substr(begin, text.find_first_of(" \n", begin) - begin);
    const auto point = number.find('.');
    const double decimals = point == std::string::npos ? 0.0 : static_cast<double>(number.size() - point - 1);
    const double size = base::parse_number(number).value_or(NAN);
    EXPECT_NEAR(text.front() == 'B' ? -size : size, exact, 0.501 * std::pow(10.0, -decimals)) << text;
}

TEST(HtmlSheet, ItsGainsAndLapTimesAreThoseOfCompare) {
    const sheet::ReadBack html = written({"--all-segments"});
    ASSERT_TRUE(html.well_formed) << html.problem;
    const json compare = document({"compare", hatch, coupe, "--json"});
    std::vector<double> expected;
    for (const bool all : {false, true})
        for (const json& segment : compare["segments"])
            if (all || segment["kind"] == "corner") expected.push_back(segment["gain_s"]);
    const auto data = html.named("data");
    ASSERT_EQ(data.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(base::parse_number(data[i].attributes.at("value")), expected[i]);
        expect_rounded(data[i].text, expected[i]);
    }
    EXPECT_THAT(html.named("p", "side").at(0).text, HasSubstr(base::lap_time_text(compare["a"]["time_s"])));
    EXPECT_THAT(html.named("p", "side").at(1).text, HasSubstr(base::lap_time_text(compare["b"]["time_s"])));
}

TEST(HtmlSheet, ItsCausesAreThoseOfCauses) {
    const sheet::ReadBack html = written();
    const json total = document({"causes", hatch, coupe, "--json"})["total"];
    const std::string causes = html.named("table", "causes").at(0).text;
    for (const char* key : {"drag", "power", "downforce"}) {
        const auto at = causes.rfind(key); // a sum bears its parts' names and goes before them
        ASSERT_NE(at, std::string::npos) << key << " in " << causes;
        const double value = total["causes"][key];
        const std::string row = causes.substr(at + std::string(key).size());
        const auto letter = row.find_first_not_of(" \n");
        expect_rounded(row.substr(letter), value);
    }
}

TEST(HtmlSheet, APlaceThatCannotBeWrittenIsSaid) {
    const Outcome result = run({"sheet", hatch, coupe, "--out", "/nowhere/sheet.html"});
    EXPECT_EQ(result.status, 1);
    EXPECT_THAT(result.err, HasSubstr("/nowhere/sheet.html: the sheet cannot be written"));
}

} // namespace
} // namespace lapwright::end_to_end
