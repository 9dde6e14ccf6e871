// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences that want to be read: what could not be opened or compared, and why.  They stay until they are dismissed,
// in the window's strip, in room that nothing else uses: a notice moves nothing under the pointer.
// The newest is read there; a click shows all of them in full.  One that is too long for the strip is also read in full
// beneath it for as long as reading takes: the pointer works through it.
#pragma once

#include <QFrame>
#include <QPointer>
#include <QStringList>

class QToolButton;

namespace lapwright::theme {
class ElidedLabel;
}

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
    void show_all(); // over what stands below, until a click elsewhere or Escape
    [[nodiscard]] const QStringList& sentences() const { return sentences_; }
    [[nodiscard]] QString shown() const; // the newest

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void moveEvent(QMoveEvent* event) override;

  private:
    void show_sentences();
    [[nodiscard]] QFrame* in_full(const QStringList& sentences, QWidget* parent, Qt::WindowFlags flags) const;
    void show_passing();
    void place_passing();

    QStringList sentences_;
    theme::ElidedLabel* newest_;
    QToolButton* all_;
    QPointer<QFrame> passing_; // the newest in full, while it is new
};

} // namespace lapwright::window
