// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright sheet` without a display: the PDF's text, read back with poppler's pdftotext, says what `compare --json`
// says.
#include "core/base/display.h"
#include "core/base/number_text.h"
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

std::string text_of(const std::filesystem::path& pdf) {
    const std::filesystem::path text = pdf.string() + ".text";
    const std::string command = "pdftotext -layout '" + pdf.string() + "' '" + text.string() + "'";
    EXPECT_EQ(std::system(command.c_str()), 0) << command; // NOLINT(cert-env33-c): a test's own command
    return read(text);
}

TEST(Sheet, SaysWhatTheComparisonSays) {
    const Scratch scratch;
    const auto pdf = scratch.folder() / "sheet.pdf";
    const Outcome outcome = run({"sheet", hatch, coupe, "--out", pdf.string()});
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_EQ(outcome.out, "");
    const std::string text = text_of(pdf);
    const json compared = document({"compare", "--json", hatch, coupe});
    for (const char* side : {"a", "b"})
        EXPECT_THAT(text, HasSubstr(base::lap_time_text(compared[side]["time_s"].get<double>())));
    for (const json& segment : compared["segments"]) {
        if (segment["kind"] != "corner") continue;
        const double gain = segment["gain_s"].get<double>();
        EXPECT_THAT(text, HasSubstr((gain >= 0.0 ? "A " : "B ") + base::fixed_text(std::abs(gain), 2)))
            << segment["name"];
    }
}

TEST(Sheet, AFolderThatDoesNotExistIsOneLineAndStatusOne) {
    const Scratch scratch;
    const auto pdf = scratch.folder() / "missing" / "sheet.pdf";
    const Outcome outcome = run({"sheet", hatch, coupe, "--out", pdf.string()});
    EXPECT_EQ(outcome.status, 1);
    EXPECT_EQ(outcome.out, "");
    EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 1) << outcome.err;
    EXPECT_THAT(outcome.err, HasSubstr(" — "));
    EXPECT_FALSE(std::filesystem::exists(pdf.parent_path()));
}

} // namespace
} // namespace lapwright::end_to_end
