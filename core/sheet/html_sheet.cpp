// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/html_sheet.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/whole_file.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"
#include "core/sheet/svg_plot.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace lapwright::sheet {
namespace {

constexpr std::string_view rules = R"(* { box-sizing: border-box; }
html { background: #fff; color: var(--ink); }
body { margin: 0; font: 10pt/1.35 "DejaVu Sans", sans-serif; font-variant-numeric: tabular-nums; }
main { max-width: 190mm; margin: 10mm auto; padding: 0 5mm; }
p, h1, h2, ul, ol { margin: 0; padding: 0; }
h1 { font-size: 20pt; line-height: 1.15; }
h2 { font-size: 9pt; margin: 8pt 0 3pt; break-after: avoid; }
.sentence { margin: 2pt 0 4pt; }
.place, .try, footer { color: var(--faint); }
.place, .side, .evidence, .try { font-size: 8pt; }
.side { font-weight: bold; }
.for-a { color: var(--a); }
.for-b { color: var(--b); }
.plot { display: block; width: 100%; height: auto; margin: 6pt 0; }
.findings { list-style: none; counter-reset: finding; border-bottom: 0.6pt solid var(--rule); }
.findings li { position: relative; padding: 5pt 0 5pt 24pt; border-top: 0.6pt solid var(--rule); break-inside: avoid; }
.findings li::before { counter-increment: finding; content: counter(finding); position: absolute; left: 0; top: 5pt;
  width: 14pt; height: 14pt; border-radius: 7pt; background: var(--ink); color: #fff; font: bold 9pt/14pt sans-serif;
  text-align: center; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.claim { font-size: 9pt; font-weight: bold; }
.worth { float: right; margin-left: 12pt; font-size: 9pt; font-weight: bold; }
.columns { display: grid; grid-template-columns: 57fr 43fr; gap: 0 18pt; }
table { width: 100%; border-collapse: collapse; font-size: 8pt; }
tr { break-inside: avoid; }
tbody tr { border-top: 0.6pt solid var(--rule); }
thead { color: var(--faint); font-size: 7pt; }
th { font-weight: normal; text-align: right; }
tbody th { text-align: left; overflow-wrap: anywhere; }
.corner th { font-weight: bold; }
td { text-align: right; padding: 1pt 0 1pt 6pt; }
.bar { display: inline-block; width: 36pt; height: 5pt; vertical-align: middle; }
.notes, .remarks { list-style: none; font-size: 8pt; overflow-wrap: anywhere; }
.remarks li, .notes li { margin-bottom: 2pt; }
.second { break-before: page; }
footer { margin-top: 10pt; padding-top: 4pt; border-top: 0.6pt solid var(--rule); font-size: 7pt; break-inside: avoid; }
@media (max-width: 600px) { .columns { display: block; } }
@media print {
  main { max-width: none; margin: 0; padding: 0; }
  body { line-height: 1.25; }
  .findings li { padding-top: 3pt; padding-bottom: 3pt; }
  .findings li::before { top: 3pt; }
  td, th { padding-top: 0; padding-bottom: 0; }
  .plot { margin: 2pt 0; }
  footer { margin-top: 4pt; }
}
)";

std::string html_style(bool us_letter) {
    return std::string("@page { size: ") + (us_letter ? "letter" : "A4") +
           " portrait; margin: 12mm 14mm; }\n:root { --ink: " + colour_text(colours::ink) +
           "; --faint: " + colour_text(colours::faint_ink) + "; --rule: " + colour_text(colours::rule) +
           "; --a: " + colour_text(colours::blue_a) + "; --b: " + colour_text(colours::vermilion_b) + "; }\n" +
           std::string(rules);
}

std::string element(std::string_view name, std::string_view kind, const std::string& words) {
    const std::string tag(name);
    return "<" + tag + (kind.empty() ? "" : " class=\"" + std::string(kind) + "\"") + ">" + escaped(words) + "</" +
           tag + ">\n";
}

std::string_view kind_of(Favours favours) {
    switch (favours) {
    case Favours::a:
        return "for-a";
    case Favours::b:
        return "for-b";
    case Favours::neither:
        return "";
    }
    return "";
}

std::string head(const Sheet& sheet, const HtmlOptions& options) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
           "<meta name=\"color-scheme\" content=\"light\"/>\n" +
           std::string(html_mark) + "\n" + element("title", "", sheet.headline) + "<style>\n" +
           html_style(options.us_letter) + "</style>\n</head>\n";
}

std::string top(const Sheet& sheet) {
    return "<header>\n" + element("h1", "", sheet.headline) + element("p", "sentence", sheet.sentence) +
           element("p", "place", sheet.place) + element("p", "side for-a", sheet.side_a) +
           element("p", "side for-b", sheet.side_b) + "</header>\n";
}

std::string findings(const std::vector<Finding>& all) {
    if (all.empty()) return {};
    std::string html = "<ol class=\"findings\">\n";
    for (const Finding& finding : all) {
        html += "<li>\n" + element("p", "worth " + std::string(kind_of(finding.favours)), finding.worth) +
                element("p", "claim", finding.claim);
        if (!finding.evidence.empty()) html += element("p", "evidence", finding.evidence);
        if (!finding.try_next.empty()) html += element("p", "try", "Try next: " + finding.try_next);
        html += "</li>\n";
    }
    return html + "</ol>\n";
}

double largest_gain(const std::vector<Row>& rows) {
    double most = 0.0;
    for (const Row& row : rows)
        most = std::max(most, std::abs(row.gain_s));
    return most;
}

// The bar stands between the name and the figures.
std::string table_head(const std::vector<std::string>& columns) {
    std::string html = "<thead><tr>\n";
    for (std::size_t i = 0; i < columns.size(); ++i)
        html += columns[i].empty() ? "<td></td>\n<td></td>\n" : element("th", "", columns[i]);
    return html + "</tr></thead>\n";
}

std::string table_row(const Row& row, double largest_s) {
    std::string html = "<tr" + std::string(row.corner ? " class=\"corner\"" : "") + ">\n";
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        if (i == 0)
            html += element("th", "", row.cells[i]) + "<td>" + svg_bar(row.gain_s, largest_s) + "</td>\n";
        else if (i == 1)
            html +=
                "<td><data value=\"" + base::exact_text(row.gain_s) + "\">" + escaped(row.cells[i]) + "</data></td>\n";
        else
            html += element("td", "", row.cells[i]);
    }
    return html + "</tr>\n";
}

