// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/copying.h"

#include "core/sheet/tables.h"
#include "ui/models/text_table.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/debrief/sheet_view.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/exporting.h"
#include "ui/window/page_stack.h"

#include <QApplication>
#include <QClipboard>
#include <QMainWindow>
#include <QMimeData>

namespace lapwright::window {
namespace {

using Shown = PageStack::Shown;
using View = Exporting::View;

void put_table(const sheet::Table& table) {
    auto* data = new QMimeData;
    data->setText(QString::fromStdString(sheet::tab_text(table)));
    data->setData(QStringLiteral("text/csv"), QByteArray::fromStdString(sheet::csv_text(table)));
    QApplication::clipboard()->setMimeData(data);
}

} // namespace

Copying::Copying(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    connect(parts_.actions.copy_table, &QAction::triggered, this, &Copying::copy_table);
    connect(parts_.actions.copy_picture, &QAction::triggered, this, &Copying::copy_picture);
}

void Copying::copy_table() const {
    switch (parts_.pages.shown()) {
    case Shown::sessions:
        if (const auto* list = qobject_cast<const pages::BookTable*>(QApplication::focusWidget()))
            QApplication::clipboard()->setText(models::tab_text(*list->model()));
        else if (const pages::SessionCard* card = parts_.pages.sessions().card_in_hand())
            put_table(sheet::laps_table(card->session().laps));
        break;
    case Shown::compare:
        put_table(parts_.exporting.table(View::compare));
        break;
    case Shown::causes:
    case Shown::debrief:
        put_table(parts_.exporting.table(View::causes));
        break;
    }
}

void Copying::copy_picture() const {
    const auto plots = [this](View view) {
        return QImage::fromData(parts_.exporting.picture(view, parts_.window.windowTitle(), plots::PictureForm::png));
    };
    QImage image;
    switch (parts_.pages.shown()) {
    case Shown::sessions:
        if (pages::SessionCard* card = parts_.pages.sessions().card_in_hand()) image = card->grab().toImage();
        break;
    case Shown::compare:
        image = plots(View::compare);
        break;
    case Shown::causes:
        image = plots(View::causes);
        break;
    case Shown::debrief:
        image = parts_.pages.debrief().view().grab().toImage();
        break;
    }
    if (!image.isNull()) QApplication::clipboard()->setImage(image);
}

} // namespace lapwright::window
