# SPDX-License-Identifier: GPL-3.0-or-later
# CMake's toolchain for Windows on Debian: mingw-w64 with POSIX threads; libraries from LAPWRIGHT_WINDOWS_PREFIX (made by
# packaging/windows/build) and from Debian's packages for mingw-w64, nothing from the machine that builds.
set(CMAKE_SYSTEM_NAME Windows)
set(CMAKE_SYSTEM_PROCESSOR AMD64)
set(CMAKE_C_COMPILER x86_64-w64-mingw32-gcc-posix)
set(CMAKE_CXX_COMPILER x86_64-w64-mingw32-g++-posix)
set(CMAKE_RC_COMPILER x86_64-w64-mingw32-windres)

list(APPEND CMAKE_TRY_COMPILE_PLATFORM_VARIABLES LAPWRIGHT_WINDOWS_PREFIX)
set(CMAKE_FIND_ROOT_PATH "${LAPWRIGHT_WINDOWS_PREFIX}" /usr/x86_64-w64-mingw32)
set(CMAKE_FIND_ROOT_PATH_MODE_PROGRAM NEVER)
set(CMAKE_FIND_ROOT_PATH_MODE_LIBRARY ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_INCLUDE ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_PACKAGE ONLY)
set(ENV{PKG_CONFIG_LIBDIR} "${LAPWRIGHT_WINDOWS_PREFIX}/lib/pkgconfig:/usr/x86_64-w64-mingw32/lib/pkgconfig")

# Headers that no CMake file names (Boost's) are found as on Debian.
set(CMAKE_CXX_FLAGS_INIT "-isystem ${LAPWRIGHT_WINDOWS_PREFIX}/include")

# One file without libraries beside it.
set(CMAKE_EXE_LINKER_FLAGS_INIT "-static")
