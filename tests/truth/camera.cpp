// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/truth/camera.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "tests/truth/random.h"

namespace truth {
namespace {

using Colour = std::array<double, 3>;

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kCell = 0.5;     // of the map of the ground, m
constexpr double kHalfRoad = 5.5; // m
constexpr double kMargin = 12.0;  // of the map round the road, m
constexpr double kHaze = 260.0;   // m, over which colours fade
constexpr int kSquares = 16;      // of the number
constexpr int kBearings = 4096;   // of the hills
constexpr Colour kSkyLow{206, 220, 232};
constexpr Colour kSkyHigh{122, 160, 205};
constexpr Colour kHazeColour{176, 190, 186};

enum Ground : std::uint8_t { grass, mown, road, worn, edge, kerb_light, kerb_dark };

Colour colour_of(std::uint8_t ground) {
    switch (ground) {
    case mown:
        return {112, 148, 74};
    case road:
        return {104, 104, 108};
    case worn:
        return {82, 82, 88};
    case edge:
        return {235, 235, 235};
    case kerb_light:
        return {230, 226, 216};
    case kerb_dark:
        return {52, 96, 128};
    default:
        return {92, 128, 62};
    }
}

Colour mix(const Colour& a, const Colour& b, double share_of_b) {
    Colour mixed{};
    for (std::size_t i = 0; i < mixed.size(); ++i)
        mixed[i] = a[i] + (b[i] - a[i]) * share_of_b;
    return mixed;
}

// Stripes of the road's surface along and across it.
std::uint8_t ground_at(double station_m, double offset_m, double curvature_per_m) {
    const double aside = std::abs(offset_m);
    const bool curved = std::abs(curvature_per_m) > 1.0 / 400.0;
    if (aside < kHalfRoad - 0.2) return std::abs(offset_m + 1.5) < 1.1 ? worn : road;
    if (aside < kHalfRoad) return edge;
    if (curved && aside < kHalfRoad + 1.2) return std::fmod(station_m, 4.0) < 2.0 ? kerb_light : kerb_dark;
    return std::fmod(station_m, 30.0) < 15.0 ? mown : grass;
}

} // namespace

struct Camera::Scene {
    // Of the nearest stretch of road; one that is far away has none.
    struct Cell {
        float offset_m = 1e3F;
        float station_m = 0.0F;
        float curvature_per_m = 0.0F;
    };
    double left_m = 0.0;
    double low_m = 0.0;
    int columns = 0;
    int rows = 0;
    std::vector<Cell> cells;
    std::vector<double> far_hills;  // elevation for each bearing, rad
    std::vector<double> near_hills; // a darker range before them
    std::vector<double> shake;      // yaw, pitch, roll of each frame in turn

    void lay_ground(const TrackShape& track);
    void raise_hills(std::uint64_t seed);
    [[nodiscard]] std::uint8_t at(double x_m, double y_m) const;
    [[nodiscard]] const Cell& cell(int column, int row) const {
        return cells[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                     static_cast<std::size_t>(column)];
    }
};

// Between four cells the offset is interpolated, so that lines have smooth edges.
std::uint8_t Camera::Scene::at(double x_m, double y_m) const {
    const double across = (x_m - left_m) / kCell - 0.5;
    const double up = (y_m - low_m) / kCell - 0.5;
    const int column = static_cast<int>(std::floor(across));
    const int row = static_cast<int>(std::floor(up));
    if (column < 0 || row < 0 || column + 1 >= columns || row + 1 >= rows) return grass;
    const double tx = across - column;
    const double ty = up - row;
    const Cell& nearest = cell(column + (tx > 0.5 ? 1 : 0), row + (ty > 0.5 ? 1 : 0));
    const double low = std::lerp(cell(column, row).offset_m, cell(column + 1, row).offset_m, tx);
    const double high = std::lerp(cell(column, row + 1).offset_m, cell(column + 1, row + 1).offset_m, tx);
    const double between = std::lerp(low, high, ty);
    const double offset = std::abs(between - nearest.offset_m) < 2.0 * kCell ? between : nearest.offset_m;
    if (std::abs(offset) > kMargin) return grass;
    return ground_at(nearest.station_m, offset, nearest.curvature_per_m);
}

void Camera::Scene::lay_ground(const TrackShape& track) {
    constexpr double step_m = 0.3;
    double right_m = -1e9;
    double high_m = -1e9;
    left_m = low_m = 1e9;
    for (double s = 0.0; s < track.length_m(); s += 5.0) {
        const TrackPoint point = track.at(s);
        left_m = std::min(left_m, point.x_m - 2.0 * kMargin);
        right_m = std::max(right_m, point.x_m + 2.0 * kMargin);
        low_m = std::min(low_m, point.y_m - 2.0 * kMargin);
        high_m = std::max(high_m, point.y_m + 2.0 * kMargin);
    }
    columns = static_cast<int>((right_m - left_m) / kCell) + 1;
    rows = static_cast<int>((high_m - low_m) / kCell) + 1;
    cells.assign(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows), {});
    for (double s = 0.0; s < track.length_m(); s += step_m) {
        const TrackPoint point = track.at(s);
        const double nx = -std::sin(point.bend.heading_rad);
        const double ny = std::cos(point.bend.heading_rad);
        for (double offset = -kMargin; offset <= kMargin; offset += step_m) {
            const auto column = static_cast<std::size_t>((point.x_m + offset * nx - left_m) / kCell);
            const auto row = static_cast<std::size_t>((point.y_m + offset * ny - low_m) / kCell);
            // The cell's own middle, from the foot beside it; where two stretches lie side by side the nearer counts.
            const double from_x = left_m + (static_cast<double>(column) + 0.5) * kCell - point.x_m;
            const double from_y = low_m + (static_cast<double>(row) + 0.5) * kCell - point.y_m;
            const double own = from_x * nx + from_y * ny;
            const double along = from_x * ny - from_y * nx;
            Cell& one = cells[row * static_cast<std::size_t>(columns) + column];
            if (std::abs(one.offset_m) < std::abs(own)) continue;
            one = {static_cast<float>(own), static_cast<float>(s + along),
                   static_cast<float>(point.bend.curvature_per_m)};
        }
    }
}

