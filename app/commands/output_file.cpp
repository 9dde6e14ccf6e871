// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/output_file.h"

#include "core/sheet/html_sheet.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <system_error>

namespace lapwright::commands {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t max_searched_bytes = 16U << 20U; // a sheet has well under one MiB

std::string contents_of(const std::string& path) {
    std::ifstream file(std::filesystem::path(path), std::ios::binary);
    std::string bytes(max_searched_bytes, '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    return bytes;
}

// The creator of a PDF's information dictionary as its writer puts it: UTF-16, big end first (ISO 32000-1, 7.9.2.2).
std::string pdf_mark() {
    std::string mark = "/Creator (\xFE\xFF";
    for (const char letter : std::string_view("Lapwright"))
        mark += std::string(1, '\0') + letter;
    return mark;
}

// An older sheet bears the program's mark; a foreign PDF or page is nobody's to lose.
bool may_be_renewed(const std::string& contents, Renews renews) {
    const auto holds = [&](std::string_view mark) { return contents.find(mark) != std::string::npos; };
    return (renews == Renews::pdf_sheet && contents.starts_with("%PDF-") && holds(pdf_mark())) ||
           (renews == Renews::html_sheet && contents.starts_with("<!DOCTYPE html>") && holds(sheet::html_mark));
}

} // namespace

base::Result<void> check_output(const std::string& out, const std::vector<std::string>& inputs, Renews renews) {
    const auto refused = [&](const std::string& what) {
        return base::Error{
            base::ErrorCode::file_not_writable, {out, {}, {}}, what, "name a file that is not there yet with --out"};
    };
    std::error_code unknown;
    const fs::file_status status = fs::status(out, unknown);
    if (!fs::exists(status)) return {}; // who writes says what is wrong with the folder
    const auto is_out = [&](const std::string& input) { return !input.empty() && fs::equivalent(input, out, unknown); };
    if (std::ranges::any_of(inputs, is_out)) return refused("this file is read by the same command and stays as it is");
    if (!fs::is_regular_file(status)) return refused("this is a folder or a device, which no file takes the place of");
    const std::string contents = contents_of(out);
    if (contents.starts_with("SQLite format 3"))
        return refused("this is a book or another database and stays as it is");
    if (may_be_renewed(contents, renews)) return {};
    return refused(renews == Renews::nothing
                       ? "this file is there already and stays as it is"
                       : "this file is there already, is no sheet of this kind, and stays as it is");
}

} // namespace lapwright::commands
