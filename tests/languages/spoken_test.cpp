// SPDX-License-Identifier: GPL-3.0-or-later
// The two sample sessions in each language: every page bears its words, no text is cut on a small screen, and nothing
// that core says of the laps is left in English.
#include "core/analysis/findings_of.h"
#include "core/base/number_text.h"
#include "core/recording/warning_words.h"
#include "core/sheet/html_sheet.h"
#include "tests/ui/fixture/room.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/worker.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/theme/elided_label.h"
#include "ui/window/actions.h"
#include "ui/window/debriefing.h"
#include "ui/window/language.h"
#include "ui/window/main_window.h"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QHeaderView>
#include <QMenu>
#include <QPushButton>
#include <QRegularExpression>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>

using namespace lapwright;

namespace {

// Words that neither German, French nor a name in the samples has.
const QStringList english{"the",    "is",   "are",   "of",  "and",  "with",    "from",
                          "cannot", "told", "worth", "lap", "laps", "quicker", "later"};

class Spoken : public testing::TestWithParam<const char*> {
  protected:
    void SetUp() override { window::speak(QLatin1String(GetParam())); }
    void TearDown() override {
        window.reset();
        window::speak(QStringLiteral("en"));
    }
    void show_window() {
        window = std::make_unique<window::MainWindow>(bridge::analysis_stages(), settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    void open_samples() {
        show_window();
        const QString samples = QStringLiteral(SAMPLE_SESSIONS "/");
        window->start({samples + "plover-saturday-2.csv", samples + "dunlin-saturday-2.txt"});
        ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }, 120'000));
        window->actions().show_causes->trigger(); // what explains a gap is worked out when it is looked at
        ASSERT_TRUE(fixture::wait_for([this] { return window->causes_page().explanation() != nullptr; }, 60'000));
        window->actions().show_compare->trigger();
        fixture::settle();
    }
    // What a source is called here; another word than in English.
    static QString spoken(const char* source) {
        const QString words = QCoreApplication::translate("Lapwright", source);
        EXPECT_NE(words, QString::fromUtf8(source)) << GetParam();
        return words;
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

QStringList texts_of(const QWidget& page) {
    QStringList texts;
    for (const auto* label : page.findChildren<QLabel*>())
        texts << label->text();
    for (const auto* label : page.findChildren<theme::ElidedLabel*>())
        texts << label->text();
    for (const auto* button : page.findChildren<QAbstractButton*>())
        texts << button->text();
    for (const auto* view : page.findChildren<QHeaderView*>())
        for (int i = 0; view->model() != nullptr && i < view->count(); ++i)
            texts << view->model()->headerData(i, view->orientation(), Qt::DisplayRole).toString();
    return texts;
}

void expect_no_english(const std::string& words) {
    for (const QString& word : english) {
        const QRegularExpression whole(QStringLiteral(R"(\b%1\b)").arg(word));
        EXPECT_FALSE(QString::fromStdString(words).contains(whole)) << word.toStdString() << " in: " << words;
    }
}

void expect_buttons_have_room(const QWidget& page) {
    for (const auto* button : page.findChildren<QPushButton*>())
        if (button->isVisible() && !button->text().isEmpty()) {
            EXPECT_GE(button->width(), button->sizeHint().width()) << button->text().toStdString();
        }
}

} // namespace

TEST_P(Spoken, TheStartPageBearsItsWords) {
    show_window();
    window->start({});
    window->sessions_page().start().set_samples(true);
    fixture::settle();
    EXPECT_THAT(texts_of(window->sessions_page()), testing::Contains(spoken("Try the sample sessions")));
    fixture::expect_room(*window);
    expect_buttons_have_room(*window);
    const auto* further_menus = window->findChild<QToolButton*>(QStringLiteral("qt_menubar_ext_button"));
    EXPECT_TRUE(further_menus == nullptr || !further_menus->isVisible()) << "a menu hides";
    for (const QMenu* menu : window->actions().menus())
        for (const QAction* action : menu->actions())
            expect_no_english(action->text().toStdString());
}

TEST_P(Spoken, EveryPageBearsItsWordsAndHasRoomForThem) {
    ASSERT_NO_FATAL_FAILURE(open_samples());
    EXPECT_THAT(texts_of(window->compare_page()), testing::Contains(spoken("Won by")));
    for (int segment = 0; segment < 6; ++segment) {
        SCOPED_TRACE(segment);
        window->compare_page().choose(segment);
        fixture::settle();
        fixture::expect_room(*window);
    }
    const auto look_at = [&](QAction* page) {
        SCOPED_TRACE(page->text().toStdString());
        page->trigger();
        fixture::settle();
        fixture::expect_room(*window);
        expect_buttons_have_room(*window);
    };
    look_at(window->actions().show_sessions);
    look_at(window->actions().show_causes);
    EXPECT_THAT(texts_of(window->causes_page()), testing::Contains(spoken("What the data say of each car")));
    look_at(window->actions().show_debrief);
    EXPECT_THAT(texts_of(window->debrief_page()), testing::Contains(spoken("&Notes, a line each")));
    EXPECT_LE(window->width(), 1366);
    EXPECT_LE(window->height(), 768);
}

TEST_P(Spoken, NothingThatIsSaidOfTheLapsIsEnglish) {
    ASSERT_NO_FATAL_FAILURE(open_samples());
    const analysis::Pairing& pairing = *window->compare_page().compared()->pairing;
    expect_no_english(pairing.headline.verdict);
    expect_no_english(pairing.headline.sentence);
    const auto& explanation = window->causes_page().explanation();
    for (const auto& finding : analysis::findings_of(pairing, explanation.get(), base::UnitSystem::metric, {}))
        for (const std::string* words : {&finding.claim, &finding.evidence, &finding.try_next})
            expect_no_english(*words);
    for (const std::string& warning : explanation->warnings)
        expect_no_english(warning);
    for (const auto& entry : window->sessions().now().entries())
        for (const auto& warning : entry.session->recording->warnings)
            expect_no_english(recording::sentence(warning));
    for (const auto& segment : pairing.comparison.segments)
        expect_no_english(segment.segment.name);
}

INSTANTIATE_TEST_SUITE_P(Languages, Spoken, testing::Values("de", "fr", "ja"),
                         [](const auto& language) { return std::string(language.param); });