// Sums of waves round the horizon, and single trees and masts that stand out of them.
void Camera::Scene::raise_hills(std::uint64_t seed) {
    Random random(seed, 31);
    const auto range = [&](double height_rad, int least_waves, int most_waves) {
        std::vector<double> hills(kBearings, height_rad);
        for (int waves = least_waves; waves <= most_waves; waves += 1 + waves / 4) {
            const double phase = kTwoPi * random.uniform();
            const double size = 0.8 * height_rad * random.uniform() / std::sqrt(static_cast<double>(waves));
            for (int i = 0; i < kBearings; ++i)
                hills[static_cast<std::size_t>(i)] += size * std::sin(kTwoPi * waves * i / kBearings + phase);
        }
        return hills;
    };
    far_hills = range(0.055, 3, 60);
    near_hills = range(0.022, 5, 140);
    for (int tree = 0; tree < 150; ++tree) {
        const auto middle = static_cast<int>(kBearings * random.uniform());
        const auto half = static_cast<int>(2.0 + 9.0 * random.uniform());
        const double height = 0.008 + 0.022 * random.uniform();
        for (int i = -half; i <= half; ++i) {
            double& hill = near_hills[static_cast<std::size_t>((middle + i + kBearings) % kBearings)];
            hill += height * (1.0 - std::abs(i) / (half + 1.0));
        }
    }
}

Camera::Camera(const Session& session, const CameraRecipe& recipe) : session_(session), recipe_(recipe) {
    auto scene = std::make_unique<Scene>();
    scene->lay_ground(session.track());
    scene->raise_hills(recipe.seed);
    Random random(recipe.seed, 32);
    constexpr int shakes = 3 * 997;
    for (int i = 0; i < shakes; ++i)
        scene->shake.push_back(recipe.shake_rad * random.normal());
    scene_ = std::move(scene);
}

Camera::~Camera() = default;

double Camera::session_s(int frame) const {
    return recipe_.from_s + frame / recipe_.rate_hz * (1.0 + recipe_.drift);
}

Pixels Camera::frame(int number) const {
    const int width = recipe_.width;
    const int height = recipe_.height;
    Pixels picture{width, height, std::vector<std::uint8_t>(3U * static_cast<std::size_t>(width * height))};
    const TruthSample car = session_.at_time(session_s(number));
    const auto shaken = [&](int axis) {
        const auto place = static_cast<std::size_t>(3 * number + axis) % scene_->shake.size();
        return car.speed_mps > 1.0 ? scene_->shake[place] : 0.0;
    };
    // Half a degree of nodding and a degree of leaning a g: common practice, no source.
    const double yaw = car.heading_rad + shaken(0);
    const double pitch = -0.09 + 0.0009 * car.a_long_mps2 + shaken(1);
    const double roll = 0.0018 * car.a_lat_mps2 + shaken(2);
    const double half_field = std::tan(0.5 * recipe_.field_rad);
    const double focal = 0.5 * width / half_field;
    const double bonnet_from = 0.31 * height / width / half_field + 0.05;
    const double cos_yaw = std::cos(yaw);
    const double sin_yaw = std::sin(yaw);
    const double cos_pitch = std::cos(pitch);
    const double sin_pitch = std::sin(pitch);
    const double cos_roll = std::cos(roll);
    const double sin_roll = std::sin(roll);
    const int last = static_cast<int>(recipe_.rendered_to * height);
    for (int y = static_cast<int>(recipe_.rendered_from * height); y < last; ++y)
        for (int x = 0; x < width; ++x) {
            const double across = (x + 0.5 - 0.5 * width) / focal;
            const double down = (y + 0.5 - 0.5 * height) / focal;
            const double right = across * cos_roll + down * sin_roll;
            const double below = down * cos_roll - across * sin_roll;
            const double forward = cos_pitch + below * sin_pitch;
            const double up = sin_pitch - below * cos_pitch;
            Colour colour{};
            if (up < 0.0) {
                const double far = recipe_.eye_height_m / -up;
                const double ahead = far * forward;
                const double left = -far * right;
                const double at_x = car.x_m + ahead * cos_yaw - left * sin_yaw;
                const double at_y = car.y_m + ahead * sin_yaw + left * cos_yaw;
                const double distance = std::sqrt(ahead * ahead + left * left);
                colour = mix(colour_of(scene_->at(at_x, at_y)), kHazeColour, 1.0 - std::exp(-distance / kHaze));
            } else {
                const double bearing = yaw - std::atan2(right, forward);
                const double turns = bearing / kTwoPi - std::floor(bearing / kTwoPi);
                const auto i = static_cast<std::size_t>(turns * kBearings) % kBearings;
                const double elevation =
                    up / std::sqrt(forward * forward + right * right); // its tangent: hills are low
                if (elevation < scene_->near_hills[i])
                    colour = {74, 98, 70};
                else if (elevation < scene_->far_hills[i])
                    colour = {128, 146, 156};
                else
                    colour = mix(kSkyLow, kSkyHigh, std::min(1.0, elevation / 0.5));
            }
            // The bonnet fills the lower middle.
            if (down > bonnet_from + 0.175 * across * across && std::abs(across) < 0.62)
                colour = {recipe_.bonnet[0] * (0.75 + 0.25 * across), recipe_.bonnet[1] * (0.75 + 0.25 * across),
                          recipe_.bonnet[2] * (0.75 + 0.25 * across)};
            if (y >= height - height / 18) {
                const bool white = ((number >> (x * kSquares / width)) & 1) != 0;
                colour = white ? Colour{255, 255, 255} : Colour{0, 0, 0};
            }
            for (std::size_t c = 0; c < 3; ++c)
                picture.rgb[3U * static_cast<std::size_t>(y * width + x) + c] =
                    static_cast<std::uint8_t>(std::clamp(colour[c], 0.0, 255.0));
        }
    return picture;
}

