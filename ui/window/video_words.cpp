// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/video_words.h"

#include "core/base/number_text.h"
#include "ui/bridge/video_source.h"
#include "ui/models/text.h"

#include <QCoreApplication>

namespace lapwright::window {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("lapwright::window::Watching", words);
}

} // namespace

QString step_words(const bridge::VideoSource& source) {
    using models::text;
    if (source.step())
        return text(video::offset_words(*source.step())) + QStringLiteral(": ") +
               text(video::words(source.step()->method));
    if (source.finding()) return tr("the offset is being looked for");
    QString said;
    if (source.is_open()) said = tr("not in step: move the offset until the picture is where the cursor is");
    for (const std::string& reason : source.reasons())
        said += QStringLiteral("; ") + text(reason);
    return said;
}

QString words(const HowPlayed& how) {
    const QString pace = how.speed == 1.0 ? QString() : tr(", at %1 of their pace").arg(how.speed);
    return how.one_clock ? tr("Both let go at the same moment%1").arg(pace)
                         : tr("Both at the same place%1; B plays %2 times as fast as it was")
                               .arg(pace, models::text(base::fixed_text(how.stretch_of_b, 2)));
}

} // namespace lapwright::window
