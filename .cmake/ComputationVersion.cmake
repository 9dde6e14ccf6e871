# SPDX-License-Identifier: GPL-3.0-or-later
# embed_computation_version(core_analysis): the checksum of core's sources and of what compiles them, as text in the
# program, made anew when one of them has changed.  This file is also the script that makes it.
if(NOT CMAKE_SCRIPT_MODE_FILE)
    function(embed_computation_version target)
        file(GLOB_RECURSE sources CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/core/*.cpp" "${CMAKE_SOURCE_DIR}/core/*.h")
        set(output "${CMAKE_BINARY_DIR}/computation_version.cpp")
        string(TOUPPER "${CMAKE_BUILD_TYPE}" build_type)
        set(compiler "${CMAKE_CXX_COMPILER_ID} ${CMAKE_CXX_COMPILER_VERSION} ${CMAKE_SYSTEM_PROCESSOR} ${CMAKE_CXX_FLAGS} ${CMAKE_CXX_FLAGS_${build_type}}")
        add_custom_command(OUTPUT "${output}"
            COMMAND "${CMAKE_COMMAND}" "-DOUTPUT=${output}" "-DCORE=${CMAKE_SOURCE_DIR}/core" "-DCOMPILER=${compiler}"
                -P "${CMAKE_SOURCE_DIR}/.cmake/ComputationVersion.cmake"
            DEPENDS ${sources} "${CMAKE_SOURCE_DIR}/.cmake/ComputationVersion.cmake"
            COMMENT "Checksum of core's sources"
            VERBATIM)
        target_sources(${target} PRIVATE "${output}")
        set_source_files_properties("${output}" PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
    endfunction()
    return()
endif()

file(GLOB_RECURSE sources RELATIVE "${CORE}" "${CORE}/*.cpp" "${CORE}/*.h")
list(SORT sources)
set(sums "${COMPILER}")
foreach(source IN LISTS sources)
    file(SHA256 "${CORE}/${source}" sum)
    string(APPEND sums "\n${sum} ${source}")
endforeach()
string(SHA256 version "${sums}")
file(WRITE "${OUTPUT}" "// Made from the sources of core by .cmake/ComputationVersion.cmake.
#include \"core/analysis/computation_version.h\"

namespace lapwright::analysis {

std::string_view computation_version() {
    return \"${version}\";
}

} // namespace lapwright::analysis
")
