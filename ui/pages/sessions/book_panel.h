// SPDX-License-Identifier: GPL-3.0-or-later
// The book on the Sessions page, in three parts of which one is shown: its sessions, the season, the kept pairings.
#pragma once

#include <QWidget>
#include <array>

class QStackedWidget;
class QToolButton;

namespace lapwright::pages {

class BookView;
class PairingsView;
class SeasonView;

class BookPanel : public QWidget {
    Q_OBJECT

  public:
    enum class Part { sessions, season, pairings };

    explicit BookPanel(QWidget* parent = nullptr);

    void show_part(Part part); // and its keys
    [[nodiscard]] Part part() const;
    [[nodiscard]] BookView& sessions() { return *sessions_; }
    [[nodiscard]] SeasonView& season() { return *season_; }
    [[nodiscard]] PairingsView& pairings() { return *pairings_; }

  Q_SIGNALS:
    void part_asked(lapwright::pages::BookPanel::Part part); // by the mouse
    void left();

  private:
    BookView* sessions_;
    SeasonView* season_;
    PairingsView* pairings_;
    QStackedWidget* stack_;
    std::array<QToolButton*, 3> buttons_;
};

} // namespace lapwright::pages
