// SPDX-License-Identifier: GPL-3.0-or-later
// Decimal marks, places in sentences, and the choice of the language.
#include "core/base/error.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/sheet/csv.h"
#include "core/sheet/tables.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "ui/models/text.h"
#include "ui/theme/figure_box.h"
#include "ui/window/language.h"

#include <QTest>
#include <gmock/gmock.h>
#include <random>

using namespace lapwright;
using testing::HasSubstr;
using testing::Not;

namespace {

class Figures : public testing::Test {
  protected:
    void TearDown() override { window::speak(QStringLiteral("en")); }
};

} // namespace

TEST_F(Figures, HaveTheDecimalMarkOfTheLanguage) {
    std::mt19937_64 engine(20261130);
    for (int i = 0; i < 200; ++i) {
        const double value = std::ldexp(static_cast<double>(engine() >> 11U), -48) - 16.0;
        const int decimals = static_cast<int>(engine() % 4U);
        window::speak(QStringLiteral("en"));
        const std::string english = base::shown_text(value, decimals);
        EXPECT_EQ(english, base::fixed_text(value, decimals));
        for (const char* const code : {"de", "fr", "ja"}) {
            window::speak(QLatin1String(code));
            std::string shown = base::shown_text(value, decimals);
            const bool comma = shown.find(',') != std::string::npos;
            EXPECT_EQ(comma, decimals > 0 && code != std::string("ja")) << code << ' ' << shown;
            std::ranges::replace(shown, ',', '.');
            EXPECT_EQ(shown, english);
            EXPECT_EQ(base::fixed_text(value, decimals), english) << "what programs read";
        }
    }
}

// Dates, plots of others and the sheet's own mark go by it.
TEST_F(Figures, TheLanguageIsKnownByItsCode) {
    for (const char* const code : {"de", "en", "fr", "ja"}) {
        window::speak(QLatin1String(code));
        EXPECT_STREQ(base::language_code(), code);
        EXPECT_EQ(models::shown_locale().decimalPoint(), QString(QLatin1Char(base::decimal_mark()))) << code;
    }
}

TEST_F(Figures, ATableForOtherProgramsIsTheSameInEveryLanguage) {
    const auto pairing = fixture::pairing({.points = 601});
    const auto csv = [&] {
        return sheet::csv_text(sheet::segments_table(pairing->comparison.segments, base::UnitSystem::us));
    };
    const std::string english = csv();
    EXPECT_THAT(english, HasSubstr("."));
    for (const char* const code : {"de", "fr", "ja"}) {
        window::speak(QLatin1String(code));
        EXPECT_EQ(csv(), english) << code;
    }
}

TEST_F(Figures, AreTypedWithEitherMark) {
    for (const char* const code : {"en", "de"}) {
        window::speak(QLatin1String(code));
        theme::FigureBox box;
        box.setDecimals(3);
        box.setRange(-1e5, 1e5);
        box.setSuffix(QStringLiteral(" s"));
        box.setValue(12345.5);
        EXPECT_EQ(box.text().contains(QLatin1Char(',')), code == std::string("de"));
        for (const char* const typed : {"1.25", "1,25"}) {
            box.selectAll();
            QTest::keyClicks(&box, QLatin1String(typed));
            QTest::keyClick(&box, Qt::Key_Return);
            EXPECT_DOUBLE_EQ(box.value(), 1.25) << code << ' ' << typed;
            box.setValue(0.0);
        }
    }
}

TEST_F(Figures, ValuesTakeTheirPlacesAndAreNotLookedInto) {
    EXPECT_EQ(base::said("%2 before %1", {"%2", "B"}), "B before %2");
    EXPECT_EQ(base::said("5 % of %1", {"A"}), "5 % of A");
    window::speak(QStringLiteral("de"));
    EXPECT_EQ(base::said("no source of this tree says %1", {"x"}), "no source of this tree says x");
}

TEST_F(Figures, AnErrorIsSaidInTheLanguageOfTheWindow) {
    const base::Error error{base::ErrorCode::no_laps, {"a.csv", 7, "speed"}, "the timing line is never crossed", ""};
    const std::string english = base::one_line(error);
    EXPECT_EQ(english, "a.csv:7: column \"speed\": the timing line is never crossed");
    for (const char* const code : {"de", "fr", "ja"}) {
        window::speak(QLatin1String(code));
        EXPECT_THAT(base::one_line(error), HasSubstr("a.csv:7: "));
        EXPECT_THAT(base::one_line(error), Not(HasSubstr("never"))) << code;
    }
}

TEST_F(Figures, TheLanguageIsTheFirstOfTheSystemsThatIsSpoken) {
    EXPECT_EQ(window::language_of({"de-AT", "en"}), "de");
    EXPECT_EQ(window::language_of({"nl-NL", "fr", "de"}), "fr");
    EXPECT_EQ(window::language_of({"ja_JP"}), "ja");
    EXPECT_EQ(window::language_of({"en-GB", "de"}), "en");
    EXPECT_EQ(window::language_of({"deu", "jam-JM", "C"}), "en") << "three letters are another language";
    EXPECT_EQ(window::language_of({}), "en");
}

TEST_F(Figures, AMenusEntryIsNamedWithoutItsLetter) {
    EXPECT_EQ(models::without_mnemonic(QStringLiteral("&Open files…")), QStringLiteral("Open files…"));
    EXPECT_EQ(models::without_mnemonic(QStringLiteral("開く(&O)…")), QStringLiteral("開く…"));
    EXPECT_EQ(models::without_mnemonic(QStringLiteral("Gap (s)")), QStringLiteral("Gap (s)"));
}
