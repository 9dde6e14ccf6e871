// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/session_card.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/recording/warning_words.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/names_form.h"
#include "ui/pages/sessions/reason_field.h"
#include "ui/pages/sessions/trust_report.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"
#include "ui/theme/note_field.h"
#include "ui/theme/plain_label.h"

#include <QContextMenuEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <array>

namespace lapwright::pages {
namespace {

using models::text;
using recording::Meaning;

QString facts_words(const analysis::Session& session) {
    const recording::Recording& recording = *session.recording;
    return text(session.source.file_name) + QStringLiteral(" · ") + text(base::duration_text(recording.duration_s));
}

// "25 Hz positions" or what there is instead of them.
QString rate_words(const recording::Recording& recording) {
    static constexpr std::array wanted{Meaning::latitude, Meaning::east, Meaning::speed, Meaning::wheel_speed};
    for (const Meaning meaning : wanted) {
        const recording::Channel* channel = recording.find(meaning);
        if (channel == nullptr) continue;
        const QString rate = text(base::rate_text(channel->rate_hz()));
        const bool position = meaning == Meaning::latitude || meaning == Meaning::east;
        return position ? SessionCard::tr("%1 positions").arg(rate)
                        : SessionCard::tr("no positions, %1 speed").arg(rate);
    }
    return SessionCard::tr("no positions, no speed");
}

QString source_words(const analysis::Session& session) {
    QStringList sentences{rate_words(*session.recording)};
    sentences[0][0] = sentences[0].at(0).toUpper();
    sentences << (session.why_no_laps ? SessionCard::tr("no laps")
                                      : SessionCard::tr("timing line: %1").arg(text(session.gate_origin)));
    return models::sentence(sentences.join(QStringLiteral(", ")));
}

QString trust_words(const analysis::Session& session) {
    QString words = source_words(session);
    const auto append = [&words](const std::vector<recording::Warning>& warnings) {
        for (const recording::Warning& warning : warnings) {
            const QString sentence = text(recording::sentence(warning));
            if (!sentence.isEmpty()) words += QLatin1Char(' ') + sentence;
        }
    };
    append(session.recording->warnings);
    append(session.warnings);
    if (session.recording->warnings.empty() && session.warnings.empty())
        words += SessionCard::tr(" Nothing had to be mended.");
    return words;
}

} // namespace

SessionCard::SessionCard(const workspace::OpenSessions::Entry& entry, QWidget* parent)
    : QFrame(parent), key_(entry.key), session_(entry.session), title_(new theme::ElidedLabel(this)),
      facts_(new theme::ElidedLabel(this)), names_(new NamesForm(this)),
      trust_(theme::wrapped_label(trust_words(*entry.session), this, theme::small())), report_(new QToolButton(this)),
      laps_(new LapList(entry.session, this)), session_note_(new theme::NoteField(tr("Note on this session"), this)),
      reason_(new ReasonField(this)), lap_note_(new theme::NoteField(tr("Note on this lap"), this)) {
    setObjectName(QStringLiteral("card"));
    auto* close = new QToolButton(this);
    close->setObjectName(QStringLiteral("plain"));
    close->setText(tr("Close"));
    close->setToolTip(tr("Takes the session off this page; its file stays as it is"));
    auto* columns = new QToolButton(this);
    columns->setObjectName(QStringLiteral("plain"));
    columns->setText(tr("Columns…"));
    columns->setToolTip(tr("What each column of the file was taken for; correct it here"));
    report_->setObjectName(QStringLiteral("plain"));
    report_->setText(tr("Report"));
    report_->setCheckable(true);
    report_->setToolTip(tr("Rate, range and gaps of every channel; what was guessed, left out and mended"));
    title_->setFont(theme::strong(theme::body()));
    facts_->setFont(theme::small());

    auto* top = new QHBoxLayout;
    top->addWidget(title_, 1);
    top->addWidget(report_);
    top->addWidget(columns);
    top->addWidget(close);
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(14, 10, 14, 12);
    column_->setSpacing(3);
    column_->addLayout(top);
    column_->addWidget(facts_);
    column_->addWidget(names_);
    column_->addWidget(trust_);
    column_->addWidget(session_note_);
    column_->addSpacing(4);
    column_->addWidget(laps_);
    column_->addWidget(reason_);
    column_->addWidget(lap_note_);
    column_->addStretch(1);

    follow_names();
    follow_lap();
    connect_fields();
    connect(columns, &QToolButton::clicked, this, [this] { Q_EMIT columns_asked(key_); });
    connect(close, &QToolButton::clicked, this, [this] { Q_EMIT close_asked(key_); });
}

void SessionCard::connect_fields() {
    connect(laps_, &LapList::moved, this, &SessionCard::follow_lap);
    connect(session_note_, &theme::NoteField::kept, this,
            [this](const QString& note) { Q_EMIT note_kept({key_}, note); });
    connect(lap_note_, &theme::NoteField::kept, this,
            [this](const QString& note) { Q_EMIT note_kept({key_, noted_lap_}, note); });
    for (const theme::NoteField* field : {session_note_, lap_note_})
        connect(field, &theme::NoteField::ended, laps_, [this] { laps_->setFocus(); });
    connect(laps_, &LapList::picked, this, [this](int lap, bool as_a) { Q_EMIT picked(key_, lap, as_a); });
    connect(laps_, &LapList::further_asked, this, [this](int lap) { Q_EMIT further_asked(key_, lap); });
    connect(report_, &QToolButton::toggled, this, [this](bool shown) {
        follow_report();
        Q_EMIT report_toggled(key_, shown);
    });
    connect(names_, &NamesForm::ended, laps_, [this] { laps_->setFocus(); });
    connect(names_, &NamesForm::given, this,
            [this](const workspace::SessionNames& names) { Q_EMIT names_given(key_, names); });
    connect(names_, &NamesForm::said, this, &SessionCard::say);
    connect(reason_, &ReasonField::ended, laps_, [this] { laps_->setFocus(); });
    connect(reason_, &ReasonField::given, this, [this](const QString& reason) {
        const lap::Lap* lap = session_->lap(laps_->current_lap());
        Q_EMIT lap_judged(key_, lap->number, lap::JudgedByHand{0.0, !lap->clean, reason.toStdString()});
    });
}

bool SessionCard::rename(const workspace::OpenSessions::Entry& entry) {
    if (entry.key != key_ || !workspace::same_reading(*entry.session, *session_)) return false;
    session_ = entry.session;
    laps_->set_session(session_);
    follow_names();
    return true;
}

void SessionCard::follow_names() {
    title_->set_text(text(session_->title()));
    facts_->set_text(facts());
    names_->show_names(workspace::names_of(*session_));
}

void SessionCard::say(const QString& sentence) {
    facts_->set_text(sentence.isEmpty() ? facts() : sentence);
}

void SessionCard::contextMenuEvent(QContextMenuEvent* event) {
    laps_->setFocus();
    event->ignore();
}

void SessionCard::offer(const book::Names& known) {
    names_->offer(known);
}

void SessionCard::set_units(base::UnitSystem units) {
    units_ = units;
    follow_report();
}

void SessionCard::show_notes(const workspace::Notes& notes) {
    session_note_->set_note(text(notes.text({key_})));
    lap_notes_.clear();
    for (const workspace::Note& note : notes.of_session(key_))
        if (note.about.lap && note.about.segment.empty()) lap_notes_[*note.about.lap] = text(note.text);
    laps_->set_notes(lap_notes_);
    follow_lap();
}

// Another lap has the focus: what is being typed is about the one before.
void SessionCard::follow_lap() {
    const int lap = laps_->current_lap();
    if (lap != noted_lap_) lap_note_->keep();
    noted_lap_ = lap;
    const QString words = tr("Lap %1").arg(text(base::integer_text(lap)));
    lap_note_->set_mark(words, ink_);
    lap_note_->set_what(tr("Note on %1").arg(words));
    const auto found = lap_notes_.find(lap);
    lap_note_->set_note(found == lap_notes_.end() ? QString() : found->second);
}

void SessionCard::write_session_note() {
    session_note_->begin();
}

void SessionCard::write_lap_note() {
    lap_note_->begin();
}

void SessionCard::judge_lap() {
    const lap::Lap* lap = session_->lap(laps_->current_lap());
    if (!lap) return;
    if (lap->kind != lap::LapKind::flying) {
        say(tr("Only a flying lap can be set aside or counted."));
        return;
    }
    say({});
    const QString number = text(base::integer_text(lap->number));
    if (lap::word_on(*lap, session_->by_hand))
        Q_EMIT lap_judged(key_, lap->number, std::nullopt);
    else
        reason_->begin(lap->clean ? tr("Lap %1 is set aside, because").arg(number)
                                  : tr("Lap %1 counts, because").arg(number));
}

void SessionCard::keep_notes() {
    session_note_->keep();
    lap_note_->keep();
    names_->keep();
}

QString SessionCard::facts() const {
    return video_.isEmpty() ? facts_words(*session_) : facts_words(*session_) + tr(" · video: %1").arg(video_);
}

void SessionCard::show_video(const QString& name) {
    video_ = name;
    say({});
}

void SessionCard::show_report(bool shown) {
    report_->setChecked(shown);
}

bool SessionCard::report_shown() const {
    return report_->isChecked();
}

// Made when it is looked at: a long file has many channels. It says what the trust line says of the import too.
void SessionCard::follow_report() {
    delete whole_report_;
    whole_report_ = nullptr;
    const bool whole = report_->isChecked();
    trust_->setText(whole ? source_words(*session_) : trust_words(*session_));
    if (!whole) return;
    whole_report_ = new TrustReport(*session_, units_, this);
    column_->insertWidget(column_->indexOf(trust_) + 1, whole_report_);
}

void SessionCard::set_palette(const theme::Palette& palette) {
    laps_->set_palette(palette);
    ink_ = palette.ink;
    session_note_->set_mark(tr("Note"), ink_);
    follow_lap();
    theme::set_ink(facts_, palette.quiet);
}

} // namespace lapwright::pages
