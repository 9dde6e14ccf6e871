// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/wing_dialog.h"

#include "core/findings/wing_words.h"
#include "ui/models/text.h"
#include "ui/plots/wing_plot.h"
#include "ui/theme/figure_box.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lapwright::dialogs {

using models::text;

WingDialog::WingDialog(const theme::Palette& palette, QWidget* parent)
    : QDialog(parent), tracks_(new QWidget(this)), track_(new QComboBox(tracks_)), cost_(new theme::FigureBox(this)),
      cost_told_(theme::plain_label(this)), said_a_(theme::plain_label(this)), said_b_(theme::plain_label(this)),
      keep_a_(new QPushButton(tr("Keep for &A…"), this)), keep_b_(new QPushButton(tr("Keep for &B…"), this)),
      plot_(new plots::WingPlot(this)) {
    setWindowTitle(tr("How much wing"));
    for (QLabel* label : {said_a_, said_b_})
        label->setWordWrap(true);
    said_a_->setMinimumWidth(480);
    plot_->set_palette(palette);
    auto* where = new QHBoxLayout(tracks_);
    where->setContentsMargins({});
    auto* on = new QLabel(tr("On the &track of:"), tracks_);
    on->setBuddy(track_);
    track_->setAccessibleName(tr("The track that is asked about"));
    where->addWidget(on);
    where->addWidget(track_, 1);
    offer_tracks({});
    auto* costs = new QHBoxLayout;
    auto* name = new QLabel(tr("A m² of downforce &costs, in m² of drag:"), this);
    name->setBuddy(cost_);
    cost_->setAccessibleName(tr("Drag area that a square metre of downforce area costs"));
    cost_->setRange(0.01, 1.0);
    cost_->setSingleStep(0.01);
    cost_->setDecimals(2);
    cost_->setValue(causes::DragCost{}.per_downforce);
    cost_told_->setFont(theme::small());
    costs->addWidget(name);
    costs->addWidget(cost_);
    costs->addWidget(cost_told_, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    for (QPushButton* button : {keep_a_, keep_b_}) {
        button->setToolTip(tr("Keep what is predicted for the quickest in the book, to be held against what happens"));
        button->setAutoDefault(false);
        button->setEnabled(false);
        buttons->addButton(button, QDialogButtonBox::ActionRole);
    }
    connect(keep_a_, &QPushButton::clicked, this, [this] { Q_EMIT keep_asked(causes::Side::a); });
    connect(keep_b_, &QPushButton::clicked, this, [this] { Q_EMIT keep_asked(causes::Side::b); });
    auto* column = new QVBoxLayout(this);
    column->addWidget(tracks_);
    column->addWidget(said_a_);
    column->addWidget(said_b_);
    column->addWidget(plot_, 1);
    column->addLayout(costs);
    auto* caution = theme::plain_label(this);
    caution->setText(
        tr("Simulated: the driver uses the tyres as now. A setup trial of your own wing tells what it costs; "
           "change it in small steps, and within the event's rules."));
    caution->setFont(theme::small());
    caution->setWordWrap(true);
    column->addWidget(caution);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(cost_, &QDoubleSpinBox::valueChanged, this, [this] {
        told_ = true;
        Q_EMIT cost_changed();
    });
    connect(track_, &QComboBox::currentIndexChanged, this, &WingDialog::track_changed);
    show_working();
}

void WingDialog::offer_tracks(const QStringList& sessions) {
    track_->clear();
    track_->addItem(tr("this comparison"));
    track_->addItems(sessions);
    tracks_->setVisible(!sessions.isEmpty());
}

int WingDialog::track() const {
    return track_->currentIndex() - 1;
}

causes::DragCost WingDialog::cost() const {
    return told_ ? causes::told_cost(cost_->value()) : causes::DragCost{};
}

void WingDialog::show_working() {
    cost_told_->setText(text(findings::drag_cost_text(cost())));
    if (said_a_->text().isEmpty()) said_a_->setText(tr("Both cars are driven with more and with less of it…"));
}

void WingDialog::show_balances(const causes::AeroBalance& a, const causes::AeroBalance& b, bool on_a_tonne) {
    said_a_->setText(text(findings::wing_sentence(a, "A", on_a_tonne)));
    said_b_->setText(text(findings::wing_sentence(b, "B", on_a_tonne)));
    plot_->set_balances(a, b, on_a_tonne);
    keep_a_->setEnabled(a.untold.empty());
    keep_b_->setEnabled(b.untold.empty());
}

void WingDialog::show_refusal(const QString& sentence) {
    said_a_->setText(sentence);
    said_b_->clear();
    keep_a_->setEnabled(false);
    keep_b_->setEnabled(false);
    plot_->set_balances({}, {}, false);
}

QString WingDialog::said() const {
    return said_a_->text() + QLatin1Char('\n') + said_b_->text();
}

} // namespace lapwright::dialogs
