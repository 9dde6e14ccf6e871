// SPDX-License-Identifier: GPL-3.0-or-later
// Several further channels at once, shown behind the dialog while they are ticked, and sets of them that are remembered
// by name.
#pragma once

#include "ui/models/channels.h"

#include <QDialog>
#include <QMap>
#include <QString>
#include <QStringList>
#include <vector>

class QComboBox;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace lapwright::dialogs {

using ChannelSets = QMap<QString, QStringList>; // ids of channels by the set's name

class ChannelPicker : public QDialog {
    Q_OBJECT

  public:
    // `shown`: ids; those that this pairing has no channel for stay as they are.
    ChannelPicker(const std::vector<models::ChannelChoice>& choices, const QStringList& shown, const ChannelSets& sets,
                  QWidget* parent = nullptr);

    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] QLineEdit& words() { return *words_; }
    [[nodiscard]] QComboBox& sets() { return *sets_; }

  Q_SIGNALS:
    void shown_changed(const QStringList& ids);
    void sets_changed(const lapwright::dialogs::ChannelSets& sets);

  private:
    void filter(const QString& words);
    void show_set(const QString& name);
    void remember();
    void forget();
    void fill_sets(const QString& chosen);
    void tell();

    QStringList shown_;
    ChannelSets known_;
    QLineEdit* words_;
    QListWidget* list_;
    QComboBox* sets_;
    QPushButton* remember_;
    QPushButton* forget_;
};

} // namespace lapwright::dialogs
