// SPDX-License-Identifier: GPL-3.0-or-later
// A note where it is looked at: lines of plain text that become an editor in their own place and back.  Return keeps
// what was typed, Shift+Return begins a new line, Escape leaves the note as it was; going elsewhere keeps it too.
#pragma once

#include <QString>
#include <QWidget>

class QLabel;
class QPlainTextEdit;

namespace lapwright::theme {

class NoteField : public QWidget {
    Q_OBJECT

  public:
    // `what`: what the note is about, for people who hear it.
    explicit NoteField(const QString& what, QWidget* parent = nullptr);

    void set_what(const QString& what);
    // A short word before the note and its colour: "A".
    void set_mark(const QString& mark, const QColor& colour);
    // What is being typed is left alone.
    void set_note(const QString& note);
    // Shown in the place of an empty note; empty: the field hides itself while there is nothing to show.
    void set_invitation(const QString& words);
    void begin();
    void keep();   // ends typing
    void let_go(); // ends typing, nothing is kept

    [[nodiscard]] const QString& note() const { return note_; }
    [[nodiscard]] bool typing() const { return typing_; }
    [[nodiscard]] QPlainTextEdit& editor() { return *editor_; }

  Q_SIGNALS:
    void kept(const QString& note); // another text than before
    void ended();                   // by Return or Escape: the focus may go back to where it was

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    void end();
    void show_state();
    void fit_editor();

    QString note_;
    QString invitation_;
    QLabel* mark_;
    QLabel* words_;
    QPlainTextEdit* editor_;
    bool typing_ = false;
};

} // namespace lapwright::theme
