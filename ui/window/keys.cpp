// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/keys.h"

#include "ui/models/text.h"
#include "ui/window/actions.h"
#include "ui/window/preferences.h"

#include <QMenu>
#include <QWidget>
#include <algorithm>
#include <utility>

namespace lapwright::window {
namespace {

bool among(const std::vector<QAction*>& actions, const QAction* action) {
    return std::ranges::find(actions, action) != actions.end();
}

} // namespace

Keys::Keys(const Actions& actions, Preferences& preferences, std::function<void()> remember, QWidget* window)
    : QObject(window), actions_(actions), preferences_(preferences), remember_(std::move(remember)) {
    for (const QMenu* menu : actions_.menus_with_keys())
        for (QAction* action : menu->actions()) {
            if (action->isSeparator() || action->menu() != nullptr || action->objectName().isEmpty()) continue;
            commands_.push_back({action, models::without_mnemonic(menu->title()), action->shortcuts()});
            const auto kept = preferences_.keys.constFind(action->objectName());
            if (kept == preferences_.keys.constEnd()) continue;
            QList<QKeySequence> own;
            for (const QString& name : *kept)
                if (const QKeySequence key(name, QKeySequence::PortableText); !key.isEmpty()) own << key;
            action->setShortcuts(own);
        }
    connect(actions_.change_keys, &QAction::triggered, this, [this, window] {
        auto* dialog = new dialogs::KeyChanger(source(), window);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->open();
    });
}

dialogs::KeyChanger::Source Keys::source() {
    const auto now = [this] {
        std::vector<dialogs::KeyChanger::Command> all;
        for (const Command& command : commands_)
            all.push_back({command.group, models::without_mnemonic(command.action->text()), command.action->shortcuts(),
                           command.usual});
        return all;
    };
    return {now, [this](std::size_t row, const QKeySequence& key) { return others(row, key); },
            [this](std::size_t row, const QList<QKeySequence>& keys) { set(row, keys); }};
}

// The Sessions and the Compare page are never there together, and neither are the commands that belong to one of them.
std::vector<std::size_t> Keys::others(std::size_t row, const QKeySequence& key) const {
    std::vector<std::size_t> found;
    if (key.isEmpty()) return found;
    const auto of_sessions = actions_.of_sessions_page();
    const auto of_compare = actions_.of_compare_page();
    const QAction* own = commands_[row].action;
    for (std::size_t i = 0; i < commands_.size(); ++i) {
        const QAction* other = commands_[i].action;
        const bool apart = (among(of_sessions, own) && among(of_compare, other)) ||
                           (among(of_compare, own) && among(of_sessions, other));
        if (i != row && !apart && other->shortcuts().contains(key)) found.push_back(i);
    }
    return found;
}

void Keys::set(std::size_t row, const QList<QKeySequence>& keys) {
    const Command& command = commands_.at(row);
    if (command.action->shortcuts() == keys) return;
    command.action->setShortcuts(keys);
    QStringList names;
    for (const QKeySequence& key : keys)
        names << key.toString(QKeySequence::PortableText);
    if (keys == command.usual)
        preferences_.keys.remove(command.action->objectName());
    else
        preferences_.keys[command.action->objectName()] = names;
    remember_();
}

} // namespace lapwright::window
