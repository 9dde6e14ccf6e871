// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/strip.h"

#include "ui/models/text.h"
#include "ui/theme/plain_label.h"
#include "ui/window/notices.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QTimer>
#include <QToolButton>

namespace lapwright::window {

namespace {

// Between groups of buttons; it gives way where a language needs the room.
QSpacerItem* space(int width_px) {
    return new QSpacerItem(width_px, 0, QSizePolicy::Maximum, QSizePolicy::Minimum);
}

} // namespace

Strip::Strip(QWidget* parent) : QFrame(parent), bar_(new QMenuBar(this)), actions_(*bar_), notices_(new Notices(this)) {
    setObjectName(QStringLiteral("strip"));
    bar_->setNativeMenuBar(false);
    // Its own wish leaves out what the style sheet adds, so that the last menu hid behind a button.
    QTimer::singleShot(0, bar_, [bar = bar_] {
        constexpr int of_style_px = 24;
        bar->setMinimumWidth(bar->sizeHint().width() + of_style_px);
    });
    stage_ = theme::plain_label(this, theme::small());
    progress_ = new QProgressBar(this);
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setFixedSize(120, 8);
    cancel_ = button_for(actions_.cancel, QStringLiteral("plain"));
    cancel_->setText(tr("Stop"));
    waiting_sign_ = button_for(actions_.write_waiting, QStringLiteral("waiting"));
    damage_sign_ = button_for(actions_.salvage_book, QStringLiteral("waiting"));
    units_button_ = new QToolButton(this);
    units_button_->setObjectName(QStringLiteral("plain"));
    units_button_->setMenu(actions_.units_menu);
    units_button_->setPopupMode(QToolButton::InstantPopup);
    units_button_->setToolTip(tr("Units"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(6, 2, 12, 1);
    row->setSpacing(4);
    row->addWidget(bar_);
    row->addItem(space(12));
    for (QAction* page : {actions_.show_sessions, actions_.show_compare, actions_.show_causes, actions_.show_debrief})
        row->addWidget(button_for(page, QStringLiteral("page")));
    row->addItem(space(12));
    row->addWidget(notices_, 1);
    row->addWidget(waiting_sign_);
    row->addWidget(damage_sign_);
    row->addWidget(stage_);
    row->addWidget(progress_);
    row->addWidget(cancel_);
    row->addItem(space(8));
    auto* find_button = button_for(actions_.find, QStringLiteral("plain"));
    find_button->setText(tr("Go to…"));
    row->addWidget(find_button);
    row->addWidget(units_button_);
    set_busy(false);
}

QToolButton* Strip::button_for(QAction* action, const QString& kind) {
    auto* button = new QToolButton(this);
    button->setDefaultAction(action);
    button->setObjectName(kind);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::TabFocus);
    return button;
}

void Strip::set_busy(bool busy) {
    set_progress(busy ? tr("Working") : QString(), 0.0);
    for (QWidget* part : std::initializer_list<QWidget*>{stage_, progress_, cancel_})
        part->setVisible(busy);
    actions_.cancel->setEnabled(busy);
}

void Strip::set_progress(const QString& stage, double part_done) {
    stage_->setText(stage);
    progress_->setValue(static_cast<int>(1000.0 * part_done));
}

void Strip::set_units(base::UnitSystem units) {
    for (QAction* action : actions_.units->actions())
        action->setChecked(action->data().toInt() == static_cast<int>(units));
    const QString speed = models::text(base::symbol(base::shown_unit(base::Quantity::speed, units)));
    const QString length = models::text(base::symbol(base::shown_unit(base::Quantity::length, units)));
    units_button_->setText(speed + QStringLiteral(", ") + length);
}

} // namespace lapwright::window
