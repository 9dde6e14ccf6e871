// SPDX-License-Identifier: GPL-3.0-or-later
// The tests that would tell most of what is not known yet, with the width of the answer before and after.
#pragma once

#include "core/findings/next_test_words.h"
#include "ui/theme/palette.h"

#include <QFrame>
#include <vector>

class QLabel;

namespace lapwright::pages {

class NextTestCard : public QFrame {
    Q_OBJECT

  public:
    explicit NextTestCard(QWidget* parent = nullptr);

    void show_tests(const std::vector<findings::TestWords>& tests); // hidden without any
    void set_palette(const theme::Palette& palette);
    [[nodiscard]] QString said() const;

  private:
    QLabel* words_;
};

} // namespace lapwright::pages
