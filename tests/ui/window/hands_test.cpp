// SPDX-License-Identifier: GPL-3.0-or-later
// Menus under the pointer, the clipboard, the printer, a swap at once, and notices that move nothing.
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/debrief/sheet_view.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/notices.h"
#include "ui/window/printing.h"

#include <QClipboard>
#include <QContextMenuEvent>
#include <QMenu>
#include <QMimeData>
#include <QPrinter>
#include <QPushButton>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;

namespace {

class Hands : public fixture::PairedWindow {
  protected:
    QMenu* menu_on(QWidget& widget) {
        const QPoint at = widget.rect().center();
        QContextMenuEvent event(QContextMenuEvent::Mouse, at, widget.mapToGlobal(at));
        QApplication::sendEvent(&widget, &event);
        fixture::settle();
        return qobject_cast<QMenu*>(QApplication::activePopupWidget());
    }
    void expect_menu(QWidget& widget, QAction* with) {
        QMenu* menu = menu_on(widget);
        ASSERT_NE(menu, nullptr);
        EXPECT_TRUE(menu->actions().contains(with)) << with->text().toStdString();
        menu->close();
        fixture::settle();
    }
    static QString clipboard() { return QApplication::clipboard()->text(); }
};

} // namespace

TEST_F(Hands, EveryPageHasAMenuUnderThePointer) {
    expect_menu(window->compare_page(), window->actions().copy_table);
    go_to_sessions();
    pages::LapList& laps = window->sessions_page().cards().at(1)->laps();
    expect_menu(laps, window->actions().take_a);
    EXPECT_TRUE(laps.hasFocus()) << "what is chosen there is done to this card";
    key(Qt::Key_3, Qt::ControlModifier);
    expect_menu(window->causes_page(), window->actions().setup);
    key(Qt::Key_4, Qt::ControlModifier);
    expect_menu(window->debrief_page(), window->actions().print);
}

TEST_F(Hands, TablesAndPicturesGoToTheClipboard) {
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_THAT(clipboard().toStdString(), HasSubstr("segment\t"));
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasFormat(QStringLiteral("text/csv")));
    key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_GE(QApplication::clipboard()->image().width(), 800);
    go_to_sessions();
    window->sessions_page().cards().front()->laps().setFocus();
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_THAT(clipboard().toStdString(), HasSubstr("lap\tkind\t"));
}

TEST_F(Hands, ASheetIsPrintedOnTheChosenPaper) {
    key(Qt::Key_4, Qt::ControlModifier);
    const auto& sheet = window->debrief_page().view().sheet();
    ASSERT_TRUE(sheet.has_value());
    for (const bool both : {false, true}) {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        const QString file = path(both ? "both.pdf" : "one.pdf");
        printer.setOutputFileName(file);
        const paper::PdfOptions options{paper::PaperSize::us_letter, both};
        window::prepare(printer, *sheet, options);
        window::print_on(printer, *sheet, options);
        QFile written(file);
        ASSERT_TRUE(written.open(QIODevice::ReadOnly));
        const QByteArray bytes = written.readAll();
        EXPECT_TRUE(bytes.startsWith("%PDF"));
        EXPECT_EQ(bytes.count("/Type /Page\n"), both ? 2 : 1);
        EXPECT_TRUE(bytes.contains("612"));
    }
}

TEST_F(Hands, ASwapIsShownBeforeAnythingElseHappens) {
    const auto before = window->compare_page().compared();
    window->actions().swap->trigger(); // no event is handled between
    const auto after = window->compare_page().compared();
    ASSERT_NE(before, after);
    EXPECT_EQ(after->pairing->a.lap.number, before->pairing->b.lap.number);
    EXPECT_DOUBLE_EQ(after->pairing->comparison.segments.front().gain_s.value,
                     -before->pairing->comparison.segments.front().gain_s.value);
}

TEST_F(Hands, ANoticeMovesNothingUnderThePointer) {
    go_to_sessions();
    const auto* button = window->sessions_page().findChild<QPushButton*>();
    const QRect before(button->mapToGlobal(QPoint()), button->size());
    window->open({path("bad.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->notices().isVisible(); }));
    fixture::settle();
    EXPECT_EQ(QRect(button->mapToGlobal(QPoint()), button->size()), before);
    key(Qt::Key_Escape);
    EXPECT_FALSE(window->notices().isVisible());
    EXPECT_EQ(QRect(button->mapToGlobal(QPoint()), button->size()), before);
}
