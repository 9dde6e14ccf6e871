// SPDX-License-Identifier: GPL-3.0-or-later
// The whole trust report of a session: a line a channel, and what was guessed, left out and mended, with its lines.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"

#include <QWidget>

namespace lapwright::pages {

class TrustReport : public QWidget {
    Q_OBJECT

  public:
    TrustReport(const analysis::Session& session, base::UnitSystem units, QWidget* parent = nullptr);
};

} // namespace lapwright::pages
