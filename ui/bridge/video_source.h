// SPDX-License-Identifier: GPL-3.0-or-later
// A session's video off the UI thread: opened, put in step, and its frames one after the other.  Of the times that are
// asked for while a frame is being decoded only the last counts, so that whoever asks never waits.
#pragma once

#include "core/video/frame_reader.h"
#include "core/video/propose_step.h"
#include "core/workspace/session_key.h"
#include "ui/bridge/job_queue.h"

#include <QObject>
#include <QSize>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::bridge {

class VideoSource : public QObject {
    Q_OBJECT

  public:
    explicit VideoSource(QObject* parent = nullptr);

    // The files of one video in their order.  What it was before is closed.  Where it is known how it stands to the
    // recording, that is not looked for; without a session neither.
    void open(const std::vector<std::string>& paths, workspace::SessionPointer session,
              const std::optional<video::StepEstimate>& known = {});
    // The same video on the other side, which looks for the step: takes over what it found.
    void follow(const VideoSource& other);
    [[nodiscard]] const std::vector<std::string>& paths() const { return paths_; }
    void close();
    [[nodiscard]] bool is_open() const { return reader_ != nullptr; }
    // Another number with each video.
    [[nodiscard]] int serial() const { return serial_; }
    [[nodiscard]] const std::optional<video::Frame>& frame() const { return frame_; } // that was shown last

    // How it stands to the recording: at first as it was found, if it was.
    [[nodiscard]] const std::optional<video::StepEstimate>& step() const { return step_; }
    void set_step(const video::StepEstimate& step);
    [[nodiscard]] const std::vector<std::string>& reasons() const { return reasons_; }
    [[nodiscard]] bool finding() const { return finding_; } // the offset is being looked for

    // Shows the frame of that time of the recording; without a step the recording's time is taken for the video's.  One
    // that is decoded already is shown before this returns.
    void show(double recording_s);
    // While nothing else is wanted and nothing plays, what is shown from then to then of the recording is read ahead.
    void read_ahead(double from_s, double to_s) { stretch_s_ = {from_s, to_s}; }
    // Pictures as large as they are shown, in pixels.
    void fit(QSize pixels);
    // The recording's time just behind the beginning of the next frame, or of the one before; nothing without one.
    [[nodiscard]] std::optional<double> next_frame_s() const;
    [[nodiscard]] std::optional<double> frame_before_s() const;
    [[nodiscard]] double video_s(double recording_s) const { return in_step().video_s(recording_s); }

  Q_SIGNALS:
    void changed();     // opened, closed, put in step
    void put_in_step(); // by itself or by hand, or it was looked for in vain
    void shown(const lapwright::video::Frame& frame);
    // On the way to the one that is wanted, which takes long: so much earlier than that; or the same, smaller.
    void passed(const lapwright::video::Frame& frame, double earlier_s);
    void refused(const QString& sentence);

  private:
    void take(const std::shared_ptr<video::FrameReader>& reader);
    using Found = base::Result<video::StepProposal>;
    using Find = std::function<Found(video::Video&, const video::GoOn&)>;
    void look_for_step();
    void ask_picture(const video::StepProposal& by_sound);
    void find(const Find& find, const std::function<void(const video::StepProposal&)>& take);
    void tell(const video::StepProposal& proposal);
    void decode();
    void decode_from_file(double time_s);
    void come_to(double time_s, const base::Result<video::Frame>& found);
    void pass(const video::Frame& frame, int serial);
    [[nodiscard]] bool shows(double time_s) const;
    void take_frame(const video::Frame& frame, double time_s);
    void fill();
    [[nodiscard]] video::InStep in_step() const { return step_ ? step_->step : video::InStep{}; }

    std::shared_ptr<video::FrameReader> reader_; // used by jobs of frames_ alone
    workspace::SessionPointer session_;
    std::vector<std::string> paths_;
    int serial_ = 0;
    std::optional<video::StepEstimate> step_;
    std::vector<std::string> reasons_;
    bool finding_ = false;
    std::optional<double> wanted_s_;                // of the recording
    std::pair<double, double> stretch_s_{0.0, 0.0}; // of the recording
    std::optional<video::Frame> frame_;
    std::optional<double> decoding_s_; // of the video: what the decoder winds to
    std::shared_ptr<std::atomic<bool>> filling_ = std::make_shared<std::atomic<bool>>(false); // false ends it
    std::shared_ptr<std::atomic<bool>> still_wanted_ = std::make_shared<std::atomic<bool>>(false);
    video::PictureLimits limits_;
    bool refit_ = false;         // frame_ is of another size than is wanted
    double last_wanted_s_ = 0.0; // of the video
    bool onwards_ = false;       // the last times followed each other as in playing
    JobGroup group_;
    JobQueue frames_;
    JobQueue steps_;
};

} // namespace lapwright::bridge
