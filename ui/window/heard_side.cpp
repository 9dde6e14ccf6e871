// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/heard_side.h"

#include "ui/bridge/video_source.h"
#include "ui/window/actions.h"
#include "ui/window/video_words.h"

namespace lapwright::window {

using workspace::Side;

HeardSide::HeardSide(const Actions& actions, QObject* parent) : QObject(parent), actions_(actions) {
    through(bridge::open_sound_device);
    connect(actions.sound_a, &QAction::toggled, this, &HeardSide::chosen);
    connect(actions.sound_b, &QAction::toggled, this, &HeardSide::chosen);
}

void HeardSide::through(const bridge::VideoSound::Open& open) {
    sound_ = std::make_unique<bridge::VideoSound>(open);
    connect(sound_.get(), &bridge::VideoSound::refused, this, [this](const QString& sentence) {
        silence_ = sentence;
        Q_EMIT refused();
    });
}

std::optional<Side> HeardSide::side() const {
    if (actions_.sound_a->isChecked()) return Side::a;
    if (actions_.sound_b->isChecked()) return Side::b;
    return {};
}

void HeardSide::play(const HowPlayed& how, const bridge::VideoSource& source, double recording_s) {
    silence_.clear();
    if (source.is_open() && at_own_pace(how, side() == Side::b))
        sound_->play(source.paths(), source.video_s(recording_s));
    else
        sound_->stop();
}

void HeardSide::stop() {
    silence_.clear();
    sound_->stop();
}

QString HeardSide::words(const HowPlayed& how) const {
    if (!side()) return {};
    return silence_.isEmpty() ? sound_words(how, side() == Side::b) : tr("no sound: %1").arg(silence_);
}

} // namespace lapwright::window
