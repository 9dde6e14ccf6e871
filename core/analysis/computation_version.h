// SPDX-License-Identifier: GPL-3.0-or-later
// Tells two programs apart that may answer differently.  Nobody raises it by hand: the build makes it of the sources of
// core and of the compiler (.cmake/ComputationVersion.cmake).
#pragma once

#include <string_view>

namespace lapwright::analysis {

[[nodiscard]] std::string_view computation_version(); // 64 hexadecimal digits

} // namespace lapwright::analysis
