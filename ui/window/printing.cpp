// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/printing.h"

#include "ui/sheet/paint_sheet.h"

#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QScreen>

namespace lapwright::window {
namespace {

constexpr double points_per_inch = 72.0;

} // namespace

void prepare(QPrinter& printer, const sheet::Sheet& sheet, const paper::PdfOptions& options) {
    const auto size = options.paper == paper::PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter;
    printer.setFullPage(true);
    printer.setPageLayout(QPageLayout(QPageSize(size), QPageLayout::Portrait, QMarginsF()));
    printer.setDocName(QString::fromStdString(sheet.headline));
    printer.setCreator(QStringLiteral("Lapwright"));
}

void print_on(QPrinter& printer, const sheet::Sheet& sheet, const paper::PdfOptions& options) {
    printer.setFullPage(true);
    QPainter painter(&printer);
    const double dots_per_point = printer.resolution() / points_per_inch;
    painter.scale(dots_per_point, dots_per_point);
    const QSizeF page = printer.pageLayout().fullRect(QPageLayout::Point).size();
    for (const paper::Page one : paper::pages_of(sheet, options.all_segments)) {
        if (one != paper::Page::first) printer.newPage();
        paper::paint_sheet(painter, page, sheet, one);
    }
}

void preview_and_print(const sheet::Sheet& sheet, const paper::PdfOptions& options, QWidget* parent) {
    QPrinter printer(QPrinter::HighResolution);
    prepare(printer, sheet, options);
    QPrintPreviewDialog dialog(&printer, parent);
    dialog.resize(QSize(900, 760).boundedTo(dialog.screen()->availableSize() * 9 / 10));
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog,
                     [&](QPrinter* on) { print_on(*on, sheet, options); });
    dialog.exec();
}

} // namespace lapwright::window
