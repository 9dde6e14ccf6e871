// SPDX-License-Identifier: GPL-3.0-or-later
// Tables drawn in dialects of clocks, places and numbers (frames, primes, days, ticks; letters, sides, whole parts of a
// degree; accelerations that count the other way round; lines between names and readings; other encodings) come out as
// they were driven.  LAPWRIGHT_DRAWN_TABLES says how many are drawn (40).
#include "core/import/drawn_tables.h"

#include "core/import/formats/import.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <map>

namespace lapwright::import {
namespace {

using drawn::between;
using drawn::DriveRow;
using drawn::Engine;
using drawn::fixed;
using drawn::pick;
using drawn::whole;
using recording::Channel;
using recording::Meaning;
using recording::WarningKind;

constexpr double degree = std::numbers::pi / 180.0;
constexpr double gravity = 9.80665;

struct Written {
    std::string header;
    std::string unit; // for a row of units, or in brackets
    std::function<std::string(std::size_t)> cell;
    Meaning meaning = Meaning::other;
    double DriveRow::* place = nullptr;
    double tolerance = 0.0;
    std::function<bool(std::size_t)> absent{};
};

// Names in the languages of the dialects; the last two are Japanese, as Shift-JIS and EUC-JP write it.
struct Names {
    std::string time, latitude, longitude, speed, along, across;
};
const std::vector<Names>& languages() {
    static const std::vector<Names> all{
        {"Time", "Latitude", "Longitude", "Speed", "Longitudinal acceleration", "Lateral acceleration"},
        {"Zeit", "Breite", "Laenge", "Geschwindigkeit", "Laengsbeschleunigung", "Querbeschleunigung"},
        {"Temps", "Latitude", "Longitude", "Vitesse", "Acceleration longitudinale", "Acceleration laterale"},
        {"\x8e\x9e\x8a\xd4", "\x88\xdc\x93\x78", "\x8c\x6f\x93\x78", "\x91\xac\x93\x78",
         "\x91\x4f\x8c\xe3\x89\xc1\x91\xac\x93\x78", "\x89\xa1\x89\xc1\x91\xac\x93\x78"},
        {"\xbb\xfe\xb4\xd6", "\xb0\xde\xc5\xd9", "\xb7\xd0\xc5\xd9", "\xc2\xae\xc5\xd9",
         "\xc1\xb0\xb8\xe5\xb2\xc3\xc2\xae\xc5\xd9", "\xb2\xa3\xb2\xc3\xc2\xae\xc5\xd9"}};
    return all;
}

class Dialect {
  public:
    explicit Dialect(std::uint64_t seed)
        : engine_(seed), rate_hz_(pick<double>(engine_, {10.0, 20.0, 25.0, 50.0})),
          drive_(drawn::drive(engine_, rate_hz_, between(engine_, 100.0, 150.0))),
          language_(engine_() % 8 < 4 ? 0 : 1 + engine_() % 4), names_(languages()[language_]) {
        draw_clock();
        draw_places();
        draw_speed();
        draw_acceleration(names_.along, Meaning::longitudinal_acceleration, &DriveRow::longitudinal_mps2);
        draw_acceleration(names_.across, Meaning::lateral_acceleration, &DriveRow::lateral_mps2);
        for (std::size_t extra = engine_() % 3; extra > 0; --extra)
            columns_.push_back({"Flurb " + whole(extra), "", [this](std::size_t i) {
                                    return fixed(20.0 + std::sin(0.01 * static_cast<double>(i)), 2);
                                }});
        write();
    }

    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] const drawn::Drive& drive() const { return drive_; }
    [[nodiscard]] const std::vector<Written>& columns() const { return columns_; }
    [[nodiscard]] std::size_t first_line() const { return first_line_; }
    [[nodiscard]] double clock_step_s() const { return clock_step_s_; }
    [[nodiscard]] std::string told() const { return clock_ + ", " + places_ + ", " + speed_ + ", " + lines_; }

  private:
    void clock(const std::string& kind, double step_s, std::function<std::string(double)> cell,
               const std::string& unit = "") {
        clock_ = kind;
        clock_step_s_ = step_s;
        columns_.push_back({names_.time, unit, [this, cell](std::size_t i) { return cell(drive_.rows[i].time_s); }});
    }

    // "11:08:31" and the part of a second in so many parts.
    static std::string in_parts(double time_s, int parts) {
        const auto all = static_cast<std::size_t>(std::floor(time_s * parts + 1e-6));
        const auto per = static_cast<std::size_t>(parts);
        const auto two = [](std::size_t n) { return whole(100 + n).substr(1); };
        const std::size_t s = all / per;
        const std::string last = parts == 10 ? whole(all % per) : two(all % per);
        return two(s / 3600) + ":" + two(s / 60 % 60) + ":" + two(s % 60) + ":" + last;
    }

