// SPDX-License-Identifier: GPL-3.0-or-later
// Constants of nature and convention that more than one folder needs.
#pragma once

namespace lapwright::base {

inline constexpr double pi = 3.14159265358979323846;
// Conventional standard acceleration of gravity (ISO 80000-3; NIST SP 811).
inline constexpr double standard_gravity_mps2 = 9.80665;

inline constexpr double tonne_kg = 1000.0;

} // namespace lapwright::base
