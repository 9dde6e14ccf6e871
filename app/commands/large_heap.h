// SPDX-License-Identifier: GPL-3.0-or-later
// The memory that a whole program works in.  Ensembles and columns come and go in
// blocks of megabytes: page by page, and given back to the system at every release,
// they cost a fifth of the time of a comparison and half the time of an import.
#pragma once

namespace lapwright::commands {

// To be called once, first in main(): the heap becomes one stretch of 512 MiB that asks for large pages (mallopt(3),
// madvise(2)) and keeps what is released.  Only what is used of it is taken; beyond it the heap grows as ever.
void prepare_large_heap();

} // namespace lapwright::commands
