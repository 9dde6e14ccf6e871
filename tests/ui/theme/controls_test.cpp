// SPDX-License-Identifier: GPL-3.0-or-later
// WCAG 2.2, 1.4.11: what tells that something can be operated, its frame, has 3:1 against the ground, as it is painted,
// in both looks, with the focus and without.
#include "ui/theme/palette.h"

#include "tests/ui/fixture/waiting.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <gtest/gtest.h>

using namespace lapwright;

namespace {

// The best that stands out along the middle row, from the control's left end to `reach`.
double frame_contrast(const QWidget& window, const QWidget& control, int reach) {
    const QImage shown = const_cast<QWidget&>(window).grab().toImage();
    const QPoint left = control.mapTo(&window, QPoint(0, control.height() / 2));
    const QColor ground = shown.pixelColor(left.x() - 3, left.y());
    double most = 1.0;
    for (int x = 0; x < reach; ++x)
        most = std::max(most, theme::contrast(ground, shown.pixelColor(left.x() + x, left.y())));
    return most;
}

} // namespace

TEST(Controls, StandOutFromTheGround) {
    const QPalette before = QApplication::palette();
    for (const theme::Palette* look : {&theme::paper(), &theme::evening()}) {
        theme::apply(*look);
        QDialog window;
        window.setStyleSheet(theme::style_sheet(*look));
        auto* const column = new QVBoxLayout(&window);
        column->setContentsMargins(20, 20, 20, 20);
        auto* const plain = new QToolButton;
        plain->setObjectName(QStringLiteral("plain"));
        const std::vector<QWidget*> controls{new QCheckBox,   new QComboBox, new QLineEdit, new QPlainTextEdit,
                                             new QPushButton, new QSpinBox,  plain};
        for (QWidget* control : controls)
            column->addWidget(control);
        window.show();
        fixture::settle();
        for (QWidget* control : controls) {
            SCOPED_TRACE(control->metaObject()->className() + std::string(look->dark ? ", dark" : ", light"));
            const bool box = qobject_cast<QCheckBox*>(control) != nullptr; // has blank at its left
            window.setFocus();
            EXPECT_GE(frame_contrast(window, *control, box ? 8 : 3), 3.0);
            control->setFocus(Qt::TabFocusReason);
            fixture::settle();
            EXPECT_GE(frame_contrast(window, *control, box ? 8 : 3), 3.0) << "with the focus";
        }
    }
    QApplication::setPalette(before);
}
