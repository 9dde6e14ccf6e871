// SPDX-License-Identifier: GPL-3.0-or-later
// Keys of the commands as the person wants them: those that differ from the usual ones are kept in the settings.
#pragma once

#include "ui/dialogs/key_changer.h"

#include <QObject>
#include <functional>
#include <vector>

class QAction;

namespace lapwright::window {

struct Actions;
struct Preferences;

class Keys : public QObject {
    Q_OBJECT

  public:
    // All outlive it; `remember` keeps the preferences.
    Keys(const Actions& actions, Preferences& preferences, std::function<void()> remember, QWidget* window);

    [[nodiscard]] dialogs::KeyChanger::Source source();

  private:
    struct Command {
        QAction* action;
        QString group;
        QList<QKeySequence> usual;
    };

    [[nodiscard]] std::vector<std::size_t> others(std::size_t row, const QKeySequence& key) const;
    void set(std::size_t row, const QList<QKeySequence>& keys);

    const Actions& actions_;
    Preferences& preferences_;
    std::function<void()> remember_;
    std::vector<Command> commands_;
};

} // namespace lapwright::window
