// SPDX-License-Identifier: GPL-3.0-or-later
// After a run that ended without closing its window, what was open is offered, whole; after one that was closed nothing
// is; and the log of all that carries no word of what was opened.
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/theme/note_field.h"
#include "ui/window/restoring.h"

#include <QDir>
#include <QPlainTextEdit>
#include <QPushButton>
#include <random>

using namespace lapwright;
using window::RunFile;
using window::RunState;

namespace {

class AfterACrash : public fixture::PairedWindowWithBook {
  protected:
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages with_state = PairedWindowWithBook::stages();
        with_state.state_folder = path("state").toStdString();
        return with_state;
    }
    pages::StartView& start() { return window->sessions_page().start(); }
    // What was written down last stays, as of a process that is gone.
    void crash() {
        QTest::qWait(2000); // longer than the pause after which it is written down
        window->restoring().file().abandon();
        for (auto* field : window->findChildren<theme::NoteField*>())
            field->let_go(); // a window that goes would keep what is typed
        show_window();
        window->start({});
        fixture::settle();
    }
};

} // namespace

TEST_F(AfterACrash, WhatWasOpenIsOfferedAndOpenedWithItsLapsPageAndWhatWasBeingTyped) {
    const workspace::Picks picks = window->sessions().now().picks();
    window->compare_page().choose(1);
    window->compare_page().write_note(workspace::Side::b);
    type(QStringLiteral("brakes fade here"));
    crash();
    EXPECT_TRUE(window->sessions().now().entries().empty()) << "nothing is opened unasked";
    ASSERT_TRUE(start().restore().isVisible());
    start().restore().click();
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }, 30'000));
    fixture::settle();
    EXPECT_EQ(window->sessions().now().entries().size(), 2U);
    EXPECT_EQ(window->sessions().now().picks(), picks);
    window->compare_page().choose(1);
    EXPECT_EQ(window->compare_page().card().note(workspace::Side::b).note(), QStringLiteral("brakes fade here"));
    EXPECT_FALSE(window->actions().restore->isEnabled()) << "once";
}

TEST_F(AfterACrash, ANoteOnALapIsThereAgainOnTheSessionsPage) {
    go_to_sessions();
    pages::SessionCard* card = window->sessions_page().cards().front();
    card->write_lap_note();
    type(QStringLiteral("yellow flag"));
    const int lap = card->laps().current_lap();
    const workspace::SessionKey key = card->key();
    crash();
    window->actions().restore->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 2; }, 30'000));
    fixture::settle();
    EXPECT_EQ(window->notes().text({key, lap}), QStringLiteral("yellow flag"));
    EXPECT_FALSE(window->on_compare_page());
}

TEST_F(AfterACrash, DeclinedItIsNotOfferedAgain) {
    crash();
    ASSERT_TRUE(start().restore().isVisible());
    Q_EMIT start().restore_declined();
    EXPECT_FALSE(start().restore().isVisible());
    window.reset();
    show_window();
    EXPECT_FALSE(start().restore().isVisible());
}

TEST_F(AfterACrash, StillOfferedWhenTheNextRunCrashesToo) {
    crash();
    crash();
    EXPECT_TRUE(start().restore().isVisible());
}

TEST_F(AfterACrash, AWindowThatWasClosedOffersNothingAndReopensThePairingAsEver) {
    QTest::qWait(500);
    window->close();
    window.reset();
    show_window();
    EXPECT_FALSE(start().restore().isVisible());
    window->start({});
    EXPECT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }, 30'000));
}

TEST_F(AfterACrash, OfAWindowThatStillRunsNothingIsTaken) {
    QTest::qWait(500);
    window::MainWindow second(stages(), settings);
    second.show();
    EXPECT_FALSE(second.sessions_page().start().restore().isVisible());
    EXPECT_FALSE(window->sessions().now().entries().empty());
}

TEST_F(AfterACrash, TheLogLiesInTheFolderOfTheState) {
    EXPECT_TRUE(window->actions().show_log->isEnabled());
    EXPECT_TRUE(QFile::exists(path("state/lapwright.log")));
}

