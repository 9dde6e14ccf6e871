// SPDX-License-Identifier: GPL-3.0-or-later
// What of the plot reaches the page: its colours, counted with the plot and without it.
#include "ui/sheet/paint_sheet.h"

#include "core/analysis/sheet_material.h"
#include "core/sheet/paper_colours.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "ui/sheet/write_pdf.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

using namespace lapwright;

namespace {

constexpr int pixels_a_point = 2;

QImage painted(const sheet::Sheet& sheet, paper::PaperSize size) {
    const QSizeF page = paper::page_size_pt(size);
    QImage image((page * pixels_a_point).toSize(), QImage::Format_RGB32);
    QPainter painter(&image);
    painter.scale(pixels_a_point, pixels_a_point);
    paper::paint_sheet(painter, page, sheet);
    painter.end();
    return image;
}

int count(const QImage& image, std::uint32_t colour) {
    int pixels = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            pixels += (image.pixel(x, y) & 0xffffffU) == colour ? 1 : 0;
    return pixels;
}

} // namespace

TEST(PaintSheet, ThePlotHasBothCurvesItsShadesAndItsDiscs) {
    const sheet::Sheet with = analysis::debrief_sheet(*fixture::pairing(), base::UnitSystem::metric, "0.1.0");
    sheet::Sheet without = with;
    without.plot = {};
    for (const paper::PaperSize size : {paper::PaperSize::a4, paper::PaperSize::us_letter}) {
        const QImage page = painted(with, size);
        const QImage bare = painted(without, size);
        const auto of_plot = [&](std::uint32_t colour) { return count(page, colour) - count(bare, colour); };
        const int width = page.width();
        EXPECT_GT(of_plot(sheet::colours::blue_a), width / 4);
        EXPECT_GT(of_plot(sheet::colours::vermilion_b), width / 8) << "is dashed";
        EXPECT_GT(of_plot(sheet::colours::shade), 20 * width);
        EXPECT_GT(of_plot(sheet::colours::ink), width / 2) << "the gap and the discs";
    }
}

TEST(PaintSheet, ThePlotReachesTheRightMarginOfEachPaper) {
    const sheet::Sheet sheet = analysis::debrief_sheet(*fixture::pairing(), base::UnitSystem::metric, "0.1.0");
    for (const paper::PaperSize size : {paper::PaperSize::a4, paper::PaperSize::us_letter}) {
        const QImage page = painted(sheet, size);
        const int right = page.width() - 40 * pixels_a_point; // the page's margin
        int reach = 0;
        for (int y = 0; y < page.height() / 2; ++y)
            for (int x = 0; x < page.width(); ++x)
                if ((page.pixel(x, y) & 0xffffffU) == sheet::colours::blue_a) reach = std::max(reach, x);
        EXPECT_NEAR(reach, right, 3 * pixels_a_point);
    }
}
