// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/translation.h"

#include <atomic>
#include <string_view>

namespace lapwright::base {
namespace {

std::atomic<Translator> translator_in_use = nullptr;
std::atomic<char> mark_in_use = '.';
std::atomic<const char*> code_in_use = "en";

} // namespace

void set_language(const Language& language) {
    translator_in_use = language.translator;
    mark_in_use = language.decimal_mark;
    code_in_use = language.code;
}

char decimal_mark() {
    return mark_in_use.load(std::memory_order_relaxed);
}

const char* language_code() {
    return code_in_use;
}

std::string said(const char* english) {
    const Translator translate = translator_in_use.load(std::memory_order_acquire);
    if (translate == nullptr) return english;
    return translate(english).value_or(english);
}

std::string said(const char* english, std::initializer_list<std::string> values) {
    const std::string words = said(english);
    std::string text;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const bool place = words[at] == '%' && at + 1 < words.size() && words[at + 1] >= '1' &&
                           words[at + 1] <= '0' + static_cast<char>(values.size());
        if (place)
            text += values.begin()[words[++at] - '1'];
        else
            text += words[at];
    }
    return text;
}

std::string labelled(const std::string& name, const std::string& what) {
    return said("%1: %2", {name, what});
}

} // namespace lapwright::base
