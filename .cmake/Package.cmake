# SPDX-License-Identifier: GPL-3.0-or-later
# What is installed besides the program, and the Debian package made of it: cpack --config build/release/CPackConfig.cmake
set(packaging "${CMAKE_SOURCE_DIR}/packaging")
set(packed "${CMAKE_BINARY_DIR}/packed")
set(documentation "${CMAKE_INSTALL_DATADIR}/doc/lapwright")

# Debian wants these compressed as far as gzip goes.
function(install_compressed source name destination)
    file(MAKE_DIRECTORY "${packed}")
    execute_process(COMMAND gzip -9 --no-name --stdout "${source}" OUTPUT_FILE "${packed}/${name}.gz" COMMAND_ERROR_IS_FATAL ANY)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${source}")
    install(FILES "${packed}/${name}.gz" DESTINATION "${destination}")
endfunction()

if(WIN32) # packaging/windows/make-installer packs what is installed
    install(FILES "${packaging}/debian/copyright" DESTINATION "${documentation}" RENAME copyright.txt)
    install(FILES "${CMAKE_SOURCE_DIR}/LICENSE" DESTINATION "${documentation}" RENAME LICENSE.txt)
    return()
endif()

install_compressed("${packaging}/lapwright.1" lapwright.1 "${CMAKE_INSTALL_MANDIR}/man1")
install_compressed("${packaging}/debian/changelog" changelog "${documentation}")
install(FILES "${packaging}/debian/copyright" DESTINATION "${documentation}")
install(DIRECTORY "${CMAKE_SOURCE_DIR}/sample-sessions/" DESTINATION "${documentation}/examples")
if(LAPWRIGHT_WINDOW)
    install(FILES "${packaging}/lapwright.desktop" DESTINATION "${CMAKE_INSTALL_DATADIR}/applications")
    install(FILES "${packaging}/lapwright.metainfo.xml" DESTINATION "${CMAKE_INSTALL_DATADIR}/metainfo")
    install(FILES "${CMAKE_SOURCE_DIR}/resources/icons/lapwright.svg"
        DESTINATION "${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps" OPTIONAL)
endif()

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME lapwright)
set(CPACK_PACKAGE_CONTACT "The Lapwright authors <authors@lapwright.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "compare laps of two logger files and see where the time went")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_PACKAGE_DESCRIPTION_FILE "${packaging}/debian/description")
if(LAPWRIGHT_WINDOW)
    # Loaded at run time, so no linker names them: the icons' picture format, the fonts.
    set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6, fonts-dejavu-core")
    set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-translations-l10n") # the buttons of Qt's dialogs
endif()
include(CPack)
