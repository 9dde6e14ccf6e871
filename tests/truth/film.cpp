// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/truth/film.h"

#include <cstdio>
#include <fstream>

namespace truth {
namespace {

bool write_sound(const Session& session, const FilmRecipe& recipe, double rate_hz, const std::string& path) {
    EngineRecipe engine;
    engine.firing_order = recipe.firing_order;
    engine.from_s = recipe.camera.from_s;
    engine.length_s = recipe.length_s;
    engine.drift = recipe.camera.drift;
    engine.rate_hz = rate_hz;
    engine.engine_over_noise_db = recipe.engine_over_noise_db;
    engine.seed = recipe.camera.seed;
    const std::vector<float> sound = engine_sound(session, engine);
    std::ofstream file(path, std::ios::binary);
    file.write(reinterpret_cast<const char*>(sound.data()), static_cast<std::streamsize>(sound.size() * sizeof(float)));
    return static_cast<bool>(file.flush());
}

} // namespace

bool film(const Session& session, const FilmRecipe& recipe, const std::string& path) {
    constexpr double sound_rate_hz = 16000.0;
    const std::string sound = path + ".sound";
    const CameraRecipe& camera_recipe = recipe.camera;
    std::string line = "ffmpeg -v error -y ";
    if (recipe.sound) {
        if (!write_sound(session, recipe, sound_rate_hz, sound)) return false;
        line += "-f f32le -ar 16000 -ac 1 -i '" + sound + "' ";
    }
    line += "-f rawvideo -pix_fmt rgb24 -s " + std::to_string(camera_recipe.width) + "x" +
            std::to_string(camera_recipe.height) + " -r " + std::to_string(camera_recipe.rate_hz) +
            " -i - -pix_fmt yuv420p " + recipe.words + " '" + path + "'";
    std::FILE* const encoder = ::popen(line.c_str(), "w");
    if (encoder == nullptr) return false;
    const Camera camera(session, camera_recipe);
    const int frames = static_cast<int>(recipe.length_s * camera_recipe.rate_hz);
    bool whole = true;
    for (int i = 0; i < frames; ++i) {
        const Pixels picture = camera.frame(i);
        whole = whole && std::fwrite(picture.rgb.data(), 1, picture.rgb.size(), encoder) == picture.rgb.size();
    }
    const bool encoded = ::pclose(encoder) == 0;
    std::remove(sound.c_str());
    return whole && encoded;
}

} // namespace truth
