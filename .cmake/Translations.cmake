# SPDX-License-Identifier: GPL-3.0-or-later
# embed_translations(ui_window): resources/translations/*.ts, made small by lrelease, as :/translations in the program.
find_program(LRELEASE lrelease HINTS /usr/lib/qt6/bin "${QT6_INSTALL_PREFIX}/${QT6_INSTALL_LIBEXECS}"
    "${QT6_INSTALL_PREFIX}/${QT6_INSTALL_BINS}" NO_DEFAULT_PATH)
find_program(LRELEASE NAMES lrelease-qt6 lrelease)
if(NOT LRELEASE)
    message(FATAL_ERROR "lrelease is not there: install qt6-l10n-tools, or build without the window (-DLAPWRIGHT_WINDOW=OFF)")
endif()

function(embed_translations target)
    set(folder "${CMAKE_BINARY_DIR}/translations")
    set(names "")
    set(compiled "")
    foreach(language IN ITEMS de fr ja)
        set(source "${CMAKE_SOURCE_DIR}/resources/translations/lapwright_${language}.ts")
        set(file "${folder}/lapwright_${language}.qm")
        add_custom_command(OUTPUT "${file}" DEPENDS "${source}" COMMAND "${LRELEASE}" -silent -nounfinished "${source}" -qm "${file}"
            VERBATIM)
        list(APPEND compiled "${file}")
        string(APPEND names "<file>lapwright_${language}.qm</file>")
    endforeach()
    file(CONFIGURE OUTPUT "${folder}/translations.qrc" @ONLY
        CONTENT "<RCC><qresource prefix=\"/translations\">@names@</qresource></RCC>\n")
    add_custom_command(OUTPUT "${folder}/translations.cpp" DEPENDS ${compiled} "${folder}/translations.qrc"
        COMMAND Qt6::rcc --name translations "${folder}/translations.qrc" -o "${folder}/translations.cpp" VERBATIM)
    target_sources(${target} PRIVATE "${folder}/translations.cpp")
    set_source_files_properties("${folder}/translations.cpp" PROPERTIES SKIP_AUTOMOC ON SKIP_UNITY_BUILD_INCLUSION ON)
endfunction()
