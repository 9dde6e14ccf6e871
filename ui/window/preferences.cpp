// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/preferences.h"

#include "ui/models/file_name.h"
#include "ui/models/text.h"

#include <QSettings>
#include <array>
#include <utility>

namespace lapwright::window {
namespace {

using theme::Choice;

constexpr std::array looks{std::pair(Choice::light, "light"), std::pair(Choice::dark, "dark"),
                           std::pair(Choice::system, "system")};

const QString language_key = QStringLiteral("language");

using workspace::PresentPairing;

constexpr double highest_panel_px = 4000.0;

// "120" or "120 folded".
plots::PanelLooks load_looks(const QVariantMap& kept) {
    plots::PanelLooks panels;
    for (auto panel = kept.begin(); panel != kept.end(); ++panel) {
        const QStringList words = panel.value().toString().split(QLatin1Char(' '));
        const double height_px = words.front().toDouble();
        const bool sound = height_px >= 0.0 && height_px <= highest_panel_px;
        panels[panel.key()] = {sound ? height_px : 0.0, words.contains(QLatin1String("folded"))};
    }
    return panels;
}

QVariantMap looks_to_save(const plots::PanelLooks& panels) {
    QVariantMap kept;
    for (const auto& [id, look] : panels)
        if (look != plots::PanelLook{})
            kept[id] = QString::number(look.height_px, 'f', 0) + (look.folded ? QStringLiteral(" folded") : QString());
    return kept;
}

std::optional<PresentPairing::WantedLap> load_lap(const QSettings& settings, const QString& side) {
    const QString name = QStringLiteral("pairing/") + side;
    bool lap_known = false;
    bool in_book = false;
    const int lap = settings.value(name + QStringLiteral("_lap")).toInt(&lap_known);
    const qlonglong session = settings.value(name + QStringLiteral("_session")).toLongLong(&in_book);
    const QString file = settings.value(name + QStringLiteral("_file")).toString();
    if (!lap_known || (!in_book && file.isEmpty())) return std::nullopt;
    if (in_book) return PresentPairing::WantedLap{book::SessionId{session}, lap};
    return PresentPairing::WantedLap{models::file_name(file), lap};
}

void save_lap(QSettings& settings, const QString& side, const std::optional<PresentPairing::WantedLap>& lap) {
    if (!lap || !lap->lap) return;
    const QString name = QStringLiteral("pairing/") + side;
    settings.setValue(name + QStringLiteral("_lap"), *lap->lap);
    if (const auto* file = std::get_if<std::string>(&lap->origin)) {
        settings.setValue(name + QStringLiteral("_file"), models::path(*file));
        settings.remove(name + QStringLiteral("_session"));
    } else {
        settings.setValue(name + QStringLiteral("_session"),
                          static_cast<qlonglong>(std::get<book::SessionId>(lap->origin)));
    }
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
    p.language = settings.value(language_key).toString();
    p.channels = settings.value(QStringLiteral("compare/channels")).toStringList();
    const QVariantMap sets = settings.value(QStringLiteral("compare/channel_sets")).toMap();
    for (auto set = sets.begin(); set != sets.end(); ++set)
        p.channel_sets[set.key()] = set.value().toStringList();
    p.band_shown = settings.value(QStringLiteral("compare/band"), p.band_shown).toBool();
    p.panel_looks = load_looks(settings.value(QStringLiteral("compare/panels")).toMap());
    p.lines_shown = settings.value(QStringLiteral("compare/lines"), p.lines_shown).toBool();
    p.spread_shown = settings.value(QStringLiteral("compare/spread"), p.spread_shown).toBool();
    p.values_filled = settings.value(QStringLiteral("compare/values_filled"), p.values_filled).toBool();
    p.summed = settings.value(QStringLiteral("compare/summed"), p.summed).toBool();
    p.laps_by_time = settings.value(QStringLiteral("sessions/laps_by_time"), p.laps_by_time).toBool();
    p.track_file = settings.value(QStringLiteral("track_file")).toString();
    p.folder = settings.value(QStringLiteral("folder")).toString();
    const QVariantMap keys = settings.value(QStringLiteral("keys")).toMap();
    for (auto key = keys.begin(); key != keys.end(); ++key)
        p.keys[key.key()] = key.value().toStringList();
    p.recent_files = settings.value(QStringLiteral("recent_files")).toStringList();
    p.geometry = settings.value(QStringLiteral("window/geometry")).toByteArray();
    p.book = settings.value(QStringLiteral("pairing/book")).toString();
    p.last_a = load_lap(settings, QStringLiteral("a"));
    p.last_b = load_lap(settings, QStringLiteral("b"));
    return p;
}

void save_preferences(QSettings& settings, const Preferences& p) {
    settings.setValue(QStringLiteral("units"), models::text(base::name(p.units)));
    for (const auto& [choice, name] : looks) {
        if (p.look == choice) settings.setValue(QStringLiteral("look"), QLatin1String(name));
    }
    settings.setValue(language_key, p.language);
    settings.setValue(QStringLiteral("compare/channels"), p.channels);
    QVariantMap sets;
    for (auto set = p.channel_sets.begin(); set != p.channel_sets.end(); ++set)
        sets[set.key()] = set.value();
    settings.setValue(QStringLiteral("compare/channel_sets"), sets);
    settings.setValue(QStringLiteral("compare/band"), p.band_shown);
    settings.setValue(QStringLiteral("compare/panels"), looks_to_save(p.panel_looks));
    settings.setValue(QStringLiteral("compare/lines"), p.lines_shown);
    settings.setValue(QStringLiteral("compare/spread"), p.spread_shown);
    settings.setValue(QStringLiteral("compare/values_filled"), p.values_filled);
    settings.setValue(QStringLiteral("compare/summed"), p.summed);
    settings.setValue(QStringLiteral("sessions/laps_by_time"), p.laps_by_time);
    settings.setValue(QStringLiteral("track_file"), p.track_file);
    settings.setValue(QStringLiteral("folder"), p.folder);
    QVariantMap keys;
    for (auto key = p.keys.begin(); key != p.keys.end(); ++key)
        keys[key.key()] = key.value();
    settings.setValue(QStringLiteral("keys"), keys);
    settings.setValue(QStringLiteral("recent_files"), p.recent_files);
    settings.setValue(QStringLiteral("window/geometry"), p.geometry);
    settings.setValue(QStringLiteral("pairing/book"), p.book);
    save_lap(settings, QStringLiteral("a"), p.last_a);
    save_lap(settings, QStringLiteral("b"), p.last_b);
}

} // namespace lapwright::window
