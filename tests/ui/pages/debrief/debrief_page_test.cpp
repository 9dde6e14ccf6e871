// SPDX-License-Identifier: GPL-3.0-or-later
// The Debrief page inside the window: notes on the sheet, paper, pages, and the PDF.
#include "ui/pages/debrief/debrief_page.h"

#include "tests/ui/fixture/explanation_fixture.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/pages/debrief/sheet_view.h"
#include "ui/window/actions.h"
#include "ui/window/debriefing.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QPlainTextEdit>
#include <QProcess>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;
using testing::Not;

namespace {

class Debrief : public testing::Test {
  protected:
    void SetUp() override { open_window(); }

    void open_window() {
        window.reset();
        bridge::Stages stages;
        stages.load = [](const workspace::Origin& origin, const std::optional<track::TrackRecord>&,
                         const base::Progress&) -> base::Result<bridge::SessionPointer> {
            const std::string& path = std::get<std::string>(origin);
            return fixture::session(path, path.find("one") != std::string::npos ? "Ines" : "Tomas", "hatch", 90.0);
        };
        stages.compare = [](const bridge::Wanted&, const base::Progress&) -> base::Result<workspace::ComparedPointer> {
            return workspace::compared(fixture::pairing());
        };
        stages.explain = [](const bridge::Question& question,
                            const base::Progress&) -> base::Result<bridge::ExplanationPointer> {
            return fixture::explanation(*question.compared->pairing);
        };
        window = std::make_unique<window::MainWindow>(stages, settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
        window->start({path("one.csv"), path("two.csv")});
        ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
        fixture::settle();
        QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
        ASSERT_TRUE(window->debrief_page().isVisible());
        fixture::settle();
    }
    [[nodiscard]] QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }
    pages::DebriefPage& page() { return window->debrief_page(); }
    std::string saved() {
        EXPECT_TRUE(window->debriefing().save(path("sheet.pdf")));
        return read({QStringLiteral("pdftotext"), QStringLiteral("-layout"), path("sheet.pdf"), QStringLiteral("-")});
    }
    static std::string read(QStringList command) {
        QProcess reader;
        const QString program = command.takeFirst();
        reader.start(program, command);
        EXPECT_TRUE(reader.waitForFinished(20000));
        return QString::fromUtf8(reader.readAllStandardOutput()).simplified().toStdString();
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

} // namespace

TEST_F(Debrief, NotesTypedHereStandOnTheSheetAndAreKeptForThePairing) {
    page().notes_field().setFocus();
    QTest::keyClicks(&page().notes_field(), QStringLiteral("Pin: missed the apex on lap 6"));
    EXPECT_THAT(saved(), HasSubstr("Pin: missed the apex on lap 6"));
    open_window();
    EXPECT_EQ(page().notes(), QStringList{QStringLiteral("Pin: missed the apex on lap 6")});
    EXPECT_THAT(saved(), HasSubstr("Pin: missed the apex on lap 6"));
}

TEST_F(Debrief, TheEndingMakesItHtmlWithTheSameNotesAndPages) {
    QTest::keyClicks(&page().notes_field(), QStringLiteral("Pin: <missed> & lost"));
    QTest::keyClick(&page().all_segments_field(), Qt::Key_Space);
    ASSERT_TRUE(window->debriefing().save(path("sheet.html")));
    QFile file(path("sheet.html"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const std::string html = file.readAll().toStdString();
    EXPECT_THAT(html, HasSubstr("<li>Pin: &lt;missed&gt; &amp; lost</li>"));
    EXPECT_THAT(html, HasSubstr("All segments"));
    EXPECT_THAT(html, HasSubstr("size: A4"));
}

TEST_F(Debrief, CausesComeOntoTheSheetWhenTheyAreWorkedOut) {
    ASSERT_TRUE(fixture::wait_for([this] { return QString::fromStdString(saved()).contains("Causes, whole lap"); }));
    EXPECT_THAT(saved(), HasSubstr("driver & rest"));
}

TEST_F(Debrief, PaperAndSecondPageAreThoseOfThePdfAndRemembered) {
    EXPECT_THAT(saved(), Not(HasSubstr("All segments")));
    QTest::keyClick(&page().paper_field(), Qt::Key_Down);
    QTest::keyClick(&page().all_segments_field(), Qt::Key_Space);
    EXPECT_THAT(saved(), HasSubstr("All segments"));
    const std::string facts = read({QStringLiteral("pdfinfo"), path("sheet.pdf")});
    EXPECT_THAT(facts, HasSubstr("Pages: 2"));
    EXPECT_THAT(facts, HasSubstr("612 x 792 pts")); // 8.5 × 11 inches
    open_window();
    EXPECT_EQ(page().options().paper, paper::PaperSize::us_letter);
    EXPECT_TRUE(page().options().all_segments);
}

TEST_F(Debrief, TheSheetFillsTheWidthAndIsNotWiderThanItsRoom) {
    const int room = page().width() - 250;
    EXPECT_LE(page().view().width(), room);
    EXPECT_GT(page().view().width(), room / 2);
}

TEST_F(Debrief, AFolderThatDoesNotExistIsSaidOnThePage) {
    EXPECT_FALSE(window->debriefing().save(path("missing/sheet.pdf")));
    EXPECT_FALSE(QDir(folder.path()).exists(QStringLiteral("missing")));
}
