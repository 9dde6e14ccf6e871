// SPDX-License-Identifier: GPL-3.0-or-later
// Our own code around the decoder.  A first byte of 0 makes of the rest a file that is not there: its frames, points of
// entry and failures are the bytes, and the frame shown must be the right one all the same.  Any other makes the whole
// a video file for the decoder's module, whose frames, stills and sound are looked at as a panel does.
#include "core/base/check.h"
#include "core/video/frame_reader.h"
#include "core/video/open_media.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>
#include <utility>

extern "C" const lapwright::video::OpenMedia lapwright_open_media;

namespace {

using namespace lapwright;

base::Error failed() {
    return {base::ErrorCode::file_not_readable, {"fuzz", {}, ""}, "a frame cannot be read", "copy it again"};
}

// Frames every few hundredths of a second; every so many frames one may be entered at.
class MadeUp : public video::MediaFile {
  public:
    MadeUp(const std::uint8_t* data, std::size_t size) {
        const std::size_t head = std::min<std::size_t>(size, 3);
        group_ = head > 0 ? 1 + data[0] % 32U : 1;
        has_index_ = head > 1 && data[1] % 2U == 0;
        fails_at_ = head > 2 ? data[2] : 255;
        for (std::size_t i = head; i < std::min<std::size_t>(size, 300); ++i) {
            times_s_.push_back(time_s_);
            time_s_ += 0.01 * (1.0 + data[i]);
        }
        facts_ = {4, 4, 0, 25.0, time_s_, "made up", false, {}};
    }
    const video::Facts& facts() const override { return facts_; }
    base::Result<void> seek(double time_s) override {
        next_ = entry_at(time_s);
        hurry_to_s_ = -1e300;
        hurried_ = false;
        shown_.reset();
        return {};
    }
    std::optional<double> entry_before(double time_s) const override {
        if (!has_index_ || times_s_.empty()) return {};
        return times_s_[entry_at(time_s)];
    }
    base::Result<std::optional<video::FrameTime>> next_frame(const video::GoOn&) override {
        if (++calls_ == fails_at_) return failed();
        // Every second frame may be left out, as those of which no other is made.
        while (next_ < times_s_.size() && next_ % 2 == 1 && times_s_[next_] < hurry_to_s_) {
            hurried_ = true;
            ++next_;
        }
        if (next_ >= times_s_.size()) return std::optional<video::FrameTime>();
        shown_ = next_++;
        std::size_t after = next_;
        while (after < times_s_.size() && after % 2 == 1 && times_s_[after] < hurry_to_s_) {
            hurried_ = true;
            ++after;
        }
        return std::optional(video::FrameTime{times_s_[*shown_], after < times_s_.size() ? times_s_[after] : INFINITY});
    }
    void hurry_to(double time_s) override { hurry_to_s_ = time_s; }
    bool left_out_since() const override { return hurried_ && shown_ && times_s_[*shown_] < hurry_to_s_; }
    base::Result<video::Picture> picture(video::PictureLimits) override {
        if (!shown_) return failed();
        return video::Picture{1, 1, {static_cast<std::uint8_t>(*shown_), static_cast<std::uint8_t>(*shown_ >> 8U), 0}};
    }
    base::Result<std::string> jpeg(const video::Picture& picture, video::JpegFor) const override {
        if (picture.rgb[0] == fails_at_) return failed();
        return std::string(picture.rgb.begin(), picture.rgb.end());
    }
    base::Result<video::Picture> from_jpeg(const std::string& bytes, video::PictureLimits) const override {
        return video::Picture{1, 1, {bytes.begin(), bytes.end()}};
    }
    base::Result<video::Sound> sound(double from_s, double, double rate_hz, const video::GoOn&) override {
        return video::Sound{from_s, rate_hz, {}};
    }
    [[nodiscard]] std::size_t shown_at(double time_s) const {
        const auto later = std::ranges::upper_bound(times_s_, time_s);
        return later == times_s_.begin() ? 0 : static_cast<std::size_t>(later - times_s_.begin()) - 1;
    }
    [[nodiscard]] const std::vector<double>& times_s() const { return times_s_; }

  private:
    [[nodiscard]] std::size_t entry_at(double time_s) const {
        return times_s_.empty() ? 0 : shown_at(time_s) / group_ * group_;
    }

    video::Facts facts_;
    std::vector<double> times_s_;
    double time_s_ = 0.0;
    std::size_t group_ = 1;
    bool has_index_ = true;
    std::size_t fails_at_ = 255;
    std::size_t calls_ = 0;
    std::size_t next_ = 0;
    std::optional<std::size_t> shown_;
    double hurry_to_s_ = -1e300;
    bool hurried_ = false;
};

void look_at_made_up(const std::uint8_t* data, std::size_t size) {
    auto file = std::make_unique<MadeUp>(data, size);
    const MadeUp& truth = *file;
    std::vector<video::Part> parts;
    parts.push_back({"fuzz", std::move(file), 0.0});
    auto joined = video::join(std::move(parts));
    base::check(joined.ok(), "one part is a video");
    video::FrameReader::Options options;
    options.cache_bytes = 30; // of pictures of three bytes
    options.kept_bytes = 60;
    video::FrameReader reader(std::move(joined).value(), options);
    for (std::size_t i = 0; i < size; ++i) {
        const double time_s = truth.times_s().empty() ? 1.0 : truth.times_s().back() * (data[i] / 250.0) - 0.02;
        const auto frame = reader.at(time_s);
        if (!frame) continue;
        const auto number = static_cast<std::size_t>(frame->picture->rgb[0] + 256 * frame->picture->rgb[1]);
        base::check(number == truth.shown_at(time_s), "another frame than the one that is shown");
        if (i % 3 == 0) reader.fill(time_s, 0.3, 0.3, {});
        if (i % 5 == 0) reader.read_ahead(time_s - 1.0, time_s + 1.0, time_s, {});
    }
}

const std::string& scratch_file() {
    static const std::string path =
        (std::filesystem::temp_directory_path() / ("lapwright-fuzz-" + std::to_string(::getpid()))).string();
    return path;
}

void look_at_file(const std::uint8_t* data, std::size_t size) {
    std::ofstream(scratch_file(), std::ios::binary)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    auto opened = lapwright_open_media(scratch_file());
    if (!opened) {
        base::check(!opened.error().what.empty(), "refused without a sentence");
        return;
    }
    std::vector<video::Part> parts;
    parts.push_back({scratch_file(), std::move(opened).value(), 0.0});
    auto joined = video::join(std::move(parts));
    if (!joined) return;
    video::Video video = std::move(joined).value();
    int patience = 4000; // packets: a head can promise more than a fuzzer waits for
    const video::GoOn go_on = [&patience] { return --patience > 0; };
    static_cast<void>(video::sound(video, 0.0, 3.0, 2000.0, go_on));
    video::FrameReader reader(std::move(video), {{64, 64}, 1U << 20U});
    for (const double time_s : std::array{0.2, 1e9, 0.0, -1.0}) {
        const auto frame = reader.at(time_s, go_on);
        if (!frame) continue;
        const video::Picture& picture = *frame->picture;
        base::check(picture.rgb.size() ==
                        3U * static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height),
                    "a picture without its bytes");
        static_cast<void>(reader.jpeg(*frame));
        reader.fill(time_s, 0.1, 0.1, go_on);
        reader.read_ahead(time_s - 0.2, time_s + 0.2, time_s, go_on);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size > 0 && data[0] == 0 && (size < 5 || data[4] != 'f'))
        look_at_made_up(data + 1, size - 1);
    else
        look_at_file(data, size);
    return 0;
}
