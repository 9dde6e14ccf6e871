# SPDX-License-Identifier: GPL-3.0-or-later
# The program in a real window: an X server without a screen, a window manager (without one no key arrives), a hand.
find_program(XVFB Xvfb)
find_program(OPENBOX openbox)
find_program(XDOTOOL xdotool)
if(XVFB AND OPENBOX AND XDOTOOL)
    foreach(name IN ITEMS window columns_window walk)
        add_test(NAME end_to_end/${name} COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/${name}_test.sh
            $<TARGET_FILE:lapwright> ${CMAKE_SOURCE_DIR}/sample-sessions)
        set_tests_properties(end_to_end/${name} PROPERTIES LABELS end_to_end TIMEOUT 240 RUN_SERIAL ON)
    endforeach()
    if(FFMPEG_FOUND)
        add_test(NAME end_to_end/video_window COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/video_window_test.sh
            $<TARGET_FILE:lapwright> ${CMAKE_SOURCE_DIR}/sample-sessions)
        set_tests_properties(end_to_end/video_window PROPERTIES LABELS end_to_end TIMEOUT 240 RUN_SERIAL ON)
    endif()
    # AT-SPI is read by Debian's own Python.
    execute_process(COMMAND /usr/bin/python3 -c "import gi; gi.require_version('Atspi', '2.0')"
        RESULT_VARIABLE without_bus OUTPUT_QUIET ERROR_QUIET)
    if(without_bus EQUAL 0 AND EXISTS /usr/libexec/at-spi-bus-launcher)
        add_test(NAME end_to_end/heard_window COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/heard_window_test.sh
            $<TARGET_FILE:lapwright> ${CMAKE_SOURCE_DIR}/sample-sessions)
        set_tests_properties(end_to_end/heard_window PROPERTIES LABELS end_to_end TIMEOUT 240 RUN_SERIAL ON)
    endif()
else()
    message(STATUS "tests: Xvfb, openbox or xdotool is missing; the window is not tested end to end")
endif()
