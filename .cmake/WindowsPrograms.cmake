# SPDX-License-Identifier: GPL-3.0-or-later
# What a program for Windows has besides: icon and version in the file, and, because Windows gives a program either a terminal
# or none, the same program a second time without one: lapwright-window.exe, which the start menu opens.
enable_language(RC)
set(numbers "${PROJECT_VERSION_MAJOR},${PROJECT_VERSION_MINOR},${PROJECT_VERSION_PATCH},0")
set(icon "${CMAKE_BINARY_DIR}/lapwright.ico")
set(drawing "${CMAKE_SOURCE_DIR}/resources/icons/lapwright.svg")
find_program(RSVG_CONVERT rsvg-convert REQUIRED) # of the machine that builds, as ImageMagick's convert
find_program(CONVERT convert REQUIRED)
set(painted)
set(paint)
foreach(size IN ITEMS 16 24 32 48 64 256)
    list(APPEND painted "${CMAKE_BINARY_DIR}/icon-${size}.png")
    list(APPEND paint COMMAND "${RSVG_CONVERT}" -w ${size} -h ${size} "${drawing}" -o "${CMAKE_BINARY_DIR}/icon-${size}.png")
endforeach()
add_custom_command(OUTPUT "${icon}" DEPENDS "${drawing}" VERBATIM ${paint} COMMAND "${CONVERT}" ${painted} "${icon}")

function(give_icon_and_version target description)
    set(resource "${CMAKE_BINARY_DIR}/${target}.rc")
    file(CONFIGURE OUTPUT "${resource}" @ONLY CONTENT [[
IDI_ICON1 ICON "lapwright.ico"
1 VERSIONINFO
FILEVERSION @numbers@
PRODUCTVERSION @numbers@
FILETYPE 1
BEGIN
    BLOCK "StringFileInfo"
    BEGIN
        BLOCK "040904b0"
        BEGIN
            VALUE "ProductName", "Lapwright"
            VALUE "FileDescription", "@description@"
            VALUE "FileVersion", "@PROJECT_VERSION@"
            VALUE "ProductVersion", "@PROJECT_VERSION@"
            VALUE "LegalCopyright", "The Lapwright authors, GPL-3.0-or-later"
        END
    END
    BLOCK "VarFileInfo"
    BEGIN
        VALUE "Translation", 0x409, 1200
    END
END
]])
    target_sources(${target} PRIVATE "${resource}")
    set_source_files_properties("${resource}" PROPERTIES OBJECT_DEPENDS "${icon}")
endfunction()

give_icon_and_version(lapwright "Lapwright on the command line")
if(LAPWRIGHT_WINDOW)
    add_executable(lapwright-window WIN32 main.cpp)
    get_target_property(definitions lapwright COMPILE_DEFINITIONS)
    get_target_property(links lapwright LINK_LIBRARIES)
    target_compile_definitions(lapwright-window PRIVATE ${definitions})
    target_link_libraries(lapwright-window PRIVATE ${links})
    give_icon_and_version(lapwright-window "Lapwright")
    install(TARGETS lapwright-window RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
    foreach(target IN ITEMS lapwright lapwright-window)
        # A library of objects alone is never asked for them.
        target_sources(${target} PRIVATE built_in_plugins_windows.cpp)
        target_link_libraries(${target} PRIVATE Qt6::QWindowsIntegrationPlugin Qt6::Svg)
    endforeach()
    install(FILES /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf /usr/share/fonts/truetype/dejavu/DejaVuSans-Bold.ttf
        DESTINATION ${CMAKE_INSTALL_DATADIR}/lapwright/fonts)
endif()
