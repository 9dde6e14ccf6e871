// SPDX-License-Identifier: GPL-3.0-or-later
// lapwright: a subcommand runs without a display, anything else opens the workstation.
#include "app/commands/commands.h"
#ifdef LAPWRIGHT_WINDOW
#include "ui/window/run.h"
#include "ui/window/write_sheet.h"
#endif

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <string>
#include <vector>

namespace {

lapwright::commands::SheetWriter sheet_writer() {
#ifdef LAPWRIGHT_WINDOW
    return [](const lapwright::sheet::Sheet& sheet, const lapwright::commands::SheetRequest& request) {
        return lapwright::window::write_sheet(sheet, request.path, request.us_letter, request.all_segments);
    };
#else
    return {};
#endif
}

// Ensembles come and go in blocks of megabytes: page by page, and given back to the system at every release, they cost
// a fifth of the time of a comparison.  So released memory is kept, and the heap is one stretch that asks for large
// pages (mallopt(3), madvise(2)); only what is used of it is taken.
void make_room() {
    constexpr std::size_t mebibyte = std::size_t{1} << 20U;
    constexpr std::size_t heap = 512 * mebibyte;
    constexpr std::size_t large_page = 2 * mebibyte;
    mallopt(M_ARENA_MAX, 1);
    mallopt(M_MMAP_THRESHOLD, 1024 * mebibyte);
    mallopt(M_TRIM_THRESHOLD, 1024 * mebibyte);
    mallopt(M_TOP_PAD, heap);
    void* volatile block = std::malloc(mebibyte); // volatile, or no memory would be asked for: the heap grows once
    std::free(block);
    const auto end = reinterpret_cast<std::uintptr_t>(sbrk(0));
    const std::uintptr_t begin = (end - heap + large_page) / large_page * large_page;
    madvise(reinterpret_cast<void*>(begin), end - begin, MADV_HUGEPAGE); // a hint: refused where there are none
}

} // namespace

int main(int argc, char** argv) {
    make_room();
    const std::vector<std::string> words(argv + 1, argv + argc);
#ifdef LAPWRIGHT_WINDOW
    if (lapwright::commands::wish(words) == lapwright::commands::Wish::open_window) {
        return lapwright::window::run(argc, argv);
    }
#endif
    return lapwright::commands::run(words, std::cout, std::cerr, sheet_writer());
}
