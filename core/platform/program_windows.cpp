// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/program.h"

#include <cstdio>
#include <fcntl.h>
#include <io.h>

namespace lapwright::platform {

void prepare_large_heap() {}

void print_bytes_as_they_are() {
    _setmode(_fileno(stdout), _O_BINARY);
    _setmode(_fileno(stderr), _O_BINARY);
}

} // namespace lapwright::platform
