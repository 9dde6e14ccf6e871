// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences that want to be read: what could not be opened or compared, and why.  They stay until they are dismissed.
#pragma once

#include <QFrame>
#include <QStringList>

class QLabel;
class QToolButton;

namespace lapwright::window {

class Notices : public QFrame {
    Q_OBJECT

  public:
    explicit Notices(QWidget* parent = nullptr);

    void add(const QString& sentence);
    // What was said of this file is no longer so.
    void withdraw(const QString& path);
    void withdraw_sentence(const QString& sentence);
    void dismiss();
    [[nodiscard]] const QStringList& sentences() const { return sentences_; }

  private:
    void show_sentences();
    void show_rest(); // after some went

    QStringList sentences_;
    QLabel* label_;
};

} // namespace lapwright::window
