// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/reactions.h"

#include <QCoreApplication>
#include <QEvent>
#include <algorithm>

namespace lapwright::window {
namespace {

constexpr double answered_otherwise_s = 30.0; // a key that changes nothing is answered by no painting
constexpr std::size_t most_kept = 100'000;

bool is_input(QEvent::Type type) {
    return type == QEvent::KeyPress || type == QEvent::MouseButtonPress || type == QEvent::Wheel;
}

} // namespace

Reactions::Reactions(QObject* parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
}

// A shortcut's key is seen by the window that has the focus before the command is done.
bool Reactions::eventFilter(QObject* watched, QEvent* event) {
    if (is_input(event->type()) && event->spontaneous()) {
        since_input_.start();
    } else if (event->type() == QEvent::ShortcutOverride && event->spontaneous()) {
        since_input_.start();
    } else if (event->type() == QEvent::Paint && since_input_.isValid() && !painting_) {
        painting_ = true; // all that is painted in one go comes before what is queued
        QMetaObject::invokeMethod(this, &Reactions::painted, Qt::QueuedConnection);
    }
    return QObject::eventFilter(watched, event);
}

void Reactions::painted() {
    painting_ = false;
    if (!since_input_.isValid()) return;
    const double seconds = static_cast<double>(since_input_.nsecsElapsed()) / 1e9;
    since_input_.invalidate();
    if (seconds > answered_otherwise_s || seconds_.size() >= most_kept) return;
    seconds_.push_back(seconds);
    Q_EMIT reacted(seconds);
}

double Reactions::slowest_s() const {
    return seconds_.empty() ? 0.0 : *std::ranges::max_element(seconds_);
}

double Reactions::middle_s() const {
    if (seconds_.empty()) return 0.0;
    std::vector<double> sorted = seconds_;
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::ranges::nth_element(sorted, middle);
    return *middle;
}

} // namespace lapwright::window