std::optional<int> frame_number(const Pixels& picture) {
    int number = 0;
    const int y = picture.height - 1 - picture.height / 36;
    for (int bit = 0; bit < kSquares; ++bit) {
        const int x = (2 * bit + 1) * picture.width / (2 * kSquares);
        const int green = picture.rgb[3U * static_cast<std::size_t>(y * picture.width + x) + 1U];
        if (green > 80 && green < 170) return {};
        number |= (green > 127 ? 1 : 0) << bit;
    }
    return number;
}

std::vector<float> engine_sound(const Session& session, const EngineRecipe& recipe) {
    Random random(recipe.seed, 33);
    // The firing order with its multiples, and fainter half orders from cylinders that differ.
    const std::array<double, 6> orders{recipe.firing_order,       2.0 * recipe.firing_order, 3.0 * recipe.firing_order,
                                       0.5 * recipe.firing_order, 1.5 * recipe.firing_order, 2.5 * recipe.firing_order};
    const std::array<double, 6> sizes{1.0, 0.5, 0.3, 0.15 * random.uniform(), 0.2 * random.uniform(), 0.15};
    const auto samples = static_cast<std::size_t>(recipe.length_s * recipe.rate_hz);
    std::vector<double> engine;
    std::vector<double> noise;
    double turns = 0.0;
    double slow = 0.0;
    double power = 0.0;
    double noise_power = 0.0;
    TruthSample car;
    TruthSample next;
    constexpr std::size_t every = 32; // samples for which the car is looked at once
    double rev_s = 0.0;
    for (std::size_t i = 0; i < samples; ++i) {
        if (i % every == 0) {
            car = session.at_time(recipe.from_s + static_cast<double>(i) / recipe.rate_hz * (1.0 + recipe.drift));
            next =
                session.at_time(recipe.from_s + static_cast<double>(i + every) / recipe.rate_hz * (1.0 + recipe.drift));
        }
        const double share = static_cast<double>(i % every) / static_cast<double>(every);
        rev_s = std::lerp(car.engine_rpm, next.engine_rpm, share) / 60.0;
        turns += rev_s / recipe.rate_hz;
        double tone = 0.0;
        for (std::size_t k = 0; k < orders.size(); ++k)
            if (orders[k] * rev_s < 0.45 * recipe.rate_hz)
                tone += sizes[k] * std::sin(kTwoPi * orders[k] * turns + static_cast<double>(k));
        engine.push_back(tone * (0.35 + 0.65 * car.throttle));
        slow += 0.03 * (random.normal() - slow);
        noise.push_back((0.3 * random.normal() + 6.0 * slow) * car.speed_mps / 40.0);
        power += engine.back() * engine.back();
        noise_power += noise.back() * noise.back();
    }
    const double scale =
        noise_power > 0.0 ? std::sqrt(power / noise_power / std::pow(10.0, recipe.engine_over_noise_db / 10.0)) : 0.0;
    std::vector<float> sound;
    for (std::size_t i = 0; i < samples; ++i)
        sound.push_back(static_cast<float>(std::clamp(0.22 * (engine[i] + scale * noise[i]), -1.0, 1.0)));
    return sound;
}

} // namespace truth
