// SPDX-License-Identifier: GPL-3.0-or-later
// A field that takes the key that is pressed in it, with its modifiers, in the place of writing letters.  Tab and
// Escape keep their meaning.
#pragma once

#include <QKeySequence>
#include <QLineEdit>

namespace lapwright::dialogs {

class KeyField : public QLineEdit {
    Q_OBJECT

  public:
    explicit KeyField(QWidget* parent = nullptr);

    void set_key(const QKeySequence& key);
    [[nodiscard]] const QKeySequence& key() const { return key_; }

  Q_SIGNALS:
    void key_pressed(const QKeySequence& key);

  protected:
    bool event(QEvent* event) override;

  private:
    QKeySequence key_;
};

} // namespace lapwright::dialogs
