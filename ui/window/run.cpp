// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run.h"

#include "ui/bridge/worker.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QFile>
#include <QIcon>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QStyleFactory>
#include <iostream>

static void init_resources() {
    Q_INIT_RESOURCE(lapwright);
}

namespace lapwright::window {
namespace {

// Qt ends the process with a core dump when there is nothing to show a window on; a sentence is better.
bool display_named() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

// Beside nothing that another program owns: ~/.local/share/lapwright/recipes.
std::string recipe_folder() {
    const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    return QFile::encodeName(data + QStringLiteral("/lapwright/recipes")).toStdString();
}

} // namespace

int run(int argc, char** argv) {
    if (!display_named()) {
        std::cerr << "lapwright: there is no display to open a window on — start it in a desktop session, or use a "
                     "subcommand such as \"lapwright compare\"\n";
        return 1;
    }
    QApplication app(argc, argv);
    init_resources();
    QLocale::setDefault(QLocale::c());
    QApplication::setApplicationName(QStringLiteral("lapwright"));
    QApplication::setOrganizationName(QStringLiteral("lapwright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Lapwright"));
    QApplication::setApplicationVersion(QStringLiteral(LAPWRIGHT_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("lapwright"));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/lapwright.svg")));
    QSettings settings;
    MainWindow window(bridge::analysis_stages(recipe_folder()), settings);
    window.show();
    window.start(QApplication::arguments().mid(1));
    return QApplication::exec();
}

} // namespace lapwright::window
