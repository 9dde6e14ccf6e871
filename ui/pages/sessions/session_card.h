// SPDX-License-Identifier: GPL-3.0-or-later
// One session: who drove what and when, whether its data can be trusted, and its laps.
#pragma once

#include "ui/models/session_shelf.h"
#include "ui/theme/palette.h"

#include <QFrame>

class QLabel;
class QToolButton;

namespace lapwright::theme {
class ElidedLabel;
}

namespace lapwright::pages {

class LapList;

class SessionCard : public QFrame {
    Q_OBJECT

  public:
    explicit SessionCard(const models::SessionShelf::Entry& entry, QWidget* parent = nullptr);

    void set_palette(const theme::Palette& palette);
    [[nodiscard]] LapList& laps() { return *laps_; }
    [[nodiscard]] const QString& path() const { return path_; }

  Q_SIGNALS:
    void picked(const QString& path, int lap, bool as_a);
    void close_asked(const QString& path);
    void columns_asked(const QString& path);

  private:
    QString path_;
    theme::ElidedLabel* title_;
    theme::ElidedLabel* facts_;
    QLabel* trust_;
    LapList* laps_;
};

} // namespace lapwright::pages
