// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/video_source.h"

#include "core/base/error.h"

#include <cmath>
#include <utility>

namespace lapwright::bridge {
namespace {

video::GoOn go_on_of(const base::Progress& progress) {
    return [&progress] { return base::go_on(progress, "", 0.0); };
}

QString sentence(const base::Error& error) {
    return QString::fromStdString(base::one_line(error));
}

constexpr double moment_s = 1e-4; // far shorter than a frame

} // namespace

VideoSource::VideoSource(QObject* parent) : QObject(parent), frames_(*this, 1), steps_(*this, 1) {}

void VideoSource::open(const std::vector<std::string>& paths, std::shared_ptr<const recording::Recording> recording,
                       const std::optional<video::StepEstimate>& known) {
    close();
    paths_ = paths;
    step_ = known;
    recording_ = std::move(recording);
    frames_.add(group_, [this, paths](const base::Progress&) -> JobQueue::Answer {
        auto opened = video::open_video(paths);
        if (!opened) return [this, said = sentence(opened.error())] { Q_EMIT refused(said); };
        auto reader = std::make_shared<video::FrameReader>(std::move(opened).value(), video::FrameReader::Options{});
        return [this, reader] {
            take(reader);
            if (!step_) look_for_step();
        };
    });
}

void VideoSource::take(const std::shared_ptr<video::FrameReader>& reader) {
    reader_ = reader;
    Q_EMIT changed();
    decode();
}

// With a decoder of its own: pictures are shown meanwhile.
void VideoSource::look_for_step() {
    finding_ = true;
    steps_.add(group_,
               [this, paths = paths_, recording = recording_](const base::Progress& progress) -> JobQueue::Answer {
                   video::StepProposal proposal;
                   if (auto opened = video::open_video(paths)) {
                       video::Video heard = std::move(opened).value();
                       auto proposed = video::propose_step(*recording, heard, go_on_of(progress));
                       if (proposed)
                           proposal = std::move(proposed).value();
                       else
                           proposal.reasons.push_back(proposed.error().what);
                   }
                   return [this, proposal] {
                       finding_ = false;
                       reasons_ = proposal.reasons;
                       if (!step_) step_ = proposal.estimate;
                       Q_EMIT changed();
                       Q_EMIT put_in_step();
                       decode();
                   };
               });
    Q_EMIT changed();
}

void VideoSource::close() {
    group_.cancel();
    ++serial_;
    reader_.reset();
    step_.reset();
    frame_.reset();
    reasons_.clear();
    finding_ = false;
    decoding_ = false;
    Q_EMIT changed();
}

void VideoSource::set_step(const video::StepEstimate& step) {
    step_ = step;
    Q_EMIT changed();
    Q_EMIT put_in_step();
    decode();
}

void VideoSource::show(double recording_s) {
    wanted_s_ = recording_s;
    decode();
}

void VideoSource::decode() {
    if (!reader_ || decoding_ || !wanted_s_) return;
    const double time_s = in_step().video_s(*wanted_s_);
    if (frame_ && frame_->time_s <= time_s && time_s < frame_->until_s) return;
    if (frame_ && frame_->time_s > time_s && time_s < 0.0 && !(frame_->time_s > 0.0)) return; // before the first
    decoding_ = true;
    frames_.add(group_, [this, reader = reader_, time_s](const base::Progress& progress) -> JobQueue::Answer {
        const auto found = reader->at(time_s, go_on_of(progress));
        if (!found)
            return [this, said = sentence(found.error())] {
                close();
                Q_EMIT refused(said);
            };
        return [this, time_s, frame = *found] {
            decoding_ = false;
            frame_ = frame;
            Q_EMIT shown(frame);
            if (in_step().video_s(*wanted_s_) != time_s) decode();
        };
    });
}

std::optional<double> VideoSource::next_frame_s() const {
    if (!frame_ || !std::isfinite(frame_->until_s)) return {};
    return in_step().recording_s(frame_->until_s + moment_s);
}

std::optional<double> VideoSource::frame_before_s() const {
    if (!frame_) return {};
    return in_step().recording_s(frame_->time_s - moment_s);
}

} // namespace lapwright::bridge
