// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/lap_list.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <array>
#include <utility>

namespace lapwright::pages {
namespace {

using models::text;
using workspace::LapOrder;

constexpr int mark_px = 17;
constexpr int space_px = 6;

// The shortest of these whose marks leave room for their words.
double tick_step_s(double full_s, int room_px) {
    constexpr double least_px = 44.0;
    constexpr std::array steps{0.1, 0.2, 0.5, 1.0, 2.0};
    const auto* found = std::ranges::find_if(steps, [&](double step) { return step / full_s * room_px >= least_px; });
    return found == steps.end() ? 5.0 : *found;
}

} // namespace

LapList::LapList(std::shared_ptr<const analysis::Session> session, QWidget* parent)
    : QWidget(parent), session_(std::move(session)), palette_(theme::paper()) {
    setFont(theme::small());
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setMouseTracking(true);
    const lap::Lap* fastest = session_->fastest();
    put_in_order(fastest ? fastest->number : 0);
}

void LapList::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    update();
}

void LapList::set_session(std::shared_ptr<const analysis::Session> session) {
    const int current = current_lap();
    session_ = std::move(session);
    put_in_order(current);
}

void LapList::set_scale(std::optional<double> fastest_s, double full_s) {
    fastest_s_ = fastest_s;
    full_s_ = full_s;
    update();
}

void LapList::set_order(LapOrder order) {
    if (order == order_) return;
    order_ = order;
    put_in_order(current_lap());
}

// The lap with the focus keeps it.
void LapList::put_in_order(int current) {
    laps_ = workspace::in_order(*session_, order_);
    const auto found = std::ranges::find(laps_, current, [](const lap::Lap* lap) { return lap->number; });
    move_to(found == laps_.end() ? 0 : static_cast<int>(found - laps_.begin()));
}

void LapList::set_notes(std::map<int, QString> notes) {
    notes_ = std::move(notes);
    move_to(row_); // what is heard of it
}

void LapList::set_picked(std::optional<int> lap_a, std::optional<int> lap_b) {
    lap_a_ = lap_a;
    lap_b_ = lap_b;
    update();
}

void LapList::set_further(std::map<int, QString> letters) {
    further_ = std::move(letters);
    update();
}

int LapList::current_lap() const {
    return laps_.empty() ? 0 : lap_at(row_).number;
}

int LapList::row_height() const {
    return std::max(mark_px + 3, fontMetrics().height() + 6);
}

QRect LapList::mark_rect(int row, bool is_a) const {
    const int top = (row + 1) * row_height() + (row_height() - mark_px) / 2;
    return {2 + (is_a ? 0 : mark_px + 3), top, mark_px, mark_px};
}

QRect LapList::further_rect(int row) const {
    return mark_rect(row, false).translated(mark_px + 3, 0);
}

QSize LapList::sizeHint() const {
    return {460, (rows() + 1) * row_height() + 2};
}

QSize LapList::minimumSizeHint() const {
    return {320, sizeHint().height()};
}

LapList::Columns LapList::columns() const {
    const QFontMetrics widest(theme::strong(font()));
    Columns c;
    c.lap = further_rect(0).right() + space_px;
    c.time = c.lap + widest.horizontalAdvance(tr("lap %1").arg(QStringLiteral("00"))) + space_px;
    c.behind = c.time + widest.horizontalAdvance(QStringLiteral("00:00.000 ±0.000")) + space_px;
    c.bar = c.behind +
            std::max(widest.horizontalAdvance(QStringLiteral("+00.00")), widest.horizontalAdvance(tr("behind"))) +
            2 * space_px;
    c.right = width() - 2;
    c.note = c.right - (notes_.empty() ? 0 : widest.horizontalAdvance(tr("note")) + space_px + 2);
    c.kind = std::max(c.note - widest.horizontalAdvance(tr("fastest")) - space_px, c.bar + 10);
    return c;
}

double LapList::to_x(double behind_s) const {
    const Columns c = columns();
    const double room = c.kind - 2 * space_px - c.bar;
    return c.bar + std::clamp(behind_s / full_s_, 0.0, 1.0) * room;
}

void LapList::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (laps_.empty()) return;
    paint_ruler(painter);
    for (int row = 0; row < rows(); ++row)
        paint_row(painter, row);
}

void LapList::write(QPainter& painter, const QRect& room, Qt::Alignment side, const QString& words,
                    const QColor& ink) const {
    painter.setPen(ink);
    painter.drawText(room, static_cast<int>(side | Qt::AlignVCenter | Qt::TextSingleLine),
                     QFontMetrics(painter.font()).elidedText(words, Qt::ElideRight, room.width()));
}

