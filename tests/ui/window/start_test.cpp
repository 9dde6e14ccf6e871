// SPDX-License-Identifier: GPL-3.0-or-later
// The Sessions page while no session is open: what the book has last is there and is opened, samples can be tried.
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/window/beginning.h"
#include "ui/window/samples.h"

#include <QDir>
#include <QHeaderView>
#include <QMenu>
#include <QPushButton>

using namespace lapwright;

namespace {

class Start : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        ids = fixture::fill_season(book_file());
        show_window();
        window->start({});
        fixture::settle();
    }
    pages::StartView& view() { return window->sessions_page().start(); }

    std::vector<book::SessionId> ids;
};

} // namespace

TEST_F(Start, WhatWasComparedAndDrivenLastIsThereAndReturnOpensIt) {
    ASSERT_TRUE(fixture::wait_for([this] { return view().sessions().model()->rowCount() == 4; }));
    EXPECT_EQ(view().pairings().model()->rowCount(), 1);
    EXPECT_TRUE(view().sessions().isVisible());
    view().pairings().setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }, 30'000));
    EXPECT_EQ(window->sessions().now().entries().size(), 2U);
    go_to_sessions();
    EXPECT_FALSE(view().isVisible()) << "it gives way to what is open";
}

TEST_F(Start, ASessionOpensFromItsRowAndClosingTheLastOneLeadsBack) {
    ASSERT_TRUE(fixture::wait_for([this] { return view().sessions().model()->rowCount() == 4; }));
    view().sessions().setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 1; }, 30'000));
    EXPECT_FALSE(view().isVisible());
    window->sessions().edit([](workspace::OpenSessions& open) { open.remove(open.entries().front().key); });
    fixture::settle();
    EXPECT_TRUE(view().isVisible());
}

TEST_F(Start, TheSampleSessionsAreTriedByOneClick) {
    view().set_samples(true);
    int asked = 0;
    QObject::connect(&view(), &pages::StartView::samples_asked, [&] { ++asked; });
    view().samples().click();
    EXPECT_EQ(asked, 1);
}

namespace {

class NewInFolder : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        ASSERT_TRUE(card.isValid());
        settings.setValue(QStringLiteral("folder"), card.path());
        show_window();
        window->start({});
        fixture::settle();
    }
    void write(const char* name) const {
        QFile file(card.filePath(QLatin1String(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray("# ") + name + "\n"); // two files of the same bytes would be one session
        file.write("time (s),speed (km/h),latitude (deg),longitude (deg)\n");
        for (int i = 0; i < 60; ++i)
            file.write(QByteArray::number(0.1 * i) + ",90.0,54.9" + QByteArray::number(100000 + 9 * i) + ",2.35\n");
    }
    [[nodiscard]] int rows() { return view().new_files().model()->rowCount(); }
    pages::StartView& view() { return window->sessions_page().start(); }

    QTemporaryDir card;
};

} // namespace

TEST_F(NewInFolder, WhatComesIntoTheFolderIsOfferedOpenedAndNoLongerNew) {
    EXPECT_FALSE(view().new_files().isVisible());
    write("run 1.csv");
    write("run 2.csv");
    ASSERT_TRUE(fixture::wait_for([this] { return rows() == 2; }));
    EXPECT_TRUE(view().new_files().isVisible());
    view().new_files().setFocus();
    view().new_files().selectAll();
    press(Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 2; }, 30'000));
    ASSERT_TRUE(fixture::wait_for([this] { return rows() == 0; }));
    const auto recent = window->actions().recent_menu->actions();
    ASSERT_EQ(recent.size(), 2);
    EXPECT_TRUE(recent.front()->text().contains(QStringLiteral("run "))) << recent.front()->text().toStdString();
    write("run 3.csv"); // the third outing, while the others are open
    auto* button = window->sessions_page().findChild<QPushButton*>(QStringLiteral("new files"));
    ASSERT_NE(button, nullptr);
    ASSERT_TRUE(fixture::wait_for([&] { return button->isVisible(); }));
    button->menu()->actions().front()->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 3; }, 30'000));
    ASSERT_TRUE(fixture::wait_for([&] { return !button->isVisible(); }));
}

TEST_F(NewInFolder, AFileOpenedBeforeIsOpenedFromTheMenuInTheNextRun) {
    write("run 1.csv");
    window->open({card.filePath(QStringLiteral("run 1.csv"))});
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 1; }, 30'000));
    window->close();
    show_window();
    window->start({});
    ASSERT_EQ(window->actions().recent_menu->actions().size(), 1);
    window->actions().recent_menu->actions().front()->trigger();
    EXPECT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 1; }, 30'000));
}

TEST(NewFiles, OnAVolumeThatIsMountedMeanwhileAreFound) {
    QTemporaryDir card;
    QStringList mounted;
    window::NewFiles files([&] { return mounted; });
    files.begin();
    fixture::settle();
    ASSERT_TRUE(QDir(card.path()).mkpath(QStringLiteral("LOG/2026")));
    QFile file(card.filePath(QStringLiteral("LOG/2026/run.csv")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("time (s),speed (km/h)\n");
    for (int i = 0; i < 60; ++i)
        file.write(QByteArray::number(0.1 * i) + ",90.0\n");
    file.close();
    ASSERT_TRUE(file.setPermissions(QFile::ReadOwner)); // as on a locked card
    mounted << card.path();
    ASSERT_TRUE(fixture::wait_for([&] { return files.now().size() == 1; }));
    mounted.clear();
    EXPECT_TRUE(fixture::wait_for([&] { return files.now().empty(); })) << "it is taken out again";
}

TEST_F(Start, APairingAndASessionHaveTheirPicturesOfTheBook) {
    ASSERT_TRUE(fixture::wait_for([this] { return view().sessions().model()->rowCount() == 4; }));
    const auto picture = [](pages::BookTable& list) {
        return list.grab(QRect(2, list.horizontalHeader()->height() + 2, 68, 30)).toImage();
    };
    const QImage no_track = picture(view().sessions());
    const QImage no_gap = picture(view().pairings());
    book::Pictures pictures;
    pictures.outlines[view().shown_sessions().front().id] = {{0.0F, 0.0F}, {300.0F, 20.0F}, {150.0F, 400.0F}};
    pictures.gaps[view().shown_pairings().front().kept.id] = {0.0F, 0.4F, -0.2F, 0.3F};
    view().show_pictures(pictures);
    fixture::settle();
    EXPECT_NE(picture(view().sessions()), no_track);
    EXPECT_NE(picture(view().pairings()), no_gap);
}
