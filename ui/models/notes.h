// SPDX-License-Identifier: GPL-3.0-or-later
// The notes on the open sessions, with signals for those who show or keep them.
#pragma once

#include "core/workspace/notes.h"

#include <QObject>
#include <QString>
#include <vector>

namespace lapwright::models {

class Notes : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

    [[nodiscard]] const workspace::Notes& now() const { return now_; }
    [[nodiscard]] QString text(const workspace::NoteAbout& about) const; // empty: none
    void put(const workspace::NoteAbout& about, const QString& text);
    void take_in(const workspace::SessionKey& session, const std::vector<workspace::Note>& kept);

  Q_SIGNALS:
    void edited(const lapwright::workspace::NoteAbout& about);
    void changed(); // edited or taken in

  private:
    workspace::Notes now_;
};

} // namespace lapwright::models
