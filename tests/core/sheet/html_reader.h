// SPDX-License-Identifier: GPL-3.0-or-later
// Reads an HTML sheet with Expat, a strict XML parser that shares nothing with the writer: elements in their order,
// each with its attributes and all the text inside it.
#pragma once

#include <expat.h>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace lapwright::sheet {

struct Element {
    std::string name;
    std::map<std::string, std::string> attributes;
    std::string text;
};

struct ReadBack {
    bool well_formed = false;
    std::string problem;
    std::vector<Element> elements;

    [[nodiscard]] std::vector<Element> named(const std::string& name, const std::string& kind = {}) const {
        std::vector<Element> found;
        for (const Element& element : elements) {
            const auto at = element.attributes.find("class");
            const std::string classes = " " + (at == element.attributes.end() ? std::string() : at->second) + " ";
            const bool of_kind = kind.empty() || classes.find(" " + kind + " ") != std::string::npos;
            if (element.name == name && of_kind) found.push_back(element);
        }
        return found;
    }
};

namespace reading {

struct State {
    ReadBack read;
    std::vector<std::size_t> open;
};

inline void XMLCALL start(void* user, const XML_Char* name, const XML_Char** attributes) {
    auto& state = *static_cast<State*>(user);
    Element element{name, {}, {}};
    for (; *attributes != nullptr; attributes += 2)
        element.attributes[attributes[0]] = attributes[1];
    state.open.push_back(state.read.elements.size());
    state.read.elements.push_back(std::move(element));
}

inline void XMLCALL end(void* user, const XML_Char*) {
    static_cast<State*>(user)->open.pop_back();
}

inline void XMLCALL words(void* user, const XML_Char* text, int length) {
    auto& state = *static_cast<State*>(user);
    for (const std::size_t i : state.open)
        state.read.elements[i].text.append(text, static_cast<std::size_t>(length));
}

} // namespace reading

inline ReadBack read_html(const std::string& html) {
    const std::unique_ptr<XML_ParserStruct, void (*)(XML_Parser)> parser(XML_ParserCreate("UTF-8"), XML_ParserFree);
    reading::State state;
    XML_SetUserData(parser.get(), &state);
    XML_SetElementHandler(parser.get(), reading::start, reading::end);
    XML_SetCharacterDataHandler(parser.get(), reading::words);
    state.read.well_formed = XML_Parse(parser.get(), html.data(), static_cast<int>(html.size()), 1) == XML_STATUS_OK;
    if (!state.read.well_formed) state.read.problem = XML_ErrorString(XML_GetErrorCode(parser.get()));
    return state.read;
}

} // namespace lapwright::sheet
