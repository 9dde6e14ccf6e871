// SPDX-License-Identifier: GPL-3.0-or-later
// What a camera on board sees and hears of a driven session: sky, distant hills all round, the road with its edge lines
// and kerbs, grass, the bonnet; the frame's number as sixteen squares along the lower edge; the engine by its firing
// order with its multiples, and the noise of road and wind.  Invented throughout.
//
// The eye is over the car's position, looks along its heading, and leans and nods with the car.  Ground is flat here;
// hills are at infinity, so that they move with the heading alone.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "tests/truth/session.h"

namespace truth {

struct Pixels {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgb;
};

struct CameraRecipe {
    int width = 480; // a multiple of 16
    int height = 270;
    double rate_hz = 25.0;
    double from_s = 0.0; // of the session: the video's zero
    double drift = 0.0;  // the camera's clock runs slow by this share
    double field_rad = 1.3;
    double eye_height_m = 1.15;
    double rendered_from = 0.0; // rows between these shares of the height; the others stay black
    double rendered_to = 1.0;
    double shake_rad = 0.0012; // of each axis, from frame to frame
    std::uint64_t seed = 1;    // hills, shake
    std::uint8_t bonnet[3] = {225, 225, 228};
};

class Camera {
  public:
    // The session outlives it.
    Camera(const Session& session, const CameraRecipe& recipe);
    ~Camera();
    Camera(const Camera&) = delete;
    Camera& operator=(const Camera&) = delete;

    [[nodiscard]] Pixels frame(int number) const;
    [[nodiscard]] double session_s(int frame) const; // when it is taken

  private:
    struct Scene;
    const Session& session_;
    CameraRecipe recipe_;
    std::unique_ptr<const Scene> scene_;
};

// The number that a frame bears, of a picture of any size; nothing where a square is neither black nor white.
[[nodiscard]] std::optional<int> frame_number(const Pixels& picture);

struct EngineRecipe {
    double firing_order = 2.0; // fires a revolution: half the number of cylinders of a four-stroke engine
    double from_s = 0.0;
    double length_s = 100.0;
    double drift = 0.0;
    double rate_hz = 16000.0;
    double engine_over_noise_db = 8.0;
    std::uint64_t seed = 1;
};

// One channel, within -1..1.
[[nodiscard]] std::vector<float> engine_sound(const Session& session, const EngineRecipe& recipe);

} // namespace truth
