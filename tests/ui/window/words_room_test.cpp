// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing is clipped, cut or over something else: on every page, in every dialog and menu, in each language, at the
// smallest screen that the window is made for.
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "tests/ui/fixture/room_faults.h"
#include "tests/ui/fixture/window_tour.h"
#include "ui/window/language.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <gmock/gmock.h>
#include <set>

using namespace lapwright;
using fixture::room_faults;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

// Speaks English again when it is done.
class WordsRoom : public fixture::PairedWindowWithBook, public testing::WithParamInterface<const char*> {
  protected:
    void SetUp() override {
        window::speak(QLatin1String(GetParam()));
        fixture::fill_season(book_file());
        fixture::PairedWindowWithBook::SetUp();
    }
    void TearDown() override {
        window.reset();
        window::speak(QStringLiteral("en"));
    }
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages all = fixture::PairedWindowWithBook::stages();
        all.recipe_folder = path("recipes").toStdString();
        return all;
    }
    fixture::Visit visit() {
        return [this](const char* name, QWidget& shown) {
            visited.insert(name);
            for (const std::string& fault : room_faults(shown))
                ADD_FAILURE() << name << ": " << fault;
            EXPECT_LE(shown.width(), window->width()) << name;
            EXPECT_LE(shown.height(), window->height()) << name;
        };
    }
    std::set<std::string> visited;
};

class TooNarrow : public testing::Test {
  protected:
    // Two in a row, in a room of our making.
    TooNarrow() {
        label.setText(QStringLiteral("Geschwindigkeitsunterschied"));
        button.setText(QStringLiteral("Vergleichen"));
        label.setGeometry(0, 0, 400, 40);
        button.setGeometry(400, 0, 200, 40);
        room.resize(600, 40);
        room.show();
    }
    QWidget room;
    QLabel label{&room};
    QPushButton button{&room};
};

} // namespace

TEST_P(WordsRoom, OnEveryPageInEveryDialogAndMenu) {
    fixture::visit_compare(*window, visit());
    fixture::visit_menus(*window, visit());
    fixture::visit_dialogs(*window, visit());
    fixture::visit_sessions(*window, visit());
    fixture::visit_causes(*window, visit());
    fixture::visit_start(*window, visit());
    EXPECT_GE(visited.size(), 50U);
    for (const char* name :
         {"about", "keys", "change-keys", "find", "channels", "setup", "recipes", "removed", "trial", "wing",
          "learning", "notices-in-full", "start", "columns", "print-preview", "keep-prediction", "predictions"})
        EXPECT_TRUE(visited.contains(name)) << name;
}

INSTANTIATE_TEST_SUITE_P(Languages, WordsRoom, testing::Values("en", "de", "fr", "ja"),
                         [](const auto& language) { return std::string(language.param); });

// The test must be able to fail.
TEST_F(TooNarrow, EnoughRoomIsNoFault) {
    EXPECT_THAT(room_faults(room), IsEmpty());
}

TEST_F(TooNarrow, ALabelUnlessATooltipHasTheWhole) {
    label.resize(60, 40);
    EXPECT_THAT(room_faults(room), SizeIs(1));
    label.setToolTip(label.text());
    EXPECT_THAT(room_faults(room), IsEmpty());
    label.resize(60, 4);
    EXPECT_THAT(room_faults(room), SizeIs(1)) << "too low is seen, too";
}

TEST_F(TooNarrow, AButtonAndAPlaceholderAndABox) {
    button.resize(20, 40);
    QLineEdit line(&room);
    line.setPlaceholderText(QStringLiteral("Bedingungen auf der Strecke"));
    line.setGeometry(440, 0, 40, 40);
    QComboBox box(&room);
    box.addItem(QStringLiteral("Zusammengefasste Abschnitte"));
    box.setGeometry(500, 0, 50, 40);
    line.show();
    box.show();
    EXPECT_THAT(room_faults(room), SizeIs(3));
}

TEST_F(TooNarrow, AWordThatIsLongerThanTheLine) {
    label.setWordWrap(true);
    label.resize(60, 400);
    room.resize(600, 400);
    EXPECT_THAT(room_faults(room), SizeIs(1));
}

TEST_F(TooNarrow, OneOverAnotherAndOneOutside) {
    button.move(390, 0);
    EXPECT_THAT(room_faults(room), SizeIs(1));
    button.move(500, 0);
    EXPECT_THAT(room_faults(room), SizeIs(1));
}
