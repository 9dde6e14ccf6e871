// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/output_file.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <system_error>

namespace lapwright::commands {
namespace {

namespace fs = std::filesystem;

std::string beginning_of(const std::string& path) {
    std::string bytes(16, '\0');
    std::ifstream file(path, std::ios::binary);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    return bytes;
}

bool may_be_renewed(const std::string& beginning, Renews renews) {
    return (renews == Renews::pdf_sheet && beginning.starts_with("%PDF-")) ||
           (renews == Renews::html_sheet && beginning.starts_with("<!DOCTYPE html>"));
}

} // namespace

std::optional<base::Error> refused_output(const std::string& out, const std::vector<std::string>& inputs,
                                          Renews renews) {
    const auto refused = [&](const std::string& what) {
        return base::Error{
            base::ErrorCode::file_not_writable, {out, {}, {}}, what, "name a file that is not there yet with --out"};
    };
    std::error_code unknown;
    const fs::file_status status = fs::status(out, unknown);
    if (!fs::exists(status)) return std::nullopt; // who writes says what is wrong with the folder
    const auto is_out = [&](const std::string& input) { return !input.empty() && fs::equivalent(input, out, unknown); };
    if (std::ranges::any_of(inputs, is_out)) return refused("this file is read by the same command and stays as it is");
    if (!fs::is_regular_file(status)) return refused("this is a folder or a device, which no file takes the place of");
    const std::string beginning = beginning_of(out);
    if (beginning.starts_with("SQLite format 3"))
        return refused("this is a book or another database and stays as it is");
    if (may_be_renewed(beginning, renews)) return std::nullopt;
    return refused(renews == Renews::nothing
                       ? "this file is there already and stays as it is"
                       : "this file is there already, is no sheet of this kind, and stays as it is");
}

} // namespace lapwright::commands
