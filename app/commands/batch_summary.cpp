// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/batch_summary.h"

#include "core/base/number_text.h"
#include "core/sheet/csv.h"

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

namespace lapwright::commands {
namespace {

using Document = nlohmann::json;
using sheet::Cell;
using sheet::Number;

// Null where there is none, or what is there is no document.
Document document_of(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    return file ? Document::parse(file, nullptr, false) : Document();
}

Document at(const Document& object, const char* key) {
    return object.is_object() && object.contains(key) ? object[key] : Document();
}

Cell number_cell(const Document& value) {
    if (value.is_number_integer()) return Number{base::integer_text(value.get<std::int64_t>())};
    return Number{value.is_number() ? base::exact_text(value.get<double>()) : ""};
}

std::string text(const Document& value) {
    return value.is_string() ? value.get<std::string>() : "";
}

Document fastest_clean(const Document& session) {
    Document fastest;
    for (const Document& lap : at(session, "laps"))
        if (at(lap, "clean") == true && (fastest.is_null() || at(lap, "time_s") < at(fastest, "time_s"))) fastest = lap;
    return fastest;
}

std::vector<Cell> row_of(const std::string& folder, const Job& job, const std::string& name) {
    const Document document = document_of(result_path(folder, name));
    const bool done = document.is_object();
    const Document failure = done ? Document() : document_of(failure_path(folder, name));
    std::vector<Cell> row{name + ".json",
                          std::string(done                  ? "done"
                                      : failure.is_object() ? "failed"
                                                            : "missing"),
                          job.a, job.b};
    const Document sessions = at(document, "sessions");
    const Document session = sessions.is_array() && !sessions.empty() ? sessions.front() : Document();
    const Document lap = fastest_clean(session);
    const Document a = at(document, "a");
    const Document b = at(document, "b");
    for (const Document& figure : {job.b.empty() ? at(lap, "number") : at(a, "lap"), at(b, "lap"),
                                   job.b.empty() ? at(lap, "time_s") : at(a, "time_s"), at(b, "time_s"),
                                   at(document, "gap_s"), at(document, "gap_sd_s")})
        row.push_back(number_cell(figure));
    row.emplace_back(text(at(failure, "error")));
    return row;
}

} // namespace

std::string result_path(const std::string& folder, const std::string& name) {
    return (std::filesystem::path(folder) / (name + ".json")).string();
}

std::string failure_path(const std::string& folder, const std::string& name) {
    return (std::filesystem::path(folder) / (name + ".failed.json")).string();
}

std::string summary_csv(const std::vector<Job>& jobs, const std::string& folder, const std::string& options) {
    sheet::Table table{
        {"result", "status", "file_a", "file_b", "lap_a", "lap_b", "time_a_s", "time_b_s", "gap_s", "gap_sd_s", "why"},
        {}};
    for (const Job& job : jobs)
        table.rows.push_back(row_of(folder, job, result_name(job, options)));
    return sheet::csv_text(table);
}

} // namespace lapwright::commands
