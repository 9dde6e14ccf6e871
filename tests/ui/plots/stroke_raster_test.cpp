// SPDX-License-Identifier: GPL-3.0-or-later
// Against the obvious way: the share of a fine raster of points
// in each pixel that lie within half the width of the line.
#include "ui/plots/stroke_raster.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <random>

using namespace lapwright::plots;

namespace {

double distance_to(const QPointF& p, const QPointF& a, const QPointF& b) {
    const QPointF along = b - a;
    const double length = QPointF::dotProduct(along, along);
    const double part = length > 0.0 ? std::clamp(QPointF::dotProduct(p - a, along) / length, 0.0, 1.0) : 0.0;
    const QPointF away = p - (a + part * along);
    return std::hypot(away.x(), away.y());
}

double coverage_by_points(int x, int y, const std::vector<double>& xs, const std::vector<double>& ys, double width) {
    constexpr int fine = 12;
    int inside = 0;
    for (int i = 0; i < fine * fine; ++i) {
        const QPointF p(x + (i % fine + 0.5) / fine, y + (i / fine + 0.5) / fine);
        double nearest = 1e9;
        for (std::size_t k = 1; k < xs.size(); ++k) {
            nearest = std::min(nearest, distance_to(p, {xs[k - 1], ys[k - 1]}, {xs[k], ys[k]}));
        }
        inside += nearest <= 0.5 * width ? 1 : 0;
    }
    return static_cast<double>(inside) / (fine * fine);
}

QRgb pixel(const std::vector<RasterTile>& tiles, int x, int y) {
    for (const RasterTile& tile : tiles) {
        const QPoint at = QPoint(x, y) - tile.at;
        if (tile.image.rect().contains(at)) return tile.image.pixel(at);
    }
    return 0;
}

double coverage(const std::vector<RasterTile>& tiles, int x, int y) {
    return qAlpha(pixel(tiles, x, y)) / 255.0;
}

const QRect room(0, 0, 60, 40);

} // namespace

TEST(StrokeRaster, CoversWhatARoundBrushCovers) {
    std::mt19937 engine(11);
    std::uniform_real_distribution<double> anywhere(3.0, 37.0);
    for (const double gap : {0.7, 3.0, 11.0}) {
        std::vector<double> xs;
        std::vector<double> ys;
        for (double x = 2.0; x < 58.0; x += gap) {
            xs.push_back(x);
            ys.push_back(anywhere(engine));
        }
        const auto stroke = raster_stroke(xs, ys, PixelMap{}, room, {Qt::black, 1.6, 0.0, 0.0});
        double sum_of_errors = 0.0;
        double worst = 0.0;
        for (int y = 0; y < room.height(); ++y) {
            for (int x = 0; x < room.width(); ++x) {
                const double error = std::abs(coverage(stroke, x, y) - coverage_by_points(x, y, xs, ys, 1.6));
                sum_of_errors += error;
                worst = std::max(worst, error);
            }
        }
        EXPECT_LT(sum_of_errors / (room.width() * room.height()), 0.03) << gap;
        // Where a line turns back within a narrow column, what lies between its two legs is painted as well.
        if (gap > 2.0) {
            EXPECT_LT(worst, 0.45) << gap;
        }
    }
}

TEST(StrokeRaster, ALevelLineHasItsWidthAndItsColour) {
    const std::vector<double> xs{-5.0, 70.0};
    const std::vector<double> ys{20.5, 20.5};
    const auto stroke = raster_stroke(xs, ys, PixelMap{}, room, {QColor(200, 100, 0), 2.0, 0.0, 0.0});
    for (int x = 0; x < room.width(); ++x) {
        double sum = 0.0;
        for (int y = 0; y < room.height(); ++y)
            sum += coverage(stroke, x, y);
        EXPECT_NEAR(sum, 2.0, 0.02);
        EXPECT_EQ(pixel(stroke, x, 20), qRgb(200, 100, 0));
    }
}

TEST(StrokeRaster, DashesLeaveTheirHolesOnFlatAndSteepLines) {
    for (const double height : {0.0, 36.0, 5000.0}) {
        const std::vector<double> xs{0.0, 60.0};
        const std::vector<double> ys{20.0 - 0.5 * height, 20.0 + 0.5 * height};
        const auto painted = [&](const StrokeStyle& style) {
            const auto stroke = raster_stroke(xs, ys, PixelMap{}, room, style);
            double sum = 0.0;
            for (int y = 0; y < room.height(); ++y)
                for (int x = 0; x < room.width(); ++x)
                    sum += coverage(stroke, x, y);
            return sum;
        };
        const double share = painted({Qt::black, 1.6, 6.0, 3.0}) / painted({Qt::black, 1.6, 0.0, 0.0});
        EXPECT_NEAR(share, 6.0 / 9.0, 0.09) << height;
    }
}

TEST(StrokeRaster, NothingIsPaintedWhereNothingWasMeasuredOrOutsideTheRoom) {
    const double nothing = std::numeric_limits<double>::quiet_NaN();
    const std::vector<double> xs{0, 20, 30, 40, 60};
    const std::vector<double> ys{10, 10, nothing, 10, 10};
    const auto stroke = raster_stroke(xs, ys, PixelMap{}, room, {Qt::black, 1.6, 0.0, 0.0});
    EXPECT_GT(coverage(stroke, 10, 10), 0.5);
    EXPECT_EQ(coverage(stroke, 30, 10), 0.0);
    EXPECT_TRUE(raster_stroke(xs, std::vector<double>(5, 900.0), PixelMap{}, room, {Qt::black, 1.6, 0.0, 0.0}).empty());
    EXPECT_TRUE(raster_stroke({}, {}, PixelMap{}, room, {Qt::black, 1.6, 0.0, 0.0}).empty());
}
