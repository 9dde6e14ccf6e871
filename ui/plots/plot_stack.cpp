// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/plot_stack.h"

#include "ui/plots/drawing.h"

#include <QApplication>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double wheel_zoom = 0.8;     // of the view for one notch
constexpr double notch = 120.0;        // of QWheelEvent
constexpr double cursor_steps = 200.0; // across the view
constexpr double min_step_m = 1.0;
constexpr double room_beside_stretch = 0.5; // of the stretch's length, on either side
constexpr int drag_starts_px = 5;

} // namespace

PlotStack::PlotStack(QWidget* parent)
    : QWidget(parent), plot_(new QCustomPlot(this)), panels_(std::make_unique<StackPanels>(plot_)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(plot_);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Plots over distance"));
    plot_->setFocusPolicy(Qt::NoFocus);
    plot_->setMouseTracking(true);
    plot_->setPlottingHints(QCP::phFastPolylines | QCP::phCacheLabels);
    plot_->setNoAntialiasingOnDrag(false);
    plot_->installEventFilter(this);
}

PlotStack::~PlotStack() = default;

void PlotStack::set_palette(const theme::Palette& palette) {
    panels_->set_palette(palette);
    build();
}

void PlotStack::set_content(StackContent content) {
    const bool same = panels_->content().pairing == content.pairing;
    const double length_m = content.pairing ? content.pairing->a.trace.best.distance_m.back() : 1.0;
    const bool same_line = std::abs(length_m - length_m_) < 1.0 && panels_->content().pairing;
    if (!same && same_line) {
        chosen_.reset();
    } else if (!same) {
        length_m_ = length_m;
        view_ = {0.0, length_m_};
        cursor_m_ = 0.0;
        chosen_.reset();
    }
    if (chosen_ && *chosen_ >= content.segments.size()) chosen_.reset();
    panels_->set_content(std::move(content));
    build();
}

void PlotStack::build() {
    panels_->build({view_, cursor_m_, chosen_, width()});
}

QByteArray PlotStack::picture(const QString& heading, PictureForm form) {
    panels_->show_cursors(false);
    const QSize size = plot_->size().expandedTo({800, plot_->minimumHeight()});
    QByteArray content =
        picture_of({{plot_, {}, size}}, heading, {panels_->palette().paper, panels_->palette().ink}, form);
    panels_->show_cursors(true);
    plot_->replot(QCustomPlot::rpQueuedReplot);
    return content;
}

void PlotStack::set_view(ViewRange view) {
    view = inside_lap(view, length_m_);
    if (view == view_) return;
    view_ = view;
    panels_->set_view(view_);
}

void PlotStack::zoom(double factor) {
    const double about = view_.contains(cursor_m_) ? cursor_m_ : 0.5 * (view_.lower_m + view_.upper_m);
    set_view(zoomed(view_, factor, about, length_m_));
}

void PlotStack::pan(double part) {
    set_view(panned(view_, part * view_.width(), length_m_));
}

void PlotStack::fit() {
    set_view({0.0, length_m_});
}

void PlotStack::show_stretch(double start_m, double end_m) {
    const double room = room_beside_stretch * (end_m - start_m);
    set_view({start_m - room, end_m + room});
}

void PlotStack::set_cursor(double place_m) {
    place_m = std::clamp(place_m, 0.0, length_m_);
    set_view(following(view_, place_m, length_m_));
    move_cursor_to(place_m);
}

void PlotStack::move_cursor_to(double place_m) {
    if (place_m == cursor_m_) return;
    cursor_m_ = place_m;
    panels_->set_cursor(cursor_m_);
    Q_EMIT cursor_moved(cursor_m_);
}

void PlotStack::step_cursor(int steps) {
    const double step = std::max(min_step_m, std::round(view_.width() / cursor_steps));
    set_cursor(cursor_m_ + steps * step);
}

void PlotStack::choose(std::optional<std::size_t> segment) {
    if (segment && *segment >= panels_->content().segments.size()) segment.reset();
    if (segment == chosen_) return;
    chosen_ = segment;
    panels_->choose(chosen_);
}

void PlotStack::replot_now() {
    plot_->replot(QCustomPlot::rpImmediateRefresh);
}

