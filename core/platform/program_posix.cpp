// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/program.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

namespace lapwright::platform {

void prepare_large_heap() {
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

void print_bytes_as_they_are() {}

bool printing_is_seen() {
    return true;
}

std::vector<std::string> words_of(int count, char** words) {
    return {words + 1, words + count};
}

std::string variable(const char* name) {
    const char* const value = std::getenv(name);
    return value == nullptr ? "" : value;
}

} // namespace lapwright::platform
