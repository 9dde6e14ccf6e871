// SPDX-License-Identifier: GPL-3.0-or-later
// The sound of the side that a person chose, while the pairing is played.
#pragma once

#include "core/workspace/session_key.h"
#include "ui/bridge/video_sound.h"

#include <QObject>
#include <memory>
#include <optional>

namespace lapwright::bridge {
class VideoSource;
}

namespace lapwright::window {

struct Actions;
struct HowPlayed;

class HeardSide : public QObject {
    Q_OBJECT

  public:
    HeardSide(const Actions& actions, QObject* parent); // the actions outlive it
    // What is heard goes there from now on; at first to the system's device.
    void through(const bridge::VideoSound::Open& open);
    [[nodiscard]] std::optional<workspace::Side> side() const;
    // From that time of the side's recording on, if it plays at its own pace.
    void play(const HowPlayed& how, const bridge::VideoSource& source, double recording_s);
    void stop();
    [[nodiscard]] QString words(const HowPlayed& how) const; // empty where none is chosen

  Q_SIGNALS:
    void chosen();  // another side, or none
    void refused(); // the words say why

  private:
    const Actions& actions_;
    std::unique_ptr<bridge::VideoSound> sound_;
    QString silence_; // why nothing is heard, where it should be
};

} // namespace lapwright::window
