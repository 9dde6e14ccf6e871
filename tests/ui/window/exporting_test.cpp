// SPDX-License-Identifier: GPL-3.0-or-later
// Tables and plots taken out of the window as files.
#include "ui/window/exporting.h"

#include "core/sheet/tables.h"
#include "tests/ui/fixture/invented_stages.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QImage>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

using namespace lapwright;
using View = window::Exporting::View;

namespace {

class Export : public testing::Test {
  protected:
    void SetUp() override {
        window = std::make_unique<window::MainWindow>(fixture::invented_stages(), settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
        window->start({path("one.csv"), path("two.csv")});
        ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
        fixture::settle();
    }
    void to_causes() {
        QTest::keyClick(window.get(), Qt::Key_3, Qt::ControlModifier);
        ASSERT_TRUE(fixture::wait_for([this] { return window->causes_page().explanation() != nullptr; }));
        fixture::settle();
    }
    [[nodiscard]] QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }
    [[nodiscard]] QStringList files() const {
        return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).filter(QStringLiteral("out"));
    }
    static std::string content(const QString& file) {
        QFile stream(file);
        return stream.open(QIODevice::ReadOnly) ? stream.readAll().toStdString() : std::string();
    }
    window::Exporting& exporting() { return window->exporting(); }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

// How often each element occurs; nothing where the file is no XML.
std::optional<QMap<QString, int>> elements_of(const std::string& svg) {
    QXmlStreamReader reader(QByteArray::fromStdString(svg));
    QMap<QString, int> counts;
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::StartElement) ++counts[reader.name().toString()];
    return reader.hasError() ? std::nullopt : std::optional(counts);
}

// Names a file in the dialog that is open, as typing and Enter do.
void answer_dialog(const QString& file) {
    QTimer::singleShot(200, qApp, [file] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        dialog->findChild<QLineEdit*>()->setText(file);
        QTest::keyClick(dialog->findChild<QLineEdit*>(), Qt::Key_Return);
    });
}

} // namespace

TEST_F(Export, TheTableIsTheOneThatIsShown) {
    ASSERT_TRUE(exporting().save_table(View::compare, path("out.csv")));
    const auto& segments = window->compare_page().compared()->pairing->comparison.segments;
    EXPECT_EQ(content(path("out.csv")), sheet::csv_text(sheet::segments_table(segments, base::UnitSystem::metric)));
    window->compare_page().set_summed(true);
    ASSERT_TRUE(exporting().save_table(View::compare, path("out.csv")));
    const auto& joined = window->compare_page().compared()->summed;
    EXPECT_EQ(content(path("out.csv")), sheet::csv_text(sheet::segments_table(joined, base::UnitSystem::metric)));
}

TEST_F(Export, TheMatrixIsTheOneOfTheCausesPage) {
    to_causes();
    ASSERT_TRUE(exporting().save_table(View::causes, path("out.csv")));
    EXPECT_EQ(content(path("out.csv")), sheet::csv_text(sheet::causes_table(*window->causes_page().explanation())));
}

TEST_F(Export, PlotsAreVectorsInSvg) {
    ASSERT_TRUE(exporting().save_picture(View::compare, QStringLiteral("A < B & C"), path("out.svg")));
    const auto compare = elements_of(content(path("out.svg")));
    ASSERT_TRUE(compare);
    EXPECT_EQ(compare->value(QStringLiteral("image")), 0);
    EXPECT_GT(compare->value(QStringLiteral("polyline")), 3);
    to_causes();
    ASSERT_TRUE(exporting().save_picture(View::causes, QStringLiteral("A against B"), path("out2.svg")));
    const auto causes = elements_of(content(path("out2.svg")));
    ASSERT_TRUE(causes);
    EXPECT_EQ(causes->value(QStringLiteral("image")), 0);
    EXPECT_NE(content(path("out2.svg")).find("Cornering acceleration"), std::string::npos);
}

TEST_F(Export, PngHasTwiceThePixelsAndBothColours) {
    const int width = window->compare_page().stack().width();
    ASSERT_TRUE(exporting().save_picture(View::compare, QStringLiteral("A against B"), path("out.png")));
    const QImage image(path("out.png"));
    EXPECT_GE(image.width(), 2 * width);
    int blue = 0;
    int vermilion = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour = image.pixelColor(x, y);
            blue += colour.blue() > colour.red() + 90 ? 1 : 0;
            vermilion += colour.red() > colour.blue() + 90 ? 1 : 0;
        }
    }
    EXPECT_GT(blue, 1000);
    EXPECT_GT(vermilion, 500);
}

TEST_F(Export, AFailureIsOneSentenceAndLeavesNothing) {
    for (const char* place : {"missing/out.csv", "missing/out.svg"}) {
        const QString file = path(place);
        const auto written = file.endsWith(QLatin1String("csv"))
                                 ? exporting().save_table(View::compare, file)
                                 : exporting().save_picture(View::compare, QString(), file);
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code, base::ErrorCode::file_not_writable);
    }
    EXPECT_EQ(files(), QStringList());
}

TEST_F(Export, AKeyAsksForAFileAndSaysThatItIsWritten) {
    answer_dialog(path("out.csv"));
    QTest::keyClick(window.get(), Qt::Key_T, Qt::ControlModifier);
    fixture::settle();
    EXPECT_FALSE(content(path("out.csv")).empty());
    ASSERT_EQ(window->notices().sentences().size(), 1);
    EXPECT_TRUE(window->notices().sentences().front().contains(QStringLiteral("out.csv is written")));
    QApplication::setActiveWindow(window.get()); // which no window manager does here
    answer_dialog(path("out"));
    QTest::keyClick(window.get(), Qt::Key_D, Qt::ControlModifier);
    fixture::settle();
    EXPECT_TRUE(elements_of(content(path("out.svg"))));
}

TEST_F(Export, IsOfferedWhereThereIsSomethingToTake) {
    EXPECT_TRUE(window->actions().save_table->isEnabled());
    QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
    fixture::settle();
    EXPECT_FALSE(window->actions().save_table->isEnabled());
    EXPECT_FALSE(window->actions().save_picture->isEnabled());
}
