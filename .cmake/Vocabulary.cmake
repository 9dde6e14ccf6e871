# SPDX-License-Identifier: GPL-3.0-or-later
# embed_vocabulary(core_import_vocabulary): names of columns and units, resources/vocabulary/*.txt, as text in the program.
function(embed_vocabulary target)
    set(texts "")
    foreach(name IN ITEMS columns units)
        set(file "${CMAKE_SOURCE_DIR}/resources/vocabulary/${name}.txt")
        file(READ "${file}" words)
        string(APPEND texts "std::string_view built_in_${name}() {\n    return R\"words(${words})words\";\n}\n\n")
        set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${file}")
    endforeach()
    set(source "${CMAKE_BINARY_DIR}/built_in_words.cpp")
    file(CONFIGURE OUTPUT "${source}" @ONLY CONTENT "// Made from resources/vocabulary by .cmake/Vocabulary.cmake.
#include \"core/import/vocabulary/built_in_words.h\"

namespace lapwright::import {

@texts@} // namespace lapwright::import
")
    target_sources(${target} PRIVATE "${source}")
endfunction()
