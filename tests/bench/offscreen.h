// SPDX-License-Identifier: GPL-3.0-or-later
// The application that a benchmark of the window needs before its
// first widget, on no screen unless the environment names one.
#pragma once

#include <QApplication>

namespace lapwright::bench {

inline QApplication& application() {
    static int argc = 1;
    static char name[] = "bench";
    static char* argv[] = {name, nullptr};
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    static auto* app = new QApplication(argc, argv); // never deleted: it must outlive what Qt keeps until the end
    return *app;
}

} // namespace lapwright::bench
