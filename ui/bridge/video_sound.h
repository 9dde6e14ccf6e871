// SPDX-License-Identifier: GPL-3.0-or-later
// The sound of a video while it plays at its own pace, off the UI thread: read ahead, and held to the clock of the
// pictures, so that it neither runs away nor lags.
#pragma once

#include "ui/bridge/job_queue.h"
#include "ui/bridge/sound_sink.h"

#include <QObject>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace lapwright::bridge {

class VideoSound : public QObject {
    Q_OBJECT

  public:
    static constexpr int rate_hz = 48'000;
    using Open = std::function<std::unique_ptr<SoundSink>(int rate_hz)>;

    explicit VideoSound(Open open, QObject* parent = nullptr);

    // What the video sounds like from that time of it on, which is now, until its end or stop().
    void play(const std::vector<std::string>& paths, double video_s);
    void stop();

  Q_SIGNALS:
    void refused(const QString& sentence); // no device, no sound in the video

  private:
    Open open_;
    JobGroup group_;
    JobQueue jobs_;
};

} // namespace lapwright::bridge