TEST(RunStates, DrawnAtRandomReadBackAsTheyWere) {
    std::mt19937 draw(4);
    for (int i = 0; i < 200; ++i) {
        RunState state;
        state.book = QStringLiteral("/book %1").arg(draw() % 7);
        const auto origin = [&]() -> workspace::Origin {
            if (draw() % 2 == 0) return "/a \"path\"/é" + std::to_string(draw() % 9);
            return book::SessionId{static_cast<std::int64_t>(draw() % 90)};
        };
        for (auto n = 1 + draw() % 5; n > 0; --n)
            state.sessions.push_back(origin());
        if (draw() % 2 == 0) state.a = RunState::Lap{origin(), static_cast<int>(draw() % 40)};
        if (draw() % 2 == 0) state.b = RunState::Lap{origin(), static_cast<int>(draw() % 40)};
        state.page = static_cast<int>(draw() % 4);
        for (auto n = draw() % 3; n > 0; --n) {
            RunState::Draft draft{{}, QStringLiteral("words\n%1").arg(draw())};
            for (auto& byte : draft.about.session.checksum)
                byte = static_cast<std::uint8_t>(draw());
            if (draw() % 2 == 0) draft.about.lap = static_cast<int>(draw() % 9);
            if (draw() % 2 == 0) draft.about.segment = "Sweep & Co";
            if (draw() % 2 == 0) draft.about.at_m = 0.25 * static_cast<double>(draw() % 9000);
            state.drafts.push_back(draft);
        }
        const QByteArray text = window::run_state_text(state);
        const auto read = window::parse_run_state(text);
        ASSERT_TRUE(read);
        EXPECT_EQ(window::run_state_text(*read), text);
        EXPECT_EQ(read->sessions, state.sessions);
        ASSERT_EQ(read->drafts.size(), state.drafts.size());
        for (std::size_t d = 0; d < state.drafts.size(); ++d) {
            EXPECT_TRUE(read->drafts[d].about.same_thing(state.drafts[d].about));
            EXPECT_EQ(read->drafts[d].text, state.drafts[d].text);
        }
        QByteArray cut = text.left(static_cast<int>(draw() % static_cast<unsigned>(text.size())));
        (void)window::parse_run_state(cut); // whatever a crash left
        cut = text;
        cut[static_cast<int>(draw() % static_cast<unsigned>(cut.size()))] = static_cast<char>(draw());
        (void)window::parse_run_state(cut);
    }
    EXPECT_FALSE(window::parse_run_state({}));
    EXPECT_FALSE(window::parse_run_state("[]"));
    EXPECT_FALSE(window::parse_run_state(R"({"sessions": [{"file": ""}, 7, null]})"));
}

namespace {

// A recording in which everything that a person could mind is marked.
class Marked : public testing::Test {
  protected:
    static QByteArray marked_recording() {
        QByteArray text = "Driver: MARKEDDRIVER\nVehicle: MARKEDCAR\nTrack: MARKEDTRACK\n\n"
                          "time (s),speed (km/h),latitude (deg),longitude (deg),MARKEDCHANNEL (bar)\n";
        for (int i = 0; i < 4000; ++i) {
            const double angle = 0.0125 * i; // some eight laps of a circle
            text += QByteArray::number(0.1 * i, 'f', 1) + ",95.4773," +
                    QByteArray::number(54.7654321 + 0.0019 * std::sin(angle), 'f', 7) + "," +
                    QByteArray::number(2.3456789 + 0.0033 * std::cos(angle), 'f', 7) + ",77.125\n";
        }
        return text;
    }
    static void expect_nothing_private(const QByteArray& log) {
        const QByteArray lower = log.toLower();
        for (const char* mark : {"marked", "54.7", "2.34", "2.35", "95.47", "95.5", "26.5", "77.1", ".csv", ".txt", "/",
                                 "\\", "home", "tmp", "bad"})
            EXPECT_FALSE(lower.contains(mark)) << mark << " in\n" << log.toStdString();
    }

    QTemporaryDir folder{QDir::tempPath() + QStringLiteral("/MARKEDFOLDER-") + QString(6, QLatin1Char('X'))};
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
};

} // namespace

TEST_F(Marked, NothingOfARecordingComesIntoTheLog) {
    const QString good = folder.filePath(QStringLiteral("MARKEDFILE.csv"));
    for (const auto& [name, content] :
         {std::pair(good, marked_recording()),
          std::pair(folder.filePath(QStringLiteral("MARKEDBROKEN.txt")), QByteArray("MARKEDWORDS of no table\n"))}) {
        QFile file(name);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
    }
    bridge::Stages stages = bridge::analysis_stages({}, folder.filePath(QStringLiteral("MARKEDBOOK")).toStdString());
    stages.state_folder = folder.filePath(QStringLiteral("MARKEDSTATE")).toStdString();
    {
        window::MainWindow window(stages, settings);
        window.show();
        window.open({good, folder.filePath(QStringLiteral("MARKEDBROKEN.txt")),
                     folder.filePath(QStringLiteral("MARKEDMISSING.csv"))});
        ASSERT_TRUE(fixture::wait_for([&] { return window.sessions().now().entries().size() == 1; }, 60'000));
        ASSERT_GE(window.sessions().now().entries().front().session->laps.size(), 3U)
            << window.sessions().now().entries().front().session->why_no_laps->what;
        const auto key = window.sessions().now().entries().front().key;
        window.notes().put({key, 1}, QStringLiteral("MARKEDNOTE"));
        window.sessions().edit([&](workspace::OpenSessions& open) {
            open.pick(workspace::Side::a, {key, 1});
            open.pick(workspace::Side::b, {key, 2});
        });
        window.actions().show_causes->trigger();
        ASSERT_TRUE(fixture::wait_for([&] { return window.pairing().compared() != nullptr; }, 60'000));
        qWarning("MARKEDWARNING about %s", qPrintable(good));
        fixture::settle();
    }
    QFile log(folder.filePath(QStringLiteral("MARKEDSTATE/lapwright.log")));
    ASSERT_TRUE(log.open(QIODevice::ReadOnly));
    const QByteArray text = log.readAll();
    for (const char* event :
         {"the program began", "a session was read", "a file was refused", "Qt warned", "the window was closed"})
        EXPECT_TRUE(text.contains(event)) << event << " not in\n" << text.toStdString();
    expect_nothing_private(text);
}
