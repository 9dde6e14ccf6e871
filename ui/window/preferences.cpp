// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/preferences.h"

#include "ui/models/text.h"

#include <QSettings>
#include <array>
#include <utility>

namespace lapwright::window {
namespace {

using theme::Choice;

constexpr std::array looks{std::pair(Choice::light, "light"), std::pair(Choice::dark, "dark"),
                           std::pair(Choice::system, "system")};

std::optional<models::LapPick> load_pick(const QSettings& settings, const QString& side) {
    const QString path = settings.value(QStringLiteral("pairing/") + side + QStringLiteral("_file")).toString();
    bool known = false;
    const int lap = settings.value(QStringLiteral("pairing/") + side + QStringLiteral("_lap")).toInt(&known);
    return path.isEmpty() || !known ? std::nullopt : std::optional(models::LapPick{path, lap});
}

void save_pick(QSettings& settings, const QString& side, const std::optional<models::LapPick>& pick) {
    if (!pick) return;
    settings.setValue(QStringLiteral("pairing/") + side + QStringLiteral("_file"), pick->path);
    settings.setValue(QStringLiteral("pairing/") + side + QStringLiteral("_lap"), pick->lap);
}

} // namespace

Preferences load_preferences(const QSettings& settings) {
    Preferences p;
    const std::string units = settings.value(QStringLiteral("units")).toString().toStdString();
    p.units = base::parse_unit_system(units).value_or(p.units);
    const QString look = settings.value(QStringLiteral("look")).toString();
    for (const auto& [choice, name] : looks) {
        if (look == QLatin1String(name)) p.look = choice;
    }
    p.channels = settings.value(QStringLiteral("compare/channels")).toStringList();
    p.band_shown = settings.value(QStringLiteral("compare/band"), p.band_shown).toBool();
    p.values_filled = settings.value(QStringLiteral("compare/values_filled"), p.values_filled).toBool();
    p.summed = settings.value(QStringLiteral("compare/summed"), p.summed).toBool();
    p.track_file = settings.value(QStringLiteral("track_file")).toString();
    p.folder = settings.value(QStringLiteral("folder")).toString();
    p.geometry = settings.value(QStringLiteral("window/geometry")).toByteArray();
    p.book = settings.value(QStringLiteral("pairing/book")).toString();
    p.last_a = load_pick(settings, QStringLiteral("a"));
    p.last_b = load_pick(settings, QStringLiteral("b"));
    return p;
}

void save_preferences(QSettings& settings, const Preferences& p) {
    settings.setValue(QStringLiteral("units"), models::text(base::name(p.units)));
    for (const auto& [choice, name] : looks) {
        if (p.look == choice) settings.setValue(QStringLiteral("look"), QLatin1String(name));
    }
    settings.setValue(QStringLiteral("compare/channels"), p.channels);
    settings.setValue(QStringLiteral("compare/band"), p.band_shown);
    settings.setValue(QStringLiteral("compare/values_filled"), p.values_filled);
    settings.setValue(QStringLiteral("compare/summed"), p.summed);
    settings.setValue(QStringLiteral("track_file"), p.track_file);
    settings.setValue(QStringLiteral("folder"), p.folder);
    settings.setValue(QStringLiteral("window/geometry"), p.geometry);
    settings.setValue(QStringLiteral("pairing/book"), p.book);
    save_pick(settings, QStringLiteral("a"), p.last_a);
    save_pick(settings, QStringLiteral("b"), p.last_b);
}

} // namespace lapwright::window
