// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/reactions.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <algorithm>
#include <cmath>

namespace lapwright::window {
namespace {

constexpr double answered_otherwise_s = 30.0; // a key that changes nothing is answered by no painting
constexpr int behind_what_is_to_be_painted = Qt::LowEventPriority - 1; // a request to paint has a low priority
constexpr std::size_t most_kept = 100'000;

bool is_a_key(QEvent::Type type) {
    return type == QEvent::KeyPress || type == QEvent::ShortcutOverride;
}

bool moves_or_zooms(int key) {
    for (const int moving : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Plus, Qt::Key_Equal, Qt::Key_Minus})
        if (key == moving) return true;
    return false;
}

void keep(ReactionTimes& times, double seconds) {
    if (times.seconds.size() < most_kept) times.seconds.push_back(seconds);
}

} // namespace

double ReactionTimes::quantile_s(double part) const {
    if (seconds.empty()) return 0.0;
    std::vector<double> sorted = seconds;
    std::ranges::sort(sorted);
    const double last = static_cast<double>(sorted.size() - 1);
    return sorted[static_cast<std::size_t>(std::lround(std::clamp(part, 0.0, 1.0) * last))];
}

Reactions::Reactions(std::function<bool()> on_plots, QObject* parent)
    : QObject(parent), plots_are_shown_(std::move(on_plots)) {
    QCoreApplication::instance()->installEventFilter(this);
}

// A shortcut's key is seen by the window that has the focus before the command is done.
bool Reactions::eventFilter(QObject* watched, QEvent* event) {
    const QEvent::Type type = event->type();
    if (type == QEvent::Paint) {
        if (since_input_.isValid() && !painting_) {
            painting_ = true; // all that is painted in one go comes before what is queued
            QMetaObject::invokeMethod(this, &Reactions::painted, Qt::QueuedConnection);
        }
    } else if (!event->spontaneous()) {
        return QObject::eventFilter(watched, event);
    } else if (is_a_key(type)) {
        const bool moves = moves_or_zooms(static_cast<QKeyEvent*>(event)->key()) && plots_are_shown_();
        given(moves ? Input::moves_or_zooms : Input::other);
    } else if (type == QEvent::Wheel) {
        const bool zooms = watched->inherits("QCustomPlot") && plots_are_shown_();
        given(zooms ? Input::moves_or_zooms : Input::other);
    } else if (type == QEvent::MouseButtonPress) {
        given(Input::other);
    } else if (type == QEvent::MouseMove && !since_input_.isValid() && watched->inherits("QCustomPlot") &&
               plots_are_shown_()) {
        given(Input::pointer);
        QCoreApplication::postEvent(this, new QEvent(QEvent::User), behind_what_is_to_be_painted);
    }
    return QObject::eventFilter(watched, event);
}

void Reactions::given(Input input) {
    input_ = input;
    since_input_.start();
}

// Where the pointer moves nothing, there is nothing to wait for.
void Reactions::customEvent(QEvent*) {
    if (input_ == Input::pointer && !painting_) since_input_.invalidate();
}

void Reactions::painted() {
    painting_ = false;
    if (!since_input_.isValid()) return;
    const double seconds = static_cast<double>(since_input_.nsecsElapsed()) / 1e9;
    since_input_.invalidate();
    if (seconds > answered_otherwise_s) return;
    if (input_ != Input::other) keep(on_plots_, seconds);
    if (input_ == Input::pointer) return;
    keep(to_all_, seconds);
    Q_EMIT reacted(seconds);
}

} // namespace lapwright::window
