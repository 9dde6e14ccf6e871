// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/about.h"

#include "ui/theme/fonts.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QVBoxLayout>

namespace lapwright::dialogs {

About::About(const QString& version, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("About Lapwright"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    const auto add = [column](const QString& text, const QFont& font) {
        auto* label = new QLabel;
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setFont(font);
        label->setText(text);
        label->setMinimumWidth(460);
        column->addWidget(label);
    };
    add(tr("Lapwright %1").arg(version), theme::strong(theme::body()));
    add(tr("Compares two laps of two logger files, corner by corner, and says how sure it is."), theme::body());
    add(tr("What it shows are estimates from recorded data. They can be wrong, and they know nothing of the next lap's "
           "weather, traffic or tyres."),
        theme::body());
    add(tr("Motor sport is dangerous. The event's rules, scrutineering and licensed practice come first, and nothing "
           "here "
           "is an instruction to drive faster than you judge safe."),
        theme::body());
    add(tr("It sends nothing anywhere and changes no source file."), theme::body());
    add(tr("Free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later); it comes "
           "without any "
           "warranty."),
        theme::body());
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

} // namespace lapwright::dialogs
