# SPDX-License-Identifier: GPL-3.0-or-later
# embed_migrations(core_book): the book's steps of schema, resources/migrations/NNNN-….sql, as text in the program.
function(embed_migrations target)
    file(GLOB steps CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/resources/migrations/[0-9][0-9][0-9][0-9]-*.sql")
    list(SORT steps)
    set(rows "")
    set(expected 0)
    foreach(step IN LISTS steps)
        math(EXPR expected "${expected} + 1")
        cmake_path(GET step FILENAME name)
        string(REGEX MATCH "^0*([1-9][0-9]*)-" number "${name}")
        if(NOT CMAKE_MATCH_1 EQUAL expected)
            message(FATAL_ERROR "${name}: the steps of the book's schema are numbered one after the other")
        endif()
        file(READ "${step}" sql)
        string(APPEND rows "    {${expected}, R\"sql(${sql})sql\"},\n")
        set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${step}")
    endforeach()
    set(source "${CMAKE_BINARY_DIR}/known_migrations.cpp")
    file(CONFIGURE OUTPUT "${source}" @ONLY CONTENT "// Made from resources/migrations by .cmake/Migrations.cmake.
#include \"core/book/migration.h\"

#include <array>

namespace lapwright::book {
namespace {

constexpr std::array<Migration, @expected@> steps{{
@rows@}};

} // namespace

std::span<const Migration> known_migrations() {
    return steps;
}

} // namespace lapwright::book
")
    target_sources(${target} PRIVATE "${source}")
endfunction()
