// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/palette.h"

#include <QApplication>
#include <algorithm>
#include <cmath>

namespace lapwright::theme {
namespace {

double linear(double part) {
    return part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

} // namespace

const Palette& paper() {
    static const Palette palette{
        .dark = false,
        .paper = QColor(0xF7, 0xF4, 0xED),
        .card = QColor(0xFF, 0xFF, 0xFF),
        .ink = QColor(0x1E, 0x22, 0x26),
        .quiet = QColor(0x5E, 0x5A, 0x52),
        .rule = QColor(0xDD, 0xD6, 0xC6),
        .edge = QColor(0x85, 0x7F, 0x72),
        .tint = QColor(0xED, 0xE6, 0xD6),
        .chosen = QColor(0xFB, 0xF0, 0xCF),
        .a = QColor(0x00, 0x67, 0xA3),
        .b = QColor(0xB3, 0x4A, 0x00),
        .third = QColor(0x0B, 0x6E, 0x4F),
        .fourth = QColor(0x93, 0x3F, 0x77),
        .ribbon = QColor(0x85, 0x7F, 0x72),
        .even = QColor(0xC9, 0xC2, 0xB2),
        .notice = QColor(0xFD, 0xE9, 0xD9),
    };
    return palette;
}

const Palette& evening() {
    static const Palette palette{
        .dark = true,
        .paper = QColor(0x1B, 0x1A, 0x18),
        .card = QColor(0x26, 0x24, 0x21),
        .ink = QColor(0xEC, 0xE8, 0xDF),
        .quiet = QColor(0xAB, 0xA5, 0x98),
        .rule = QColor(0x3D, 0x3A, 0x35),
        .edge = QColor(0x8C, 0x85, 0x76),
        .tint = QColor(0x2C, 0x2A, 0x26),
        .chosen = QColor(0x3A, 0x35, 0x26),
        .a = QColor(0x56, 0xB4, 0xE9),
        .b = QColor(0xE6, 0x9F, 0x00),
        .third = QColor(0x4C, 0xC7, 0x9C),
        .fourth = QColor(0xD8, 0x93, 0xBD),
        .ribbon = QColor(0x8C, 0x85, 0x76),
        .even = QColor(0x5A, 0x56, 0x4E),
        .notice = QColor(0x4A, 0x2F, 0x1A),
    };
    return palette;
}

QColor further_colour(const Palette& palette, int place) {
    return place % 2 == 0 ? palette.third : palette.fourth;
}

const Palette& palette_for(Choice choice, const QPalette& desktop) {
    const bool dark_desktop = luminance(desktop.color(QPalette::Window)) < 0.18;
    const bool dark = choice == Choice::dark || (choice == Choice::system && dark_desktop);
    return dark ? evening() : paper();
}

namespace {

QPalette qt_palette(const Palette& p) {
    QPalette qt;
    qt.setColor(QPalette::Window, p.paper);
    qt.setColor(QPalette::WindowText, p.ink);
    qt.setColor(QPalette::Base, p.card);
    qt.setColor(QPalette::AlternateBase, p.tint);
    qt.setColor(QPalette::Text, p.ink);
    qt.setColor(QPalette::Button, p.paper);
    qt.setColor(QPalette::ButtonText, p.ink);
    qt.setColor(QPalette::BrightText, p.ink);
    qt.setColor(QPalette::ToolTipBase, p.card);
    qt.setColor(QPalette::ToolTipText, p.ink);
    qt.setColor(QPalette::PlaceholderText, p.quiet);
    qt.setColor(QPalette::Highlight, p.chosen);
    qt.setColor(QPalette::HighlightedText, p.ink);
    qt.setColor(QPalette::Link, p.a);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        qt.setColor(QPalette::Disabled, role, blend(p.ink, p.paper, 0.55));
    }
    return qt;
}

// The style Fusion frames what can be operated in the window's colour, 1.4 times darker: too little in the dark look.
QPalette control_palette(const Palette& p) {
    QPalette qt = qt_palette(p);
    QColor frame = p.edge.toHsv();
    frame.setHsv(frame.hue(), frame.saturation(), std::min(255, frame.value() * 14 / 10));
    qt.setColor(QPalette::Window, p.dark ? frame : frame.darker(115)); // on white some frames come out lighter again
    return qt;
}

} // namespace

void apply(const Palette& p) {
    QApplication::setPalette(qt_palette(p));
    QPalette control = control_palette(p);
    for (const char* const name : {"QSlider", "QListWidget"}) // of which the highlight is a filling
        QApplication::setPalette(control, name);
    // With the focus a frame has a darker highlight.
    control.setColor(QPalette::Highlight, p.a);
    control.setColor(QPalette::HighlightedText, ink_on(p.a));
    for (const char* const name : {"QCheckBox", "QComboBox", "QLineEdit", "QPlainTextEdit", "QAbstractSpinBox"})
        QApplication::setPalette(control, name);
}

QString style_sheet(const Palette& p) {
    const QString text = QStringLiteral(
        "QMainWindow, QDialog { background: %1; }"
        "QFrame#card { background: %2; border: 1px solid %3; border-radius: 6px; }"
        "QFrame#strip { background: %1; border-bottom: 1px solid %3; }"
        "QFrame#notice { background: %4; border: 1px solid %3; border-radius: 6px; }"
        "QToolButton#page { border: 0; padding: 5px 12px; border-bottom: 3px solid transparent; }"
        "QToolButton#page:checked { border-bottom: 3px solid %5; font-weight: bold; }"
        "QToolButton#page:focus, QToolButton#plain:focus { background: %6; }"
        "QToolButton#plain { border: 1px solid %7; border-radius: 4px; padding: 3px 8px; background: %2; }"
        "QToolButton#slim { border: 1px solid %7; border-radius: 3px; padding: 0 6px; background: %2; }"
        "QToolButton#slim:hover { background: %8; } QToolButton#slim:focus { background: %6; }"
        "QToolButton#waiting { border: 1px solid %7; border-radius: 4px; padding: 3px 8px; background: %4; }"
        "QToolButton#plain::menu-indicator { width: 0; }"
        "QPushButton { border: 1px solid %7; border-radius: 4px; padding: 4px 12px; background: %2; color: %5; }"
        "QPushButton:hover, QToolButton#plain:hover { background: %8; }"
        "QPushButton:focus { border: 2px solid %9; padding: 3px 11px; }"
        "QPushButton:disabled { color: %7; border-color: %3; }"
        "QFrame#drop { background: %2; border: 2px dashed %7; border-radius: 8px; }"
        "QLineEdit#inplace { border: 0; border-bottom: 1px dotted %7; padding: 1px 2px; background: transparent; }"
        "QLineEdit#inplace:hover { background: %8; }"
        "QLineEdit#inplace:focus { border-bottom: 1px solid %9; background: %8; }"
        "QTableView { background: transparent; border: 0; outline: 0; }" // the row is marked, not a cell
        "QTableView:focus { border: 0; }"
        "QHeaderView { background: transparent; }"
        "QHeaderView::section { background: transparent; border: 0; border-bottom: 1px solid %3; padding: 2px 4px; }"
        "QScrollArea, QScrollArea > QWidget#qt_scrollarea_viewport,"
        " QScrollArea > QWidget#qt_scrollarea_viewport > QWidget { background: transparent; border: 0; }"
        "QSplitter::handle { background: transparent; }"
        "QSplitter::handle:hover { background: %3; }"
        "QMenuBar { background: %1; } QMenuBar::item { padding: 5px 9px; background: transparent; }"
        "QMenuBar::item:selected { background: %8; }"
        "QMenu { background: %2; border: 1px solid %3; } QMenu::item:selected { background: %6; color: %5; }"
        "QMenu::separator { height: 1px; background: %3; margin: 4px 8px; }");
    return text.arg(p.paper.name(), p.card.name(), p.rule.name(), p.notice.name(), p.ink.name(), p.chosen.name(),
                    p.edge.name(), p.tint.name(), p.a.name());
}

double contrast(const QColor& one, const QColor& other) {
    const double first = luminance(one);
    const double second = luminance(other);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

QColor ink_on(const QColor& fill) {
    const QColor light(0xFF, 0xFF, 0xFF);
    const QColor dark(0x14, 0x16, 0x18);
    return contrast(fill, light) >= contrast(fill, dark) ? light : dark;
}

QColor blend(const QColor& from, const QColor& to, double part) {
    const double p = std::clamp(part, 0.0, 1.0);
    const auto mix = [p](double x, double y) { return static_cast<float>(x + (y - x) * p); };
    return QColor::fromRgbF(mix(from.redF(), to.redF()), mix(from.greenF(), to.greenF()), mix(from.blueF(), to.blueF()),
                            mix(from.alphaF(), to.alphaF()));
}

} // namespace lapwright::theme
