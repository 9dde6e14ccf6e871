// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/sheet_stills.h"

#include "core/video/video.h"
#include "core/workspace/stills.h"
#include "core/workspace/turning.h"

#include <optional>
#include <utility>

namespace lapwright::commands {
namespace {

using MaybeVideo = std::optional<workspace::VideoInStep>;

base::Result<std::optional<video::StepEstimate>> step_of(const VideoArguments& given, const analysis::Side& side,
                                                         std::string& notes) {
    if (given.offset_s) return std::optional(video::step_by_hand({0.0, *given.offset_s}, {}));
    auto opened = video::open_video(given.files);
    if (!opened) return opened.error();
    video::Video video = std::move(opened).value();
    const auto proposal = workspace::proposed_step(*side.session, video);
    if (!proposal) return proposal.error();
    std::string line = given.files.front() + ": ";
    line += proposal->estimate ? video::offset_words(*proposal->estimate)
                               : "it cannot be put in step by itself, so that it gives no stills; say its offset";
    for (const std::string& reason : proposal->reasons)
        line += "; " + reason;
    notes += line + "\n";
    return proposal->estimate;
}

base::Result<MaybeVideo> in_step(const VideoArguments& given, const analysis::Side& side, std::string& notes) {
    if (given.files.empty()) return MaybeVideo();
    const auto step = step_of(given, side, notes);
    if (!step) return step.error();
    return *step ? MaybeVideo(workspace::VideoInStep{given.files, (*step)->step}) : MaybeVideo();
}

} // namespace

base::Result<std::vector<sheet::StillPair>> stills_of(const Arguments& arguments, const analysis::Pairing& pairing,
                                                      std::string& notes) {
    if (arguments.video_a.files.empty() && arguments.video_b.files.empty()) return std::vector<sheet::StillPair>();
    const auto a = in_step(arguments.video_a, pairing.a, notes);
    if (!a) return a.error();
    const auto b = in_step(arguments.video_b, pairing.b, notes);
    if (!b) return b.error();
    workspace::StillsWanted wanted{arguments.still_corner, {}};
    for (const std::string& name : arguments.still_moments)
        if (const auto moment = workspace::parse_still_moment(name)) wanted.moments.push_back(*moment);
    auto made = workspace::stills(pairing, wanted, *a, *b, arguments.units);
    if (made && made->empty() && (*a || *b))
        notes += "no video shows the moments asked for; the sheet is without stills\n";
    return made;
}

} // namespace lapwright::commands
