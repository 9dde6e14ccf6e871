# SPDX-License-Identifier: GPL-3.0-or-later
# cmake -DMAKER=… -DSAMPLES=… -DSCRATCH=… -P regenerate.cmake: the files in sample-sessions are exactly what the simulator
# writes. Guards change, not truth.
file(REMOVE_RECURSE "${SCRATCH}")
execute_process(COMMAND "${MAKER}" "${SCRATCH}" COMMAND_ERROR_IS_FATAL ANY)
file(GLOB made RELATIVE "${SCRATCH}" "${SCRATCH}/*")
file(GLOB kept RELATIVE "${SAMPLES}" "${SAMPLES}/*")
list(REMOVE_ITEM kept README.md)
list(FILTER kept EXCLUDE REGEX "\\.mp4$") # of an encoder: tests/end_to_end/sample_videos_test.cpp
if(NOT made STREQUAL kept)
    message(FATAL_ERROR "made: ${made}\nkept: ${kept}")
endif()
foreach(name IN LISTS made)
    file(SHA256 "${SCRATCH}/${name}" fresh)
    file(SHA256 "${SAMPLES}/${name}" stored)
    file(SIZE "${SAMPLES}/${name}" bytes)
    if(NOT fresh STREQUAL stored)
        message(FATAL_ERROR "${name} differs from what the simulator writes: run make_sample_sessions sample-sessions")
    endif()
    if(bytes GREATER 3000000)
        message(FATAL_ERROR "${name} has ${bytes} bytes; the demo's files stay under 3 MB")
    endif()
endforeach()
