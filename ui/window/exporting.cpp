// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/exporting.h"

#include "core/base/whole_file.h"
#include "core/sheet/tables.h"
#include "core/track/edit_segments.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/plots/plot_stack.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>

namespace lapwright::window {
namespace {

const QString export_folder_key = QStringLiteral("export/folder");

} // namespace

Exporting::Exporting(pages::ComparePage& compare, pages::CausesPage& causes, QSettings& settings, QObject* parent)
    : QObject(parent), compare_(compare), causes_(causes), settings_(settings) {}

sheet::Table Exporting::table(View view) const {
    return view == View::causes && causes_.explanation() ? sheet::causes_table(*causes_.explanation())
                                                         : sheet::segments_table(compare_.rows(), units_);
}

QByteArray Exporting::picture(View view, const QString& heading, plots::PictureForm form) const {
    return view == View::causes && causes_.explanation() ? causes_.picture(heading, form)
                                                         : compare_.stack().picture(heading, form);
}

base::Result<void> Exporting::save_table(View view, const QString& path) const {
    return base::write_whole_file(models::file_name(path), sheet::csv_text(table(view)), "the table");
}

base::Result<void> Exporting::save_picture(View view, const QString& heading, const QString& path) const {
    const bool png = path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive);
    const QByteArray content = picture(view, heading, png ? plots::PictureForm::png : plots::PictureForm::svg);
    if (content.isEmpty())
        return base::Error{base::ErrorCode::file_not_writable,
                           {models::file_name(path), {}, {}},
                           "the picture cannot be made: it is too large",
                           "make the window smaller"};
    return base::write_whole_file(models::file_name(path),
                                  {content.constData(), static_cast<std::size_t>(content.size())}, "the picture");
}

base::Result<void> Exporting::save_track(const QString& path) const {
    const auto record = track::record_of(compare_.compared()->pairing->track);
    if (!record) return record.error();
    return base::write_whole_file(models::file_name(path), track::track_record_json(*record), "the track");
}

void Exporting::ask_and_save_track(QWidget* parent) {
    if (!there_is_something(View::compare)) return;
    QString name = models::text(compare_.compared()->pairing->track.name).remove(QLatin1Char('/'));
    if (name.isEmpty()) name = QStringLiteral("track");
    const QString path = ask(parent, tr("Save the track"), name + QStringLiteral(".track.json"),
                             tr("Track files (*.json)"), QStringLiteral(".track.json"));
    if (!path.isEmpty()) tell(save_track(path), path);
}

bool Exporting::there_is_something(View view) const {
    return view == View::causes ? causes_.explanation() != nullptr : compare_.compared() != nullptr;
}

void Exporting::ask_and_save_table(View view, const QString& heading, QWidget* parent) {
    if (!there_is_something(view)) return;
    const QString name = view == View::causes ? QStringLiteral("causes.csv") : QStringLiteral("segments.csv");
    const QString title = tr("Save the table: %1").arg(heading);
    const QString path = ask(parent, title, name, tr("Tables (*.csv)"), QStringLiteral(".csv"));
    if (!path.isEmpty()) tell(save_table(view, path), path);
}

void Exporting::ask_and_save_picture(View view, const QString& heading, QWidget* parent) {
    if (!there_is_something(view)) return;
    const QString name = view == View::causes ? QStringLiteral("evidence.svg") : QStringLiteral("plots.svg");
    const QString filters = tr("Pictures (*.svg *.png)");
    const QString path = ask(parent, tr("Save the plots as SVG or PNG"), name, filters, QStringLiteral(".svg"));
    if (!path.isEmpty()) tell(save_picture(view, heading, path), path);
}

// The folder of the last time; a name without an ending gets one.
QString Exporting::ask(QWidget* parent, const QString& title, const QString& name, const QString& filters,
                       const QString& ending) {
    const QString folder = settings_.value(export_folder_key, QDir::homePath()).toString();
    QString path = QFileDialog::getSaveFileName(parent, title, QDir(folder).filePath(name), filters);
    if (path.isEmpty()) return {};
    if (QFileInfo(path).suffix().isEmpty()) path += ending;
    settings_.setValue(export_folder_key, QFileInfo(path).absolutePath());
    return path;
}

void Exporting::tell(const base::Result<void>& written, const QString& path) {
    Q_EMIT said(written ? tr("%1 is written.").arg(QDir::toNativeSeparators(path))
                        : models::text(base::one_line(written.error())));
}

} // namespace lapwright::window
