// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/debrief/debrief_page.h"

#include "ui/pages/debrief/sheet_view.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

constexpr int pause_ms = 250;
constexpr int side_width_px = 250;

} // namespace

DebriefPage::DebriefPage(QWidget* parent)
    : QWidget(parent), paper_(new QComboBox), all_segments_(new QCheckBox(tr("All segments on a &second page"))),
      whole_page_(new QCheckBox(tr("Show the whole page"))), corner_(new QComboBox),
      said_of_stills_(theme::wrapped_label({}, nullptr, theme::small())), notes_(new QPlainTextEdit),
      print_(new QToolButton), save_(new QToolButton), save_html_(new QToolButton),
      said_(theme::wrapped_label({}, nullptr, theme::small())), scroll_(new QScrollArea), view_(new SheetView),
      pause_(new QTimer(this)) {
    scroll_->setWidget(view_);
    scroll_->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    scroll_->setAccessibleName(tr("The debrief sheet"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 10, 4, 4);
    row->setSpacing(10);
    row->addWidget(make_side());
    row->addWidget(scroll_, 1);
    pause_->setSingleShot(true);
    pause_->setInterval(pause_ms);
    connect(pause_, &QTimer::timeout, this, &DebriefPage::notes_changed);
    connect(notes_, &QPlainTextEdit::textChanged, this, [this] {
        if (!setting_) pause_->start();
    });
    connect(paper_, &QComboBox::currentIndexChanged, this, &DebriefPage::take_options);
    connect(all_segments_, &QCheckBox::toggled, this, &DebriefPage::take_options);
    connect(whole_page_, &QCheckBox::toggled, this, &DebriefPage::fit);
    connect(print_, &QToolButton::clicked, this, &DebriefPage::print_asked);
    connect(save_, &QToolButton::clicked, this, &DebriefPage::save_asked);
    connect(save_html_, &QToolButton::clicked, this, &DebriefPage::html_asked);
}

QWidget* DebriefPage::make_stills() {
    auto* stills = new QWidget;
    auto* column = new QVBoxLayout(stills);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    const std::array words{tr("Where it &turns in"), tr("S&lowest point"), tr("Full t&hrottle again")};
    for (std::size_t i = 0; i < stills_.size(); ++i) {
        stills_[i] = new QCheckBox(words[i]);
        column->addWidget(stills_[i]);
        connect(stills_[i], &QCheckBox::toggled, this, &DebriefPage::stills_changed);
    }
    corner_->addItem(tr("the corner that decides"));
    corner_->setAccessibleName(tr("Corner of the stills"));
    column->addWidget(corner_);
    column->addWidget(said_of_stills_);
    said_of_stills_->hide();
    connect(corner_, &QComboBox::currentIndexChanged, this, &DebriefPage::stills_changed);
    return stills;
}

QWidget* DebriefPage::make_side() {
    auto* side = new QWidget;
    side->setFixedWidth(side_width_px);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 6);
    column->setSpacing(6);
    const auto title = [&](const QString& words, QWidget* buddy) {
        auto* label = new QLabel(words, side);
        label->setFont(theme::strong(theme::body()));
        label->setBuddy(buddy);
        column->addWidget(label);
    };
    show_keys({}, {}, {});
    for (QToolButton* button : {print_, save_, save_html_}) {
        button->setObjectName(QStringLiteral("plain"));
        button->setFocusPolicy(Qt::StrongFocus);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        column->addWidget(button);
    }
    column->addWidget(said_);
    said_->hide();
    title(tr("&Paper"), paper_);
    paper_->addItem(QStringLiteral("A4"));
    paper_->addItem(tr("US Letter"));
    column->addWidget(paper_);
    column->addWidget(all_segments_);
    column->addWidget(whole_page_);
    QWidget* const stills = make_stills();
    title(tr("St&ills of both videos, a page"), stills_.front());
    column->addWidget(stills);
    title(tr("&Notes, a line each"), notes_);
    notes_->setPlaceholderText(tr("Sweep: felt planted, could lift later"));
    notes_->setTabChangesFocus(true);
    notes_->setAccessibleName(tr("Notes for the sheet"));
    column->addWidget(notes_, 1);
    fit_side();
    return side;
}

void DebriefPage::show_sheet(std::optional<sheet::Sheet> sheet) {
    view_->set_sheet(std::move(sheet));
}

