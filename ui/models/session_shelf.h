// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions that are open, and which of their laps are A and B.
#pragma once

#include "core/analysis/analysis.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::models {

enum class Side { a, b };

struct LapPick {
    QString path; // of the session's file
    int lap = 0;  // its number
    // Nobody chose this lap: a comparison takes the fastest clean one on the line of both, which may be another.
    bool fastest = false;

    // The same lap, however it came to be picked.
    friend bool operator==(const LapPick& a, const LapPick& b) { return a.path == b.path && a.lap == b.lap; }
};

class SessionShelf : public QObject {
    Q_OBJECT

  public:
    using SessionPointer = std::shared_ptr<const analysis::Session>;
    struct Entry {
        QString path;
        SessionPointer session;
    };

    using QObject::QObject;

    // Files that are being read, in the order in which they shall stand, whichever is ready first.
    void expect(const QStringList& paths);
    // A file that comes again takes its old place and keeps picks that still exist.
    void add(const QString& path, SessionPointer session);
    void remove(const QString& path);
    // Both are one session: the one that stays takes the other's place, if that is further up, and its picks.
    void unite(const QString& stays, const QString& goes);
    [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }
    [[nodiscard]] SessionPointer session(const QString& path) const; // null when it is not open

    void pick(Side side, const LapPick& pick); // a lap that does not exist is not picked
    void pick_fastest(Side side, const QString& path);
    void swap();
    // Both at once; a lap that does not exist is not picked.
    void put_picks(const std::optional<LapPick>& a, const std::optional<LapPick>& b);
    // The laps that a comparison took where nobody chose one.
    void take_fastest(int lap_a, int lap_b);
    // Where a side is free: the fastest lap of the first session that the other side does not use.
    void pick_defaults();
    [[nodiscard]] const std::optional<LapPick>& picked(Side side) const;
    [[nodiscard]] bool complete() const { return a_ && b_; }

  Q_SIGNALS:
    void sessions_changed();
    void picks_changed();

  private:
    [[nodiscard]] bool exists(const LapPick& pick) const;
    void drop_lost_picks();

    QStringList order_;
    std::vector<Entry> entries_;
    std::optional<LapPick> a_;
    std::optional<LapPick> b_;
};

} // namespace lapwright::models
