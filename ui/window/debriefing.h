// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet of the present pairing: composed anew when anything that it says changes, as soon as somebody looks
// at it, and saved as a PDF.  Paper is kept in the settings; notes are kept for each pairing of laps, in the book, or
// in the settings without one.
#pragma once

#include "core/analysis/sheet_material.h"
#include "core/base/result.h"
#include "core/workspace/compared.h"
#include "core/workspace/session_key.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>
#include <optional>
#include <vector>

class QSettings;
class QWidget;

namespace lapwright::pages {
class DebriefPage;
}

namespace lapwright::window {

class Debriefing : public QObject {
    Q_OBJECT

  public:
    // Page and settings outlive it.
    Debriefing(pages::DebriefPage& page, QSettings& settings, QObject* parent = nullptr);

    void set_pairing(const workspace::ComparedPointer& compared, const workspace::TwoLaps& laps);
    void set_explanation(std::shared_ptr<const causes::Explanation> explanation, const car::SetupSheet& setup_a,
                         const car::SetupSheet& setup_b);
    void set_noted(const QStringList& lines);            // what was noted elsewhere in the window
    void set_my_car(std::optional<causes::Side> my_car); // whom "try next" speaks to
    void set_units(base::UnitSystem units);
    void set_stills(std::vector<sheet::StillPair> stills);
    void end_typing();                               // what is being typed is kept
    [[nodiscard]] QString notes_in_settings() const; // of this pairing
    // The pairing is in the book, with this note: from now on it is kept there.
    void take_from_book(const workspace::TwoLaps& laps, const QString& note);
    [[nodiscard]] bool in_book() const { return in_book_; }
    [[nodiscard]] std::optional<sheet::Sheet> composed() const; // what it says now

    enum class Form { pdf, html };

    // Asks for a file; what became of it stands on the page.
    void print(QWidget* parent); // after a preview
    void ask_and_save(QWidget* parent, Form form);
    // The form is chosen by the ending: .html and .htm make HTML, any other a PDF.
    [[nodiscard]] base::Result<void> save(const QString& path);

  Q_SIGNALS:
    void notes_edited(const lapwright::workspace::TwoLaps& laps, const QString& note); // of a pairing in the book

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void compose();
    void keep_notes();

    pages::DebriefPage& page_;
    QSettings& settings_;
    workspace::ComparedPointer compared_;
    workspace::TwoLaps laps_;
    bool stale_ = false; // the page shows what was before
    QString kept_;       // the notes as they are kept
    bool in_book_ = false;
    QStringList noted_;
    std::shared_ptr<const causes::Explanation> explanation_;
    car::SetupSheet setup_a_;
    car::SetupSheet setup_b_;
    std::optional<causes::Side> my_car_;
    std::vector<sheet::StillPair> stills_;
    base::UnitSystem units_ = base::UnitSystem::metric;
};

} // namespace lapwright::window