std::string table(const std::string& title, std::string_view kind, const Sheet& sheet, const std::vector<Row>& rows) {
    if (rows.empty()) return {};
    const double largest = largest_gain(rows);
    std::string html = element("h2", "", title) + "<table class=\"" + std::string(kind) + "\">\n";
    html += table_head(sheet.columns) + "<tbody>\n";
    for (const Row& row : rows)
        html += table_row(row, largest);
    return html + "</tbody></table>\n";
}

std::string pairs(const std::string& title, std::string_view kind, const std::vector<Pair>& all) {
    if (all.empty()) return {};
    std::string html = element("h2", "", title) + "<table class=\"pairs " + std::string(kind) + "\"><tbody>\n";
    for (const Pair& pair : all)
        html += "<tr>" + element("th", "", pair.name) + element("td", kind_of(pair.favours), pair.text) + "</tr>\n";
    return html + "</tbody></table>\n";
}

std::string lines(const std::string& title, std::string_view kind, const std::vector<std::string>& all) {
    if (all.empty()) return {};
    std::string html = element("h2", "", title) + "<ul class=\"" + std::string(kind) + "\">\n";
    for (const std::string& words : all)
        html += element("li", "", words);
    return html + "</ul>\n";
}

std::string columns(const Sheet& sheet) {
    return "<div class=\"columns\">\n<section>\n" + table("Corners", "corners", sheet, sheet.corners) +
           pairs("Setup, A · B", "setup", sheet.setup) + "</section>\n<section>\n" +
           pairs("Causes, whole lap", "causes", sheet.causes) + lines("Notes", "notes", sheet.notes) +
           lines("To keep in mind", "remarks", sheet.remarks) + "</section>\n</div>\n";
}

std::string second_page(const Sheet& sheet) {
    return "<section class=\"second\">\n" + table("All segments", "segments", sheet, sheet.segments) + "</section>\n";
}

} // namespace

std::string html_sheet(const Sheet& sheet, const HtmlOptions& options) {
    return head(sheet, options) + "<body>\n<main>\n" + top(sheet) + svg_plot(plot_drawing(sheet)) +
           findings(sheet.findings) + columns(sheet) + (options.all_segments ? second_page(sheet) : "") + "<footer>\n" +
           element("p", "cautions", sheet.cautions) + element("p", "made-from", sheet.made_from) +
           "</footer>\n</main>\n</body>\n</html>\n";
}

base::Result<void> write_html_sheet(const Sheet& sheet, const std::string& path, const HtmlOptions& options) {
    return base::write_whole_file(path, html_sheet(sheet, options), "the sheet");
}

bool names_html(const std::string& path) {
    const std::string lower = base::lower_case(path);
    return lower.ends_with(".html") || lower.ends_with(".htm");
}

} // namespace lapwright::sheet
