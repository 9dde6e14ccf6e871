// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/lap_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

using models::text;

constexpr int mark_px = 17;
constexpr int space_px = 6;

QString kind_words(const lap::Lap& lap, bool fastest) {
    if (fastest) return LapList::tr("fastest");
    switch (lap.kind) {
    case lap::LapKind::out:
        return LapList::tr("out lap");
    case lap::LapKind::in:
        return LapList::tr("in lap");
    case lap::LapKind::incomplete:
        return LapList::tr("incomplete");
    case lap::LapKind::flying:
        return lap.clean ? QString() : LapList::tr("set aside");
    }
    return {};
}

} // namespace

LapList::LapList(std::shared_ptr<const analysis::Session> session, QWidget* parent)
    : QWidget(parent), session_(std::move(session)), palette_(theme::paper()) {
    setFont(theme::small());
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setMouseTracking(true);
    if (const lap::Lap* fastest = session_->fastest()) {
        row_ = static_cast<int>(fastest - session_->laps.data());
    }
    move_to(row_);
}

void LapList::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    update();
}

void LapList::set_scale(double full_s) {
    full_s_ = full_s;
    update();
}

void LapList::set_notes(std::map<int, QString> notes) {
    notes_ = std::move(notes);
    move_to(row_); // what is heard of it
}

QString LapList::note_of(const lap::Lap& lap) const {
    const auto found = notes_.find(lap.number);
    return found == notes_.end() ? QString() : found->second;
}

void LapList::set_picked(std::optional<int> lap_a, std::optional<int> lap_b) {
    lap_a_ = lap_a;
    lap_b_ = lap_b;
    update();
}

int LapList::current_lap() const {
    return session_->laps.empty() ? 0 : session_->laps[static_cast<std::size_t>(row_)].number;
}

int LapList::row_height() const {
    return std::max(mark_px + 3, fontMetrics().height() + 6);
}

QRect LapList::mark_rect(int row, bool is_a) const {
    const int top = row * row_height() + (row_height() - mark_px) / 2;
    return {2 + (is_a ? 0 : mark_px + 3), top, mark_px, mark_px};
}

QSize LapList::sizeHint() const {
    return {460, static_cast<int>(session_->laps.size()) * row_height() + 2};
}

QSize LapList::minimumSizeHint() const {
    return {320, sizeHint().height()};
}

void LapList::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int row = 0; row < static_cast<int>(session_->laps.size()); ++row)
        paint_row(painter, row);
}

void LapList::paint_row(QPainter& painter, int row) const {
    const lap::Lap& lap = session_->laps[static_cast<std::size_t>(row)];
    const bool fastest = session_->fastest() == &lap;
    const QRect whole(0, row * row_height(), width(), row_height());
    if (row == row_ && hasFocus()) painter.fillRect(whole, palette_.chosen);
    paint_mark(painter, row, true);
    paint_mark(painter, row, false);

    painter.setFont(fastest ? theme::strong(font()) : font());
    const QFontMetrics metrics(painter.font());
    const QFontMetrics widest(theme::strong(font()));
    const int number_width = widest.horizontalAdvance(QStringLiteral("lap 00"));
    const int time_width = widest.horizontalAdvance(QStringLiteral("00:00.000 ±0.000"));
    const int kind_width = widest.horizontalAdvance(tr("incomplete")) + 2;
    int left = mark_rect(row, false).right() + space_px;
    const auto column = [&](int room, Qt::Alignment side, const QString& words, const QColor& ink) {
        painter.setPen(ink);
        painter.drawText(QRect(left, whole.top(), room, whole.height()),
                         static_cast<int>(side | Qt::AlignVCenter | Qt::TextSingleLine),
                         metrics.elidedText(words, Qt::ElideRight, room));
        left += room + space_px;
    };
    column(number_width, Qt::AlignLeft, tr("lap %1").arg(text(base::integer_text(lap.number))), palette_.ink);
    column(time_width, Qt::AlignRight, text(base::lap_time_with_margin(lap.time_s(), lap.time_sd_s)), palette_.ink);
    const bool flying = lap.kind == lap::LapKind::flying && session_->fastest() != nullptr;
    const int behind_width = widest.horizontalAdvance(QStringLiteral("+00.00"));
    column(behind_width, Qt::AlignRight,
           flying ? text(base::behind_text(lap.time_s(), session_->fastest()->time_s())) : QString(), palette_.quiet);
    const bool noted = notes_.contains(lap.number);
    const int note_width = widest.horizontalAdvance(tr("note")) + 2 + space_px;
    const QRectF room(left, whole.top() + 4.0,
                      std::max(whole.right() - kind_width - (noted ? note_width : 0) - space_px - left, 10),
                      whole.height() - 8.0);
    paint_bar(painter, room, lap);
    left = whole.right() - kind_width - (noted ? note_width : 0);
    if (noted) column(note_width - space_px, Qt::AlignLeft, tr("note"), palette_.ink);
    column(kind_width, Qt::AlignLeft, kind_words(lap, fastest), fastest ? palette_.ink : palette_.quiet);
}

