// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/learning_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/findings/learning_words.h"

namespace lapwright::commands {
namespace {

using analysis::LearnedLap;
using analysis::LearningReport;
using comparison::LearningCourse;
using nlohmann::ordered_json;

ordered_json course_json(const LearningReport& report, const LearningCourse& course) {
    return {{"state", comparison::name(course.state)},
            {"change_s_per_lap", estimate_json(course.change_s_per_lap)},
            {"late_change_s_per_lap", estimate_json(course.late_change_s_per_lap)},
            {"now_s", estimate_json(course.now_s)},
            {"best_s", maybe_json(course.best_s)},
            {"best_lap", course.best_s ? ordered_json(report.laps[course.best_lap].number) : ordered_json(nullptr)},
            {"best_session",
             course.best_s ? ordered_json(report.laps[course.best_lap].session + 1) : ordered_json(nullptr)},
            {"to_win_s", estimate_json(course.to_win_s)},
            {"to_win_by_chance_s", maybe_json(course.to_win_by_chance_s)}};
}

// "lap 7", and of which session where there are several.
std::string lap_words(const LearningReport& report, const LearnedLap& lap) {
    const std::string number = base::integer_text(lap.number);
    if (report.sessions.size() == 1) return number;
    return base::integer_text(static_cast<std::int64_t>(lap.session + 1)) + "/" + number;
}

std::vector<std::string> course_row(const LearningReport& report, const std::string& name,
                                    const LearningCourse& course) {
    const std::string best =
        course.best_s ? findings::best_text(course) + " (" + lap_words(report, report.laps[course.best_lap]) + ")"
                      : findings::best_text(course);
    return {
        name, findings::learning_text(course.state), findings::change_per_lap_text(course), findings::now_text(course),
        best, findings::to_win_text(course)};
}

std::string laps_rows(const LearningReport& report) {
    std::vector<std::vector<std::string>> rows{{"lap", "time", "behind", ""}};
    const comparison::LearningCourse& whole = report.curve.lap;
    for (const LearnedLap& lap : report.laps)
        rows.push_back({lap_words(report, lap), base::lap_time_with_margin(lap.time_s, lap.time_sd_s),
                        whole.best_s ? base::behind_text(lap.time_s, *whole.best_s) : std::string(),
                        lap.clean ? "" : lap.why_not_clean});
    return aligned(rows, 0);
}

} // namespace

std::string learning_table(const LearningReport& report) {
    std::string text;
    for (std::size_t i = 0; i < report.sessions.size(); ++i) {
        if (report.sessions.size() > 1) text += base::integer_text(static_cast<std::int64_t>(i + 1)) + "  ";
        text += report.sessions[i]->title() + " (" + report.sessions[i]->recording->source_file + ")\n";
    }
    text += report.sentence + "\n";
    for (const std::string& note : report.notes)
        text += note + "\n";
    text += "\n" + laps_rows(report);
    std::vector<std::vector<std::string>> rows{
        {"segment", "", "s from lap to lap", "now s", "best s (lap)", "still to be won s"}};
    for (std::size_t i = 0; i < report.curve.segments.size(); ++i)
        rows.push_back(course_row(report, report.track.segments[i].name, report.curve.segments[i]));
    rows.push_back(course_row(report, "whole lap", report.curve.lap));
    text += "\n" + aligned(rows, 2);
    if (report.curve.best_segments_s)
        text += "\nbest segments put together: " + base::lap_time_text(*report.curve.best_segments_s) + "\n";
    return text;
}

std::string learning_json(const LearningReport& report) {
    ordered_json sessions = ordered_json::array();
    for (const auto& session : report.sessions)
        sessions.push_back({{"file", session->recording->source_file},
                            {"driver", text_or_null(session->recording->driver)},
                            {"car", text_or_null(session->recording->car)},
                            {"start_utc", moment_json(session->recording->start_unix_s)}});
    ordered_json laps = ordered_json::array();
    for (const LearnedLap& lap : report.laps)
        laps.push_back({{"session", lap.session + 1},
                        {"number", lap.number},
                        {"driven_before", lap.order},
                        {"clean", lap.clean},
                        {"time_s", number_json(lap.time_s)},
                        {"time_sd_s", maybe_json(lap.time_sd_s)},
                        {"segment_times_s", lap.segment_s}});
    ordered_json segments = ordered_json::array();
    for (std::size_t i = 0; i < report.curve.segments.size(); ++i) {
        const track::Segment& segment = report.track.segments[i];
        ordered_json one{{"name", segment.name},
                         {"kind", segment.kind == track::SegmentKind::corner ? "corner" : "straight"},
                         {"start_m", number_json(segment.start_m)},
                         {"end_m", number_json(segment.end_m)}};
        one.update(course_json(report, report.curve.segments[i]));
        segments.push_back(std::move(one));
    }
    return document_text(
        {{"sentence", report.sentence},
         {"notes", report.notes},
         {"sessions", sessions},
         {"track", {{"name", text_or_null(report.track.name)}, {"length_m", number_json(report.track.line.length_m)}}},
         {"laps", laps},
         {"lap", course_json(report, report.curve.lap)},
         {"segments", segments},
         {"best_segments_s", maybe_json(report.curve.best_segments_s)}});
}

} // namespace lapwright::commands
