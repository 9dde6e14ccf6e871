// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run.h"

#include "core/platform/program.h"
#include "core/workspace/own_files.h"
#include "ui/bridge/worker.h"
#include "ui/models/file_name.h"
#include "ui/theme/fonts.h"
#include "ui/window/language.h"
#include "ui/window/main_window.h"
#include "ui/window/preferences.h"

#include <QApplication>
#include <QIcon>
#include <QLocale>
#include <QMessageBox>
#include <QSettings>
#include <QStyleFactory>
#include <iostream>

static void init_resources() {
    Q_INIT_RESOURCE(lapwright);
}

namespace lapwright::window {
namespace {

// Qt ends the process with a core dump when there is nothing to show a window on; a sentence is better.  Where there is
// no X11 or Wayland there is always a desktop.
bool display_named() {
    if constexpr (!platform::display_is_named) return true;
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

// Without a desktop's own icons there is only the bare theme, which has none of the standard ones: Qt would look for
// each in hundreds of folders before it takes its own, so that a file dialog takes a fifth of a second to open.
void pass_over_bare_icon_theme() {
    if (QIcon::themeName().isEmpty() || QIcon::themeName() == QLatin1String("hicolor"))
        QIcon::setThemeSearchPaths({QStringLiteral(":/icons")});
}

// What stands before the files: --book FILE, or --no-book.
struct Words {
    QStringList files;
    QString book;
    QString complaint; // empty: all words are known
};

Words words_of(const QStringList& arguments) {
    const auto own = workspace::own_book();
    Words words{{}, own ? models::path(*own) : QString(), {}};
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString& word = arguments[i];
        if (word == QLatin1String("--no-book")) {
            words.book.clear();
        } else if (word == QLatin1String("--book")) {
            if (++i == arguments.size()) words.complaint = QStringLiteral("--book: the name of a file is missing");
            words.book = arguments.value(i);
        } else if (word.startsWith(QLatin1String("--book="))) {
            words.book = word.mid(7);
        } else if (word.startsWith(QLatin1String("--"))) {
            words.complaint =
                word + QStringLiteral(": no such option of the window — it has --book FILE and --no-book");
        } else {
            words.files << word;
        }
    }
    return words;
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
    pass_over_bare_icon_theme();
    theme::add_faces(QApplication::applicationDirPath() + QStringLiteral("/../share/lapwright/fonts"));
    QApplication::setFont(theme::body()); // for menus and buttons too, of which a system may have its own
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/lapwright.svg")));
    QSettings settings;
    speak(load_preferences(settings).language);
    const Words words = words_of(QApplication::arguments().mid(1));
    if (!words.complaint.isEmpty()) {
        std::cerr << "lapwright: " << words.complaint.toStdString() << '\n';
        if (!platform::printing_is_seen()) QMessageBox::critical(nullptr, {}, words.complaint);
        return 2;
    }
    const std::string book = models::file_name(words.book);
    bridge::Stages stages = bridge::analysis_stages(workspace::own_recipe_folder(), book);
    stages.state_folder = workspace::own_state_folder();
    MainWindow window(stages, settings);
    window.show();
    window.start(words.files);
    return QApplication::exec();
}

} // namespace lapwright::window
