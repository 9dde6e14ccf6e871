// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/channels.h"

#include "core/recording/meaning.h"
#include "ui/models/text.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace lapwright::models {
namespace {

using recording::Meaning;

// Positions are on the map and speed has its own panel; these say nothing over distance.
constexpr std::array not_offered{Meaning::latitude, Meaning::longitude, Meaning::east,     Meaning::north,
                                 Meaning::speed,    Meaning::course,    Meaning::distance, Meaning::lap_number,
                                 Meaning::lap_time, Meaning::beacon};

QString tr(const char* words) {
    return QCoreApplication::translate("Lapwright", words);
}

QString title_of(const lap::TraceChannel& channel) {
    if (channel.meaning == Meaning::other) return text(channel.name);
    QString title = text(recording::words(channel.meaning));
    title[0] = title.at(0).toUpper();
    return title;
}

QString id_of(const lap::TraceChannel& channel) {
    return channel.meaning == Meaning::other ? QStringLiteral("name:") + text(channel.name)
                                             : QStringLiteral("meaning:") + text(recording::name(channel.meaning));
}

bool measured(const std::vector<double>& values) {
    return std::ranges::any_of(values, [](double value) { return value == value; });
}

ChannelChoice& entry(std::vector<ChannelChoice>& choices, const lap::TraceChannel& channel) {
    const QString id = id_of(channel);
    const auto found = std::ranges::find(choices, id, &ChannelChoice::id);
    if (found != choices.end()) return *found;
    const base::Quantity quantity =
        channel.meaning == Meaning::other ? base::quantity(channel.source_unit) : recording::quantity(channel.meaning);
    const bool whole = channel.meaning == Meaning::gear || channel.meaning == Meaning::satellites;
    choices.push_back({id, title_of(channel), quantity, channel.source_unit, whole, nullptr, nullptr});
    return choices.back();
}

void collect(std::vector<ChannelChoice>& choices, const lap::LapTrace& trace,
             const std::vector<double>* ChannelChoice::* side) {
    for (const lap::TraceChannel& channel : trace.channels) {
        if (std::ranges::find(not_offered, channel.meaning) != not_offered.end() || !measured(channel.values)) continue;
        auto& pointer = entry(choices, channel).*side;
        if (pointer == nullptr) pointer = &channel.values;
    }
}

} // namespace

std::vector<ChannelChoice> channels_of(const analysis::Pairing& pairing) {
    const lap::LapTrace& a = pairing.a.trace.best;
    const lap::LapTrace& b = pairing.b.trace.best;
    using base::Quantity;
    using base::Unit;
    std::vector<ChannelChoice> choices{
        {QStringLiteral("motion:longitudinal"), tr("Longitudinal, from motion"), Quantity::acceleration, Unit::none,
         false, &a.longitudinal_mps2, &b.longitudinal_mps2},
        {QStringLiteral("motion:lateral"), tr("Lateral, from motion"), Quantity::acceleration, Unit::none, false,
         &a.lateral_mps2, &b.lateral_mps2},
        {QStringLiteral("motion:offset"), tr("Offset to the left of the reference line"), Quantity::length, Unit::none,
         false, measured(a.offset_m) ? &a.offset_m : nullptr, measured(b.offset_m) ? &b.offset_m : nullptr},
    };
    if (!choices.back().a && !choices.back().b) choices.pop_back();
    collect(choices, a, &ChannelChoice::a);
    collect(choices, b, &ChannelChoice::b);
    return choices;
}

const std::vector<double>* values_on(const lap::LapTrace& lap, const QString& id) {
    if (id == QLatin1String("motion:longitudinal")) return &lap.longitudinal_mps2;
    if (id == QLatin1String("motion:lateral")) return &lap.lateral_mps2;
    if (id == QLatin1String("motion:offset")) return measured(lap.offset_m) ? &lap.offset_m : nullptr;
    const auto found = std::ranges::find_if(
        lap.channels, [&](const lap::TraceChannel& one) { return id_of(one) == id && measured(one.values); });
    return found == lap.channels.end() ? nullptr : &found->values;
}

base::Unit unit_of(const ChannelChoice& choice, base::UnitSystem units) {
    return choice.quantity == base::Quantity::none ? choice.own_unit : base::shown_unit(choice.quantity, units);
}

} // namespace lapwright::models
