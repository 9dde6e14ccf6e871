// SPDX-License-Identifier: GPL-3.0-or-later
// One driver's video: whose it is, the frame at the cursor, and how it stands to the recording, which can be moved.
#pragma once

#include "core/video/frame_cache.h"
#include "core/workspace/session_key.h"
#include "ui/theme/palette.h"

#include <QImage>
#include <QTimer>
#include <QWidget>

class QDoubleSpinBox;
class QPushButton;

namespace lapwright::theme {
class ElidedLabel;
}

namespace lapwright::pages {

class LineSample;

// The picture alone, as large as there is room, its shape kept.
class FramePicture : public QWidget {
    Q_OBJECT

  public:
    explicit FramePicture(QWidget* parent = nullptr);
    void show_frame(const video::Frame& frame);
    void show_passed(const video::Frame& frame, double earlier_s); // one on the way to the frame: says so
    void show_words(const QString& words);                         // in the place of a frame
    [[nodiscard]] QSize pixels() const { return size() * devicePixelRatio(); }
    [[nodiscard]] const QString& mark() const { return mark_; } // what is said over the frame
    [[nodiscard]] const QImage& picture() const { return image_; }
    [[nodiscard]] const QString& words() const { return words_; }
    [[nodiscard]] QSize sizeHint() const override { return {480, 270}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {120, 68}; }

  Q_SIGNALS:
    void resized(); // and has kept its size since, for a moment

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    video::Frame frame_; // holds the bytes that image_ shows
    QImage image_;
    QString words_;
    QString mark_;
    QTimer rests_;
};

class VideoView : public QWidget {
    Q_OBJECT

  public:
    explicit VideoView(workspace::Side side, QWidget* parent = nullptr);
    void set_palette(const theme::Palette& palette);
    void set_title(const QString& title);
    // The offset of the video's start behind the recording's, and what is said of it; without a video nothing to move.
    void set_step(bool has_video, double offset_s, const QString& said);
    [[nodiscard]] FramePicture& frame() { return *frame_; }
    [[nodiscard]] QDoubleSpinBox& offset() { return *offset_; }
    [[nodiscard]] QString said() const;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  Q_SIGNALS:
    void choose_asked();
    void offset_set(double offset_s);

  private:
    LineSample* line_;
    theme::ElidedLabel* title_;
    FramePicture* frame_;
    QPushButton* choose_;
    QDoubleSpinBox* offset_;
    theme::ElidedLabel* said_;
};

} // namespace lapwright::pages