    static std::string in_minutes(double time_s, const std::string& minute, const std::string& second,
                                  const std::string& end) {
        const auto ms = static_cast<std::size_t>(std::llround(time_s * 1e3));
        return whole(ms / 60'000) + minute + whole(100 + ms / 1000 % 60).substr(1) + second +
               whole(1000 + ms % 1000).substr(1) + end;
    }

    void draw_clock() {
        const double start_s = std::floor(between(engine_, 0.0, 80'000.0));
        switch (engine_() % 11) {
        case 0:
            return clock("hundredths", 0.01, [=](double t) { return in_parts(start_s + t, 100); });
        case 1:
            if (rate_hz_ == 25.0 || rate_hz_ == 50.0) {
                const int frames = static_cast<int>(rate_hz_);
                return clock("frames", 1.0 / frames, [=](double t) { return in_parts(start_s + t, frames); });
            }
            if (rate_hz_ == 10.0) return clock("tenths", 0.1, [=](double t) { return in_parts(start_s + t, 10); });
            [[fallthrough]];
        case 2:
            return clock("minute and point", 0.001, [](double t) { return in_minutes(t, "'", ".", ""); });
        case 3:
            return clock("minute and second", 0.001, [](double t) { return in_minutes(t, "'", "\"", ""); });
        case 4:
            return clock("part of a day", 2e-4, [=](double t) { return fixed((start_s + t) / 86400.0, 9); });
        case 5:
            return clock("hours", 1e-4, [](double t) { return fixed(t / 3600.0, 8); }, engine_() % 2 ? "h" : "");
        case 6:
            return clock("minutes", 1e-3, [](double t) { return fixed(t / 60.0, 6); }, engine_() % 2 ? "min" : "");
        case 7:
            return clock("ticks", 0.01, [](double t) { return fixed(t * 100.0, 0); });
        case 8:
            return clock("milliseconds", 1e-3, [](double t) { return fixed(t * 1e3, 0); });
        case 9:
            return clock("fine ticks", 1e-4, [](double t) { return fixed(t * 1e4, 0); });
        default:
            return clock("seconds", 1e-3, [](double t) { return fixed(t, 3); }, "s");
        }
    }

    void place(const std::string& header, const std::string& unit, Meaning meaning, double DriveRow::* where,
               double step, std::function<std::string(double)> cell) {
        columns_.push_back({header, unit,
                            [this, where, cell](std::size_t i) { return cell(drive_.rows[i].*where / degree); },
                            meaning, where, 0.51 * step * degree + 1e-12});
    }

    // "05207.40421": degrees, minutes without marks.
    static std::string packed(double degrees, std::size_t digits) {
        const double size = std::abs(degrees);
        auto whole_degrees = std::floor(size);
        auto minutes = (size - whole_degrees) * 60.0;
        if (minutes > 59.999994) {
            minutes = 0.0;
            whole_degrees += 1.0;
        }
        const std::string shown = whole(static_cast<std::size_t>(1000.0 + whole_degrees)).substr(4 - digits);
        return shown + fixed(100.0 + minutes, 5).substr(1);
    }

    // Of which only the motion says how much one is.
    [[nodiscard]] bool open_clock() const {
        return clock_.ends_with("ticks") || clock_.starts_with("hour") || clock_ == "minutes" ||
               clock_ == "part of a day";
    }

    void draw_places() {
        const bool south = drive_.rows.front().latitude < 0.0;
        const bool west = drive_.rows.front().longitude < 0.0;
        const auto both = [&](const std::string& kind, double step, auto latitude, auto longitude,
                              const std::string& unit = "", const std::string& lat_side = "",
                              const std::string& lon_side = "") {
            places_ = kind;
            place(names_.latitude + lat_side, unit, Meaning::latitude, &DriveRow::latitude, step, latitude);
            place(names_.longitude + lon_side, unit, Meaning::longitude, &DriveRow::longitude, step, longitude);
        };
        switch (engine_() % 9) {
        case 0:
            return both(
                "packed with letters", 1e-5 / 60.0, [=](double d) { return packed(d, 2) + (d < 0.0 ? "S" : "N"); },
                [=](double d) { return packed(d, 3) + (d < 0.0 ? "W" : "E"); });
        case 1:
        case 2: {
            if (language_ > 2) break;
            const auto sized = [](double d) { return fixed(std::abs(d), 7); };
            const bool brackets = engine_() % 2 == 0;
            const auto side = [&](const char* letter) {
                return brackets ? " (" + std::string(letter) + ")" : std::string(" ") + letter;
            };
            return both("sides in the names", 1e-7, sized, sized, "", side(south ? "S" : "N"), side(west ? "W" : "E"));
        }
        case 3:
        case 4: {
            // Ten times too short a second and ten times too short a degree make the same speed.
            const int digits = open_clock() ? 7 : pick<int>(engine_, {5, 6, 7});
            const auto cell = [=](double d) { return fixed(d * std::pow(10.0, digits), 0); };
            return both("whole parts, 1e-" + whole(static_cast<std::size_t>(digits)), std::pow(10.0, -digits), cell,
                        cell);
        }
        case 5: {
            const auto cell = [](double d) { return fixed(d * 60.0, 5); };
            return both("minutes of arc", 1e-5 / 60.0, cell, cell, "min");
        }
        case 6: { // letters in columns without a name, an empty one between
            const auto cell = [](double d) { return fixed(std::abs(d), 7); };
            const auto letter = [&](double DriveRow::* where, const char* positive, const char* negative) {
                if (engine_() % 2 == 0) columns_.push_back({"", "", [](std::size_t) { return std::string(); }});
                columns_.push_back({"", "", [this, where, positive, negative](std::size_t i) {
                                        return std::string(drive_.rows[i].*where < 0.0 ? negative : positive);
                                    }});
            };
            places_ = "letters beside";
            place(names_.latitude, "", Meaning::latitude, &DriveRow::latitude, 1e-7, cell);
            letter(&DriveRow::latitude, "N", "S");
            place(names_.longitude, "", Meaning::longitude, &DriveRow::longitude, 1e-7, cell);
            letter(&DriveRow::longitude, "E", "W");
            return;
        }
        case 7:
            if (open_clock() && clock_ != "part of a day") break;
            places_ = "none";
            return;
        default:
            break;
        }
        const auto cell = [](double d) { return fixed(d, 7); };
        both("degrees", 1e-7, cell, cell, "deg");
        if (engine_() % 2 == 0) lose_fix();
    }

    // The first rows stand without a fix, as nines.
    void lose_fix() {
        places_ += " without a fix at first";
        const std::size_t until = 5 + engine_() % 100;
        for (Written& column : columns_) {
            if (!column.place) continue;
            column.absent = [until](std::size_t i) { return i < until; };
            const bool latitude = column.meaning == Meaning::latitude;
            column.cell = [cell = column.cell, until, latitude](std::size_t i) {
                return i < until ? std::string(latitude ? "99.9999999" : "999.9999999") : cell(i);
            };
        }
    }

    void draw_speed() {
        const auto speed = [&](const std::string& kind, const std::string& unit, double factor, int decimals) {
            speed_ = kind;
            columns_.push_back(
                {names_.speed, unit,
                 [this, factor, decimals](std::size_t i) { return fixed(drive_.rows[i].speed_mps * factor, decimals); },
                 Meaning::speed, &DriveRow::speed_mps, 0.51 * std::pow(10.0, -decimals) / factor});
        };
        const bool told =
            (clock_ == "seconds" || clock_ == "milliseconds") && (places_ == "degrees" || places_.starts_with("sides"));
        switch (engine_() % 4) {
        case 0:
            if (told) return speed("whole tenths of km/h", "", 36.0, 0);
            [[fallthrough]];
        case 1:
            if (told) return speed("without a unit", "", 3600.0 / 1609.344, 2);
            [[fallthrough]];
        case 2:
            return speed("cm/s", "cm/s", 100.0, 0);
        default:
            return speed("km/h", "km/h", 3.6, 2);
        }
    }

    [[nodiscard]] double spread(double DriveRow::* where) const {
        double sum = 0.0, squares = 0.0;
        for (const DriveRow& row : drive_.rows) {
            sum += row.*where;
            squares += row.*where * (row.*where);
        }
        const auto n = static_cast<double>(drive_.rows.size());
        return std::sqrt(squares / n - sum * sum / (n * n));
    }

    void draw_acceleration(const std::string& name, Meaning meaning, double DriveRow::* where) {
        // Places to a metre say nothing of accelerations, nor do those of a gentle drive.
        const bool coarse = places_ == "none" || places_.ends_with("1e-5") ||
                            spread(&DriveRow::longitudinal_mps2) < 0.5 || spread(&DriveRow::lateral_mps2) < 0.5;
        const double sign = coarse || engine_() % 2 ? 1.0 : -1.0;
        const bool in_g = engine_() % 2 == 0;
        const bool wrongly = !coarse && engine_() % 4 == 0;
        const std::string unit = wrongly ? "g" : in_g ? "g" : "m/s2";
        const double factor = wrongly || !in_g ? 1.0 : 1.0 / gravity;
        columns_.push_back(
            {name, unit,
             [this, where, sign, factor](std::size_t i) { return fixed(sign * factor * (drive_.rows[i].*where), 4); },
             meaning, where, 0.51e-4 / factor + 1e-9});
    }

    void write() {
        const char delimiter = pick<char>(engine_, {',', ';', '\t', '|'});
        const bool comma = delimiter != ',' && engine_() % 3 == 0;
        const bool brackets = engine_() % 2 == 0;
        const auto line = [&](auto&& cell_of) {
            for (std::size_t k = 0; k < columns_.size(); ++k) {
                if (k > 0) text_ += delimiter;
                text_ += cell_of(columns_[k]);
            }
            text_ += '\n';
            ++first_line_;
        };
        line([&](const Written& c) { return c.header + (brackets && !c.unit.empty() ? " [" + c.unit + "]" : ""); });
        if (!brackets) line([](const Written& c) { return c.unit; });
        lines_ = brackets ? "units in brackets" : "a row of units";
        const std::size_t between_them = engine_() % 4;
        std::size_t number = 0;
        if (between_them == 0) line([&](const Written&) { return whole(static_cast<std::size_t>(rate_hz_)); });
        if (between_them == 1) line([&](const Written&) { return whole(++number); });
        if (between_them == 2 && brackets && delimiter != '\t') line([](const Written&) { return std::string(); });
        if (between_them < 2) lines_ += ", a row of numbers";
        for (std::size_t i = 0; i < drive_.rows.size(); ++i) {
            line([&](const Written& c) {
                std::string cell = c.cell(i);
                if (comma && cell.find_first_not_of("-0123456789.") == std::string::npos)
                    std::ranges::replace(cell, '.', ',');
                return cell;
            });
            if (i == 0) --first_line_;
        }
        first_line_ -= drive_.rows.size() - 1;
    }

    Engine engine_;
    double rate_hz_;
    drawn::Drive drive_;
    std::size_t language_;
    Names names_;
    std::vector<Written> columns_;
    std::string text_;
    std::size_t first_line_ = 1;
    double clock_step_s_ = 0.0;
    std::string clock_, places_, speed_, lines_;
};

std::string told(const recording::Recording& recording) {
    std::string all;
    for (const auto& warning : recording.warnings)
        all += "\n    " + std::string(recording::name(warning.kind)) + ": " + recording::words(warning);
    return all;
}

std::string fault_of(const Channel& channel, const Written& column, const Dialect& dialect) {
    const auto& rows = dialect.drive().rows;
    const double first_s = rows.front().time_s;
    std::size_t present = 0;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (!column.absent || !column.absent(i)) ++present;
    if (10 * channel.size() < 9 * present) return "rows are lost: " + whole(channel.size()) + " of " + whole(present);
    for (std::size_t k = 0; k < channel.size(); ++k) {
        const std::size_t i = (*channel.source_lines)[k] - dialect.first_line();
        if (i >= rows.size()) return "a line that does not exist";
        const double off = channel.values[k] - rows[i].*column.place;
        if (!(std::abs(off) <= column.tolerance))
            return "row " + whole(i) + " is " + base::exact_text(channel.values[k]) + ", not " +
                   base::exact_text(rows[i].*column.place);
        const double time_off = (*channel.time_s)[k] - (rows[i].time_s - first_s);
        if (!(std::abs(time_off) <= 1.1 * dialect.clock_step_s() + 1e-9))
            return "row " + whole(i) + " is at " + base::exact_text((*channel.time_s)[k]) + " s, not " +
                   base::exact_text(rows[i].time_s);
    }
    return "";
}

TEST(DrawnDialects, ComeOutAsTheyWereDriven) {
    const char* const wanted = std::getenv("LAPWRIGHT_DRAWN_TABLES");
    const auto count = static_cast<std::uint64_t>(base::parse_integer(wanted ? wanted : "40").value_or(40));
    for (std::uint64_t seed = 1; seed <= count; ++seed) {
        const auto dialect = std::make_unique<Dialect>(seed);
        const std::string where =
            "seed " + whole(seed) + ": " + dialect->told() + "\n" + dialect->text().substr(0, 400);
        const auto result = import_bytes(dialect->text(), "drawn.csv");
        if (!result.ok()) {
            ADD_FAILURE() << where << "\n  refused: " << base::one_line(result.error());
            continue;
        }
        for (const Written& column : dialect->columns()) {
            if (!column.place) continue;
            const Channel* const channel = result->find(column.meaning);
            const std::string fault = channel ? fault_of(*channel, column, *dialect) : "is not known";
            if (!fault.empty())
                ADD_FAILURE() << where << "\n  " << recording::name(column.meaning) << ": " << fault << told(*result);
        }
    }
}

} // namespace
} // namespace lapwright::import
