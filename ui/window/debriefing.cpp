// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/debriefing.h"

#include "core/sheet/html_sheet.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/window/kept_notes.h"
#include "ui/window/printing.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>
#include <QTimer>
#include <utility>

namespace lapwright::window {
namespace {

using models::text;

const QString sheet_folder_key = QStringLiteral("sheet/folder");
const QString letter_key = QStringLiteral("sheet/us_letter");
const QString all_segments_key = QStringLiteral("sheet/all_segments");

QString notes_key(const workspace::TwoLaps& laps) {
    return QStringLiteral("notes/") + settings_name(laps);
}

QStringList lines_of(const QString& note) {
    return note.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

} // namespace

Debriefing::Debriefing(pages::DebriefPage& page, QSettings& settings, QObject* parent)
    : QObject(parent), page_(page), settings_(settings) {
    paper::PdfOptions options;
    if (settings.value(letter_key).toBool()) options.paper = paper::PaperSize::us_letter;
    options.all_segments = settings.value(all_segments_key).toBool();
    page.set_options(options);
    page.installEventFilter(this);
    connect(&page, &pages::DebriefPage::notes_changed, this, [this] {
        keep_notes();
        compose();
    });
    connect(&page, &pages::DebriefPage::options_changed, this, [this] {
        settings_.setValue(letter_key, page_.options().paper == paper::PaperSize::us_letter);
        settings_.setValue(all_segments_key, page_.options().all_segments);
    });
}

void Debriefing::set_pairing(const workspace::ComparedPointer& compared, const workspace::TwoLaps& laps) {
    if (compared_) keep_notes();
    compared_ = compared;
    laps_ = laps;
    explanation_.reset();
    stills_.clear();
    in_book_ = false;
    kept_ = notes_in_settings();
    page_.set_notes(lines_of(kept_));
    page_.say({});
    compose();
}

void Debriefing::set_explanation(std::shared_ptr<const causes::Explanation> explanation, const car::SetupSheet& setup_a,
                                 const car::SetupSheet& setup_b) {
    explanation_ = std::move(explanation);
    setup_a_ = setup_a;
    setup_b_ = setup_b;
    compose();
}

void Debriefing::set_noted(const QStringList& lines) {
    noted_ = lines;
    compose();
}

void Debriefing::set_my_car(std::optional<causes::Side> my_car) {
    if (std::exchange(my_car_, my_car) != my_car) compose();
}

void Debriefing::set_units(base::UnitSystem units) {
    units_ = units;
    compose();
}

void Debriefing::set_stills(std::vector<sheet::StillPair> stills) {
    if (stills.empty() && stills_.empty()) return;
    stills_ = std::move(stills);
    compose();
}

void Debriefing::keep_notes() {
    const QStringList lines = page_.notes();
    const QString note = lines.join(QLatin1Char('\n'));
    if (note == kept_) return;
    kept_ = note;
    if (in_book_) {
        Q_EMIT notes_edited(laps_, note);
    } else if (lines.isEmpty()) {
        settings_.remove(notes_key(laps_));
    } else {
        settings_.setValue(notes_key(laps_), lines);
    }
}

void Debriefing::end_typing() {
    if (compared_) keep_notes();
}

QString Debriefing::notes_in_settings() const {
    return settings_.value(notes_key(laps_)).toStringList().join(QLatin1Char('\n'));
}

void Debriefing::take_from_book(const workspace::TwoLaps& laps, const QString& note) {
    if (laps != laps_) return;
    const bool typed = page_.notes() != lines_of(kept_);
    in_book_ = true;
    kept_ = note;
    settings_.remove(notes_key(laps));
    if (typed) {
        keep_notes();
        return;
    }
    page_.set_notes(lines_of(note));
    compose();
}

std::optional<sheet::Sheet> Debriefing::composed() const {
    if (!compared_) return std::nullopt;
    analysis::SheetExtras extras;
    extras.explanation = explanation_.get();
    extras.setup_a = setup_a_;
    extras.setup_b = setup_b_;
    extras.my_car = my_car_;
    extras.stills = stills_;
    const QStringList notes = noted_ + page_.notes();
    for (const QString& line : notes)
        extras.notes.push_back(line.toStdString());
    return analysis::debrief_sheet(*compared_->pairing, units_, LAPWRIGHT_VERSION, extras);
}

// Nobody waits for a sheet that nobody sees.
void Debriefing::compose() {
    stale_ = !page_.isVisible();
    if (!stale_) page_.show_sheet(composed());
}

bool Debriefing::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &page_ && event->type() == QEvent::Show && stale_) {
        stale_ = false;
        page_.show_sheet(composed());
    }
    return QObject::eventFilter(watched, event);
}

base::Result<void> Debriefing::save(const QString& path) {
    keep_notes();
    const auto sheet = composed();
    page_.show_sheet(sheet);
    if (!sheet) return {};
    const std::string file = models::file_name(path);
    const paper::PdfOptions& options = page_.options();
    const bool us_letter = options.paper == paper::PaperSize::us_letter;
    const auto written = sheet::names_html(file)
                             ? sheet::write_html_sheet(*sheet, file, {us_letter, options.all_segments})
                             : paper::write_pdf(*sheet, file, options);
    page_.say(written ? tr("%1 is written.").arg(QDir::toNativeSeparators(path))
                      : text(base::one_line(written.error())));
    return written;
}

void Debriefing::print(QWidget* parent) {
    if (!compared_) return;
    page_.say(tr("Preparing the print…"));
    page_.repaint(); // said first
    QTimer::singleShot(0, this, [this, parent] {
        keep_notes();
        const auto sheet = composed();
        page_.show_sheet(sheet);
        page_.say({});
        if (sheet) preview_and_print(*sheet, page_.options(), parent);
    });
}

void Debriefing::ask_and_save(QWidget* parent, Form form) {
    if (!compared_) return;
    const QString folder = settings_.value(sheet_folder_key, QDir::homePath()).toString();
    const QString ending = form == Form::html ? QStringLiteral(".html") : QStringLiteral(".pdf");
    const QString filter = form == Form::html ? tr("HTML files (*.html *.htm)") : tr("PDF files (*.pdf)");
    QString path = QFileDialog::getSaveFileName(parent, tr("Save the debrief sheet"),
                                                QDir(folder).filePath(text(composed()->file_name) + ending), filter);
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += ending;
    settings_.setValue(sheet_folder_key, QFileInfo(path).absolutePath());
    page_.say(tr("Writing %1…").arg(QDir::toNativeSeparators(path)));
    page_.repaint(); // said first
    QTimer::singleShot(0, this, [this, path] { (void)save(path); });
}

} // namespace lapwright::window