bool PlotStack::eventFilter(QObject* watched, QEvent* event) {
    if (watched != plot_ || !panels_->content().pairing) return QWidget::eventFilter(watched, event);
    switch (event->type()) {
    case QEvent::MouseButtonPress:
        pressed(*static_cast<QMouseEvent*>(event));
        return true;
    case QEvent::MouseMove:
        moved(*static_cast<QMouseEvent*>(event));
        return true;
    case QEvent::MouseButtonRelease:
        released(*static_cast<QMouseEvent*>(event));
        return true;
    case QEvent::MouseButtonDblClick:
        fit();
        return true;
    case QEvent::ContextMenu:
        contextMenuEvent(static_cast<QContextMenuEvent*>(event));
        return true;
    case QEvent::Wheel: {
        const auto& turned = *static_cast<QWheelEvent*>(event);
        const bool scrolls = !turned.modifiers().testFlag(Qt::ControlModifier) && turned.angleDelta().x() == 0 &&
                             parentWidget() && parentWidget()->height() < height();
        if (scrolls) {
            QApplication::sendEvent(parentWidget(), event); // the area around it scrolls
            return true;
        }
        wheeled(turned);
        return true;
    }
    default:
        return QWidget::eventFilter(watched, event);
    }
}

void PlotStack::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    panels_->space_distance_ticks(width());
}

void PlotStack::pressed(const QMouseEvent& event) {
    setFocus(Qt::MouseFocusReason);
    if (event.button() != Qt::LeftButton) return;
    pressed_at_ = event.pos();
    grabbed_m_ = panels_->boundary_at(event.pos());
    view_when_pressed_ = view_;
    dragging_ = false;
}

void PlotStack::moved(const QMouseEvent& event) {
    if (panels_->empty()) return;
    if (!pressed_at_) {
        plot_->setCursor(panels_->boundary_at(event.pos()) ? Qt::SizeHorCursor : Qt::ArrowCursor);
        if (panels_->left_px() <= event.pos().x()) {
            move_cursor_to(std::clamp(panels_->place_at(event.pos().x()), view_.lower_m, view_.upper_m));
        }
        return;
    }
    const int moved_px = event.pos().x() - pressed_at_->x();
    if (!dragging_ && std::abs(moved_px) < drag_starts_px) return;
    dragging_ = true;
    if (grabbed_m_) {
        move_cursor_to(std::clamp(panels_->place_at(event.pos().x()), view_.lower_m, view_.upper_m));
        return;
    }
    const double metres_per_pixel = view_when_pressed_.width() / panels_->width_px();
    set_view(panned(view_when_pressed_, -moved_px * metres_per_pixel, length_m_));
}

void PlotStack::released(const QMouseEvent& event) {
    if (event.button() != Qt::LeftButton || !pressed_at_) return;
    pressed_at_.reset();
    const auto grabbed_m = std::exchange(grabbed_m_, {});
    if (dragging_ && grabbed_m) Q_EMIT boundary_moved(*grabbed_m, cursor_m_);
    if (dragging_) return;
    const double place = panels_->place_at(event.pos().x());
    if (!view_.contains(place)) return;
    move_cursor_to(place);
    if (const auto segment = segment_at(panels_->content(), place)) Q_EMIT segment_clicked(static_cast<int>(*segment));
}

void PlotStack::contextMenuEvent(QContextMenuEvent* event) {
    if (panels_->empty()) return;
    const bool by_mouse = event->reason() == QContextMenuEvent::Mouse;
    const double place =
        by_mouse ? std::clamp(panels_->place_at(event->pos().x()), view_.lower_m, view_.upper_m) : cursor_m_;
    Q_EMIT menu_asked(place, by_mouse ? event->globalPos() : mapToGlobal(rect().center()));
}

void PlotStack::wheeled(const QWheelEvent& event) {
    if (panels_->empty()) return;
    const QPoint turned = event.angleDelta();
    if (std::abs(turned.x()) > std::abs(turned.y())) {
        pan(-0.1 * turned.x() / notch);
        return;
    }
    const double about = std::clamp(panels_->place_at(event.position().x()), view_.lower_m, view_.upper_m);
    set_view(zoomed(view_, std::pow(wheel_zoom, turned.y() / notch), about, length_m_));
}

} // namespace lapwright::plots
