// SPDX-License-Identifier: GPL-3.0-or-later
// What the window remembers from one run to the next.
#pragma once

#include "core/base/display.h"
#include "core/workspace/present_pairing.h"
#include "ui/plots/panel_looks.h"
#include "ui/theme/palette.h"

#include <QByteArray>
#include <QMap>
#include <QStringList>
#include <optional>

class QSettings;

namespace lapwright::window {

struct Preferences {
    base::UnitSystem units = base::UnitSystem::metric;
    theme::Choice look = theme::Choice::system;
    QString language; // a code of ui/window/language.h; empty: the system's
    QStringList channels;
    QMap<QString, QStringList> channel_sets; // by their names
    bool band_shown = true;
    plots::PanelLooks panel_looks; // of the Compare page
    bool lines_shown = false;
    bool spread_shown = false;
    bool values_filled = false;
    bool summed = false;
    bool laps_by_time = false;       // on the Sessions page
    QString track_file;              // whose gate and segments are used; empty: none
    QString folder;                  // of the files opened last
    QStringList recent_files;        // the last one first
    QMap<QString, QStringList> keys; // of actions whose keys a person changed, by their names
    QByteArray geometry;
    QString book; // of the last pairing: its sessions mean nothing in another
    std::optional<workspace::PresentPairing::WantedLap> last_a;
    std::optional<workspace::PresentPairing::WantedLap> last_b;
};

// A value that cannot be read keeps its default.
[[nodiscard]] Preferences load_preferences(const QSettings& settings);
void save_preferences(QSettings& settings, const Preferences& preferences);

} // namespace lapwright::window
