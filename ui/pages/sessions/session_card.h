// SPDX-License-Identifier: GPL-3.0-or-later
// One session: who drove what and when, whether its data can be trusted, and its laps.
#pragma once

#include "core/base/display.h"
#include "core/book/search.h"
#include "core/workspace/notes.h"
#include "core/workspace/open_sessions.h"
#include "core/workspace/session_names.h"
#include "ui/theme/palette.h"

#include <QFrame>
#include <map>
#include <memory>
#include <optional>

class QLabel;
class QToolButton;
class QVBoxLayout;

namespace lapwright::theme {
class ElidedLabel;
class NoteField;
} // namespace lapwright::theme

namespace lapwright::pages {

class LapList;
class NamesForm;
class ReasonField;

class SessionCard : public QFrame {
    Q_OBJECT

  public:
    explicit SessionCard(const workspace::OpenSessions::Entry& entry, QWidget* parent = nullptr);

    void set_palette(const theme::Palette& palette);
    void set_units(base::UnitSystem units);
    // The same laps under other names, or otherwise judged; false where it is another understanding of the file.
    [[nodiscard]] bool rename(const workspace::OpenSessions::Entry& entry);
    void offer(const book::Names& known);
    void show_notes(const workspace::Notes& notes);
    void write_session_note();
    void write_lap_note(); // on the lap with the focus
    void judge_lap();      // the same one: set aside, counted, or left to the program again
    void keep_notes();     // what is being typed
    [[nodiscard]] NamesForm& names() { return *names_; }
    [[nodiscard]] theme::NoteField& session_note() { return *session_note_; }
    [[nodiscard]] theme::NoteField& lap_note() { return *lap_note_; }
    [[nodiscard]] ReasonField& reason() { return *reason_; }
    void show_report(bool shown);
    void show_video(const QString& name); // beside what the file is; empty: it has none
    [[nodiscard]] QString facts() const;
    [[nodiscard]] bool report_shown() const;
    [[nodiscard]] LapList& laps() { return *laps_; }
    [[nodiscard]] const analysis::Session& session() const { return *session_; }
    [[nodiscard]] const workspace::SessionKey& key() const { return key_; }

  Q_SIGNALS:
    void further_asked(const lapwright::workspace::SessionKey& session, int lap);
    void picked(const lapwright::workspace::SessionKey& key, int lap, bool as_a);
    void report_toggled(const lapwright::workspace::SessionKey& key, bool shown);
    void close_asked(const lapwright::workspace::SessionKey& key);
    void note_kept(const lapwright::workspace::NoteAbout& about, const QString& note);
    void names_given(const lapwright::workspace::SessionKey& key, const lapwright::workspace::SessionNames& names);
    // Nothing: the program's word on it counts.
    void lap_judged(const lapwright::workspace::SessionKey& key, int lap,
                    const std::optional<lapwright::lap::JudgedByHand>& word);
    void columns_asked(const lapwright::workspace::SessionKey& key);

  protected:
    void contextMenuEvent(QContextMenuEvent* event) override; // it is the card in hand, then the page's menu

  private:
    void connect_fields();
    void follow_lap();
    void say(const QString& sentence); // in the place of what the file is: nothing moves; empty: that again
    void follow_names();
    void follow_report();

    workspace::SessionKey key_;
    std::shared_ptr<const analysis::Session> session_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    QVBoxLayout* column_ = nullptr;
    QWidget* whole_report_ = nullptr;
    theme::ElidedLabel* title_;
    theme::ElidedLabel* facts_;
    NamesForm* names_;
    QLabel* trust_;
    QToolButton* report_;
    LapList* laps_;
    theme::NoteField* session_note_;
    ReasonField* reason_;
    theme::NoteField* lap_note_; // of the lap with the focus
    std::map<int, QString> lap_notes_;
    QString video_;
    int noted_lap_ = 0;
    QColor ink_;
};

} // namespace lapwright::pages
