// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/in_words.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"

#include <QObject>
#include <algorithm>

namespace lapwright::plots {
namespace {

using models::text;

QString fixed(double value, int decimals) {
    return text(base::shown_text(value, decimals));
}

// "A: 5 laps, 12.34 to 12.60 s"; empty without any.
QString times_of(const QString& letter, const std::vector<double>& times_s) {
    if (times_s.empty()) return {};
    const auto [least, most] = std::ranges::minmax(times_s);
    return QObject::tr("%1: %2 laps, %3 to %4 s")
        .arg(letter, text(base::integer_text(static_cast<std::int64_t>(times_s.size()))), fixed(least, 2),
             fixed(most, 2));
}

QString points_of(const QString& letter, const std::vector<EvidencePoint>& points, const car::Curve& curve,
                  base::UnitSystem units) {
    if (points.empty()) return {};
    const auto [least, most] = std::ranges::minmax(points, {}, &EvidencePoint::speed_mps);
    QString words = QObject::tr("%1: %2 points between %3 and %4")
                        .arg(letter, text(base::integer_text(static_cast<std::int64_t>(points.size()))),
                             text(base::figure_with_unit(least.speed_mps, base::Quantity::speed, units, 0)),
                             text(base::figure_with_unit(most.speed_mps, base::Quantity::speed, units, 0)));
    if (!curve.value.empty())
        words += QObject::tr(", the curve goes from %1 to %2")
                     .arg(text(base::figure_with_unit(curve.value.front(), base::Quantity::acceleration, units, 1)),
                          text(base::figure_with_unit(curve.value.back(), base::Quantity::acceleration, units, 1)));
    return words;
}

QString region_of(const QString& letter, const car::JointRegion& region) {
    if (region.empty()) return QObject::tr("%1: cannot be told").arg(letter);
    const auto [grip_low, grip_high] = std::ranges::minmax(region.outline_x);
    const auto [area_low, area_high] = std::ranges::minmax(region.outline_y);
    return QObject::tr("%1: tyre grip %2 to %3, downforce area %4 to %5 m²")
        .arg(letter, fixed(grip_low, 2), fixed(grip_high, 2), fixed(area_low, 2), fixed(area_high, 2));
}

QString balance_of(const QString& letter, const causes::AeroBalance& balance) {
    if (balance.steps.empty())
        return balance.untold.empty() ? QString() : models::labelled(letter, text(balance.untold));
    const auto& first = balance.steps.front();
    const auto& last = balance.steps.back();
    const auto step = [](const causes::AeroStep& one) {
        return QObject::tr("%1 to %2 s at %3 m²")
            .arg(fixed(one.lap.low, 2), fixed(one.lap.high, 2), fixed(one.downforce_m2, 2));
    };
    return QObject::tr("%1: lap time against now from %2 up to %3").arg(letter, step(first), step(last));
}

QString one_after_another(const QStringList& parts) {
    QStringList said;
    std::ranges::copy_if(parts, std::back_inserter(said), [](const QString& part) { return !part.isEmpty(); });
    return said.join(QStringLiteral("; "));
}

} // namespace

QString in_words(const StackContent& content) {
    if (!content.pairing) return {};
    const findings::Headline& headline = content.pairing->headline;
    QStringList segments;
    for (const comparison::SegmentComparison& one : content.segments)
        segments << text(one.segment.name) + QStringLiteral(" ") +
                        text(base::gain_with_margin(one.gain_s.value, one.gain_s.sd));
    QStringList panels{QObject::tr("speed"), QObject::tr("gap"), QObject::tr("time won")};
    for (const models::ChannelChoice& channel : content.channels)
        panels << channel.title;
    return QObject::tr("Over %1: %2. %3. %4 Segment by segment, in seconds: %5.")
        .arg(text(base::figure_with_unit(content.pairing->a.trace.best.distance_m.back(), base::Quantity::length,
                                         content.units, 0)),
             panels.join(QStringLiteral(", ")), text(headline.verdict), text(headline.sentence),
             segments.join(QStringLiteral(", ")));
}

QString in_words(const track::Track& track) {
    QStringList names;
    int corners = 0;
    for (const track::Segment& segment : track.segments) {
        names << text(segment.name);
        corners += segment.kind == track::SegmentKind::corner ? 1 : 0;
    }
    return QObject::tr("Seen from above, north up: a lap of %1 m with %2 corners: %3")
        .arg(fixed(track.line.length_m, 0), text(base::integer_text(corners)), names.join(QStringLiteral(", ")));
}

QString in_words(const Dots& dots) {
    return one_after_another(
        {times_of(QStringLiteral("A"), dots.times_a_s), times_of(QStringLiteral("B"), dots.times_b_s)});
}

QString in_words(const Evidence& evidence, base::UnitSystem units) {
    return one_after_another({points_of(QStringLiteral("A"), evidence.points_a, evidence.curve_a, units),
                              points_of(QStringLiteral("B"), evidence.points_b, evidence.curve_b, units)});
}

QString in_words(const SeasonCourse& course) {
    if (course.marks.empty()) return {};
    const auto value = [&course](double value_si) {
        return course.lap_times ? text(base::lap_time_text(value_si)) : fixed(base::from_si(value_si, course.unit), 2);
    };
    const auto [least, most] = std::ranges::minmax(course.marks, {}, &SeasonMark::value);
    return QObject::tr("%1: %2 sessions from %3 to %4, between %5 and %6")
        .arg(course.title, text(base::integer_text(static_cast<std::int64_t>(course.marks.size()))),
             text(base::date_text(course.marks.front().unix_s)), text(base::date_text(course.marks.back().unix_s)),
             value(least.value), value(most.value));
}

QString in_words(const car::JointRegion& a, const car::JointRegion& b) {
    if (a.empty() && b.empty()) return {};
    return one_after_another({region_of(QStringLiteral("A"), a), region_of(QStringLiteral("B"), b)});
}

QString in_words(const causes::AeroBalance& a, const causes::AeroBalance& b) {
    return one_after_another({balance_of(QStringLiteral("A"), a), balance_of(QStringLiteral("B"), b)});
}

} // namespace lapwright::plots
