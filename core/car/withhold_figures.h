// SPDX-License-Identifier: GPL-3.0-or-later
// Which figures of a car may be shown: inside their own intervals, of fits that settled, and such as a car that laps a
// circuit can have.  The others are untold, with the reason.
#pragma once

#include "core/car/car_figures.h"

namespace lapwright::car {

void withhold_what_cannot_be_told(CarFigures& figures);

} // namespace lapwright::car
