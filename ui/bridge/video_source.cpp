// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/video_source.h"

#include "core/base/error.h"
#include "core/workspace/turning.h"

#include <QMetaObject>
#include <algorithm>
#include <chrono>
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
    decoding_s_.reset();
    refit_ = false;
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

void VideoSource::fit(QSize pixels) {
    constexpr video::PictureLimits most{1280, 720}; // larger ones leave little room for those around
    const video::PictureLimits limits{std::clamp(pixels.width(), 1, most.width),
                                      std::clamp(pixels.height(), 1, most.height)};
    if (limits == limits_) return;
    limits_ = limits;
    if (!reader_) return;
    *filling_ = false;
    frames_.add(group_, [this, reader = reader_, limits](const base::Progress&) -> JobQueue::Answer {
        reader->fit(limits);
        return [this] {
            refit_ = true;
            decode();
        };
    });
}

bool VideoSource::shows(double time_s) const {
    if (!frame_ || refit_) return false;
    const bool before_first = time_s < 0.0 && frame_->time_s > time_s && !(frame_->time_s > 0.0);
    return before_first || (frame_->time_s <= time_s && time_s < frame_->until_s);
}

// What is known is shown at once, whatever the decoder is at.
void VideoSource::decode() {
    if (!reader_ || !wanted_s_) return;
    const double time_s = in_step().video_s(*wanted_s_);
    *still_wanted_ = decoding_s_ == time_s;
    if (shows(time_s)) return;
    if (const auto known = reader_->known(time_s))
        take_frame(*known, time_s);
    else if (!decoding_s_)
        decode_from_file(time_s);
}

// One that nobody wants any more is given up, but not at once: who drags the cursor shall see what lies on the way.
void VideoSource::decode_from_file(double time_s) {
    decoding_s_ = time_s;
    *filling_ = false;
    still_wanted_ = std::make_shared<std::atomic<bool>>(true);
    frames_.add(group_,
                [this, reader = reader_, time_s, wanted = still_wanted_,
                 serial = serial_](const base::Progress& progress) -> JobQueue::Answer {
                    const auto since = std::chrono::steady_clock::now();
                    const auto go_on = [&] {
                        constexpr auto patience = std::chrono::milliseconds(250);
                        return (*wanted || std::chrono::steady_clock::now() - since < patience) &&
                               base::go_on(progress, "", 0.0);
                    };
                    const auto passed = [this, serial](const video::Frame& frame) {
                        const auto tell = [this, frame, serial] { pass(frame, serial); };
                        QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
                    };
                    return [this, time_s, found = reader->at(time_s, go_on, passed)] { come_to(time_s, found); };
                });
}

void VideoSource::come_to(double time_s, const base::Result<video::Frame>& found) {
    decoding_s_.reset();
    const double wanted_s = in_step().video_s(*wanted_s_);
    if (found && !shows(wanted_s)) take_frame(*found, time_s);
    if (found || found.error().code == base::ErrorCode::cancelled) {
        if (!found || wanted_s != time_s) decode();
        if (!decoding_s_) fill();
        return;
    }
    close();
    Q_EMIT refused(sentence(found.error()));
}

void VideoSource::pass(const video::Frame& frame, int serial) {
    if (serial != serial_ || !decoding_s_) return;
    const double time_s = in_step().video_s(*wanted_s_);
    const bool is_it = frame.time_s <= time_s && time_s < frame.until_s;
    if (!shows(time_s)) Q_EMIT passed(frame, is_it ? 0.0 : time_s - frame.time_s);
}

void VideoSource::take_frame(const video::Frame& frame, double time_s) {
    constexpr double as_played_s = 0.5;
    onwards_ = time_s > last_wanted_s_ && time_s < last_wanted_s_ + as_played_s;
    last_wanted_s_ = time_s;
    refit_ = false;
    frame_ = frame;
    Q_EMIT shown(frame);
    if (!decoding_s_) fill();
}

// What lies around is decoded until another frame is wanted, the nearest first: both ways where the cursor rests,
// onwards while it plays; then the stretch that is looked at.
void VideoSource::fill() {
    *filling_ = false;
    filling_ = std::make_shared<std::atomic<bool>>(true);
    const double from_s = in_step().video_s(stretch_s_.first);
    const double to_s = in_step().video_s(stretch_s_.second);
    frames_.add(group_,
                [reader = reader_, time_s = last_wanted_s_, onwards = onwards_, from_s, to_s,
                 wanted = filling_](const base::Progress& progress) -> JobQueue::Answer {
                    const auto go_on = [&] { return *wanted && base::go_on(progress, "", 0.0); };
                    constexpr double near_s = 0.5;
                    constexpr double around_s = 2.5;
                    for (const double reach_s : {near_s, around_s})
                        reader->fill(time_s, onwards ? 0.0 : reach_s, reach_s, go_on);
                    if (!onwards) reader->read_ahead(from_s, to_s, time_s, go_on);
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
