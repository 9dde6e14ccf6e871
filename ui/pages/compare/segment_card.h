// SPDX-License-Identifier: GPL-3.0-or-later
// The chosen segment: what it is, both drivers' figures beside each other, and all clean laps as dots.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/workspace/pairing_notes.h"
#include "core/workspace/session_key.h"
#include "ui/theme/palette.h"

#include <QFrame>
#include <vector>

class QGridLayout;
class QLabel;

namespace lapwright::theme {
class ElidedLabel;
class NoteField;
} // namespace lapwright::theme

namespace lapwright::plots {
class DotStrip;
}

namespace lapwright::pages {

class SegmentCard : public QFrame {
    Q_OBJECT

  public:
    explicit SegmentCard(QWidget* parent = nullptr);

    // repeatability: of the same segment, null where there is none (summed segments).
    void show_segment(const comparison::SegmentComparison& segment, const comparison::Repeatability* repeatability,
                      base::UnitSystem units);
    void show_nothing();
    void set_palette(const theme::Palette& palette);
    // Of both drivers on this segment; `name`: of the segment.
    void set_notes(const workspace::SegmentNotes& notes, const QString& name);
    void set_note_key(const QString& key); // by which a person may write one; empty: none
    void set_one_session(bool one);        // both laps of one session have one note
    void write_note(workspace::Side side);
    void keep_notes(); // what is being typed
    [[nodiscard]] theme::NoteField& note(workspace::Side side) {
        return side == workspace::Side::a ? *note_a_ : *note_b_;
    }

  Q_SIGNALS:
    void note_kept(lapwright::workspace::Side side, const QString& note);
    void note_ended(); // the focus may go back to where it was

  private:
    struct Row {
        QString label;
        QString a;
        QString b;
        QString says;
    };

    [[nodiscard]] static std::vector<Row> rows_of(const comparison::SegmentComparison& segment, base::UnitSystem units);
    void show_rows(const std::vector<Row>& rows);
    void show_dots(const comparison::SegmentComparison& segment, const comparison::Repeatability* repeatability);
    void colour_cells();
    void invite(); // where there is no note

    theme::ElidedLabel* title_;
    QLabel* gain_;
    theme::ElidedLabel* shape_;
    QGridLayout* grid_;
    std::vector<std::vector<QLabel*>> cells_;
    QLabel* dots_title_;
    plots::DotStrip* dots_;
    QLabel* verdict_;
    theme::NoteField* note_a_;
    theme::NoteField* note_b_;
    bool one_session_ = false;
    bool invites_ = false;
    QString note_key_;
    theme::Palette palette_;
    comparison::Figure won_; // its gain: positive for A
};

} // namespace lapwright::pages
