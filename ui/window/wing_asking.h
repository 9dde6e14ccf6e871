// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing the track wants: asked of the present explanation, reckoned beside the window's thread, shown in a
// dialog; another cost of drag asks anew.
#pragma once

#include "core/analysis/wing.h"
#include "core/book/predictions.h"
#include "core/causes/explanation.h"
#include "ui/bridge/job_queue.h"
#include "ui/models/open_sessions.h"
#include "ui/theme/palette.h"

#include <QObject>
#include <QPointer>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

class QWidget;

namespace lapwright::dialogs {
class WingDialog;
}

namespace lapwright::window {

class Explaining;
struct Actions;

class WingAsking : public QObject {
    Q_OBJECT

  public:
    // All outlive it.  Tracks of other open sessions may be asked about.  Where no page has asked for the explanation
    // yet, the Causes page is shown and does.
    WingAsking(const Actions& actions, const Explaining& explaining, const models::OpenSessions& sessions,
               std::function<theme::Palette()> palette, QWidget* window);

    [[nodiscard]] dialogs::WingDialog* dialog() const; // null when it is closed

  Q_SIGNALS:
    // What is quickest for that side; there: the session whose track was asked about, null for where both drove.
    void keep_asked(lapwright::causes::Side side, const lapwright::book::Prediction& prediction,
                    const lapwright::workspace::SessionPointer& there);
    void nothing_to_keep(); // it is quickest as it is

  private:
    void show();
    void offer_tracks();
    void ask();
    void keep(causes::Side side);

    const Explaining& explaining_;
    const models::OpenSessions& sessions_;
    std::function<theme::Palette()> palette_;
    QWidget* window_;
    bool wanted_ = false; // as soon as there is an explanation
    std::shared_ptr<const causes::Explanation> explanation_;
    struct Answered {
        analysis::Wing wing;
        causes::DragCost cost;
        workspace::SessionPointer there;
    };
    std::optional<Answered> answered_;                 // what the dialog shows
    std::vector<workspace::SessionPointer> elsewhere_; // as the dialog offers them
    QPointer<dialogs::WingDialog> dialog_;
    bridge::JobGroup asked_;
    bridge::JobQueue jobs_;
};

} // namespace lapwright::window
