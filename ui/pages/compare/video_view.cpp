// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/video_view.h"

#include "ui/pages/compare/line_sample.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/figure_box.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace lapwright::pages {

FramePicture::FramePicture(QWidget* parent) : QWidget(parent) {
    constexpr int moment_ms = 150;
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    rests_.setSingleShot(true);
    rests_.setInterval(moment_ms);
    connect(&rests_, &QTimer::timeout, this, &FramePicture::resized);
}

void FramePicture::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    rests_.start();
}

void FramePicture::show_frame(const video::Frame& frame) {
    constexpr int bytes_a_pixel = 3;
    const video::Picture& picture = *frame.picture;
    image_ =
        QImage(picture.rgb.data(), picture.width, picture.height, bytes_a_pixel * picture.width, QImage::Format_RGB888);
    frame_ = frame;
    words_.clear();
    mark_.clear();
    update();
}

void FramePicture::show_passed(const video::Frame& frame, double earlier_s) {
    constexpr int decimals = 1;
    show_frame(frame);
    if (earlier_s == 0.0) return;
    mark_ = earlier_s < 0.0 ? tr("for now %1 s later").arg(-earlier_s, 0, 'f', decimals)
                            : tr("for now %1 s earlier").arg(earlier_s, 0, 'f', decimals);
}

void FramePicture::show_words(const QString& words) {
    image_ = {};
    frame_ = {};
    words_ = words;
    mark_.clear();
    update();
}

void FramePicture::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    if (image_.isNull()) {
        painter.fillRect(rect(), palette().alternateBase()); // where the picture will be
        painter.drawText(rect().adjusted(8, 8, -8, -8), Qt::AlignCenter | Qt::TextWordWrap, words_);
        return;
    }
    const QSize fitting = image_.size().scaled(pixels(), Qt::KeepAspectRatio);
    const QSize over = fitting - image_.size();
    const bool fits = qAbs(over.width()) <= 1 && qAbs(over.height()) <= 1; // decoded for this size
    QRect place(QPoint(), (fits ? image_.size() : fitting) / devicePixelRatio());
    place.moveCenter(rect().center());
    painter.setRenderHint(QPainter::SmoothPixmapTransform, !fits);
    painter.drawImage(place, image_);
    if (mark_.isEmpty()) return;
    constexpr int gap_px = 4;
    QRect box = painter.fontMetrics().boundingRect(mark_).adjusted(-gap_px, -gap_px, gap_px, gap_px);
    box.moveBottomLeft(place.bottomLeft());
    painter.fillRect(box, palette().window());
    painter.drawText(box, Qt::AlignCenter, mark_);
}

VideoView::VideoView(workspace::Side side, QWidget* parent)
    : QWidget(parent), line_(new LineSample(side)), title_(new theme::ElidedLabel), frame_(new FramePicture),
      choose_(new QPushButton(tr("Video…"))), offset_(new theme::FigureBox), said_(new theme::ElidedLabel) {
    const QString letter = side == workspace::Side::a ? QStringLiteral("A") : QStringLiteral("B");
    frame_->setAccessibleName(tr("Video of %1").arg(letter));
    choose_->setAccessibleName(tr("Choose the video of %1").arg(letter));
    choose_->setFocusPolicy(Qt::TabFocus);
    constexpr double a_day_s = 86'400.0;
    constexpr double frame_s = 0.04; // of 25 a second
    offset_->setRange(-a_day_s, a_day_s);
    offset_->setDecimals(3);
    offset_->setSingleStep(frame_s);
    offset_->setSuffix(tr(" s"));
    offset_->setKeyboardTracking(false);
    offset_->setAccessibleName(tr("The video of %1 begins this long behind the recording").arg(letter));
    offset_->setToolTip(
        tr("The video begins this long behind the recording. Put the cursor at a place that you know in "
           "the picture, and move this until the picture is there."));
    // Words beside the picture, which has all the height.
    auto* head = new QHBoxLayout;
    head->addWidget(line_);
    head->addWidget(title_, 1);
    auto* words = new QVBoxLayout;
    words->addLayout(head);
    words->addWidget(said_);
    words->addWidget(offset_, 0, Qt::AlignLeft);
    words->addWidget(choose_, 0, Qt::AlignLeft);
    words->addStretch(1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(4, 2, 4, 2);
    row->addWidget(frame_, 3);
    row->addLayout(words, 2);
    connect(choose_, &QPushButton::clicked, this, &VideoView::choose_asked);
    connect(offset_, &QDoubleSpinBox::valueChanged, this, &VideoView::offset_set);
    set_step(false, 0.0, {});
}

// The picture needs no more room beside it than its height lets it fill: the words have the rest.
void VideoView::resizeEvent(QResizeEvent* event) {
    constexpr int wide = 16;
    constexpr int high = 9;
    QWidget::resizeEvent(event);
    frame_->setMaximumWidth(std::max(frame_->minimumSizeHint().width(), height() * wide / high));
}

void VideoView::set_palette(const theme::Palette& palette) {
    line_->set_palette(palette);
}

void VideoView::set_title(const QString& title) {
    title_->set_text(title);
}

void VideoView::set_step(bool has_video, double offset_s, const QString& said) {
    const QSignalBlocker quiet(offset_);
    offset_->setVisible(has_video);
    offset_->setValue(offset_s);
    said_->set_text(said);
}

QString VideoView::said() const {
    return said_->text();
}

} // namespace lapwright::pages
