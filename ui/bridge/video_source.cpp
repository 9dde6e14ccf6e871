// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/video_source.h"

#include "core/base/error.h"
#include "core/workspace/turning.h"

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

void VideoSource::open(const std::vector<std::string>& paths, workspace::SessionPointer session,
                       const std::optional<video::StepEstimate>& known) {
    close();
    paths_ = paths;
    step_ = known;
    session_ = std::move(session);
    frames_.add(group_, [this, paths](const base::Progress&) -> JobQueue::Answer {
        auto opened = video::open_video(paths);
        if (!opened) return [this, said = sentence(opened.error())] { Q_EMIT refused(said); };
        auto reader = std::make_shared<video::FrameReader>(std::move(opened).value(), video::FrameReader::Options{});
        return [this, reader] {
            take(reader);
            if (!step_ && session_) look_for_step();
        };
    });
}

void VideoSource::take(const std::shared_ptr<video::FrameReader>& reader) {
    reader_ = reader;
    Q_EMIT changed();
    decode();
}

void VideoSource::follow(const VideoSource& other) {
    if (step_ == other.step_ && reasons_ == other.reasons_ && finding_ == other.finding_) return;
    step_ = other.step_;
    reasons_ = other.reasons_;
    finding_ = other.finding_;
    Q_EMIT changed();
    decode();
}

// With a decoder of its own: pictures are shown meanwhile.
void VideoSource::find(const Find& find, const std::function<void(const video::StepProposal&)>& take) {
    steps_.add(group_, [paths = paths_, find, take](const base::Progress& progress) -> JobQueue::Answer {
        auto opened = video::open_video(paths);
        if (!opened) return [] {}; // whoever shows it has said so
        video::Video video = std::move(opened).value();
        auto found = find(video, go_on_of(progress));
        video::StepProposal proposal;
        if (found)
            proposal = std::move(found).value();
        else
            proposal.reasons.push_back(found.error().what);
        return [take, proposal] { take(proposal); };
    });
}

// The sound first, which is quick and the sharper of the two; the picture then agrees, helps out or objects.
void VideoSource::look_for_step() {
    finding_ = true;
    find(
        [session = session_](video::Video& video, const video::GoOn& go_on) {
            return video::propose_step(*session->recording, video, go_on);
        },
        [this](const video::StepProposal& by_sound) {
            if (!step_) step_ = by_sound.estimate;
            ask_picture(by_sound);
            tell(by_sound);
        });
    Q_EMIT changed();
}

void VideoSource::ask_picture(const video::StepProposal& by_sound) {
    find(
        [session = session_, by_sound](video::Video& video, const video::GoOn& go_on) {
            return video::ask_picture(by_sound, workspace::turning_of(*session), video, go_on);
        },
        [this, by_sound](const video::StepProposal& both) {
            finding_ = false;
            if (step_ == by_sound.estimate) step_ = both.estimate; // nobody has moved it meanwhile
            tell(both);
        });
}

void VideoSource::tell(const video::StepProposal& proposal) {
    reasons_ = proposal.reasons;
    Q_EMIT changed();
    if (!finding_ || step_) Q_EMIT put_in_step();
    decode();
}

void VideoSource::close() {
    group_.cancel();
    *filling_ = false;
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
    constexpr double as_played_s = 0.5;
    onwards_ = time_s > last_wanted_s_ && time_s < last_wanted_s_ + as_played_s;
    last_wanted_s_ = time_s;
    decoding_ = true;
    *filling_ = false;
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
            if (!decoding_) fill();
        };
    });
}

// What lies around is decoded until another frame is wanted: both ways where the cursor rests, onwards while it plays.
void VideoSource::fill() {
    constexpr double around_s = 2.5;
    filling_ = std::make_shared<std::atomic<bool>>(true);
    frames_.add(group_,
                [reader = reader_, time_s = last_wanted_s_, before_s = onwards_ ? 0.0 : around_s,
                 wanted = filling_](const base::Progress& progress) -> JobQueue::Answer {
                    reader->fill(time_s, before_s, around_s,
                                 [&progress, &wanted] { return *wanted && base::go_on(progress, "", 0.0); });
                    return [] {};
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
