// SPDX-License-Identifier: GPL-3.0-or-later
// The book on the Sessions page, in four parts of which one is shown: its sessions, the season, the kept pairings and
// predictions.
#pragma once

#include <QWidget>
#include <array>

class QStackedWidget;
class QToolButton;

namespace lapwright::pages {

class BookView;
class PairingsView;
class PredictionsView;
class SeasonView;

class BookPanel : public QWidget {
    Q_OBJECT

  public:
    enum class Part { sessions, season, pairings, predictions };

    explicit BookPanel(QWidget* parent = nullptr);

    void show_part(Part part); // and its keys
    [[nodiscard]] Part part() const;
    [[nodiscard]] BookView& sessions() { return *sessions_; }
    [[nodiscard]] SeasonView& season() { return *season_; }
    [[nodiscard]] PairingsView& pairings() { return *pairings_; }
    [[nodiscard]] PredictionsView& predictions() { return *predictions_; }

  Q_SIGNALS:
    void part_asked(lapwright::pages::BookPanel::Part part); // by the mouse
    void left();

  private:
    BookView* sessions_;
    SeasonView* season_;
    PairingsView* pairings_;
    PredictionsView* predictions_;
    QStackedWidget* stack_;
    std::array<QToolButton*, 4> buttons_;
};

} // namespace lapwright::pages
