// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/video_words.h"

#include "core/base/number_text.h"
#include "ui/bridge/video_source.h"
#include "ui/models/text.h"

#include <QCoreApplication>
#include <filesystem>

namespace lapwright::window {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Lapwright", words);
}

} // namespace

QString names_of(const std::vector<std::string>& paths) {
    QStringList names;
    for (const std::string& path : paths)
        names << models::text(std::filesystem::path(path).filename().string());
    return names.join(QStringLiteral(", "));
}

QString step_words(const bridge::VideoSource& source) {
    using models::text;
    if (source.step())
        return models::labelled(text(video::offset_words(*source.step())), text(video::words(source.step()->method)));
    if (source.finding()) return tr("the offset is being looked for");
    QString said;
    if (source.is_open()) said = tr("not in step: move the offset until the picture is where the cursor is");
    for (const std::string& reason : source.reasons())
        said += QStringLiteral("; ") + text(reason);
    return said;
}

QString words(const HowPlayed& how) {
    const QString pace = how.speed == 1.0 ? QString() : tr(", at %1 of their pace").arg(how.speed);
    const QString both = how.one_clock ? tr("both let go at the same moment%1").arg(pace)
                                       : tr("both at the same place%1; B plays %2 times as fast as it was")
                                             .arg(pace, models::text(base::shown_text(how.stretch_of_b, 2)));
    return tr("Videos: %1").arg(both) + (how.sound.isEmpty() ? QString() : QStringLiteral("; ") + how.sound);
}

bool at_own_pace(const HowPlayed& how, bool side_b) {
    return how.speed == 1.0 && (how.one_clock || !side_b);
}

QString sound_words(const HowPlayed& how, bool side_b) {
    const QString letter = side_b ? QStringLiteral("B") : QStringLiteral("A");
    if (how.speed != 1.0) return tr("no sound of %1: it plays slower than it was").arg(letter);
    if (!at_own_pace(how, side_b)) return tr("no sound of B: it is stretched; let both go on one clock to hear it");
    return tr("sound of %1").arg(letter);
}

} // namespace lapwright::window
