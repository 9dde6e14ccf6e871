// SPDX-License-Identifier: GPL-3.0-or-later
// The table and the plots of the page that is shown, taken
// elsewhere: CSV, SVG, PNG.  A file appears whole or not at all.
#pragma once

#include "core/base/display.h"
#include "core/base/result.h"
#include "core/sheet/csv.h"
#include "ui/plots/picture.h"

#include <QObject>
#include <QString>

class QSettings;
class QWidget;

namespace lapwright::pages {
class CausesPage;
class ComparePage;
} // namespace lapwright::pages

namespace lapwright::window {

class Exporting : public QObject {
    Q_OBJECT

  public:
    enum class View { compare, causes };

    // Pages and settings outlive it.
    Exporting(pages::ComparePage& compare, pages::CausesPage& causes, QSettings& settings, QObject* parent = nullptr);

    void set_units(base::UnitSystem units) { units_ = units; }

    void ask_and_save_table(View view, const QString& heading, QWidget* parent);
    void ask_and_save_picture(View view, const QString& heading, QWidget* parent);

    void ask_and_save_track(QWidget* parent); // gate and segments of the compared laps

    [[nodiscard]] sheet::Table table(View view) const;
    [[nodiscard]] QByteArray picture(View view, const QString& heading, plots::PictureForm form) const;

    // A picture is PNG where the name ends with .png, else SVG.
    [[nodiscard]] base::Result<void> save_table(View view, const QString& path) const;
    [[nodiscard]] base::Result<void> save_track(const QString& path) const;
    [[nodiscard]] base::Result<void> save_picture(View view, const QString& heading, const QString& path) const;

  Q_SIGNALS:
    void said(const QString& sentence); // what became of it

  private:
    [[nodiscard]] bool there_is_something(View view) const;
    [[nodiscard]] QString ask(QWidget* parent, const QString& title, const QString& name, const QString& filters,
                              const QString& ending);
    void tell(const base::Result<void>& written, const QString& path);

    pages::ComparePage& compare_;
    pages::CausesPage& causes_;
    QSettings& settings_;
    base::UnitSystem units_ = base::UnitSystem::metric;
};

} // namespace lapwright::window
