// SPDX-License-Identifier: GPL-3.0-or-later
// Each rule against a small sample that breaks it, and one that keeps it: a rule that cannot fail guards nothing.
#include "tests/architecture/rules.h"

#include <gmock/gmock.h>

#include <string>
#include <vector>

namespace lapwright::architecture {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

const LayerTable table = parse_layers("core/base: \ncore/lap: core/base\ncore/comparison: core/base core/lap\n"
                                      "app/commands: core/base\nui/window: core/base\nui/plots: core/base\n");

std::vector<SourceFile> one(std::string path, std::string text) {
    return {{std::move(path), std::move(text)}};
}

TEST(IncludeRule, RefusesALaterStage) {
    EXPECT_THAT(check_includes(table, one("core/lap/a.cpp", "\n#include \"core/comparison/c.h\"\n")),
                ElementsAre("core/lap/a.cpp:2: core/lap may not include core/comparison"));
    EXPECT_THAT(check_includes(table, one("core/comparison/a.cpp", "#include \"core/lap/c.h\"\n#include <vector>\n")),
                IsEmpty());
}

TEST(IncludeRule, SeesAnyWayOfWritingIt) {
    EXPECT_THAT(check_includes(table, one("core/lap/a.cpp", "  #  include\"core/comparison/c.h\" // why\n")),
                ElementsAre("core/lap/a.cpp:1: core/lap may not include core/comparison"));
    EXPECT_THAT(check_includes(table, one("core/lap/a.cpp", "/* #include \"core/comparison/c.h\"\n*/\n")), IsEmpty());
}

TEST(IncludeRule, RefusesAPathThatIsNotFromTheRoot) {
    EXPECT_THAT(check_includes(table, one("core/lap/a.cpp", "#include \"lap.h\"\n")),
                ElementsAre("core/lap/a.cpp:1: \"lap.h\" is no path from the project's root into a layer"));
    EXPECT_THAT(check_includes(table, one("core/lap/a.cpp", "#include \"../base/x.h\"\n")).size(), 1U);
    EXPECT_THAT(check_includes(table, one("core/lap/a.cpp", "#include \"tests/truth/x.h\"\n")).size(), 1U);
}

TEST(IncludeRule, RefusesAFolderWithoutALayer) {
    EXPECT_THAT(check_includes(table, one("core/new/a.cpp", "")),
                ElementsAre("core/new/a.cpp: lies in no layer; name its folder in a layer() call"));
}

TEST(IncludeRule, TheProgramStartSeesCommandsAndWindowAlone) {
    EXPECT_THAT(
        check_includes(table, one("app/main.cpp", "#include \"app/commands/c.h\"\n#include \"ui/window/w.h\"\n")),
        IsEmpty());
    EXPECT_THAT(check_includes(table, one("app/main.cpp", "#include \"core/lap/lap.h\"\n")),
                ElementsAre("app/main.cpp:1: app may not include core/lap"));
}

TEST(ForeignIncludeRule, KeepsQtOutOfCoreAndThePlotsInTheirFolder) {
    EXPECT_THAT(check_foreign_includes(one("core/lap/a.cpp", "#include <QString>\n")),
                ElementsAre("core/lap/a.cpp:1: no Qt here: <QString>"));
    EXPECT_THAT(check_foreign_includes(one("app/commands/a.cpp", "#include <QtCore/QFile>\n")).size(), 1U);
    EXPECT_THAT(check_foreign_includes(one("ui/pages/a.cpp", "#include <qcustomplot.h>\n")),
                ElementsAre("ui/pages/a.cpp:1: qcustomplot.h belongs in ui/plots alone"));
    EXPECT_THAT(check_foreign_includes(one("ui/plots/a.cpp", "#include <qcustomplot.h>\n#include <QWidget>\n")),
                IsEmpty());
}

TEST(SimulatorRule, KeepsTheSimulatorToItself) {
    EXPECT_THAT(check_simulator(one("tests/truth/car.cpp", "#include \"core/base/units.h\"\n")),
                ElementsAre("tests/truth/car.cpp:1: the simulator shares no code with what it tests"));
    EXPECT_THAT(check_simulator(one("tests/truth/car.cpp", "#include \"tests/truth/car.h\"\n#include <cmath>\n")),
                IsEmpty());
    EXPECT_THAT(check_simulator(one("tests/truth/car_test.cpp", "#include \"core/base/units.h\"\n")), IsEmpty());
}

TEST(CallRule, FindsWhatAnswersByTheLocale) {
    for (const char* bad :
         {"double x = std::stod(s);", "double x = strtod (s, nullptr);", "x = atof(s);",
          "std::string s = std::to_string(1.5);", "setlocale(LC_ALL, \"\");", "std::snprintf(b, n, f, x);"}) {
        EXPECT_THAT(check_calls(one("core/lap/a.cpp", bad)).size(), 1U) << bad;
        EXPECT_THAT(check_calls(one("ui/pages/a.cpp", bad)), IsEmpty()) << bad;
    }
    for (const char* good : {"// std::stod(s)", "auto s = \"strtod(\";", "auto s = base::to_string(1.5);",
                             "my_strtod(s);", "auto s = R\"(atof(x))\";", "const int big = 1'000; // it's 'atof(x)'"}) {
        EXPECT_THAT(check_calls(one("core/lap/a.cpp", good)), IsEmpty()) << good;
    }
}

TEST(CallRule, FindsRandomWithoutASeed) {
    for (const char* bad :
         {"int x = rand();", "std::random_device d;", "std::mt19937 engine;", "std::mt19937_64 engine{};",
          "auto e = std::mt19937();", "std::default_random_engine e(1);"}) {
        EXPECT_THAT(check_calls(one("ui/pages/a.cpp", bad)).size(), 1U) << bad;
    }
    for (const char* good : {"std::mt19937_64 engine(options.seed);", "std::mt19937_64 engine{7};", "operand(x);",
                             "void draw(std::mt19937_64& engine);"}) {
        EXPECT_THAT(check_calls(one("core/lap/a.cpp", good)), IsEmpty()) << good;
    }
}

TEST(CallRule, FindsNamesInLocalLetters) {
    for (const char* bad : {"auto n = QFile::encodeName(path);", "return QFile::decodeName(name.c_str());",
                            "open(path.toLocal8Bit());", "auto s = QString::fromLocal8Bit(text);"}) {
        EXPECT_THAT(check_calls(one("ui/window/a.cpp", bad)).size(), 1U) << bad;
    }
    for (const char* good : {"return path.toStdString();", "models::file_name(path);", "// encodeName"}) {
        EXPECT_THAT(check_calls(one("ui/window/a.cpp", good)), IsEmpty()) << good;
    }
}

TEST(CallRule, FindsUsingNamespaceStd) {
    EXPECT_THAT(check_calls(one("core/lap/a.cpp", "int a;\n  using namespace std;\n")),
                ElementsAre("core/lap/a.cpp:2: using namespace std"));
    EXPECT_THAT(check_calls(one("core/lap/a.cpp", "using namespace std::chrono_literals;\n")), IsEmpty());
}

TEST(FormRule, WantsLicenceAndPurpose) {
    const std::string spdx = "// SPDX-License-Identifier: GPL-3.0-or-later\n";
    EXPECT_THAT(check_form(one("core/lap/a.h", "#pragma once\n// x\n")).size(), 1U);
    EXPECT_THAT(check_form(one("core/lap/a.h", "")).size(), 2U);
    EXPECT_THAT(check_form(one("core/lap/a.h", spdx + "#pragma once\n")),
                ElementsAre("core/lap/a.h:2: a header says here what it is for"));
    EXPECT_THAT(check_form(one("core/lap/a.h", spdx + "// A lap.\n#pragma once\n")), IsEmpty());
    EXPECT_THAT(check_form(one("packaging/a", "#!/usr/bin/env bash\n# SPDX-License-Identifier: GPL-3.0-or-later\n")),
                IsEmpty());
}

TEST(FormRule, RefusesLongFilesAndNotesToSelf) {
    std::string text = "// SPDX-License-Identifier: GPL-3.0-or-later\n";
    for (std::size_t i = 1; i < longest_file_lines; ++i) {
        text += "int i;\n";
    }
    EXPECT_THAT(check_form(one("core/lap/a.cpp", text)), IsEmpty());
    EXPECT_THAT(check_form(one("core/lap/a.cpp", text + "int last;\n")),
                ElementsAre("core/lap/a.cpp:401: longer than 400 lines"));
    EXPECT_THAT(check_form(one("core/lap/a.cpp", text.substr(0, 45) + "// FIXME soon\n")),
                ElementsAre("core/lap/a.cpp:2: a note to self is left: FIXME"));
}

TEST(ClassRule, LetsEachSystemHaveItsOwn) {
    const std::vector<SourceFile> two{{"core/platform/files_posix.cpp", "File::File(int x) {}\n"},
                                      {"core/platform/files_windows.cpp", "File::File(int x) {}\n"}};
    EXPECT_THAT(check_classes(two), IsEmpty());
}

TEST(ClassRule, RefusesAClassInTwoFiles) {
    const auto two = [](const std::string& other, const char* folder = "ui/pages") {
        return std::vector<SourceFile>{{"ui/pages/a.cpp", "Page::Page(int x) {}\nint Page::width() const {\n"},
                                       {std::string(folder) + "/b.cpp", other}};
    };
    for (const char* bad : {"void Page::show() {", "Page::~Page() = default;", "const std::vector<int>& Page::list() {",
                            "std::optional<X>\nPage::find(int x) {", "Page::Row& Page::row() {",
                            "bool Page::operator==(const Page& other) const {"}) {
        EXPECT_THAT(check_classes(two(bad)).size(), 1U) << bad;
        EXPECT_THAT(check_classes(two(bad, "ui/plots")), IsEmpty()) << bad; // another layer's namesake
    }
    for (const char* good : {"// void Page::show() {", "    Page::show(x);", "Page::Row row_of(int x) {",
                             "void use(Page::Row row) {", "void base::show() {", "constexpr auto f = &Page::show;"}) {
        EXPECT_THAT(check_classes(two(good)), IsEmpty()) << good;
    }
    EXPECT_THAT(check_classes(two("void Page::show() {")),
                ElementsAre("ui/pages/b.cpp:1: Page is implemented in ui/pages/a.cpp"));
}

} // namespace
} // namespace lapwright::architecture
