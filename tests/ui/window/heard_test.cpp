// SPDX-License-Identifier: GPL-3.0-or-later
// Whoever hears the window gets all of it: on every page and in every dialog what can have the focus has a name, and
// every plot says in words what it shows.  Read as a screen reader does, through Qt's accessible interfaces.
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/dialogs/about.h"
#include "ui/dialogs/channel_picker.h"
#include "ui/dialogs/finder.h"
#include "ui/dialogs/key_changer.h"
#include "ui/dialogs/keys_help.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/dot_strip.h"
#include "ui/plots/plot_stack.h"
#include "ui/plots/track_map.h"
#include "ui/window/explaining.h"

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QDialog>
#include <QScrollBar>
#include <QTimer>
#include <algorithm>
#include <cmath>

using namespace lapwright;

namespace {

// Parts of a control that is heard as a whole.
bool is_inside_of_another(const QWidget& widget) {
    if (qobject_cast<const QScrollBar*>(&widget) != nullptr) return true;
    const auto* area = qobject_cast<const QAbstractScrollArea*>(widget.parentWidget());
    if (area != nullptr && area->viewport() == &widget) return true;
    for (const QWidget* above = widget.parentWidget(); above != nullptr; above = above->parentWidget())
        if (above->inherits("QAbstractSpinBox") || above->inherits("QComboBox") || above->inherits("QCalendarWidget"))
            return true;
    return false;
}

bool is_plot(const QWidget& widget) {
    return QByteArray(widget.metaObject()->className()).startsWith("lapwright::plots::");
}

struct Walk {
    int controls = 0;
    int plots = 0;
};

Walk hear(const QWidget& root) {
    Walk walk;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!widget->isVisible() || is_inside_of_another(*widget)) continue;
        auto* heard = QAccessible::queryAccessibleInterface(widget);
        if (heard == nullptr) {
            ADD_FAILURE() << widget->metaObject()->className() << " is not heard at all";
            continue;
        }
        const QString name = heard->text(QAccessible::Name);
        const std::string what = std::string(widget->metaObject()->className()) + " \"" +
                                 widget->objectName().toStdString() + "\" in " +
                                 widget->parentWidget()->metaObject()->className();
        if (is_plot(*widget)) {
            ++walk.plots;
            EXPECT_FALSE(name.isEmpty()) << what;
            const QString description = heard->text(QAccessible::Description);
            EXPECT_GT(description.size(), 20) << what << ": " << description.toStdString();
            EXPECT_TRUE(std::ranges::any_of(description, [](QChar c) { return c.isDigit(); }))
                << what << " says no figure: " << description.toStdString();
        }
        if (widget->focusPolicy() == Qt::NoFocus) continue;
        ++walk.controls;
        EXPECT_FALSE(name.trimmed().isEmpty()) << what;
    }
    return walk;
}

class Heard : public fixture::PairedWindowWithBook {
  protected:
    QString described(QWidget& widget) {
        return QAccessible::queryAccessibleInterface(&widget)->text(QAccessible::Description);
    }
    // While it is open, as by its command.
    template <typename Dialog>
    void hear_dialog(QAction* action) {
        action->trigger();
        Dialog* dialog = nullptr;
        ASSERT_TRUE(fixture::wait_for([&] { return (dialog = window->findChild<Dialog*>()) != nullptr; }));
        fixture::settle();
        EXPECT_GT(hear(*dialog).controls, 0);
        dialog->close();
    }
    // Of a command that waits until its dialog is closed.
    void hear_waiting_dialog(QAction* action) {
        bool heard = false;
        QTimer::singleShot(300, [&] {
            QWidget* dialog = QApplication::activeModalWidget();
            ASSERT_NE(dialog, nullptr) << action->objectName().toStdString();
            heard = true;
            EXPECT_GT(hear(*dialog).controls, 0) << action->objectName().toStdString();
            dialog->close();
        });
        action->trigger();
        EXPECT_TRUE(heard) << action->objectName().toStdString();
    }
};

} // namespace

TEST_F(Heard, OnTheFourPages) {
    const Walk compare = hear(*window);
    EXPECT_GE(compare.plots, 3);
    EXPECT_GE(compare.controls, 5);
    go_to_sessions();
    EXPECT_GE(hear(*window).controls, 5);
    window->actions().videos->trigger();
    fixture::settle();
    hear(*window);
    window->actions().show_causes->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return window->explaining().explanation() != nullptr; }, 30'000));
    fixture::settle();
    const Walk causes = hear(*window);
    EXPECT_GE(causes.plots, 1);
    EXPECT_GE(causes.controls, 5);
    window->actions().show_debrief->trigger();
    fixture::settle();
    EXPECT_GE(hear(*window).controls, 5);
}

TEST_F(Heard, TheComparisonAsText) {
    const QString words = described(window->compare_page().stack());
    const analysis::Pairing& pairing = *window->compare_page().compared()->pairing;
    EXPECT_TRUE(words.contains(QString::fromStdString(pairing.headline.verdict))) << words.toStdString();
    EXPECT_TRUE(words.contains(QString::fromStdString(pairing.headline.sentence)));
    for (const auto& one : pairing.comparison.segments)
        EXPECT_TRUE(words.contains(QString::fromStdString(one.segment.name))) << one.segment.name;
    EXPECT_TRUE(described(window->compare_page().map())
                    .contains(QString::number(static_cast<int>(std::lround(pairing.track.line.length_m)))));
    key(Qt::Key_X);
    EXPECT_NE(described(window->compare_page().stack()), words) << "it follows what is shown";
}

TEST_F(Heard, InTheBookAndOnTheStart) {
    for (QAction* action : {window->actions().book, window->actions().season, window->actions().pairings}) {
        action->trigger();
        fixture::settle();
        hear(*window);
    }
    key(Qt::Key_Escape);
    window->sessions().edit([](workspace::OpenSessions& open) {
        while (!open.entries().empty())
            open.remove(workspace::SessionKey(open.entries().front().key));
    });
    fixture::settle();
    EXPECT_GT(hear(*window).controls, 2);
}

TEST_F(Heard, InEveryDialog) {
    hear_dialog<dialogs::KeyChanger>(window->actions().change_keys);
    hear_dialog<dialogs::ChannelPicker>(window->actions().choose_channels);
    for (QAction* action :
         {window->actions().find, window->actions().keys, window->actions().about, window->actions().setup})
        hear_waiting_dialog(action);
    window->actions().trial->trigger();
    window->actions().learn->trigger();
    window->actions().wing->trigger();
    window->actions().removed->trigger();
    fixture::settle();
    int open = 0;
    for (QWidget* top : QApplication::topLevelWidgets())
        if (auto* dialog = qobject_cast<QDialog*>(top); dialog != nullptr && dialog->isVisible()) {
            ++open;
            hear(*dialog);
            dialog->close();
        }
    EXPECT_GE(open, 1);
}
