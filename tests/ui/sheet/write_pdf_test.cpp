// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet as a file: its text read back with poppler's pdftotext, and what is left when it cannot be written.
#include "ui/sheet/write_pdf.h"

#include "core/analysis/sheet_material.h"
#include "core/base/display.h"
#include "core/base/number_text.h"
#include "tests/ui/fixture/full_disk.h"
#include "tests/ui/fixture/pairing_fixture.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <cmath>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;

namespace {

sheet::Sheet invented_sheet() {
    return analysis::debrief_sheet(*fixture::pairing(), base::UnitSystem::metric, "0.1.0");
}

// Words in reading order, runs of blanks as one.
std::string text_of(const QString& pdf, int page) {
    QProcess reader;
    const QString number = QString::number(page);
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), QStringLiteral("-f"), number,
                                               QStringLiteral("-l"), number, pdf, QStringLiteral("-")});
    if (!reader.waitForFinished(20000) || reader.exitCode() != 0) return "pdftotext failed";
    return QString::fromUtf8(reader.readAllStandardOutput()).simplified().toStdString();
}

std::string one_line(const std::string& text) {
    return QString::fromStdString(text).simplified().toStdString();
}

QByteArray content(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class WritePdf : public testing::Test {
  protected:
    [[nodiscard]] QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }
    [[nodiscard]] QStringList files() const {
        return QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden);
    }

    QTemporaryDir folder;
};

} // namespace

TEST_F(WritePdf, ItsTextIsWhatWasMeasured) {
    const auto pairing = fixture::pairing();
    const sheet::Sheet sheet = analysis::debrief_sheet(*pairing, base::UnitSystem::metric, "0.1.0");
    ASSERT_TRUE(paper::write_pdf(sheet, path("sheet.pdf").toStdString()));
    EXPECT_FALSE(content(path("sheet.pdf")).contains("/Subtype /Image")) << "all of it is vectors";
    const std::string text = text_of(path("sheet.pdf"), 1);
    EXPECT_THAT(text, HasSubstr(one_line(pairing->headline.verdict)));
    for (const analysis::Side* side : {&pairing->a, &pairing->b})
        EXPECT_THAT(text, HasSubstr(base::lap_time_text(side->trace.best.lap_time_s())));
    for (const auto& segment : pairing->comparison.segments) {
        if (segment.segment.kind != track::SegmentKind::corner) continue;
        EXPECT_THAT(text, HasSubstr(segment.segment.name));
        const double gain = segment.gain_s.value;
        EXPECT_THAT(text, HasSubstr((gain >= 0.0 ? "A " : "B ") + base::fixed_text(std::abs(gain), 2)))
            << segment.segment.name;
    }
    EXPECT_THAT(text, HasSubstr("Motor sport is dangerous"));
}

// However many differences there are, up to what fills a page in small letters: all of them, and which line is which.
TEST_F(WritePdf, EveryDifferenceOfTheSetupsStandsOnIt) {
    for (const int count : {1, 8, 15, 30}) {
        sheet::Sheet sheet = invented_sheet();
        sheet.notes = {"one note", "another one"};
        for (int i = 0; i < count; ++i)
            sheet.setup.push_back({"part" + std::to_string(i), std::to_string(i) + "x · " + std::to_string(i) + "y",
                                   sheet::Favours::neither});
        ASSERT_TRUE(paper::write_pdf(sheet, path("sheet.pdf").toStdString()));
        const std::string text = text_of(path("sheet.pdf"), 1);
        for (int i = 0; i < count; ++i)
            EXPECT_THAT(text, testing::ContainsRegex("part" + std::to_string(i) + "[^0-9]")) << count;
        EXPECT_THAT(text, HasSubstr("another one"));
        EXPECT_THAT(text, HasSubstr("A solid, B dashed"));
    }
}

TEST_F(WritePdf, TheSecondPageHasEverySegment) {
    paper::PdfOptions options;
    options.all_segments = true;
    ASSERT_TRUE(paper::write_pdf(invented_sheet(), path("sheet.pdf").toStdString(), options));
    const std::string text = text_of(path("sheet.pdf"), 2);
    const auto pairing = fixture::pairing();
    for (const auto& segment : pairing->comparison.segments)
        EXPECT_THAT(text, HasSubstr(one_line(segment.segment.name)));
}

TEST_F(WritePdf, AFolderThatDoesNotExistIsOneSentenceAndLeavesNothing) {
    const auto written = paper::write_pdf(invented_sheet(), path("missing/sheet.pdf").toStdString());
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, base::ErrorCode::file_not_writable);
    EXPECT_FALSE(written.error().what.empty());
    EXPECT_EQ(written.error().what.find('\n'), std::string::npos);
    EXPECT_EQ(files(), QStringList());
}

TEST_F(WritePdf, AFullDiskKeepsTheOldFileWhole) {
    QFile old(path("sheet.pdf"));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("the sheet of last week");
    old.close();
    {
        const fixture::FullDisk full(4096);
        const auto written = paper::write_pdf(invented_sheet(), path("sheet.pdf").toStdString());
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code, base::ErrorCode::file_not_writable);
    }
    EXPECT_EQ(content(path("sheet.pdf")), QByteArray("the sheet of last week"));
    EXPECT_EQ(files(), QStringList{QStringLiteral("sheet.pdf")});
}
