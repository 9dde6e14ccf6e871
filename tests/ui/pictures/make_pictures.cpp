// SPDX-License-Identifier: GPL-3.0-or-later
// Grabs the window's pages as pictures, for people to look at and for the README:
//   make_pictures OUT_FOLDER WIDTH HEIGHT light|dark [FILE_A FILE_B]
// Without files it shows a pairing made by hand (tests/ui/fixture).  QT_SCALE_FACTOR=2 doubles the pixels.
#include "tests/ui/fixture/pairing_fixture.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QDir>
#include <QLocale>
#include <QPixmap>
#include <QSettings>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <iostream>

using namespace lapwright;

namespace {

struct Shoot {
    window::MainWindow& window;
    QString stem;

    void operator()(const char* name) const {
        fixture::settle();
        const QString file = stem + QLatin1String(name) + QStringLiteral(".png");
        if (!window.grab().save(file)) std::cerr << "cannot write " << file.toStdString() << '\n';
    }
};

bridge::Stages invented_stages(bool crowded) {
    return {[](const std::string& path, const base::Progress&) -> base::Result<bridge::SessionPointer> {
                const bool a = path.find("ines") != std::string::npos;
                return a ? fixture::session(path, "Ines Haldane", "silver hatch, splitter and wing", 89.9)
                         : fixture::session(path, "Tomas Brandvold", "green coupé, small lip", 90.4);
            },
            [crowded](const bridge::Wanted&, const base::Progress&) -> base::Result<models::ComparedPointer> {
                fixture::PairingOptions options;
                options.crowded = crowded;
                return models::compared(fixture::pairing(options));
            }};
}

void press(const QAction* action) {
    const_cast<QAction*>(action)->trigger();
}

} // namespace

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    QLocale::setDefault(QLocale::c());
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    const QStringList words = QApplication::arguments();
    if (words.size() < 5) {
        std::cerr << "make_pictures OUT_FOLDER WIDTH HEIGHT light|dark [FILE_A FILE_B]\n";
        return 2;
    }
    QDir().mkpath(words[1]);
    QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    settings.setValue(QStringLiteral("look"), words[4]);
    const QStringList files = words.mid(5);
    const bool crowded = files == QStringList{QStringLiteral("crowded")};
    const bool real = !files.isEmpty() && !crowded;
    window::MainWindow window(real ? bridge::analysis_stages() : invented_stages(crowded), settings);
    window.resize(words[2].toInt(), words[3].toInt());
    window.show();
    window.start(real ? files : QStringList{QStringLiteral("ines-s3.csv"), QStringLiteral("tomas-s3.txt")});
    if (!fixture::wait_for([&] { return window.on_compare_page(); }, 20000)) {
        std::cerr << "no comparison came\n";
        return 1;
    }
    const Shoot shoot{window, words[1] + QLatin1Char('/') + words[2] + QLatin1Char('-') + words[4] + QLatin1Char('-')};
    shoot("compare");
    press(window.actions().close_up);
    shoot("close-up");
    press(window.actions().whole_lap);
    press(window.actions().summed);
    window.compare_page().set_channels({QStringLiteral("motion:longitudinal"), QStringLiteral("meaning:throttle")});
    shoot("summed-channels");
    press(window.actions().show_sessions);
    shoot("sessions");
    return 0;
}
