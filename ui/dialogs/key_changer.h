// SPDX-License-Identifier: GPL-3.0-or-later
// All commands with their keys, found by a few letters of either, each of which may be given another key.  A key that
// has a command already is told before it is taken from there.
#pragma once

#include <QDialog>
#include <QKeySequence>
#include <functional>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;
class QTreeWidget;

namespace lapwright::dialogs {

class KeyField;

class KeyChanger : public QDialog {
    Q_OBJECT

  public:
    struct Command {
        QString group;
        QString name;
        QList<QKeySequence> keys;
        QList<QKeySequence> usual;
    };
    // What knows the commands; rows keep their places.
    struct Source {
        std::function<std::vector<Command>()> commands;
        // The commands that have the key too and would be meant by it at the same time.
        std::function<std::vector<std::size_t>(std::size_t row, const QKeySequence& key)> others;
        std::function<void(std::size_t row, const QList<QKeySequence>& keys)> set;
    };

    explicit KeyChanger(Source source, QWidget* parent = nullptr);

    void choose(std::size_t row);
    [[nodiscard]] KeyField& field() { return *field_; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] QPushButton& take() { return *take_; }
    [[nodiscard]] QPushButton& none() { return *none_; }
    [[nodiscard]] QPushButton& usual() { return *usual_; }
    [[nodiscard]] QPushButton& all_usual() { return *all_usual_; }
    [[nodiscard]] QLineEdit& words() { return *words_; }
    [[nodiscard]] QTreeWidget& list() { return *list_; }

  private:
    void fill();
    void filter();
    void show_chosen();
    void look_at_key();
    void give(const QList<QKeySequence>& keys);
    [[nodiscard]] int chosen() const; // -1: none

    Source source_;
    std::vector<Command> commands_;
    QLineEdit* words_;
    QTreeWidget* list_;
    KeyField* field_;
    QLabel* said_;
    QPushButton* take_;
    QPushButton* none_;
    QPushButton* usual_;
    QPushButton* all_usual_;
};

} // namespace lapwright::dialogs
