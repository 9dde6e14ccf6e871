// SPDX-License-Identifier: GPL-3.0-or-later
// The season of a track (best and median clean laps) or of a car (a fitted figure with its interval, as each session or
// all of them together tell it, and what each change of the setup did): a plot through time, and under it the same
// sessions as a table with conditions and what changed in the setup.  The row and the mark that are chosen are one
// session; Return opens it.  + and − zoom, W shows the whole season.
#pragma once

#include "core/analysis/car_season.h"
#include "core/base/display.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "ui/models/season_list.h"
#include "ui/theme/palette.h"

#include <QWidget>
#include <optional>
#include <vector>

class QComboBox;
class QFrame;
class QLabel;
class QPushButton;

namespace lapwright::plots {
class SeasonPlot;
}

namespace lapwright::theme {
class ElidedLabel;
}

namespace lapwright::pages {

class BookTable;

class SeasonView : public QWidget {
    Q_OBJECT

  public:
    explicit SeasonView(QWidget* parent = nullptr);

    void set_palette(const theme::Palette& palette);
    void set_units(base::UnitSystem units);
    // What can be chosen; asks for the season that is wanted now.
    void set_names(book::Names names);
    // The track that is looked at next.
    void want_track(const QString& track);
    void show_season(std::vector<book::SeasonSession> season);
    // Of a car from all its sessions: while it is worked out, what came out, or why nothing did.
    void show_progress(const QString& stage, double part_done);
    void show_car_season(analysis::CarSeason season);
    void show_refusal(const base::Error& error);
    void begin(); // to the list

    [[nodiscard]] models::SeasonOf of() const;
    [[nodiscard]] QString name() const; // of the track or the car
    [[nodiscard]] QComboBox& of_box() { return *of_; }
    [[nodiscard]] QComboBox& name_box() { return *name_; }
    [[nodiscard]] QComboBox& part_box() { return *part_; }
    [[nodiscard]] QPushButton& stop_button() { return *stop_; }
    [[nodiscard]] BookTable& list() { return *list_; }
    [[nodiscard]] plots::SeasonPlot& plot() { return *plot_; }
    [[nodiscard]] const models::SeasonList& model() const { return *model_; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] QString said_of_chosen() const;

  Q_SIGNALS:
    void season_asked(lapwright::models::SeasonOf of, const QString& name);
    void session_asked(const lapwright::book::SessionSummary& session);
    void stop_asked();
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fill_names();
    void fill_parts();
    void ask();
    void show_part();                        // of the season: a car's sessions, a figure
    void show_marks();                       // on the plot
    void show_working(const QString& said);  // nothing to see yet
    [[nodiscard]] QString car_words() const; // what setup changes did, and what the figures rest on
    void follow_row();
    [[nodiscard]] const book::FigureCourse* figure() const; // that is shown, of a car

    book::Names names_;
    std::vector<book::SeasonSession> season_; // all of it
    std::vector<int> row_of_mark_;
    analysis::CarSeason car_season_; // of a car from all its sessions
    QString asked_car_;              // whose is worked out or shown
    std::optional<book::SessionId> chosen_id_;
    QString wanted_track_;
    models::SeasonList* model_;
    QComboBox* of_;
    QComboBox* name_;
    QComboBox* part_;
    QPushButton* stop_;
    theme::ElidedLabel* legend_;
    QLabel* said_;
    QFrame* card_;
    plots::SeasonPlot* plot_;
    BookTable* list_;
    QLabel* chosen_;
};

} // namespace lapwright::pages
