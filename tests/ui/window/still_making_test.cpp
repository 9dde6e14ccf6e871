// SPDX-License-Identifier: GPL-3.0-or-later
// The page of stills, chosen as a person would: each frame bears its number, so that the picture on the sheet is read
// back and held against the moment that its words name.
#include "core/comparison/corner_moments.h"
#include "core/video/made_video.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/compare/video_view.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/window/debriefing.h"
#include "ui/window/watching.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QImage>
#include <QProcess>
#include <cmath>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;
using workspace::Side;
using workspace::StillMoment;

namespace {

class StillsTest : public fixture::PairedWindow {
  protected:
    static constexpr double rate_hz = 25.0;

    [[nodiscard]] const analysis::Pairing& pairing() { return *window->compare_page().compared()->pairing; }
    [[nodiscard]] pages::DebriefPage& page() { return window->debrief_page(); }
    [[nodiscard]] std::vector<sheet::StillPair> stills() { return window->debriefing().composed()->stills; }
    [[nodiscard]] double offset_s(Side side) { return (side == Side::a ? pairing().a : pairing().b).lap.start_s; }

    // A video of the whole lap.
    void open_video(Side side, const std::string& name) {
        video::tests::Recipe recipe{name, "libx264", "-preset ultrafast -bf 2"};
        recipe.frames = static_cast<int>(rate_hz * (pairing().b.lap.time_s() + 2.0));
        auto& watching = window->watching();
        watching.open(side, {workshop.make(recipe).path});
        ASSERT_TRUE(fixture::wait_for(
            [&] { return watching.source(side).is_open() && !watching.source(side).finding(); }, 30'000));
        watching.view(side).offset().setValue(offset_s(side));
        fixture::settle();
    }
    static int number_in(const sheet::Still& still) {
        const QImage image =
            QImage::fromData(QByteArray::fromStdString(still.jpeg), "JPEG").convertToFormat(QImage::Format_RGB888);
        video::Picture picture{image.width(), image.height(), {}};
        for (int y = 0; y < image.height(); ++y)
            picture.rgb.insert(picture.rgb.end(), image.scanLine(y), image.scanLine(y) + 3 * image.width());
        return image.isNull() ? -1 : video::tests::number_in(picture).value_or(-2);
    }
    [[nodiscard]] int number_at(Side side, double place_m) {
        const auto moment = workspace::at_place(pairing(), place_m);
        const double offset = std::round(offset_s(side) * 1000.0) / 1000.0; // as the field takes it
        return static_cast<int>(std::floor(((side == Side::a ? moment.time_a_s : moment.time_b_s) - offset) * rate_hz));
    }
    [[nodiscard]] bool come(std::size_t pairs) {
        return fixture::wait_for([&] { return stills().size() == pairs; }, 20'000);
    }

    video::tests::Workshop workshop;
};

TEST_F(StillsTest, BothCarsAtTheChosenMomentsOfTheChosenCorner) {
    open_video(Side::a, "a.mp4");
    open_video(Side::b, "b.mp4");
    key(Qt::Key_4, Qt::ControlModifier);
    EXPECT_TRUE(stills().empty());
    const auto& segments = pairing().comparison.segments;
    int row = 0;
    for (const auto& segment : segments) {
        if (segment.segment.kind != track::SegmentKind::corner || !segment.a.min_speed_at_m) continue;
        page().corner_field().setCurrentIndex(++row);
        page().still_field(StillMoment::slowest).setChecked(true);
        const std::string moment = segment.segment.name + ", slowest point";
        ASSERT_TRUE(fixture::wait_for([&] { return stills().size() == 1 && stills()[0].moment == moment; }, 20'000))
            << moment << ": " << page().said_of_stills().toStdString();
        const auto pair = stills()[0];
        EXPECT_EQ(number_in(pair.a), number_at(Side::a, segment.a.min_speed_at_m->value)) << moment;
        EXPECT_EQ(number_in(pair.b), number_at(Side::b, segment.b.min_speed_at_m->value)) << moment;
        EXPECT_THAT(pair.a.words, testing::StartsWith("A at "));
    }
    EXPECT_GT(row, 1);
    page().still_field(StillMoment::slowest).setChecked(false);
    EXPECT_TRUE(come(0));
}

TEST_F(StillsTest, TheKeyPutsThemOnPaperAndInHtml) {
    open_video(Side::a, "a.mp4");
    key(Qt::Key_Y, Qt::ShiftModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return !stills().empty(); }, 20'000)) << page().said_of_stills().toStdString();
    EXPECT_TRUE(window->actions().stills->isChecked());
    const auto made = stills();
    EXPECT_LE(made.size(), 3U);
    for (const auto& pair : made) {
        EXPECT_FALSE(pair.a.jpeg.empty()) << pair.moment;
        EXPECT_THAT(pair.b.words, HasSubstr("no video of B"));
    }
    ASSERT_TRUE(window->debriefing().save(path("sheet.pdf")));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-f"), QStringLiteral("2"), path("sheet.pdf"), QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished(20000));
    EXPECT_THAT(QString::fromUtf8(reader.readAllStandardOutput()).simplified().toStdString(),
                testing::AllOf(HasSubstr(made[0].moment), HasSubstr("no video of B")));
    reader.start(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path("sheet.pdf")});
    ASSERT_TRUE(reader.waitForFinished(20000));
    EXPECT_EQ(QString::fromUtf8(reader.readAllStandardOutput()).count(QLatin1String("jpeg")),
              static_cast<int>(made.size()));
    ASSERT_TRUE(window->debriefing().save(path("sheet.html")));
    QFile html(path("sheet.html"));
    ASSERT_TRUE(html.open(QIODevice::ReadOnly));
    EXPECT_EQ(html.readAll().count("data:image/jpeg;base64,"), static_cast<int>(made.size()));
    key(Qt::Key_Y, Qt::ShiftModifier);
    EXPECT_TRUE(come(0));
}

TEST_F(StillsTest, WithoutAVideoItSaysWhatToDo) {
    page().still_field(StillMoment::turn_in).setChecked(true);
    EXPECT_TRUE(page().said_of_stills().contains(QStringLiteral("No video is in step")));
    EXPECT_TRUE(stills().empty());
}

TEST_F(StillsTest, AMovedOffsetAndASwapMakeThemAnew) {
    open_video(Side::a, "a.mp4");
    page().still_field(StillMoment::slowest).setChecked(true);
    ASSERT_TRUE(come(1));
    const int before = number_in(stills()[0].a);
    window->watching().view(Side::a).offset().setValue(offset_s(Side::a) - 10.0 / rate_hz);
    EXPECT_TRUE(fixture::wait_for([&] { return number_in(stills()[0].a) == before + 10; }, 20'000))
        << number_in(stills()[0].a);
    key(Qt::Key_X);
    EXPECT_TRUE(fixture::wait_for([&] { return stills().size() == 1 && !stills()[0].b.jpeg.empty(); }, 20'000));
    EXPECT_TRUE(stills()[0].a.jpeg.empty());
}

} // namespace
