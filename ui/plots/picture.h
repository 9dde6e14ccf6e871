// SPDX-License-Identifier: GPL-3.0-or-later
// Plots as the content of a picture file: SVG, or PNG at twice the size on the screen.
#pragma once

#include <QByteArray>
#include <QColor>
#include <QSize>
#include <QString>
#include <vector>

class QCustomPlot;

namespace lapwright::plots {

enum class PictureForm { svg, png };

// A plot with its caption above it (may be empty), in that many pixels.
struct PicturePart {
    QCustomPlot* plot;
    QString caption;
    QSize size;
};

struct PictureStyle {
    QColor ground;
    QColor ink;
};

// The parts side by side under one heading; an empty array where the picture could not be made.
[[nodiscard]] QByteArray picture_of(const std::vector<PicturePart>& parts, const QString& heading,
                                    const PictureStyle& style, PictureForm form);

} // namespace lapwright::plots
