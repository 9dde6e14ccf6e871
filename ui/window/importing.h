// SPDX-License-Identifier: GPL-3.0-or-later
// What files mean, asked and remembered: the column dialog for a session's file, by itself where the import had to
// guess, and the recipes that are kept of the answers.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/base/error.h"
#include "core/import/formats/recipe_folder.h"
#include "core/workspace/open_sessions.h"
#include "ui/bridge/worker.h"
#include "ui/theme/palette.h"

#include <QObject>
#include <QPointer>
#include <QSet>
#include <QString>
#include <QStringList>
#include <string>

class QWidget;

namespace lapwright::dialogs {
class ColumnDialog;
}

namespace lapwright::window {

class Importing : public QObject {
    Q_OBJECT

  public:
    // Worker and window outlive it.
    Importing(bridge::Worker& worker, const std::string& recipe_folder, QWidget* window);

    void set_units(base::UnitSystem units) { units_ = units; }
    void set_palette(const theme::Palette& palette) { palette_ = palette; }

    // A file that was read with doubts is asked about once a run, and so is one that was read with any guess and has no
    // laps; one that could not be read for want of an answer each time.
    void note_session(const QString& path, const analysis::Session& session);
    void note_refusal(const QString& path, const base::Error& error);
    // Opens the dialog for the next file that asks; false when there is none.
    bool ask_next();
    // The dialog for this session's file, whether it asks or not.
    void ask_about(const workspace::OpenSessions::Entry& session);
    void ask(const QString& path);
    void show_recipes();

  Q_SIGNALS:
    // The answer is kept: this file means something else now, and so does each other one of its shape.
    void read_again(const QString& path);
    void answered();                       // kept or not, the next may ask
    void refused(const QString& sentence); // there is nothing to be asked of this file

  private:
    void open(const QString& path, bool by_itself);
    void answered_for(const QString& path);
    void opened_preview(const QString& path, const bridge::PreviewPointer& preview);

    bridge::Worker& worker_;
    import::RecipeFolder folder_;
    QWidget* window_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    theme::Palette palette_ = theme::paper();
    QStringList waiting_;
    QSet<QString> asked_;
    QStringList seen_; // files, read or refused
    QPointer<dialogs::ColumnDialog> dialog_;
    bool by_itself_ = false;
};

} // namespace lapwright::window
