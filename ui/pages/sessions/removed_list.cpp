// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/removed_list.h"

#include "core/base/wording.h"
#include "ui/models/text.h"
#include "ui/theme/plain_label.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::pages {
namespace {

using models::text;

QString row_words(const book::RemovedSession& session) {
    QStringList words{text(session.file_name)};
    if (session.start_unix_s) words << text(base::date_text(*session.start_unix_s));
    words << RemovedList::tr("removed on %1").arg(text(base::date_text(session.removed_unix_s)));
    for (const std::string* name : {&session.track, &session.car, &session.driver})
        if (!name->empty()) words << text(*name);
    return words.join(QStringLiteral(" · "));
}

} // namespace

RemovedList::RemovedList(QWidget* parent)
    : QDialog(parent), said_(theme::plain_label(this)), list_(new QListWidget(this)),
      back_(new QPushButton(tr("&Bring it back"), this)) {
    setWindowTitle(tr("Removed sessions"));
    said_->setWordWrap(true);
    list_->setAccessibleName(windowTitle());
    list_->setTextElideMode(Qt::ElideRight);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    back_->setDefault(true); // Return in the list presses it
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->addButton(back_, QDialogButtonBox::ActionRole);
    auto* column = new QVBoxLayout(this);
    column->addWidget(said_);
    column->addWidget(list_, 1);
    column->addWidget(buttons);
    connect(back_, &QPushButton::clicked, this, &RemovedList::bring_back);
    connect(list_, &QListWidget::itemDoubleClicked, this, &RemovedList::bring_back);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(680, 340);
}

void RemovedList::show_sessions(std::vector<book::RemovedSession> sessions) {
    const int before = list_->currentRow();
    sessions_ = std::move(sessions);
    list_->clear();
    for (const book::RemovedSession& session : sessions_) {
        auto* item = new QListWidgetItem(row_words(session), list_);
        item->setToolTip(QStringLiteral("<qt>%1</qt>").arg(item->text().toHtmlEscaped()));
    }
    said_->setText(sessions_.empty() ? tr("No session was taken out of the book.")
                                     : tr("These sessions were taken out of the book. One comes back with its laps, "
                                          "notes and pairings, as it was."));
    list_->setCurrentRow(qBound(0, before, static_cast<int>(sessions_.size()) - 1));
    back_->setEnabled(!sessions_.empty());
    list_->setFocus();
}

QString RemovedList::said() const {
    return said_->text();
}

void RemovedList::bring_back() {
    const int row = list_->currentRow();
    if (row >= 0) Q_EMIT restore_wanted(sessions_.at(static_cast<std::size_t>(row)));
}

} // namespace lapwright::pages
