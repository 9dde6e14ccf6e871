// SPDX-License-Identifier: GPL-3.0-or-later
// The season of a track (best and median clean laps) or of a car (a fitted figure with its interval): a plot through
// time, and under it the same sessions as a table with conditions and what changed in the setup.  The row and the mark
// that are chosen are one session; Return opens it.  + and − zoom, W shows the whole season.
#pragma once

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
    void begin(); // to the list

    [[nodiscard]] models::SeasonOf of() const;
    [[nodiscard]] QString name() const; // of the track or the car
    [[nodiscard]] QComboBox& of_box() { return *of_; }
    [[nodiscard]] QComboBox& name_box() { return *name_; }
    [[nodiscard]] QComboBox& part_box() { return *part_; }
    [[nodiscard]] BookTable& list() { return *list_; }
    [[nodiscard]] plots::SeasonPlot& plot() { return *plot_; }
    [[nodiscard]] const models::SeasonList& model() const { return *model_; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] QString said_of_chosen() const;

  Q_SIGNALS:
    void season_asked(lapwright::models::SeasonOf of, const QString& name);
    void session_asked(const lapwright::book::SessionSummary& session);
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fill_names();
    void fill_parts();
    void ask();
    void show_part();  // of the season: a car's sessions, a figure
    void show_marks(); // on the plot
    void follow_row();
    [[nodiscard]] const book::FigureCourse* figure() const; // that is shown, of a car

    book::Names names_;
    std::vector<book::SeasonSession> season_; // all of it
    std::vector<int> row_of_mark_;
    std::optional<book::SessionId> chosen_id_;
    QString wanted_track_;
    models::SeasonList* model_;
    QComboBox* of_;
    QComboBox* name_;
    QComboBox* part_;
    theme::ElidedLabel* legend_;
    QLabel* said_;
    QFrame* card_;
    plots::SeasonPlot* plot_;
    BookTable* list_;
    QLabel* chosen_;
};

} // namespace lapwright::pages