void LapList::paint_ruler(QPainter& painter) const {
    const Columns c = columns();
    const int height = row_height();
    const bool by_time = order_ == LapOrder::time;
    painter.setFont(by_time ? font() : theme::strong(font()));
    write(painter, {c.lap, 0, c.time - c.lap, height}, Qt::AlignLeft, tr("lap"), palette_.quiet);
    painter.setFont(by_time ? theme::strong(font()) : font());
    write(painter, {c.time, 0, c.behind - space_px - c.time, height}, Qt::AlignRight, tr("time"), palette_.quiet);
    painter.setFont(font());
    write(painter, {c.behind, 0, c.bar - 2 * space_px - c.behind, height}, Qt::AlignRight, tr("behind"),
          palette_.quiet);
    if (!fastest_s_) return;
    for (const double at_s : ticks_s()) {
        const QString words = at_s == 0.0 ? tr("0 s") : text("+" + base::shown_text(at_s, full_s_ < 3.0 ? 1 : 0));
        write(painter, {static_cast<int>(to_x(at_s)) - 3, 0, 60, height}, Qt::AlignLeft, words, palette_.quiet);
    }
}

std::vector<double> LapList::ticks_s() const {
    const double step_s = tick_step_s(full_s_, static_cast<int>(to_x(full_s_) - to_x(0.0)));
    std::vector<double> ticks;
    for (int i = 0; i * step_s <= full_s_ + 1e-9; ++i)
        ticks.push_back(i * step_s);
    return ticks;
}

void LapList::paint_row(QPainter& painter, int row) const {
    const lap::Lap& lap = lap_at(row);
    const bool fastest = session_->fastest() == &lap;
    const bool flying = lap.kind == lap::LapKind::flying;
    const QRect whole(0, (row + 1) * row_height(), width(), row_height());
    const auto from_to = [&](int left, int right) { return QRect(left, whole.top(), right - left, whole.height()); };
    if (row == row_ && hasFocus()) painter.fillRect(whole, palette_.chosen);
    paint_mark(painter, row, true);
    paint_mark(painter, row, false);
    if (flying) {
        const auto behind = further_.find(lap.number);
        const bool on = behind != further_.end();
        paint_letter(painter, further_rect(row), on ? behind->second : QStringLiteral("+"),
                     on ? theme::further_colour(palette_, behind->second.at(0).unicode() - u'C') : palette_.edge, on);
    }

    const Columns c = columns();
    const QColor ink = flying && lap.clean ? palette_.ink : palette_.quiet;
    painter.setFont(fastest ? theme::strong(font()) : font());
    write(painter, from_to(c.lap, c.time - space_px), Qt::AlignLeft,
          tr("lap %1").arg(text(base::integer_text(lap.number))), ink);
    write(painter, from_to(c.time, c.behind - space_px), Qt::AlignRight,
          text(base::lap_time_with_margin(lap.time_s(), lap.time_sd_s)), ink);
    if (flying && fastest_s_)
        write(painter, from_to(c.behind, c.bar - 2 * space_px), Qt::AlignRight,
              text(base::behind_text(lap.time_s(), *fastest_s_)), palette_.quiet);
    if (lap.clean) {
        paint_bar(painter, whole, lap);
        write(painter, from_to(c.kind, c.note), Qt::AlignLeft, kind_words(lap), ink);
    } else {
        const QString reason = reason_words(lap);
        const QString words = reason.isEmpty() ? kind_words(lap) : models::labelled(kind_words(lap), reason);
        write(painter, from_to(c.bar, c.note - space_px), Qt::AlignLeft, words, palette_.quiet);
    }
    if (notes_.contains(lap.number))
        write(painter, from_to(c.note + space_px, c.right), Qt::AlignLeft, tr("note"), palette_.ink);
}

void LapList::paint_mark(QPainter& painter, int row, bool is_a) const {
    const int number = lap_at(row).number;
    const bool on = (is_a ? lap_a_ : lap_b_) == number;
    paint_letter(painter, mark_rect(row, is_a), is_a ? QStringLiteral("A") : QStringLiteral("B"),
                 is_a ? palette_.a : palette_.b, on);
}

void LapList::paint_letter(QPainter& painter, const QRect& mark, const QString& letter, const QColor& fill,
                           bool on) const {
    const QRectF box = QRectF(mark).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(on ? fill : palette_.edge, 1.0));
    painter.setBrush(on ? QBrush(fill) : Qt::NoBrush);
    painter.drawRoundedRect(box, 4, 4);
    painter.setFont(on ? theme::strong(font()) : font());
    painter.setPen(on ? theme::ink_on(fill) : palette_.quiet);
    painter.drawText(box, Qt::AlignCenter, letter);
}

