// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video_decoder/container.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <system_error>

namespace lapwright::video_decoder {

using base::said;
using base::word;

namespace {

// The containers that cameras and phones write; with no other can a text file be taken for a list of files to open.
constexpr const char* containers = "mov,mp4,m4a,3gp,3g2,mj2,matroska,webm,avi,mpegts,mpeg,mpegvideo,h264,hevc";
constexpr std::int64_t most_pixels = 8192LL * 4608;     // twice 4K in each direction
constexpr std::size_t most_bytes_at_once = 160U << 20U; // one picture of that size with room
constexpr auto patience = std::chrono::seconds(10);     // for opening, on a slow medium

// Opening ends when its time is up: a damaged file must not hold the program.
int out_of_time(void* opening_ends) {
    const Deadline& deadline = *static_cast<const Deadline*>(opening_ends);
    return deadline && std::chrono::steady_clock::now() > *deadline ? 1 : 0;
}

void prepare_library() {
    static const bool once = [] {
        av_log_set_level(AV_LOG_QUIET);
        av_max_alloc(most_bytes_at_once);
        return true;
    }();
    static_cast<void>(once);
}

bool starts_as_mp4(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    std::array<char, 8> head{};
    file.read(head.data(), head.size());
    return file && std::memcmp(head.data() + 4, "ftyp", 4) == 0;
}

base::Error not_opened(const std::string& path) {
    if (starts_as_mp4(path))
        return unreadable(path, word("the video was cut off before its index was written"),
                          word("copy it from the camera again, or let the camera repair it"));
    return unreadable(path, word("this is no video of a kind that can be read"),
                      word("give an MP4, MOV, MKV, AVI or TS file"));
}

base::Result<void> check_path(const std::string& path) {
    std::error_code problem;
    const auto status = std::filesystem::status(path, problem);
    if (!std::filesystem::exists(status))
        return unreadable(path, word("the video is not there"), word("look whether it was moved"));
    if (!std::filesystem::is_regular_file(status))
        return unreadable(path, word("this is no file"), word("name a video file"));
    if (!std::ifstream(std::filesystem::path(path), std::ios::binary))
        return unreadable(path, word("the video may not be read"), word("look at the permissions of the file"));
    if (std::filesystem::file_size(path, problem) == 0)
        return unreadable(path, word("the video is empty"), word("copy it from the camera again"));
    return {};
}

} // namespace

base::Error unreadable(const std::string& path, std::string what, std::string remedy) {
    return {base::ErrorCode::file_not_readable, {path, {}, ""}, std::move(what), std::move(remedy)};
}

base::Result<Container> open_container(const std::string& path) {
    prepare_library();
    if (const auto usable = check_path(path); !usable) return usable.error();
    AVFormatContext* raw = avformat_alloc_context();
    if (raw == nullptr)
        return unreadable(path, word("there is not enough memory for the video"), word("close other programs"));
    auto deadline = std::make_unique<Deadline>(std::chrono::steady_clock::now() + patience);
    raw->interrupt_callback = {out_of_time, deadline.get()};
    AVDictionary* options = nullptr;
    av_dict_set(&options, "format_whitelist", containers, 0);
    av_dict_set(&options, "protocol_whitelist", "file", 0);
    const int opened = avformat_open_input(&raw, ("file:" + path).c_str(), nullptr, &options); // frees raw on failure
    av_dict_free(&options);
    if (opened < 0) return not_opened(path);
    Container container{std::move(deadline), Pointer<AVFormatContext>(raw)};
    if (avformat_find_stream_info(raw, nullptr) < 0) return not_opened(path);
    container.opening_ends->reset();
    return container;
}

base::Result<Pointer<AVCodecContext>> open_decoder(const AVStream& stream, const std::string& path) {
    const AVCodec* codec = avcodec_find_decoder(stream.codecpar->codec_id);
    if (codec == nullptr)
        return unreadable(path,
                          std::string("the video is coded as ") + avcodec_get_name(stream.codecpar->codec_id) +
                              ", which cannot be decoded here",
                          word("convert it to H.264"));
    if (std::int64_t{stream.codecpar->width} * stream.codecpar->height > most_pixels)
        return unreadable(path,
                          "its picture of " + base::integer_text(stream.codecpar->width) + " × " +
                              base::integer_text(stream.codecpar->height) + " is larger than can be decoded",
                          word("convert it to 4K or less"));
    Pointer<AVCodecContext> decoder(avcodec_alloc_context3(codec));
    if (!decoder || avcodec_parameters_to_context(decoder.get(), stream.codecpar) < 0)
        return unreadable(path, word("there is not enough memory for the video"), word("close other programs"));
    decoder->pkt_timebase = stream.time_base;
    decoder->max_pixels = most_pixels;
    decoder->thread_count = 2;
    decoder->thread_type = FF_THREAD_FRAME | FF_THREAD_SLICE;
    if (avcodec_open2(decoder.get(), codec, nullptr) < 0)
        return unreadable(path, word("the video cannot be decoded"), word("copy it from the camera again"));
    return decoder;
}

std::int64_t zero_of(const AVFormatContext& container) {
    return container.start_time == AV_NOPTS_VALUE ? 0 : container.start_time;
}

double seconds(const AVFormatContext& container, const AVStream& stream, std::int64_t stamp) {
    return static_cast<double>(stamp) * av_q2d(stream.time_base) -
           static_cast<double>(zero_of(container)) / AV_TIME_BASE;
}

} // namespace lapwright::video_decoder
