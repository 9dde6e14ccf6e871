// SPDX-License-Identifier: GPL-3.0-or-later
// The cursor through all panels, and what each of them reads there, right in its title row.  On the overlay layer: it
// moves without anything beneath being painted again.
#pragma once

#include "ui/plots/drawing.h"

#include <functional>
#include <vector>

namespace lapwright::plots {

// One piece of a read-out: a text in its colour.
struct Piece {
    QString text;
    QColor colour;
};
using ReadOut = std::function<std::vector<Piece>(double place_m)>;

class Title;

class Cursor : public Drawing {
  public:
    // What it reads leaves `title`, of the same panel, its room.
    Cursor(const Title& title, QCPAxisRect* rect, ReadOut read_out, const QColor& line, const QFont& font,
           int title_height, const Drawing* writing);

    void set(double place_m) { place_m_ = place_m; }

  protected:
    void draw(QCPPainter* painter) override;
    QRect clipRect() const override;

  private:
    void draw_read_out(QCPPainter& painter) const;

    const Title& title_;
    ReadOut read_out_;
    QColor line_;
    QFont font_;
    int title_height_;
    const Drawing* writing_; // of the same panel, may be null
    double place_m_ = 0.0;
};

// The panel's name, left in its title row.
class Title : public Drawing {
  public:
    void set_font(const QFont& font) { font_ = font; }
    Title(QCPAxisRect* rect, QString text, const QColor& ink, const QFont& font, int title_height);

    [[nodiscard]] const QString& text() const { return text_; }
    [[nodiscard]] double taken_px() const;
    [[nodiscard]] bool cut() const;

  protected:
    void draw(QCPPainter* painter) override;
    QRect clipRect() const override;

  private:
    [[nodiscard]] double needed_px() const;
    [[nodiscard]] double given_px() const;

    QString text_;
    QColor ink_;
    QFont font_;
    int title_height_;
};

} // namespace lapwright::plots
