// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/learning_dialog.h"

#include "core/base/number_text.h"
#include "core/findings/learning_words.h"
#include "ui/models/text.h"
#include "ui/models/text_table.h"
#include "ui/plots/learning_plot.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QTableWidget>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::dialogs {
namespace {

using models::text;

QTableWidget* courses_table() {
    auto* view = new QTableWidget(0, 6);
    const std::pair<QString, QString> heads[] = {
        {LearningDialog::tr("Segment"), {}},
        {LearningDialog::tr("Course"), LearningDialog::tr("Over all laps, where the 95 % interval tells it")},
        {LearningDialog::tr("From lap to lap, s"), LearningDialog::tr("The trend over all laps; minus is quicker")},
        {LearningDialog::tr("Now, s"), LearningDialog::tr("Where the trend of the later half of the laps ends")},
        {LearningDialog::tr("Best (lap)"), LearningDialog::tr("The quickest clean lap there")},
        {LearningDialog::tr("Still to be won, s"),
         LearningDialog::tr("Now less the best; \"or chance\" where the best of as many equal laps may lie as low")}};
    for (int column = 0; column < 6; ++column) {
        auto* head = new QTableWidgetItem(heads[column].first);
        head->setToolTip(heads[column].second);
        head->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        view->setHorizontalHeaderItem(column, head);
    }
    view->verticalHeader()->hide();
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    view->setTabKeyNavigation(false);
    view->setAccessibleName(LearningDialog::tr("Course of each segment"));
    return view;
}

} // namespace

LearningDialog::LearningDialog(const QString& session, const theme::Palette& palette, QWidget* parent)
    : QDialog(parent), sentence_(theme::wrapped_label({}, this, theme::strong(theme::body()))),
      progress_(new QProgressBar), notes_(theme::wrapped_label({}, this, theme::small())),
      plot_(new plots::LearningPlot), courses_(courses_table()) {
    setWindowTitle(tr("Learning: %1").arg(session));
    auto* column = new QVBoxLayout(this);
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(8);
    progress_->setAccessibleName(tr("How far it is"));
    notes_->setText(tr("A mark for each flying lap, hollow where it is not clean; the line runs through the later half "
                       "of the laps, with the 95 % interval of its end."));
    plot_->set_palette(palette);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    column->addWidget(sentence_);
    column->addWidget(progress_);
    column->addWidget(plot_, 4);
    column->addWidget(notes_);
    column->addWidget(courses_, 5);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(courses_, &QTableWidget::currentCellChanged, this, &LearningDialog::follow_row);
    auto* copy = new QAction(tr("Copy as a &table"), courses_);
    copy->setShortcut(QKeySequence::Copy);
    connect(copy, &QAction::triggered, this, &LearningDialog::copy);
    courses_->addAction(copy);
    courses_->setContextMenuPolicy(Qt::ActionsContextMenu);
    resize(860, 680);
}

void LearningDialog::show_progress(const QString& stage, double part_done) {
    if (report_) return;
    sentence_->setText(stage);
    progress_->setValue(static_cast<int>(1000.0 * part_done));
}

void LearningDialog::show_report(std::shared_ptr<const analysis::LearningReport> report) {
    report_ = std::move(report);
    progress_->hide();
    sentence_->setText(text(report_->sentence));
    courses_->setRowCount(0);
    add_row(tr("Whole lap"), report_->curve.lap, true);
    for (std::size_t i = 0; i < report_->curve.segments.size(); ++i)
        add_row(text(report_->track.segments[i].name), report_->curve.segments[i], false);
    courses_->resizeRowsToContents();
    courses_->setCurrentCell(0, 0);
    courses_->setFocus();
    follow_row();
}

void LearningDialog::add_row(const QString& name, const comparison::LearningCourse& course, bool whole_lap) {
    const int row = courses_->rowCount();
    courses_->insertRow(row);
    QString best = text(findings::best_text(course));
    if (course.best_s)
        best += QStringLiteral(" (%1)").arg(text(base::integer_text(report_->laps[course.best_lap].number)));
    const QString cells[] = {name,
                             text(findings::learning_text(course.state)),
                             text(findings::change_per_lap_text(course)),
                             text(findings::now_text(course)),
                             best,
                             text(findings::to_win_text(course))};
    for (int column = 0; column < 6; ++column) {
        auto* item = new QTableWidgetItem(cells[column]);
        const bool stands_out = column == 5 && course.to_win_is_told;
        if (whole_lap || stands_out) item->setFont(theme::strong(courses_->font()));
        courses_->setItem(row, column, item);
    }
}

void LearningDialog::follow_row() {
    if (!report_) return;
    const int row = courses_->currentRow();
    plot_->set_course(report_, row > 0 ? std::optional(static_cast<std::size_t>(row - 1)) : std::nullopt);
}

void LearningDialog::show_refusal(const QString& sentence) {
    progress_->hide();
    sentence_->setText(sentence);
}

void LearningDialog::copy() const {
    QApplication::clipboard()->setText(models::tab_text(*courses_->model()));
}

QString LearningDialog::sentence() const {
    return sentence_->text();
}

} // namespace lapwright::dialogs
