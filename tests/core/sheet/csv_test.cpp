// SPDX-License-Identifier: GPL-3.0-or-later
// What is written is read back by Python's csv module, a reader that shares nothing with the writer.
#include "core/sheet/csv.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <gmock/gmock.h>
#include <random>
#include <unistd.h>

namespace lapwright::sheet {
namespace {

constexpr const char* reader = R"(import csv, sys
with open(sys.argv[1], newline='', encoding='utf-8', errors='surrogateescape') as f:
    for row in csv.reader(f, strict=True):
        print(','.join(c.encode('utf-8', 'surrogateescape').hex() for c in row)))";

std::string hex(const std::string& bytes) {
    std::string text;
    for (const char byte : bytes) {
        std::array<char, 3> digits{};
        std::snprintf(digits.data(), digits.size(), "%02x", static_cast<unsigned>(static_cast<unsigned char>(byte)));
        text += digits.data();
    }
    return text;
}

// A line a row, cells in hexadecimal digits with commas between.
std::string read_by_python(const std::string& csv) {
    namespace fs = std::filesystem;
    const std::string stem = (fs::temp_directory_path() / ("lapwright-csv-" + base::integer_text(::getpid()))).string();
    EXPECT_TRUE(base::write_whole_file(stem + ".csv", csv, "the table"));
    EXPECT_TRUE(base::write_whole_file(stem + ".py", reader, "the reader"));
    FILE* pipe = ::popen(("python3 " + stem + ".py " + stem + ".csv 2>&1").c_str(), "r");
    std::string text;
    std::array<char, 4096> block{};
    for (std::size_t n = 0; (n = std::fread(block.data(), 1, block.size(), pipe)) > 0;)
        text.append(block.data(), n);
    EXPECT_EQ(::pclose(pipe), 0) << text;
    fs::remove(stem + ".csv");
    fs::remove(stem + ".py");
    return text;
}

TEST(Csv, AClipboardsCellsStayInTheirPlaces) {
    const Table table{{"lap", "why not"},
                      {{Number{"-4"}, std::string("held\tup\nby =1")}, {Number{""}, std::string("=1")}}};
    EXPECT_EQ(tab_text(table), "lap\twhy not\n-4\theld up by =1\n\t'=1\n");
}

TEST(Csv, AnyTextComesBackAndNoneOfItCouldRun) {
    std::mt19937 random(20261125);
    const std::string letters = "=+-@\t\r\n\",;' aZ9|\xC3\xA9\xEF\xBC\x9D";
    std::uniform_int_distribution<std::size_t> letter(0, letters.size() - 1);
    std::uniform_int_distribution<int> length(0, 12);
    Table table{{"a", "b", "c"}, {}};
    std::string expected = hex("a") + "," + hex("b") + "," + hex("c") + "\n";
    for (int row = 0; row < 3000; ++row) {
        std::vector<Cell> cells;
        for (int column = 0; column < 3; ++column) {
            std::string text;
            for (int i = length(random); i > 0; --i)
                text += letters[letter(random)];
            const std::string written = harmless(text);
            const std::string start = written.substr(std::min(written.find_first_not_of(' '), written.size()));
            EXPECT_TRUE(start.empty() || std::string("=+-@\t\r\n").find(start.front()) == std::string::npos) << text;
            EXPECT_TRUE(written == text || written == "'" + text);
            expected += (column > 0 ? "," : "") + hex(written);
            cells.emplace_back(std::move(text));
        }
        expected += "\n";
        table.rows.push_back(std::move(cells));
    }
    EXPECT_EQ(read_by_python(csv_text(table)), expected);
}

// The attacks that OWASP's page names, and blanks before them.
TEST(Csv, FormulasAreMadeHarmless) {
    for (const std::string text :
         {"=1+2", "=1+2\";=1+2", "=1+2'\" ;,=1+2", "+1", "-1", "@SUM(1)", "\t=1", "\r=1", "\n=1", "  =1",
          "\xEF\xBC\x9D"
          "1"})
        EXPECT_EQ(harmless(text), "'" + text);
    EXPECT_EQ(harmless(std::string("\0=1", 3)), std::string("'\0=1", 4));
    for (const std::string text : {"Sweep", "", " ", "9 = 9", "'=1", "ü"})
        EXPECT_EQ(harmless(text), text);
}

TEST(Csv, QuotesAsRfc4180SaysAndKeepsNumbersBare) {
    EXPECT_EQ(csv_text({{"segment", "gain (s)"}, {{"The \"Bowl\", out", Number{"-0.25"}}, {"-0.25", Number{}}}}),
              "\"segment\",\"gain (s)\"\r\n\"The \"\"Bowl\"\", out\",-0.25\r\n\"'-0.25\",\r\n");
}

} // namespace
} // namespace lapwright::sheet
