// SPDX-License-Identifier: GPL-3.0-or-later
// One panel of the stack, as its two source files share it.
#pragma once

#include "ui/plots/cursor.h"
#include "ui/plots/plot_stack.h"

#include <QString>

namespace lapwright::plots {

struct PlotStack::Panel {
    QString title;
    QCPAxisRect* rect = nullptr;
    ReadOut read_out;
};

} // namespace lapwright::plots
