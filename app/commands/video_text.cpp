// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/video_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"

namespace lapwright::commands {
namespace {

using nlohmann::ordered_json;

ordered_json facts_json(const video::Video& video) {
    ordered_json files = ordered_json::array();
    for (const video::Part& part : video.parts)
        files.push_back(part.path);
    const video::Facts& facts = video.facts;
    return {{"files", files},
            {"width", facts.width},
            {"height", facts.height},
            {"turned_deg", facts.turned_deg},
            {"rate_hz", facts.rate_hz > 0.0 ? ordered_json(facts.rate_hz) : ordered_json()},
            {"length_s", facts.length_s > 0.0 ? ordered_json(facts.length_s) : ordered_json()},
            {"codec", facts.codec},
            {"sound", facts.sound},
            {"created_utc", moment_json(facts.created_unix_s)}};
}

ordered_json step_json(const std::optional<video::StepEstimate>& estimate) {
    if (!estimate) return {};
    return {{"offset_s", estimate->step.offset_s},
            {"offset_low_s", estimate->offset_low_s},
            {"offset_high_s", estimate->offset_high_s},
            {"drift", estimate->step.drift},
            {"around_video_s", estimate->step.around_s},
            {"method", video::name(estimate->method)},
            {"score", estimate->score > 0.0 ? ordered_json(estimate->score) : ordered_json()}};
}

std::string facts_words(const video::Facts& facts) {
    std::string words = base::integer_text(facts.width) + " × " + base::integer_text(facts.height);
    if (facts.turned_deg != 0) words += ", turned by " + base::integer_text(facts.turned_deg) + "°";
    if (facts.rate_hz > 0.0) words += ", " + base::fixed_text(facts.rate_hz, 2) + " frames a second";
    if (facts.length_s > 0.0) words += ", " + base::duration_text(facts.length_s);
    return words + ", " + facts.codec + (facts.sound ? ", with sound" : ", without sound");
}

} // namespace

std::string video_json(const recording::Recording& recording, const video::Video& video,
                       const video::StepProposal& proposal) {
    return document_text({{"recording", recording.source_file},
                          {"video", facts_json(video)},
                          {"in_step", step_json(proposal.estimate)},
                          {"reasons", proposal.reasons}});
}

std::string video_table(const video::Video& video, const video::StepProposal& proposal) {
    std::string text;
    for (const video::Part& part : video.parts)
        text += part.path + "\n";
    text += facts_words(video.facts) + "\n";
    text += proposal.estimate ? video::offset_words(*proposal.estimate)
                              : "it cannot be put in step by itself: find a frame at the line and say when it was";
    text += "\n";
    for (const std::string& reason : proposal.reasons)
        text += "  " + reason + "\n";
    return text;
}

} // namespace lapwright::commands
