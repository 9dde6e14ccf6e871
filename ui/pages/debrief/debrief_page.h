// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet being written: paper, pages and notes on the left, the sheet as it will print beside them.
#pragma once

#include "core/sheet/sheet.h"
#include "core/workspace/stills.h"
#include "ui/sheet/write_pdf.h"
#include "ui/theme/palette.h"

#include <QStringList>
#include <QWidget>
#include <array>
#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QScrollArea;
class QTimer;
class QToolButton;

namespace lapwright::pages {

class SheetView;

class DebriefPage : public QWidget {
    Q_OBJECT

  public:
    explicit DebriefPage(QWidget* parent = nullptr);

    void show_sheet(std::optional<sheet::Sheet> sheet);
    void set_notes(const QStringList& lines); // without telling of it
    [[nodiscard]] QStringList notes() const;  // without empty lines
    void set_options(const paper::PdfOptions& options);
    [[nodiscard]] const paper::PdfOptions& options() const { return options_; }
    // The corners of the pairing, of which the chosen one stays chosen where it is among them.
    void set_corners(const QStringList& names);
    // What is to be on the page of stills; no moment: no such page.
    [[nodiscard]] workspace::StillsWanted stills() const;
    void choose_stills(const std::vector<workspace::StillMoment>& moments);
    void say_of_stills(const QString& sentence);                                         // why there are none
    void show_keys(const QString& print, const QString& save, const QString& save_html); // of the same commands
    void set_palette(const theme::Palette& palette);
    void say(const QString& sentence); // what became of the last PDF

    [[nodiscard]] SheetView& view() { return *view_; }
    [[nodiscard]] QPlainTextEdit& notes_field() { return *notes_; }
    [[nodiscard]] QComboBox& paper_field() { return *paper_; }
    [[nodiscard]] QCheckBox& all_segments_field() { return *all_segments_; }
    [[nodiscard]] QCheckBox& still_field(workspace::StillMoment moment) {
        return *stills_[static_cast<std::size_t>(moment)];
    }
    [[nodiscard]] QComboBox& corner_field() { return *corner_; }
    [[nodiscard]] QString said_of_stills() const;

  Q_SIGNALS:
    void notes_changed(); // a moment after the last letter
    void options_changed();
    void stills_changed();
    void print_asked();
    void save_asked();
    void html_asked();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* make_side();
    void fit_side();
    QWidget* make_stills();
    void take_options();
    void fit();

    paper::PdfOptions options_;
    QComboBox* paper_;
    QCheckBox* all_segments_;
    QCheckBox* whole_page_;
    std::array<QCheckBox*, workspace::every_still_moment.size()> stills_{};
    QComboBox* corner_;
    QLabel* said_of_stills_;
    QPlainTextEdit* notes_;
    QToolButton* print_;
    QToolButton* save_;
    QToolButton* save_html_;
    QLabel* said_;
    QScrollArea* scroll_;
    SheetView* view_;
    QTimer* pause_;
    bool setting_ = false;
};

} // namespace lapwright::pages
