# SPDX-License-Identifier: GPL-3.0-or-later
# The target `elementary`: sine, exponential, logarithm and their like from one source on every system. The C library's own
# differ in the last digit from system to system, glibc's even by the processor (it has others where there is a fused
# multiply-add), and a last digit is enough to make another document of the same recordings. musl's are plain C, are compiled
# for the least processor and fall out alike. Its functions alone are taken out of its archive, nothing else of that library.
set(elementary_functions sin cos tan asin acos atan atan2 sinh cosh tanh asinh atanh sincos exp exp2 expm1 log log2 log10 log1p
    pow hypot cbrt erf remainder remquo)
set(elementary_parts __sin __cos __tan __rem_pio2 __rem_pio2_large __expo2 __math_divzero __math_invalid __math_oflow __math_uflow
    __math_xflow exp_data log_data log2_data pow_data)

set(elementary_archive "${CMAKE_BINARY_DIR}/elementary/libelementary.a")
if(WIN32)
    find_library(elementary_archive_found elementary) # made by packaging/windows/build
    set(elementary_archive "${elementary_archive_found}")
else()
    string(REPLACE "-gnu" "-musl" musl "${CMAKE_LIBRARY_ARCHITECTURE}")
    find_file(MUSL_ARCHIVE libc.a PATHS "/usr/lib/${musl}" NO_DEFAULT_PATH)
    if(MUSL_ARCHIVE AND NOT EXISTS "${elementary_archive}")
        list(TRANSFORM elementary_functions APPEND .lo OUTPUT_VARIABLE members)
        list(TRANSFORM elementary_parts APPEND .lo OUTPUT_VARIABLE parts)
        file(MAKE_DIRECTORY "${CMAKE_BINARY_DIR}/elementary")
        execute_process(COMMAND "${CMAKE_AR}" x "${MUSL_ARCHIVE}" ${members} ${parts}
            WORKING_DIRECTORY "${CMAKE_BINARY_DIR}/elementary" COMMAND_ERROR_IS_FATAL ANY)
        execute_process(COMMAND "${CMAKE_AR}" rcs libelementary.a ${members} ${parts}
            WORKING_DIRECTORY "${CMAKE_BINARY_DIR}/elementary" COMMAND_ERROR_IS_FATAL ANY)
    endif()
endif()

add_library(elementary INTERFACE)
if(elementary_archive AND EXISTS "${elementary_archive}")
    target_link_libraries(elementary INTERFACE "${elementary_archive}")
    if(WIN32) # mingw has sincos in one object with its long double one, which GeographicLib asks for: the first counts
        target_link_options(elementary INTERFACE -Wl,--allow-multiple-definition)
    endif()
else()
    message(STATUS "musl's archive is not there: last digits follow the system's own functions")
endif()
