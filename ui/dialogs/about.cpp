// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/about.h"

#include "ui/theme/plain_label.h"

#include <QDialogButtonBox>
#include <QVBoxLayout>

namespace lapwright::dialogs {

About::About(const QString& version, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("About Lapwright"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    const auto add = [column](const QString& text, const QFont& font = theme::body()) {
        QLabel* label = theme::wrapped_label(text, nullptr, font);
        constexpr int least_px = 460;
        label->setMinimumSize(least_px, label->heightForWidth(least_px));
        column->addWidget(label);
    };
    add(tr("Lapwright %1").arg(version), theme::strong(theme::body()));
    add(tr("Compares two laps of two logger files, corner by corner, and says how sure it is."));
    add(tr("What it shows are estimates from recorded data. They can be wrong, and they know nothing of the next lap's "
           "weather, traffic or tyres."));
    add(tr("Motor sport is dangerous. The event's rules, scrutineering and licensed practice come first, and nothing "
           "here "
           "is an instruction to drive faster than you judge safe."));
    add(tr("It sends nothing anywhere and changes no source file."));
    add(tr("Free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later); it comes "
           "without any "
           "warranty."));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

} // namespace lapwright::dialogs
