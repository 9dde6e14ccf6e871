// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/plot_stack.h"

#include "ui/plots/drawing.h"
#include "ui/plots/in_words.h"
#include "ui/plots/stack_looks.h"

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
constexpr int grow_step_px = 16;

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
    setAccessibleDescription(in_words(panels_->content()));
    static_cast<void>(follow_channels(channels_.first));
    build();
}

void PlotStack::build() {
    panels_->build({view_, cursor_m_, chosen_, width(), channels_});
    if (!hand_.isEmpty()) panels_->mark(hand_);
}

QByteArray PlotStack::picture(const QString& heading, PictureForm form) {
    const ChannelWindow shown = std::exchange(channels_, {0, panels_->content().channels.size()});
    if (shown != channels_) build(); // all of them
    panels_->show_cursors(false);
    const QSize size = plot_->size().expandedTo({800, plot_->minimumHeight()});
    QByteArray content =
        picture_of({{plot_, {}, size}}, heading, {panels_->palette().paper, panels_->palette().ink}, form);
    panels_->show_cursors(true);
    if (std::exchange(channels_, shown) != shown) build();
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
        const bool plain = !turned.modifiers().testFlag(Qt::ControlModifier) && turned.angleDelta().x() == 0;
        if (plain && channels_.count < panels_->content().channels.size()) {
            scroll_channels(turned.angleDelta().y() > 0 ? -1 : 1);
            return true;
        }
        if (plain && parentWidget() && parentWidget()->height() < height()) {
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
    if (panels_->content().pairing && follow_channels(channels_.first)) build();
}

void PlotStack::pressed(const QMouseEvent& event) {
    setFocus(Qt::MouseFocusReason);
    if (event.button() != Qt::LeftButton) return;
    if (const auto below = border_at(panels_->content(), panels_->panels(), event.pos())) {
        resizing_ = {*below, event.pos().y()};
        return;
    }
    if (const auto panel = panel_at(panels_->panels(), event.pos())) hand_ = panels_->panels()[*panel]->id;
    if (const auto panel = title_at(panels_->panels(), event.pos())) {
        title_pressed_ = panels_->panels()[*panel]->id;
        return;
    }
    pressed_at_ = event.pos();
    grabbed_m_ = panels_->boundary_at(event.pos());
    view_when_pressed_ = view_;
    dragging_ = false;
}

void PlotStack::moved(const QMouseEvent& event) {
    if (panels_->empty()) return;
    if (resizing_) {
        resize_to(event.pos().y());
        return;
    }
    if (title_pressed_) return;
    if (!pressed_at_) {
        plot_->setCursor(border_at(panels_->content(), panels_->panels(), event.pos()) ? Qt::SplitVCursor
                         : title_at(panels_->panels(), event.pos())                    ? Qt::PointingHandCursor
                         : panels_->boundary_at(event.pos())                           ? Qt::SizeHorCursor
                                                                                       : Qt::ArrowCursor);
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
    if (event.button() != Qt::LeftButton) return;
    if (std::exchange(resizing_, {})) {
        Q_EMIT looks_changed(panels_->content().looks);
        return;
    }
    if (title_pressed_) {
        end_title_press(event.pos());
        return;
    }
    if (!pressed_at_) return;
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

bool PlotStack::follow_channels(std::size_t first) {
    const int height_px = parentWidget() ? parentWidget()->height() : height();
    const ChannelWindow shown =
        panels_->content().pairing ? channels_in_view(panels_->content(), first, height_px) : ChannelWindow{};
    return std::exchange(channels_, shown) != shown;
}

void PlotStack::scroll_channels(int count) {
    const std::size_t all = panels_->content().channels.size();
    const auto wanted = static_cast<std::ptrdiff_t>(channels_.first) + count;
    if (all == 0 || wanted < 0) return;
    if (follow_channels(std::min(static_cast<std::size_t>(wanted), all - 1))) build();
}

void PlotStack::fold(const QString& id) {
    PanelLooks looks = panels_->content().looks;
    looks[id].folded = !looks[id].folded;
    Q_EMIT looks_changed(looks);
}

void PlotStack::resize_to(int y) {
    const auto [below, was_at] = *resizing_;
    const PanelLooks looks = with_border_moved(panels_->content(), panels_->panels(), below, y - was_at);
    const QString& upper = panels_->panels()[below - 1]->id;
    const double before = with_border_moved(panels_->content(), panels_->panels(), below, 0).at(upper).height_px;
    resizing_->second += static_cast<int>(std::lround(looks.at(upper).height_px - before));
    panels_->set_looks(looks);
}

// A click folds; a channel that was dragged takes the place of the one under the pointer.
void PlotStack::end_title_press(const QPoint& at) {
    const QString id = *std::exchange(title_pressed_, {});
    const auto target = panel_at(panels_->panels(), at);
    const auto own = find_panel(panels_->panels(), id);
    if (!target || !own) return;
    if (*target == *own)
        fold(id);
    else if (is_channel(panels_->content(), id) && is_channel(panels_->content(), panels_->panels()[*target]->id))
        Q_EMIT channel_moved(id, panels_->panels()[*target]->id);
}

void PlotStack::take_next_panel() {
    if (panels_->empty()) return;
    const auto now = find_panel(panels_->panels(), hand_);
    hand_ = panels_->panels()[now ? (*now + 1) % panels_->panels().size() : 0]->id;
    panels_->mark(hand_);
}

void PlotStack::fold_panel() {
    if (find_panel(panels_->panels(), hand_)) fold(hand_);
}

void PlotStack::grow_panel(int steps) {
    const auto panel = find_panel(panels_->panels(), hand_);
    if (!panel || is_folded(panels_->content(), hand_) || panels_->panels().size() < 2) return;
    // With the border below it, or above it where it is the last.
    const bool last = *panel + 1 == panels_->panels().size();
    const std::size_t below = last ? *panel : *panel + 1;
    if (is_folded(panels_->content(), panels_->panels()[last ? below - 1 : below]->id)) return;
    Q_EMIT looks_changed(
        with_border_moved(panels_->content(), panels_->panels(), below, (last ? -1 : 1) * steps * grow_step_px));
}

void PlotStack::move_channel(int places) {
    const auto& channels = panels_->content().channels;
    const auto own = std::ranges::find(channels, hand_, &models::ChannelChoice::id);
    if (own == channels.end()) return;
    const auto wanted = (own - channels.begin()) + places;
    if (wanted < 0 || wanted >= static_cast<std::ptrdiff_t>(channels.size())) return;
    Q_EMIT channel_moved(hand_, channels[static_cast<std::size_t>(wanted)].id);
}

} // namespace lapwright::plots
