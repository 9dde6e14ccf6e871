// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/season_view.h"

#include "core/book/names.h"
#include "core/findings/season_words.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/season_words.h"
#include "ui/plots/season_plot.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

using book::SeasonSession;
using models::SeasonOf;
using models::text;

constexpr double zoom_step = 0.7;
constexpr double pan_step = 0.25;
constexpr int widest_column_px = 320;
constexpr int so_far_role = Qt::UserRole + 1; // of a figure: as the sessions up to each have it

QComboBox* choice_box(const QString& what, QWidget* parent) {
    auto* one = new QComboBox(parent);
    one->setAccessibleName(what);
    one->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    one->setMinimumContentsLength(16);
    return one;
}

// The ones with a mark on the plot of laps.
bool has_dated_lap(const SeasonSession& one) {
    return one.session.start_unix_s && one.session.best_clean_s;
}

// Of the car among those that were met before; one that is new is appended.
int place_of(const std::string& car, std::vector<QString>& cars) {
    const auto found =
        std::ranges::find_if(cars, [&](const QString& one) { return book::same_name(one.toStdString(), car); });
    const auto place = static_cast<int>(found - cars.begin());
    if (found == cars.end()) cars.push_back(text(car));
    return place;
}

} // namespace

SeasonView::SeasonView(QWidget* parent)
    : QWidget(parent), model_(new models::SeasonList(this)),
      of_(choice_box(tr("Laps of a track or figures of a car"), this)),
      name_(choice_box(tr("Which track or car"), this)), part_(choice_box(tr("Which sessions or figure"), this)),
      stop_(new QPushButton(tr("Stop"), this)), legend_(new theme::ElidedLabel(this)), said_(theme::plain_label(this)),
      card_(new QFrame(this)), plot_(new plots::SeasonPlot(card_)),
      list_(new BookTable(*model_, tr("Sessions of the season"), this)), chosen_(theme::plain_label(this)) {
    part_->setMinimumContentsLength(30); // "downforce area, m², as it became known"
    of_->addItems({tr("Laps on a track"), tr("Figures of a car"), tr("A car from all its sessions")});
    stop_->hide();
    said_->setWordWrap(true);
    legend_->setFont(theme::small());
    chosen_->setFont(theme::small());
    chosen_->setWordWrap(true);
    chosen_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    chosen_->setMinimumHeight(2 * QFontMetrics(theme::small()).lineSpacing()); // so that nothing moves with the row
    list_->horizontalHeader()->setStretchLastSection(true);
    auto* top = new QHBoxLayout;
    top->addWidget(of_);
    top->addWidget(name_);
    top->addWidget(part_);
    top->addWidget(stop_);
    top->addSpacing(12);
    top->addWidget(legend_, 1);
    card_->setObjectName(QStringLiteral("card"));
    auto* inside = new QVBoxLayout(card_);
    inside->setContentsMargins(8, 6, 8, 6);
    inside->addWidget(plot_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(said_);
    column->addWidget(card_, 5);
    column->addWidget(list_, 4);
    column->addWidget(chosen_);

    connect(of_, &QComboBox::currentIndexChanged, this, [this] {
        fill_names();
        ask();
    });
    connect(name_, &QComboBox::currentIndexChanged, this, &SeasonView::ask);
    connect(part_, &QComboBox::currentIndexChanged, this, &SeasonView::show_part);
    connect(stop_, &QPushButton::clicked, this, [this] {
        Q_EMIT stop_asked();
        asked_car_.clear();
        stop_->hide();
        show_working(tr("Stopped. Choose the car again to begin anew."));
        name_->setFocus();
    });
    connect(plot_, &plots::SeasonPlot::mark_chosen, this, [this](int mark) {
        list_->choose_row(row_of_mark_.at(static_cast<std::size_t>(mark)));
        list_->setFocus();
    });
    connect(list_, &BookTable::row_chosen, this, &SeasonView::follow_row);
    connect(list_, &BookTable::row_opened, this,
            [this](int row) { Q_EMIT session_asked(model_->season().at(static_cast<std::size_t>(row)).session); });
    connect(list_, &BookTable::left, this, &SeasonView::left);
    connect(list_, &BookTable::left_upwards, name_, [this] { name_->setFocus(); });
    for (QWidget* part : std::initializer_list<QWidget*>{list_, of_, name_, part_})
        part->installEventFilter(this);
}

void SeasonView::set_palette(const theme::Palette& palette) {
    plot_->set_palette(palette);
    for (QWidget* label : std::initializer_list<QWidget*>{legend_, chosen_})
        theme::set_ink(label, palette.quiet);
}

void SeasonView::set_units(base::UnitSystem units) {
    const int part = part_->currentIndex();
    model_->set_units(units);
    fill_parts();
    {
        const QSignalBlocker quiet(part_); // a figure's title has another unit now
        part_->setCurrentIndex(part);
    }
    show_part();
}

SeasonOf SeasonView::of() const {
    const int index = of_->currentIndex();
    return index == 0 ? SeasonOf::track : index == 1 ? SeasonOf::car : SeasonOf::car_together;
}

QString SeasonView::name() const {
    return name_->currentText();
}

void SeasonView::set_names(book::Names names) {
    names_ = std::move(names);
    fill_names();
    // Long work is not begun anew by every edit of the book.
    if (of() != SeasonOf::car_together || name() != asked_car_) ask();
}

void SeasonView::want_track(const QString& track) {
    if (track.isEmpty()) return;
    wanted_track_ = track;
    const QSignalBlocker quiet(of_);
    of_->setCurrentIndex(0);
}

void SeasonView::fill_names() {
    const QSignalBlocker quiet(name_);
    const QString before = of() == SeasonOf::track && !wanted_track_.isEmpty() ? wanted_track_ : name();
    wanted_track_.clear();
    name_->clear();
    for (const std::string& one : of() == SeasonOf::track ? names_.tracks : names_.cars)
        name_->addItem(text(one));
    name_->setCurrentIndex(std::max(0, name_->findText(before, Qt::MatchFixedString)));
    name_->setEnabled(name_->count() > 0);
}

void SeasonView::ask() {
    asked_car_ = of() == SeasonOf::car_together ? name() : QString();
    stop_->hide();
    if (of() == SeasonOf::car_together) show_progress({}, 0.0);
    if (of() == SeasonOf::car_together && asked_car_.isEmpty()) {
        Q_EMIT stop_asked();
        return show_season({});
    }
    Q_EMIT season_asked(of(), name());
}

void SeasonView::show_season(std::vector<SeasonSession> season) {
    season_ = std::move(season);
    model_->set_season(of(), season_);
    fill_parts();
    show_part();
}

void SeasonView::show_progress(const QString& stage, double part_done) {
    if (of() != SeasonOf::car_together || asked_car_.isEmpty()) return;
    stop_->show();
    show_working(tr("Every session of %1 is read and put together: %2 %%3")
                     .arg(asked_car_)
                     .arg(static_cast<int>(100.0 * part_done))
                     .arg(stage.isEmpty() ? QString() : QStringLiteral(", ") + stage));
}

void SeasonView::show_working(const QString& said) {
    car_season_ = {};
    if (!season_.empty()) show_season({});
    said_->setText(said);
}

void SeasonView::show_refusal(const base::Error& error) {
    if (of() != SeasonOf::car_together) return;
    stop_->hide();
    show_working(text(base::one_line(error)));
}

void SeasonView::show_car_season(analysis::CarSeason season) {
    if (of() != SeasonOf::car_together) return;
    stop_->hide();
    car_season_ = std::move(season);
    show_season(car_season_.sessions);
}

QString SeasonView::car_words() const {
    QStringList lines;
    for (const season::ItemEffect& effect : car_season_.effects)
        lines << text(findings::effect_sentence(effect));
    for (const std::string& note : car_season_.notes)
        lines << text(note);
    for (const analysis::LeftOut& one : car_season_.left_out)
        lines << tr("%1 is left out: %2").arg(text(one.session.source.file_name), text(one.why));
    return lines.join(QLatin1Char('\n'));
}

// The track's cars, or the figures that are known.
void SeasonView::fill_parts() {
    const QSignalBlocker quiet(part_);
    const QString before = part_->currentText();
    part_->clear();
    if (of() == SeasonOf::track) {
        part_->addItem(tr("All cars"));
        QStringList cars;
        for (const SeasonSession& one : season_)
            if (const QString car = text(one.session.car); !car.isEmpty() && !cars.contains(car)) cars << car;
        cars.sort(Qt::CaseInsensitive);
        part_->addItems(cars);
    } else {
        for (const book::FigureCourse& course : model_->courses())
            part_->addItem(text(course.title), text(course.title));
        if (of() == SeasonOf::car_together && season_.size() > 1)
            for (const book::FigureCourse& course : model_->courses()) {
                part_->addItem(tr("%1, as it became known").arg(text(course.title)), text(course.title));
                part_->setItemData(part_->count() - 1, true, so_far_role);
            }
    }
    part_->setCurrentIndex(std::max(0, part_->findText(before)));
    part_->setEnabled(part_->count() > 1);
}

void SeasonView::show_part() {
    std::vector<SeasonSession> shown = season_;
    if (of() == SeasonOf::track && part_->currentIndex() > 0) {
        const std::string car = part_->currentText().toStdString();
        std::erase_if(shown, [&](const SeasonSession& one) { return !book::same_name(one.session.car, car); });
    }
    if (part_->currentData(so_far_role).toBool()) shown = car_season_.so_far;
    model_->set_season(of(), std::move(shown));
    QHeaderView* header = list_->horizontalHeader();
    // A very long name is cut; the line below has it in full.
    const QAbstractItemView& view = *list_;
    for (int column = 0; column < model_->change_column(); ++column) {
        const bool too_wide = view.sizeHintForColumn(column) > widest_column_px;
        header->setSectionResizeMode(column, too_wide ? QHeaderView::Fixed : QHeaderView::ResizeToContents);
        if (too_wide) header->resizeSection(column, widest_column_px);
    }
    header->setVisible(model_->rowCount() > 0);
    part_->setVisible(model_->rowCount() > 0);
    const QString words = of() == SeasonOf::car_together ? car_words() : QString();
    said_->setText(season_sentence(of(), name(), model_->season(), figure()) +
                   (words.isEmpty() ? QString() : QLatin1Char('\n') + words));
    show_marks();
    const auto& season = model_->season();
    const auto again =
        std::ranges::find_if(season, [this](const SeasonSession& one) { return one.session.id == chosen_id_; });
    const int newest = row_of_mark_.empty() ? model_->rowCount() - 1 : row_of_mark_.back();
    list_->choose_row(again == season.end() ? newest : static_cast<int>(again - season.begin()));
    follow_row();
}

void SeasonView::show_marks() {
    plots::SeasonCourse course;
    row_of_mark_.clear();
    const auto& season = model_->season();
    if (of() == SeasonOf::track) {
        course.title = tr("lap time");
        course.lap_times = true;
        for (std::size_t row = 0; row < season.size(); ++row) {
            if (!has_dated_lap(season[row])) continue;
            course.marks.push_back({.unix_s = *season[row].session.start_unix_s,
                                    .value = *season[row].session.best_clean_s,
                                    .companion = season[row].median_clean_s,
                                    .series = place_of(season[row].session.car, course.series)});
            row_of_mark_.push_back(static_cast<int>(row));
        }
    } else if (const book::FigureCourse* shown = figure()) {
        course.title = text(shown->title);
        course.unit = shown->unit;
        course.series = {name()};
        for (const book::FigurePoint& point : shown->points) {
            const auto& start = season[point.session].session.start_unix_s;
            if (!start) continue;
            course.marks.push_back({.unix_s = *start,
                                    .value = point.value,
                                    .low = point.low,
                                    .high = point.high,
                                    .sure = point.from_data});
            row_of_mark_.push_back(static_cast<int>(point.session));
        }
    }
    card_->setVisible(!course.marks.empty());
    legend_->set_text(course.marks.empty()      ? QString()
                      : of() == SeasonOf::track ? tr("filled: best clean lap; hollow, dashed: median of the clean laps")
                                                : tr("bar: 95 % interval; hollow: not decided by the data"));
    plot_->set_course(std::move(course));
}

void SeasonView::follow_row() {
    const int row = list_->current_row();
    const auto mark = std::ranges::find(row_of_mark_, row);
    plot_->set_chosen(mark == row_of_mark_.end() ? -1 : static_cast<int>(mark - row_of_mark_.begin()));
    if (row < 0 || row >= model_->rowCount()) {
        chosen_->clear();
        return;
    }
    chosen_id_ = model_->season()[static_cast<std::size_t>(row)].session.id;
    QStringList words;
    for (int column = 0; column < model_->columnCount(); ++column) {
        const QString cell = model_->index(row, column).data().toString();
        if (cell == models::dash) continue;
        const bool plain = !model_->is_figure(column) && column != model_->change_column();
        const QString title = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        words << (plain ? cell : models::labelled(title, cell));
    }
    chosen_->setText(words.join(QStringLiteral(" · ")));
}

const book::FigureCourse* SeasonView::figure() const {
    if (of() == SeasonOf::track) return nullptr;
    const auto& courses = model_->courses();
    const auto shown = std::ranges::find_if(courses, [this](const book::FigureCourse& course) {
        return part_->currentData().toString() == text(course.title);
    });
    return shown == courses.end() ? nullptr : &*shown;
}

void SeasonView::begin() {
    list_->setFocus();
}

QString SeasonView::said() const {
    return said_->text();
}

QString SeasonView::said_of_chosen() const {
    return chosen_->text();
}

// Keys of the plot in the list; in the boxes Return and Escape lead on and away.
bool SeasonView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
        return QWidget::eventFilter(watched, event);
    const auto* pressed = static_cast<QKeyEvent*>(event);
    const int key = pressed->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (watched != list_) {
        if (!enter && key != Qt::Key_Escape) return QWidget::eventFilter(watched, event);
        event->accept();
        if (event->type() == QEvent::ShortcutOverride) return true;
        if (enter)
            list_->setFocus();
        else
            Q_EMIT left();
        return true;
    }
    if (event->type() == QEvent::ShortcutOverride) return QWidget::eventFilter(watched, event);
    const bool control = pressed->modifiers().testFlag(Qt::ControlModifier);
    if (key == Qt::Key_Plus || key == Qt::Key_Equal)
        plot_->zoom(zoom_step);
    else if (key == Qt::Key_Minus)
        plot_->zoom(1.0 / zoom_step);
    else if (key == Qt::Key_W)
        plot_->fit();
    else if (control && key == Qt::Key_Left)
        plot_->pan(-pan_step);
    else if (control && key == Qt::Key_Right)
        plot_->pan(pan_step);
    else
        return QWidget::eventFilter(watched, event);
    return true;
}

} // namespace lapwright::pages
