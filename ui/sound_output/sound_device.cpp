// SPDX-License-Identifier: GPL-3.0-or-later
// The module's entry: a SoundSink on the system's default device, by Qt Multimedia.
#include "ui/bridge/sound_sink.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QByteArray>
#include <QCoreApplication>
#include <QIODevice>
#include <QMediaDevices>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace lapwright::sound_output {
namespace {

constexpr double buffer_s = 0.2;

class SoundDevice : public bridge::SoundSink {
  public:
    SoundDevice(const QAudioDevice& device, const QAudioFormat& format) : format_(format), sink_(device, format) {
        sink_.setBufferSize(format.bytesForDuration(static_cast<qint64>(buffer_s * 1e6)));
        bytes_ = sink_.start();
    }
    ~SoundDevice() override { sink_.reset(); } // at once: what waits is not heard any more

    [[nodiscard]] bool runs() const { return bytes_ != nullptr && sink_.error() == QAudio::NoError; }

    std::size_t write(std::span<const float> samples) override {
        QCoreApplication::processEvents(); // some of Qt's devices are fed by a timer of this thread
        const auto room = static_cast<std::size_t>(std::max<qsizetype>(sink_.bytesFree(), 0) / format_.bytesPerFrame());
        const auto taken = samples.first(std::min(samples.size(), room));
        const QByteArray bytes = coded(taken);
        const qint64 written = bytes_->write(bytes);
        return static_cast<std::size_t>(std::max<qint64>(written, 0) / format_.bytesPerFrame());
    }
    double waiting_s() override {
        return 1e-6 * static_cast<double>(format_.durationForBytes(
                          static_cast<qint32>(std::max<qsizetype>(sink_.bufferSize() - sink_.bytesFree(), 0))));
    }

  private:
    [[nodiscard]] QByteArray coded(std::span<const float> samples) const {
        QByteArray bytes;
        bytes.reserve(static_cast<qsizetype>(samples.size()) * format_.bytesPerFrame());
        for (const float sample : samples)
            for (int channel = 0; channel < format_.channelCount(); ++channel)
                append(bytes, sample);
        return bytes;
    }
    void append(QByteArray& bytes, float sample) const {
        if (format_.sampleFormat() == QAudioFormat::Float) {
            bytes.append(reinterpret_cast<const char*>(&sample), sizeof sample);
            return;
        }
        constexpr float loudest = 32'767.0F;
        const auto whole = static_cast<std::int16_t>(std::lround(std::clamp(sample, -1.0F, 1.0F) * loudest));
        bytes.append(reinterpret_cast<const char*>(&whole), sizeof whole);
    }

    QAudioFormat format_;
    QAudioSink sink_;
    QIODevice* bytes_ = nullptr; // of sink_
};

std::unique_ptr<bridge::SoundSink> open(int rate_hz) {
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull()) return nullptr;
    for (const auto sample_format : {QAudioFormat::Float, QAudioFormat::Int16})
        for (const int channels : {1, 2}) {
            QAudioFormat format;
            format.setSampleRate(rate_hz);
            format.setChannelCount(channels);
            format.setSampleFormat(sample_format);
            if (!device.isFormatSupported(format)) continue;
            auto sink = std::make_unique<SoundDevice>(device, format);
            if (sink->runs()) return sink;
        }
    return nullptr;
}

} // namespace
} // namespace lapwright::sound_output

extern "C" const lapwright::bridge::OpenSoundSink lapwright_open_sound_sink = lapwright::sound_output::open;
