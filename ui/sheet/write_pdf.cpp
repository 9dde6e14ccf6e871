// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/write_pdf.h"

#include "core/base/whole_file.h"
#include "ui/sheet/paint_sheet.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <array>

namespace lapwright::paper {
namespace {

constexpr int dots_per_inch = 1200;
constexpr double points_per_inch = 72.0;

QPageSize page_size(PaperSize paper) {
    return QPageSize(paper == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter);
}

QByteArray painted(const sheet::Sheet& sheet, const PdfOptions& options) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(dots_per_inch);
    writer.setPageLayout(QPageLayout(page_size(options.paper), QPageLayout::Portrait, QMarginsF()));
    writer.setTitle(QString::fromStdString(sheet.headline));
    writer.setCreator(QStringLiteral("Lapwright"));
    QPainter painter(&writer);
    painter.scale(dots_per_inch / points_per_inch, dots_per_inch / points_per_inch);
    const QSizeF page = page_size_pt(options.paper);
    for (const Page one : pages_of(sheet, options.all_segments)) {
        if (one != Page::first) writer.newPage();
        paint_sheet(painter, page, sheet, one);
    }
    painter.end();
    return buffer.data();
}

} // namespace

QSizeF page_size_pt(PaperSize paper) {
    return page_size(paper).size(QPageSize::Point);
}

base::Result<void> write_pdf(const sheet::Sheet& sheet, const std::string& path, const PdfOptions& options) {
    const QByteArray pdf = painted(sheet, options);
    return base::write_whole_file(path, {pdf.constData(), static_cast<std::size_t>(pdf.size())}, "the sheet");
}

base::Result<void> write_pdf_without_window(const sheet::Sheet& sheet, const std::string& path,
                                            const PdfOptions& options) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Qt's remarks about the missing desktop would stand between the program's own lines.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    int argument_count = 1;
    std::array<char, 10> name{"lapwright"};
    std::array<char*, 2> arguments{name.data(), nullptr};
    const QGuiApplication qt(argument_count, arguments.data());
    return write_pdf(sheet, path, options);
}

} // namespace lapwright::paper