void DebriefPage::set_notes(const QStringList& lines) {
    setting_ = true;
    notes_->setPlainText(lines.join(QLatin1Char('\n')));
    setting_ = false;
}

QStringList DebriefPage::notes() const {
    QStringList lines;
    const auto all = notes_->toPlainText().split(QLatin1Char('\n'));
    for (const QString& line : all) {
        if (!line.trimmed().isEmpty()) lines << line.trimmed();
    }
    return lines;
}

void DebriefPage::set_options(const paper::PdfOptions& options) {
    setting_ = true;
    options_ = options;
    paper_->setCurrentIndex(options.paper == paper::PaperSize::a4 ? 0 : 1);
    all_segments_->setChecked(options.all_segments);
    setting_ = false;
    view_->set_options(options);
    fit();
}

void DebriefPage::set_corners(const QStringList& names) {
    const QString chosen = corner_->currentIndex() > 0 ? corner_->currentText() : QString();
    const QSignalBlocker quiet(corner_);
    while (corner_->count() > 1)
        corner_->removeItem(1);
    corner_->addItems(names);
    corner_->setCurrentIndex(chosen.isEmpty() ? 0 : std::max(0, static_cast<int>(names.indexOf(chosen)) + 1));
}

workspace::StillsWanted DebriefPage::stills() const {
    workspace::StillsWanted wanted{corner_->currentIndex() > 0 ? corner_->currentText().toStdString() : "", {}};
    for (const workspace::StillMoment moment : workspace::every_still_moment)
        if (stills_[static_cast<std::size_t>(moment)]->isChecked()) wanted.moments.push_back(moment);
    return wanted;
}

void DebriefPage::choose_stills(const std::vector<workspace::StillMoment>& moments) {
    for (const workspace::StillMoment moment : workspace::every_still_moment) {
        QCheckBox* const one = stills_[static_cast<std::size_t>(moment)];
        const QSignalBlocker quiet(one);
        one->setChecked(std::ranges::find(moments, moment) != moments.end());
    }
    Q_EMIT stills_changed();
}

void DebriefPage::say_of_stills(const QString& sentence) {
    said_of_stills_->setText(sentence);
    said_of_stills_->setVisible(!sentence.isEmpty());
}

QString DebriefPage::said_of_stills() const {
    return said_of_stills_->text();
}

void DebriefPage::take_options() {
    if (setting_) return;
    options_.paper = paper_->currentIndex() == 0 ? paper::PaperSize::a4 : paper::PaperSize::us_letter;
    options_.all_segments = all_segments_->isChecked();
    view_->set_options(options_);
    fit();
    Q_EMIT options_changed();
}

void DebriefPage::say(const QString& sentence) {
    said_->setText(sentence);
    said_->setVisible(!sentence.isEmpty());
}

void DebriefPage::show_keys(const QString& print, const QString& save, const QString& save_html) {
    const auto with = [](const QString& words, const QString& key) {
        return key.isEmpty() ? words : words + QStringLiteral("   ") + key;
    };
    print_->setText(with(tr("Print…"), print));
    save_->setText(with(tr("Save as PDF…"), save));
    save_html_->setText(with(tr("Save as HTML…"), save_html));
    fit_side();
}

// As wide as the longest of its words.
void DebriefPage::fit_side() {
    QWidget* const side = print_->parentWidget();
    if (side == nullptr) return;
    int width = side_width_px;
    for (QWidget* one : side->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        const auto* label = qobject_cast<QLabel*>(one);
        const bool in_a_line = label != nullptr ? !label->wordWrap() : qobject_cast<QAbstractButton*>(one) != nullptr;
        if (!in_a_line) continue;
        one->ensurePolished();
        width = std::max(width, one->sizeHint().width());
    }
    side->setFixedWidth(width);
}

void DebriefPage::set_palette(const theme::Palette& palette) {
    QColor shadow = palette.edge;
    shadow.setAlpha(palette.dark ? 40 : 90);
    view_->set_ground(shadow);
    theme::set_ink(said_, palette.quiet);
    theme::set_ink(said_of_stills_, palette.quiet);
}

void DebriefPage::fit() {
    view_->fit(scroll_->viewport()->size(), whole_page_->isChecked());
}

void DebriefPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void DebriefPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fit();
}

} // namespace lapwright::pages