void LapList::paint_bar(QPainter& painter, const QRect& whole, const lap::Lap& lap) const {
    if (!fastest_s_) return;
    const double behind_s = lap.time_s() - *fastest_s_;
    const double end = to_x(behind_s);
    const QRectF bar(to_x(0.0), whole.top() + 5.0, std::max(end - to_x(0.0), 2.0), whole.height() - 10.0);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(palette_.rule);
    for (const double at_s : ticks_s())
        painter.drawLine(QPointF(to_x(at_s), whole.top()), QPointF(to_x(at_s), whole.bottom()));
    painter.fillRect(bar, palette_.ribbon);
    // Further behind than the ruler goes.
    if (behind_s > full_s_) painter.fillRect(QRectF(end - 8.0, bar.top(), 3.0, bar.height()), palette_.card);
    const double middle = whole.top() + 0.5 * whole.height();
    painter.setPen(QPen(palette_.ink, 1.0));
    if (lap.time_sd_s && behind_s <= full_s_) {
        const double half_s = base::half_width_95(*lap.time_sd_s);
        painter.drawLine(QPointF(to_x(behind_s - half_s), middle), QPointF(to_x(behind_s + half_s), middle));
    }
    painter.drawLine(QPointF(end, bar.top()), QPointF(end, bar.bottom()));
    painter.restore();
}

QString LapList::kind_words(const lap::Lap& lap) const {
    switch (lap.kind) {
    case lap::LapKind::out:
        return tr("out lap");
    case lap::LapKind::in:
        return tr("in lap");
    case lap::LapKind::incomplete:
        break;
    case lap::LapKind::flying:
        if (!lap.clean) return lap::word_on(lap, session_->by_hand) ? tr("set aside by hand") : tr("set aside");
        if (session_->fastest() == &lap) return tr("fastest");
        return lap::word_on(lap, session_->by_hand) ? tr("by hand") : QString();
    }
    if (!lap.why_not_clean.empty()) return tr("no lap");
    if (&lap == &session_->laps.front()) return tr("begins on the way");
    return &lap == &session_->laps.back() ? tr("ends on the way") : tr("incomplete");
}

QString LapList::reason_words(const lap::Lap& lap) const {
    const lap::JudgedByHand* word = lap.kind == lap::LapKind::flying ? lap::word_on(lap, session_->by_hand) : nullptr;
    return text(word ? word->reason : lap.why_not_clean);
}

QString LapList::row_words(int row) const {
    const lap::Lap& lap = lap_at(row);
    QString words = tr("lap %1").arg(text(base::integer_text(lap.number))) + QStringLiteral(", ") +
                    text(base::lap_time_with_margin(lap.time_s(), lap.time_sd_s));
    if (const QString kind = kind_words(lap); !kind.isEmpty()) words += QStringLiteral(", ") + kind;
    if (const QString reason = reason_words(lap); !reason.isEmpty()) words = models::labelled(words, reason);
    if (const auto behind = further_.find(lap.number); behind != further_.end())
        words += tr(", behind A and B as %1").arg(behind->second);
    const auto note = notes_.find(lap.number);
    return note == notes_.end() ? words : words + tr("\nNote: %1").arg(note->second);
}

int LapList::row_at(const QPoint& point) const {
    const int row = point.y() / row_height() - 1;
    return row < rows() ? row : -1;
}

void LapList::move_to(int row) {
    if (laps_.empty()) return;
    row_ = std::clamp(row, 0, rows() - 1);
    setAccessibleName(row_words(row_));
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
        move_to(rows() - 1);
        break;
    case Qt::Key_Left:
        Q_EMIT session_asked(-1);
        break;
    case Qt::Key_Right:
        Q_EMIT session_asked(1);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void LapList::mousePressEvent(QMouseEvent* event) {
    const int row = row_at(event->pos());
    if (row < 0) {
        const Columns c = columns();
        if (event->pos().y() < row_height() && event->pos().x() < c.bar)
            Q_EMIT order_asked(event->pos().x() < c.time ? LapOrder::driven : LapOrder::time);
        return;
    }
    move_to(row);
    if (event->button() != Qt::LeftButton) return;
    for (const bool is_a : {true, false}) {
        if (mark_rect(row, is_a).adjusted(-1, -2, 1, 2).contains(event->pos())) Q_EMIT picked(current_lap(), is_a);
    }
    if (further_rect(row).adjusted(-1, -2, 1, 2).contains(event->pos())) Q_EMIT further_asked(current_lap());
}

bool LapList::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const int row = row_at(help->pos());
    const QString words =
        row >= 0 ? row_words(row)
                 : tr("How far each clean lap is behind the fastest of the open sessions, with the 95 % margin of its "
                      "time; a click on \"lap\" or \"time\" sorts");
    QToolTip::showText(help->globalPos(),
                       QStringLiteral("<qt>%1</qt>").arg(words.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>"))),
                       this);
    return true;
}

void LapList::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

} // namespace lapwright::pages
