// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/source_text.h"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <iterator>

namespace lapwright::architecture {
namespace {

// Walks C++ text once and copies it, with blanks for what is left out.
class Blanker {
  public:
    Blanker(std::string_view text, bool keep_literals) : text_(text), keep_literals_(keep_literals) {}

    std::string run() {
        while (at_ < text_.size()) {
            step();
        }
        return std::move(out_);
    }

  private:
    void step() {
        if (starts("//")) {
            take_until("\n", false, false);
        } else if (starts("/*")) {
            take_until("*/", true, false);
        } else if (starts("R\"") && !after_identifier()) {
            const auto open = text_.find('(', at_);
            const auto delimiter = text_.substr(at_ + 2, open == std::string_view::npos ? 0 : open - at_ - 2);
            take_until(")" + std::string(delimiter) + "\"", true, keep_literals_);
        } else if (text_[at_] == '"' || (text_[at_] == '\'' && !after_identifier())) {
            take_quoted(text_[at_]);
        } else {
            put(true);
        }
    }

    [[nodiscard]] bool starts(std::string_view word) const { return text_.substr(at_).starts_with(word); }

    // An apostrophe behind a digit or letter separates digits.
    [[nodiscard]] bool after_identifier() const {
        return at_ > 0 && (std::isalnum(static_cast<unsigned char>(text_[at_ - 1])) != 0 || text_[at_ - 1] == '_');
    }

    void put(bool keep) {
        const char c = text_[at_++];
        out_ += keep || c == '\n' ? c : ' ';
    }

    void take_until(std::string_view end, bool with_end, bool keep) {
        const auto found = text_.find(end, at_ + 2);
        const auto stop = found == std::string_view::npos ? text_.size() : found + (with_end ? end.size() : 0);
        while (at_ < stop) {
            put(keep);
        }
    }

    void take_quoted(char quote) {
        put(keep_literals_);
        while (at_ < text_.size() && text_[at_] != quote && text_[at_] != '\n') {
            if (text_[at_] == '\\' && at_ + 1 < text_.size()) {
                put(keep_literals_);
            }
            put(keep_literals_);
        }
        if (at_ < text_.size()) {
            put(keep_literals_);
        }
    }

    std::string_view text_;
    bool keep_literals_;
    std::size_t at_ = 0;
    std::string out_;
};

bool has_ending(const std::string& name, const std::vector<std::string>& endings) {
    return std::ranges::any_of(endings, [&](const std::string& ending) { return name.ends_with(ending); });
}

} // namespace

std::string finding(const std::string& path, std::size_t line, const std::string& what) {
    return path + ":" + std::to_string(line) + ": " + what;
}

std::vector<SourceFile> read_sources(const std::filesystem::path& root, const std::string& folder,
                                     const std::vector<std::string>& endings) {
    namespace fs = std::filesystem;
    std::vector<SourceFile> files;
    if (!fs::is_directory(root / folder)) {
        return files;
    }
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
        if (!entry.is_regular_file() || !has_ending(entry.path().filename().string(), endings)) {
            continue;
        }
        std::ifstream in(entry.path(), std::ios::binary);
        files.push_back({fs::relative(entry.path(), root).generic_string(),
                         std::string(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>())});
    }
    std::ranges::sort(files, {}, &SourceFile::path);
    return files;
}

std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = text.find('\n');
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

std::string without_comments(std::string_view text) {
    return Blanker(text, true).run();
}

std::string without_comments_and_literals(std::string_view text) {
    return Blanker(text, false).run();
}

} // namespace lapwright::architecture
