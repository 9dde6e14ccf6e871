// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/window_title.h"

#include "core/analysis/short_text.h"
#include "core/base/number_text.h"
#include "ui/models/text.h"

#include <QCoreApplication>

namespace lapwright::window {
namespace {

constexpr std::size_t longest_in_title = 40;

QString lap_of(const analysis::Side& side) {
    const std::string& driver = side.session->recording->driver;
    const std::string name = analysis::shortened(driver.empty() ? side.session->title() : driver, longest_in_title);
    return QCoreApplication::translate("Lapwright", "%1 lap %2")
        .arg(models::text(name), models::text(base::integer_text(side.lap.number)));
}

} // namespace

QString title_of(const analysis::Pairing& pairing) {
    return QCoreApplication::translate("Lapwright", "%1 against %2").arg(lap_of(pairing.a), lap_of(pairing.b));
}

} // namespace lapwright::window
