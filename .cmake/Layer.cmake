# SPDX-License-Identifier: GPL-3.0-or-later
# layer(core/lap core/base core/math …): the library of one folder, and the list of folders that it may include.
#
# Every layer has an include directory of its own that shows nothing but its own headers (a link in the build tree), and
# layers are linked privately: a folder that is not named in the call cannot be included at all, not even through another
# header. The same call writes a row of layers.txt, which the include test reads; there is no second list.

set(LAPWRIGHT_LAYERS_FILE "${CMAKE_BINARY_DIR}/layers.txt")
file(WRITE "${LAPWRIGHT_LAYERS_FILE}" "")

# layer_group(core/import text tables …): folders that stand behind one name.  A row that names the group may include all
# of them; the target core_import links them all.
function(layer_group folder)
    list(TRANSFORM ARGN PREPEND "${folder}/" OUTPUT_VARIABLE members)
    set_property(GLOBAL PROPERTY "LAPWRIGHT_GROUP_${folder}" ${members})
    string(REPLACE "/" "_" target "${folder}")
    add_library(${target} INTERFACE)
    list(TRANSFORM members REPLACE "/" "_" OUTPUT_VARIABLE member_targets)
    target_link_libraries(${target} INTERFACE ${member_targets})
endfunction()

function(layer folder)
    set(row)
    foreach(below IN LISTS ARGN)
        get_property(members GLOBAL PROPERTY "LAPWRIGHT_GROUP_${below}")
        if(members)
            list(APPEND row ${members})
        else()
            list(APPEND row "${below}")
        endif()
    endforeach()
    string(REPLACE "/" "_" target "${folder}")
    set(view "${CMAKE_BINARY_DIR}/layers/${target}")
    cmake_path(GET folder PARENT_PATH parent)
    file(MAKE_DIRECTORY "${view}/${parent}")
    if(NOT EXISTS "${view}/${folder}")
        file(CREATE_LINK "${CMAKE_SOURCE_DIR}/${folder}" "${view}/${folder}" SYMBOLIC)
    endif()

    file(GLOB sources CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/${folder}/*.cpp")
    file(GLOB headers CONFIGURE_DEPENDS RELATIVE "${CMAKE_SOURCE_DIR}" "${CMAKE_SOURCE_DIR}/${folder}/*.h")
    list(TRANSFORM headers PREPEND "${view}/")
    if(NOT sources)
        set(sources "${CMAKE_BINARY_DIR}/empty_layer.cpp")
        file(CONFIGURE OUTPUT "${sources}" CONTENT "") # leaves an equal file as old as it is
    endif()

    add_library(${target} STATIC ${sources})
    target_sources(${target} PUBLIC FILE_SET HEADERS BASE_DIRS "${view}" FILES ${headers})
    foreach(below IN LISTS row)
        string(REPLACE "/" "_" below_target "${below}")
        target_link_libraries(${target} PRIVATE ${below_target})
    endforeach()
    string(REPLACE ";" " " row_text "${row}")
    file(APPEND "${LAPWRIGHT_LAYERS_FILE}" "${folder}: ${row_text}\n")
    set_property(GLOBAL APPEND PROPERTY LAPWRIGHT_LAYERS ${target})
    cmake_language(EVAL CODE "cmake_language(DEFER CALL check_headers_alone ${target})")
endfunction()

# Every header of a layer compiled alone, and twice (its include guard), with the layer's own include directories and
# libraries: the target headers_alone. CMake's own verification sets do not know the private links that a header needs.
add_custom_target(headers_alone)
function(check_headers_alone target)
    get_target_property(headers ${target} HEADER_SET)
    get_target_property(view ${target} HEADER_DIRS)
    get_target_property(links ${target} LINK_LIBRARIES)
    if(NOT headers)
        return()
    endif()
    set(probes "")
    foreach(header IN LISTS headers)
        cmake_path(RELATIVE_PATH header BASE_DIRECTORY "${view}" OUTPUT_VARIABLE include)
        set(probe "${CMAKE_BINARY_DIR}/headers_alone/${include}.cpp")
        file(CONFIGURE OUTPUT "${probe}" CONTENT "#include \"${include}\"\n#include \"${include}\"\n")
        list(APPEND probes "${probe}")
    endforeach()
    add_library(${target}_headers_alone OBJECT EXCLUDE_FROM_ALL ${probes})
    set_target_properties(${target}_headers_alone PROPERTIES AUTOMOC OFF AUTORCC OFF UNITY_BUILD OFF)
    target_compile_options(${target}_headers_alone PRIVATE -O0)
    target_link_libraries(${target}_headers_alone PRIVATE ${target})
    if(links)
        target_link_libraries(${target}_headers_alone PRIVATE ${links})
    endif()
    add_dependencies(headers_alone ${target}_headers_alone)
endfunction()

# A core layer that links Qt, the plotting library or ui is a mistake that configuring already refuses.
function(refuse_window_in_core)
    get_property(layers GLOBAL PROPERTY LAPWRIGHT_LAYERS)
    foreach(target IN LISTS layers)
        if(NOT target MATCHES "^core_")
            continue()
        endif()
        get_target_property(links ${target} LINK_LIBRARIES)
        if(links MATCHES "Qt6|QCustomPlot|ui_")
            message(FATAL_ERROR "${target} links ${links}: core knows neither Qt nor ui")
        endif()
    endforeach()
endfunction()
