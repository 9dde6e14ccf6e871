// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/html_sheet.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/base/whole_file.h"
#include "core/base/wording.h"
#include "core/sheet/html_cursor.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"
#include "core/sheet/svg_map.h"
#include "core/sheet/svg_plot.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>

namespace lapwright::sheet {
namespace {

using base::said;

constexpr std::string_view rules = R"(* { box-sizing: border-box; }
html { background: #fff; color: var(--ink); }
body { margin: 0; font: 10pt/1.35 "DejaVu Sans", sans-serif; font-variant-numeric: tabular-nums; }
main { max-width: 190mm; margin: 10mm auto; padding: 0 5mm; }
p, h1, h2, ul, ol { margin: 0; padding: 0; }
h1 { font-size: 20pt; line-height: 1.15; }
h2 { font-size: 9pt; margin: 8pt 0 3pt; break-after: avoid; }
.sentence { margin: 2pt 0 4pt; }
.place, footer { color: var(--faint); }
.place, .side, .evidence, .try { font-size: 8pt; }
.map { float: right; width: 43mm; height: auto; margin: 0 0 2pt 8pt; }
.side { font-weight: bold; }
.for-a { color: var(--a); }
.for-b { color: var(--b); }
.plots { margin: 0; clear: right; }
.plot { display: block; width: 100%; height: auto; margin: 6pt 0; touch-action: pan-y; }
.narrow { display: none; }
.readout { min-height: 2.6em; margin: 4pt 0; font-size: 9pt; }
summary { display: flex; justify-content: space-between; gap: 12pt; padding: 4pt 0; cursor: pointer; font-size: 9pt;
  border-top: 0.6pt solid var(--rule); }
summary span:first-child { font-weight: bold; overflow-wrap: anywhere; }
details p { font-size: 8pt; padding: 0 0 4pt; }
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
tbody th { text-align: left; overflow-wrap: break-word; }
.pairs { table-layout: fixed; }
.pairs th { width: 34%; }
.corner th { font-weight: bold; }
td { text-align: right; padding: 1pt 0 1pt 6pt; }
.bar { display: inline-block; width: 36pt; height: 5pt; vertical-align: middle; }
.notes, .remarks { list-style: none; font-size: 8pt; overflow-wrap: anywhere; }
.remarks li, .notes li { margin-bottom: 2pt; }
.second { break-before: page; }
.stills { break-before: page; }
.stills > div { display: grid; grid-template-columns: 1fr 1fr; gap: 0 12pt; break-inside: avoid; }
.stills figure { margin: 0 0 6pt; }
.stills img { display: block; width: 100%; height: auto; }
.stills figcaption { font-size: 8pt; margin-top: 2pt; }
footer { margin-top: 10pt; padding-top: 4pt; border-top: 0.6pt solid var(--rule); font-size: 7pt; break-inside: avoid; }
@media screen and (max-width: 600px) {
  main { margin: 0; padding: 12px; }
  body { font-size: 16px; }
  h1 { font-size: 24px; }
  h2 { font-size: 16px; margin-top: 18px; }
  .place, .side, .evidence, .try, .readout, .claim, .worth, .notes, .remarks, details p { font-size: 15px; }
  table, thead { font-size: 13px; }
  td { padding: 6px 0 6px 5px; }
  summary { font-size: 16px; padding: 12px 0; }
  footer { font-size: 12px; }
  .columns { display: block; }
  header { display: flex; flex-direction: column; }
  .map { order: 1; float: none; align-self: center; width: 60%; margin: 8px 0; }
  .corners, .segments { table-layout: fixed; }
  .corners :is(th, td):nth-child(2), .segments :is(th, td):nth-child(2),
  .corners :is(th, td):nth-child(5), .segments :is(th, td):nth-child(5) { display: none; }
  .wide { display: none; }
  .narrow { display: block; }
  .stills > div { display: block; }
  .stills figcaption { font-size: 15px; }
  .worth { float: none; margin: 0; }
  .findings li { padding-left: 30px; }
  .bar { width: 28px; }
}
@media print {
  .readout, .unfold, .on-screen { display: none; }
  main { max-width: none; margin: 0; padding: 0; }
  body { line-height: 1.2; }
  h2 { margin: 4pt 0 1pt; }
  table, .evidence, .try { line-height: 1.12; }
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
    return "<!DOCTYPE html>\n<html lang=\"" + std::string(base::language_code()) +
           "\">\n<head>\n<meta charset=\"utf-8\"/>\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; "
           "script-src 'sha256-" +
           std::string(cursor_script_hash) + "'" + (sheet.stills.empty() ? "" : "; img-src data:") +
           "\"/>\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
           "<meta name=\"color-scheme\" content=\"light\"/>\n" +
           std::string(html_mark) + "\n" + element("title", "", sheet.headline) + "<style>\n" +
           html_style(options.us_letter) + "</style>\n</head>\n";
}

std::string top(const Sheet& sheet) {
    return "<header>\n" + svg_map(sheet) + element("h1", "", sheet.headline) +
           element("p", "sentence", sheet.sentence) + element("p", "place", sheet.place) +
           element("p", "side for-a", sheet.side_a) + element("p", "side for-b", sheet.side_b) + "</header>\n";
}

// What is known at each place that the cursor can stand at: "1234 m, Sweep · A 129.3, B 125.7 km/h · A ahead 0.27 ±0.01
// s".
std::string words_at_places(const Plot& plot) {
    constexpr std::size_t most_places = 400;
    const std::size_t places = std::min(most_places, plot.distance_m.size());
    std::string words;
    for (std::size_t k = 0; k < places; ++k) {
        const std::size_t i = k * (plot.distance_m.size() - 1) / std::max<std::size_t>(places - 1, 1);
        std::optional<double> sd;
        if (i < plot.low_s.size() && i < plot.high_s.size())
            sd = 0.5 * (plot.high_s[i] - plot.low_s[i]) / base::half_width_95(1.0);
        words += (k == 0 ? "" : "\n") + base::shown_text(plot.distance_m[i], 0) + " m";
        if (i < plot.segment_names.size()) words += ", " + base::plain_name(plot.segment_names[i]);
        words += " · A " + base::shown_text(plot.speed_a[i], 1) + ", B " + base::shown_text(plot.speed_b[i], 1) + " " +
                 base::plain_name(plot.speed_unit) + " · " + base::gap_text(plot.gap_s[i], sd) +
                 (sd ? " " + base::gain_margin_text(sd) : std::string());
    }
    return words;
}

// A phone has a plot of its own, whose words can be read there.
std::string plots(const Sheet& sheet) {
    constexpr double narrow_width_pt = 240.0;
    if (sheet.plot.distance_m.size() < 2) return {};
    return "<figure class=\"plots\" tabindex=\"0\" data-words=\"" + escaped(words_at_places(sheet.plot)) + "\">\n" +
           svg_plot_with_cursor(sheet, plot_width_pt, "plot wide") +
           svg_plot_with_cursor(sheet, narrow_width_pt, "plot narrow") + "<p class=\"readout\" aria-live=\"polite\">" +
           escaped(said("Touch the plot, or use the arrow keys: both speeds and the gap at that place.")) +
           "</p>\n</figure>\n";
}

std::string findings(const std::vector<Finding>& all) {
    if (all.empty()) return {};
    std::string html = "<ol class=\"findings\">\n";
    for (const Finding& finding : all) {
        html += "<li>\n" + element("p", "worth " + std::string(kind_of(finding.favours)), finding.worth) +
                element("p", "claim", finding.claim);
        if (!finding.evidence.empty()) html += element("p", "evidence", finding.evidence);
        if (!finding.try_next.empty()) html += element("p", "try", said("Try next: %1", {finding.try_next}));
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
            html += element("th", "", row.cells[i]) + "<td>" + svg_bar(row, largest_s) + "</td>\n";
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

std::string straights(const std::vector<Row>& rows) {
    std::vector<Pair> all;
    for (const Row& row : rows)
        if (!row.corner && row.matters) all.push_back({row.cells[0], row.cells[1] + ", " + row.cells[2], row.favours});
    return pairs(said("Straights that matter"), "straights", all);
}

// Not on paper, where it would take a second page.
std::string driving(const std::vector<Pair>& all) {
    return all.empty() ? ""
                       : "<div class=\"on-screen\">\n" + pairs(said("Driven differently"), "driving", all) + "</div>\n";
}

// How each was driven, to unfold.
std::string unfold(const Sheet& sheet) {
    if (sheet.segment_words.size() != sheet.segments.size() || sheet.segments.empty()) return {};
    std::string html = "<section class=\"unfold\">\n" + element("h2", "", said("Every segment"));
    for (std::size_t i = 0; i < sheet.segments.size(); ++i) {
        const Row& row = sheet.segments[i];
        html += "<details><summary>" + element("span", "", row.cells[0]) +
                element("span", kind_of(row.favours), row.cells[1]) + "</summary>" +
                element("p", "", sheet.segment_words[i]) + "</details>\n";
    }
    return html + "</section>\n";
}

std::string columns(const Sheet& sheet) {
    return "<div class=\"columns\">\n<section>\n" + table(said("Corners"), "corners", sheet, sheet.corners) +
           straights(sheet.segments) + driving(sheet.driving) + "</section>\n<section>\n" +
           pairs(said("Causes, whole lap"), "causes", sheet.causes) +
           pairs(said("Setup, A · B"), "setup", sheet.setup) + lines(said("Notes"), "notes", sheet.notes) +
           lines(said("To keep in mind"), "remarks", sheet.remarks) + "</section>\n</div>\n";
}

std::string still(std::string_view kind, const std::string& moment, const Still& one) {
    std::string html = "<figure>\n";
    if (!one.jpeg.empty())
        html += "<img alt=\"" + escaped(moment + ", " + one.words) + "\" width=\"" + base::integer_text(one.width) +
                "\" height=\"" + base::integer_text(one.height) + "\" src=\"data:image/jpeg;base64," +
                base64(one.jpeg) + "\"/>\n";
    return html + element("figcaption", kind, one.words) + "</figure>\n";
}

std::string stills(const std::vector<StillPair>& pairs) {
    if (pairs.empty()) return {};
    std::string html = "<section class=\"stills\">\n";
    for (const StillPair& pair : pairs)
        html += element("h2", "", pair.moment) + "<div>\n" + still("for-a", pair.moment, pair.a) +
                still("for-b", pair.moment, pair.b) + "</div>\n";
    return html + "</section>\n";
}

std::string second_page(const Sheet& sheet) {
    return "<section class=\"second\">\n" + table(said("All segments"), "segments", sheet, sheet.segments) +
           "</section>\n";
}

} // namespace

std::string html_sheet(const Sheet& sheet, const HtmlOptions& options) {
    return head(sheet, options) + "<body>\n<main>\n" + top(sheet) + plots(sheet) + findings(sheet.findings) +
           columns(sheet) + unfold(sheet) + (options.all_segments ? second_page(sheet) : "") + stills(sheet.stills) +
           "<footer>\n" + element("p", "cautions", sheet.cautions) + element("p", "made-from", sheet.made_from) +
           "</footer>\n</main>\n<script>" + std::string(cursor_script) + "</script>\n</body>\n</html>\n";
}

base::Result<void> write_html_sheet(const Sheet& sheet, const std::string& path, const HtmlOptions& options) {
    return base::write_whole_file(path, html_sheet(sheet, options), said("the sheet"));
}

bool names_html(const std::string& path) {
    const std::string lower = base::lower_case(path);
    return lower.ends_with(".html") || lower.ends_with(".htm");
}

} // namespace lapwright::sheet
