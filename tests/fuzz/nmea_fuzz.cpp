// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as NMEA 0183 sentences.  A fuzzer does not find
// checksums, so each line is also tried with its sum made right.
#include "core/import/formats/nmea.h"
#include "tests/fuzz/recording_invariants.h"

#include <cstddef>
#include <cstdint>
#include <string>

namespace {

std::string with_right_sums(std::string_view text) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        line = line.substr(0, line.rfind('*'));
        if (line.starts_with('$')) line.remove_prefix(1);
        unsigned sum = 0;
        for (const char c : line)
            sum ^= static_cast<unsigned char>(c);
        out += "$" + std::string(line) + "*" + digits[(sum >> 4U) & 15U] + digits[sum & 15U] + "\r\n";
    }
    return out;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwright;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    for (const std::string& text : {std::string(bytes), with_right_sums(bytes)}) {
        static_cast<void>(import::looks_like_nmea(text));
        const auto recording = import::read_nmea(text, "fuzz", {});
        if (recording) fuzz::check_recording(*recording);
    }
    return 0;
}