void LapList::paint_mark(QPainter& painter, int row, bool is_a) const {
    const int number = session_->laps[static_cast<std::size_t>(row)].number;
    const bool on = (is_a ? lap_a_ : lap_b_) == number;
    const QColor colour = is_a ? palette_.a : palette_.b;
    const QRectF box = QRectF(mark_rect(row, is_a)).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(on ? colour : palette_.edge, 1.0));
    painter.setBrush(on ? QBrush(colour) : Qt::NoBrush);
    painter.drawRoundedRect(box, 4, 4);
    painter.setFont(on ? theme::strong(font()) : font());
    painter.setPen(on ? theme::ink_on(colour) : palette_.quiet);
    painter.drawText(box, Qt::AlignCenter, is_a ? QStringLiteral("A") : QStringLiteral("B"));
}

void LapList::paint_bar(QPainter& painter, const QRectF& room, const lap::Lap& lap) const {
    const double part = std::clamp(lap.time_s() / full_s_, 0.0, 1.0);
    const QRectF bar(room.left() + 0.5, room.top() + 0.5, std::max(part * (room.width() - 1.0), 1.0),
                     room.height() - 1.0);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    const bool flying = lap.kind == lap::LapKind::flying;
    painter.setPen(QPen(palette_.edge, 1.0, flying ? Qt::SolidLine : Qt::DotLine));
    painter.setBrush(!flying     ? QBrush(Qt::NoBrush)
                     : lap.clean ? QBrush(palette_.ribbon)
                                 : QBrush(palette_.edge, Qt::BDiagPattern));
    painter.drawRect(bar);
    painter.restore();
}

QString LapList::lap_words(const lap::Lap& lap) const {
    QString words = tr("lap %1").arg(text(base::integer_text(lap.number))) + QStringLiteral(", ") +
                    text(base::lap_time_with_margin(lap.time_s(), lap.time_sd_s));
    const QString kind = kind_words(lap, session_->fastest() == &lap);
    if (!kind.isEmpty()) words += QStringLiteral(", ") + kind;
    if (!lap.why_not_clean.empty()) words += QStringLiteral(": ") + text(lap.why_not_clean);
    if (const QString note = note_of(lap); !note.isEmpty()) words += tr("\nNote: %1").arg(note);
    return words;
}

int LapList::row_at(const QPoint& point) const {
    const int row = point.y() / row_height();
    return row >= 0 && row < static_cast<int>(session_->laps.size()) ? row : -1;
}

void LapList::move_to(int row) {
    if (session_->laps.empty()) return;
    row_ = std::clamp(row, 0, static_cast<int>(session_->laps.size()) - 1);
    setAccessibleName(lap_words(session_->laps[static_cast<std::size_t>(row_)]));
    update();
    Q_EMIT moved();
}

void LapList::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Up:
        move_to(row_ - 1);
        break;
    case Qt::Key_Down:
        move_to(row_ + 1);
        break;
    case Qt::Key_Home:
        move_to(0);
        break;
    case Qt::Key_End:
        move_to(static_cast<int>(session_->laps.size()) - 1);
        break;
    case Qt::Key_Left:
        focusPreviousChild();
        break;
    case Qt::Key_Right:
        focusNextChild();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void LapList::mousePressEvent(QMouseEvent* event) {
    const int row = row_at(event->pos());
    if (row < 0) return;
    move_to(row);
    if (event->button() != Qt::LeftButton) return;
    for (const bool is_a : {true, false}) {
        if (mark_rect(row, is_a).adjusted(-1, -2, 1, 2).contains(event->pos())) Q_EMIT picked(current_lap(), is_a);
    }
}

bool LapList::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const int row = row_at(help->pos());
    if (row >= 0) {
        const QString words = lap_words(session_->laps[static_cast<std::size_t>(row)]);
        QToolTip::showText(
            help->globalPos(),
            QStringLiteral("<qt>%1</qt>").arg(words.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>"))), this);
    }
    return true;
}

void LapList::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

} // namespace lapwright::pages
