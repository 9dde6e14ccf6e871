// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/trial_dialog.h"

#include "core/findings/trial_words.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

namespace lapwright::dialogs {
namespace {

using models::text;

constexpr int part_column = 4;

QTableWidget* table(const QStringList& headers) {
    auto* view = new QTableWidget(0, static_cast<int>(headers.size()));
    view->setHorizontalHeaderLabels(headers);
    view->verticalHeader()->hide();
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    view->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    view->setTabKeyNavigation(false);
    return view;
}

TrialPart first_guess(std::size_t row, std::size_t count) {
    if (count > 3) return TrialPart::left_out;
    return row == 1 ? TrialPart::change : TrialPart::baseline;
}

} // namespace

TrialDialog::TrialDialog(const std::vector<TrialRow>& rows, QWidget* parent)
    : QDialog(parent), sentence_(theme::wrapped_label({}, this, theme::strong(theme::body()))),
      laps_(theme::wrapped_label({}, this, theme::small())),
      run_(new QPushButton(tr("&Reckon what the change is worth"))), stop_(new QPushButton(tr("&Stop"))),
      progress_(new QProgressBar), effects_(make_effects()), working_(make_working()) {
    setWindowTitle(tr("Setup trial"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(theme::wrapped_label(
        tr("Drive without the change, with it, and without it again: only so can the change be told "
           "from tyres that fade and a track that grips more. Sessions stand in the order in which "
           "they were driven."),
        this));
    column->addWidget(make_sessions(rows), 2);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->addButton(run_, QDialogButtonBox::ActionRole);
    run_->setDefault(true);
    column->addWidget(sentence_);
    column->addWidget(working_);
    column->addWidget(laps_);
    column->addWidget(effects_, 5);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(run_, &QPushButton::clicked, this, &TrialDialog::begin);
    connect(stop_, &QPushButton::clicked, this, [this] {
        call_off();
        sentence_->setText(tr("Stopped: nothing was reckoned."));
    });
    connect(this, &QDialog::finished, this, &TrialDialog::call_off);
    follow();
    resize(820, 660);
}

QWidget* TrialDialog::make_working() {
    auto* strip = new QWidget;
    auto* row = new QHBoxLayout(strip);
    row->setContentsMargins(0, 0, 0, 0);
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(8);
    progress_->setAccessibleName(tr("How far it is"));
    stop_->setAutoDefault(false);
    row->addWidget(progress_, 1);
    row->addWidget(stop_);
    strip->hide();
    return strip;
}

void TrialDialog::begin() {
    call_off();
    laps_->clear();
    effects_->setRowCount(0);
    set_working(true);
    show_progress(tr("Working"), 0.0);
    Q_EMIT run_asked();
}

void TrialDialog::call_off() {
    if (!works_) return;
    set_working(false);
    Q_EMIT stop_asked();
}

void TrialDialog::set_working(bool working) {
    works_ = working;
    if (!working && stop_->hasFocus()) run_->setFocus();
    working_->setVisible(working);
}

void TrialDialog::show_progress(const QString& stage, double part_done) {
    if (!works_) return;
    sentence_->setText(stage);
    progress_->setValue(static_cast<int>(1000.0 * part_done));
}

QTableWidget* TrialDialog::make_sessions(const std::vector<TrialRow>& rows) {
    QTableWidget* view = table({tr("Session"), tr("File"), tr("Driven"), tr("Clean laps"), tr("Part in the trial")});
    view->setAccessibleName(tr("Sessions of the trial"));
    view->setRowCount(static_cast<int>(rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int row = static_cast<int>(i);
        int column = 0;
        for (const QString& cell : {rows[i].title, rows[i].file, rows[i].when, rows[i].clean_laps})
            view->setItem(row, column++, new QTableWidgetItem(cell));
        auto* choice = new QComboBox;
        choice->addItems({tr("left out"), tr("baseline"), tr("with the change")});
        choice->setCurrentIndex(static_cast<int>(first_guess(i, rows.size())));
        choice->setAccessibleName(tr("Part of %1").arg(rows[i].title));
        connect(choice, &QComboBox::currentIndexChanged, this, &TrialDialog::follow);
        view->setCellWidget(row, part_column, choice);
        sessions_.push_back(rows[i].session);
        choices_.push_back(choice);
    }
    view->resizeRowsToContents();
    return view;
}

QTableWidget* TrialDialog::make_effects() {
    QTableWidget* view = table({tr("Segment"), tr("The change (95 %), times in s a lap"), tr("Sure?")});
    view->setAccessibleName(tr("What the change is worth, by segment"));
    return view;
}

std::vector<std::pair<workspace::SessionKey, TrialPart>> TrialDialog::parts() const {
    std::vector<std::pair<workspace::SessionKey, TrialPart>> result;
    for (std::size_t i = 0; i < sessions_.size(); ++i)
        result.emplace_back(sessions_[i], static_cast<TrialPart>(choices_[i]->currentIndex()));
    return result;
}

// An answer is of the parts that it was asked with.
void TrialDialog::follow() {
    call_off();
    const auto any = [this](TrialPart part) {
        return std::ranges::any_of(parts(), [part](const auto& one) { return one.second == part; });
    };
    const bool both = any(TrialPart::baseline) && any(TrialPart::change);
    run_->setEnabled(both);
    sentence_->setText(both ? QString() : tr("Choose at least one baseline and one session with the change."));
    laps_->clear();
    effects_->setRowCount(0);
}

void TrialDialog::show_report(const std::shared_ptr<const analysis::TrialReport>& report) {
    set_working(false);
    sentence_->setText(text(report->sentence));
    QStringList lines{models::sentence(text(findings::trial_laps_text(report->trial)))};
    for (const std::string& note : report->notes)
        lines << models::sentence(text(note));
    if (!report->figures) lines << tr("What it did to the car cannot be told: %1.").arg(text(report->no_figures));
    laps_->setText(lines.join(QLatin1Char('\n')));
    effects_->setRowCount(0);
    for (std::size_t i = 0; i < report->trial.segments.size(); ++i)
        add_effect(text(report->track.segments[i].name), report->trial.segments[i], false);
    add_effect(tr("Whole lap"), report->trial.lap, true);
    if (report->figures)
        for (const findings::FigureChangeLine& line : findings::figure_change_lines(*report->figures))
            add_row({tr("Car: %1").arg(text(line.figure)), text(line.change), text(line.certainty)}, false);
    effects_->resizeRowsToContents();
}

void TrialDialog::add_effect(const QString& name, const comparison::TrialEffect& effect, bool whole_lap) {
    add_row({name, text(findings::effect_text(effect)), text(findings::certainty_text(effect))}, whole_lap);
}

void TrialDialog::add_row(const std::array<QString, 3>& cells, bool whole_lap) {
    const int row = effects_->rowCount();
    effects_->insertRow(row);
    for (int column = 0; column < static_cast<int>(cells.size()); ++column) {
        auto* item = new QTableWidgetItem(cells[static_cast<std::size_t>(column)]);
        if (whole_lap) item->setFont(theme::strong(effects_->font()));
        effects_->setItem(row, column, item);
    }
}

void TrialDialog::show_refusal(const QString& sentence) {
    set_working(false);
    sentence_->setText(sentence);
    laps_->clear();
    effects_->setRowCount(0);
}

QString TrialDialog::sentence() const {
    return sentence_->text();
}

} // namespace lapwright::dialogs
